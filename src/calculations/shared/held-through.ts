import type { Condition } from "../../model/input.ts";

/** A pressure test that was not broken off before its hold was over: only such a one is judged by its hold. */
export const heldThrough: Condition = { path: "stopped", exists: false };

/** Pressure tests with some media that were held to their end. */
export const heldWith = (...media: readonly string[]) => ({
  kind: "pressure-test",
  when: [heldThrough, { path: "medium", equals: media }],
});
