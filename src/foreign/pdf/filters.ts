import { Buffer } from "node:buffer";
import { inflateSync } from "node:zlib";
import type { Budget } from "../budget.ts";
import { beyond, damaged, isProtected } from "../refused.ts";
import { asciiHex, ascii85, runLength } from "./plain-filters.ts";
import { lzw } from "./lzw.ts";
import { unpredicted } from "./predictor.ts";
import { entriesOf, isList, nameOf, type Entries, type PdfStream, type PdfValue } from "./values.ts";

/** One filter of a stream with its parameters. */
export interface Filter {
  readonly name: string;
  readonly parms: Entries;
}

export type Resolve = (value: PdfValue | undefined) => PdfValue;

/** Filters that give points of a picture; only a viewer applies them. */
export const pictureFilters: ReadonlySet<string> = new Set(["CCITTFaxDecode", "DCTDecode", "JBIG2Decode", "JPXDecode"]);

const shortNames: ReadonlyMap<string, string> = new Map([
  ["Fl", "FlateDecode"],
  ["LZW", "LZWDecode"],
  ["A85", "ASCII85Decode"],
  ["AHx", "ASCIIHexDecode"],
  ["RL", "RunLengthDecode"],
  ["CCF", "CCITTFaxDecode"],
  ["DCT", "DCTDecode"],
]);

const none: Entries = new Map();

/** The filters of a stream, outermost first. */
export function filtersOf(stream: PdfStream, resolve: Resolve, budget: Budget): readonly Filter[] {
  const filter = resolve(stream.entries.get("Filter"));
  const parms = resolve(stream.entries.get("DecodeParms") ?? stream.entries.get("DP"));
  const names = filter === null ? [] : isList(filter) ? filter : [filter];
  const { filters: most } = budget.limits;
  if (names.length > most)
    throw beyond(
      `the file packs one of its parts more than ${most} times over`,
      `at most ${most} filters for one part`,
    );
  return names.map((one, index) => {
    const name = nameOf(resolve(one));
    if (name === undefined) throw damaged("a part of it does not say how it is packed");
    if (name === "Crypt") throw isProtected();
    return {
      name: shortNames.get(name) ?? name,
      parms: entriesOf(resolve(isList(parms) ? parms[index] : index === 0 ? parms : null)) ?? none,
    };
  });
}

/** What a filter gives. No more than the budget allows is ever unpacked. */
export function unpack(filter: Filter, bytes: Buffer, resolve: Resolve, budget: Budget): Buffer {
  const out = unpackOnly(filter, bytes, resolve, budget);
  const predicted = filter.name === "FlateDecode" || filter.name === "LZWDecode";
  return predicted ? unpredicted(out, (name) => resolve(filter.parms.get(name))) : out;
}

/** As `unpack`, but rows of a picture stay as a predictor made them. */
export function unpackOnly({ name, parms }: Filter, bytes: Buffer, resolve: Resolve, budget: Budget): Buffer {
  const out = applied(name, bytes, budget, resolve(parms.get("EarlyChange")) !== 0);
  budget.expanded(out.length);
  return out;
}

function applied(name: string, bytes: Buffer, budget: Budget, early: boolean): Buffer {
  switch (name) {
    case "FlateDecode":
      return inflated(bytes, budget);
    case "LZWDecode":
      return lzw(bytes, budget, early);
    case "ASCII85Decode":
      return ascii85(bytes, budget);
    case "ASCIIHexDecode":
      return asciiHex(bytes, budget);
    case "RunLengthDecode":
      return runLength(bytes, budget);
    default:
      throw damaged(
        pictureFilters.has(name)
          ? "a part of it that is no picture is packed as one"
          : "a part of it is packed in an unknown way",
      );
  }
}

/** Inflates with a limit on what comes out, held by the inflater itself. */
export function inflated(bytes: Buffer, budget: Budget): Buffer {
  try {
    // Node takes no limit of 0; one byte more than none is found by the next filter.
    return inflateSync(bytes, { maxOutputLength: Math.max(1, budget.room()) });
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ERR_BUFFER_TOO_LARGE") throw budget.tooMuch();
    throw damaged("a compressed part of it cannot be unpacked");
  }
}

/** Everything a stream of no picture holds. */
export function unpackAll(stream: PdfStream, resolve: Resolve, budget: Budget): Buffer {
  let bytes = stream.raw;
  for (const filter of filtersOf(stream, resolve, budget)) bytes = unpack(filter, bytes, resolve, budget);
  return bytes;
}
