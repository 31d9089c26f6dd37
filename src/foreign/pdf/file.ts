import type { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged, Refused } from "../refused.ts";
import { unpackAll, type Resolve } from "./filters.ts";
import { readIndirect } from "./indirect.ts";
import { packedNumbers, type Packed } from "./packed.ts";
import { readValue } from "./parse.ts";
import { rebuiltTable } from "./rebuild.ts";
import { entriesOf, isRef, isStream, type Entries, type PdfStream, type PdfValue } from "./values.ts";
import { tableOf, type ObjectTable, type Whereabouts } from "./xref.ts";

/** A PDF whose objects are read when they are asked for. */
export interface PdfFile {
  readonly budget: Budget;
  /** Catalogue of the document. */
  readonly root: Entries;
  /** The value itself, or what it refers to; null for what is not there. */
  readonly resolve: Resolve;
  /** Dictionary behind a value. */
  dict(value: PdfValue | undefined): Entries | undefined;
  /** What a stream that is no picture holds. */
  content(stream: PdfStream): Buffer;
}

/**
 * Does some work on a PDF: by its own table of objects, and where that leads astray by the objects that are found in it.
 * Throws Refused, and nothing else, on what the bytes hold.
 */
export function withPdf<Result>(bytes: Buffer, newBudget: () => Budget, work: (file: PdfFile) => Result): Result {
  try {
    const budget = newBudget();
    return work(fileOf(bytes, tableOf(bytes, budget), budget));
  } catch (error) {
    if (!(error instanceof Refused) || error.fault.sort !== "damaged") throw error;
    const budget = newBudget();
    return work(fileOf(bytes, rebuiltTable(bytes, budget), budget));
  }
}

function fileOf(bytes: Buffer, { places, trailer }: ObjectTable, budget: Budget): PdfFile {
  const known = new Map<number, PdfValue>();
  const streams = new Map<number, readonly Packed[]>();
  const open = new Set<number>();

  const resolve = (value: PdfValue | undefined): PdfValue => {
    let found = value ?? null;
    for (let step = 0; isRef(found); step++) {
      if (step > 16) throw damaged("its references lead in a circle");
      found = objectOf(found.number);
    }
    return found;
  };

  const objectOf = (number: number): PdfValue => {
    const before = known.get(number);
    if (before !== undefined) return before;
    const place = places.get(number);
    // An object that is asked for while it is being read is asked for by itself.
    if (place === undefined || open.has(number)) return null;
    open.add(number);
    try {
      const value = read(number, place);
      known.set(number, value);
      return value;
    } finally {
      open.delete(number);
    }
  };

  const read = (number: number, place: Whereabouts): PdfValue => {
    budget.spend("objects");
    if ("offset" in place) {
      const found = readIndirect({ bytes, at: place.offset }, budget, resolve);
      if (found.number !== number) throw damaged("an object of it is not where its table says");
      return found.value;
    }
    const packed = packedIn(place.stream)[place.index];
    if (packed?.number !== number) throw damaged("an object of it is not where its table says");
    return readValue({ bytes: packed.bytes, at: packed.offset }, budget);
  };

  const packedIn = (number: number): readonly Packed[] => {
    const before = streams.get(number);
    if (before !== undefined) return before;
    const place = places.get(number);
    // A packed list of objects never lies inside another.
    const stream = place !== undefined && "offset" in place ? objectOf(number) : null;
    if (!isStream(stream)) throw damaged("a packed list of objects is not there");
    const packed = packedNumbers(stream, resolve, budget);
    streams.set(number, packed);
    return packed;
  };

  const root = entriesOf(resolve(trailer.get("Root")));
  if (root === undefined) throw damaged("nothing in it says where its pages are");
  return {
    budget,
    root,
    resolve,
    dict: (value) => entriesOf(resolve(value)),
    content: (stream) => unpackAll(stream, resolve, budget),
  };
}
