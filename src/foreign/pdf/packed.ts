import type { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged } from "../refused.ts";
import { unpackAll, type Resolve } from "./filters.ts";
import { takeCount } from "./parse.ts";
import type { PdfStream } from "./values.ts";

/** An object inside an object stream: its number, and where it begins in the unpacked bytes. */
export interface Packed {
  readonly number: number;
  readonly bytes: Buffer;
  readonly offset: number;
}

/** The objects of an object stream, in its order (ISO 32000-1, 7.5.7). */
export function packedNumbers(stream: PdfStream, resolve: Resolve, budget: Budget): readonly Packed[] {
  const first = resolve(stream.entries.get("First"));
  const count = resolve(stream.entries.get("N"));
  if (typeof first !== "number" || typeof count !== "number") throw damaged("a packed list of objects is not whole");
  const bytes = unpackAll(stream, resolve, budget);
  const cursor = { bytes: bytes.subarray(0, Math.max(0, first)), at: 0 };
  const packed: Packed[] = [];
  for (let index = 0; index < count; index++) {
    const number = takeCount(cursor);
    const offset = takeCount(cursor);
    if (number === undefined || offset === undefined) throw damaged("a packed list of objects is not whole");
    budget.spend("objects");
    packed.push({ number, bytes, offset: first + offset });
  }
  return packed;
}
