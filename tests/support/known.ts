import { isRefusal, type Refusal } from "../../src/steam/index.ts";

/** The value of a steam function; fails where it refuses. */
export function known<T>(value: T | Refusal): T {
  if (isRefusal(value)) throw new Error(value.refused);
  return value;
}
