import type { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged, isProtected } from "../refused.ts";
import { unpackAll } from "./filters.ts";
import { readIndirect } from "./indirect.ts";
import { readValue, readWord, skipSpace, takeCount, takeWord, type Cursor } from "./parse.ts";
import { entriesOf, isList, isStream, nameOf, type Entries, type PdfStream } from "./values.ts";

/** Where a numbered object stands: in the file, or inside an object stream. */
export type Whereabouts = { readonly offset: number } | { readonly stream: number; readonly index: number };

/** All numbered objects of a file, and its trailer. */
export interface ObjectTable {
  readonly places: ReadonlyMap<number, Whereabouts>;
  readonly trailer: Entries;
}

const noTable = () => damaged("its table of objects cannot be read");

/** The objects by the tables of the file itself, the latest revision first. Throws Refused when they cannot be read. */
export function tableOf(bytes: Buffer, budget: Budget): ObjectTable {
  const tail = bytes.subarray(Math.max(0, bytes.length - 2048)).toString("latin1");
  const found = /startxref\s+(\d{1,15})(?!.*startxref)/s.exec(tail)?.[1];
  if (found === undefined) throw noTable();
  const places = new Map<number, Whereabouts | null>();
  const seen = new Set<number>();
  const waiting = [Number(found)];
  let trailer: Entries | undefined;
  for (let offset = waiting.pop(); offset !== undefined; offset = waiting.pop()) {
    if (seen.has(offset)) throw damaged("its tables of objects lead in a circle");
    seen.add(offset);
    if (offset >= bytes.length) throw noTable();
    const cursor = { bytes, at: offset };
    const own = takeWord(cursor, "xref") ? plainTable(cursor, places, budget) : packedTable(cursor, places, budget);
    if (own.has("Encrypt")) throw isProtected();
    trailer ??= own;
    // What the hybrid stream says counts before earlier revisions.
    for (const key of ["Prev", "XRefStm"]) {
      const next = own.get(key);
      if (typeof next === "number" && Number.isInteger(next) && next >= 0) waiting.push(next);
    }
  }
  if (trailer === undefined) throw noTable();
  return { places: new Map([...places].flatMap(([number, at]) => (at === null ? [] : [[number, at]]))), trailer };
}

function plainTable(cursor: Cursor, places: Map<number, Whereabouts | null>, budget: Budget): Entries {
  for (let first = takeCount(cursor); first !== undefined; first = takeCount(cursor)) {
    const count = takeCount(cursor);
    if (count === undefined) throw noTable();
    for (let index = 0; index < count; index++) {
      const offset = takeCount(cursor);
      const generation = takeCount(cursor);
      if (offset === undefined || generation === undefined) throw noTable();
      skipSpace(cursor);
      const sort = readWord(cursor);
      if (sort !== "n" && sort !== "f") throw noTable();
      budget.spend("objects");
      if (!places.has(first + index)) places.set(first + index, sort === "n" ? { offset } : null);
    }
  }
  if (!takeWord(cursor, "trailer")) throw noTable();
  const trailer = entriesOf(readValue(cursor, budget));
  if (trailer === undefined) throw noTable();
  return trailer;
}

function packedTable(cursor: Cursor, places: Map<number, Whereabouts | null>, budget: Budget): Entries {
  const { value } = readIndirect(cursor, budget, () => null);
  if (!isStream(value) || nameOf(value.entries.get("Type")) !== "XRef") throw noTable();
  // Known before anything is unpacked: an encrypted file must not be taken for a damaged one.
  if (value.entries.has("Encrypt")) throw isProtected();
  readPackedTable(value, places, budget);
  return value.entries;
}

/** Notes the objects that a stream of cross-references lists (ISO 32000-1, 7.5.8). */
function readPackedTable(stream: PdfStream, places: Map<number, Whereabouts | null>, budget: Budget): void {
  const numbers = (key: string) => {
    const list = stream.entries.get(key);
    return isList(list) ? list.map((item) => (typeof item === "number" ? item : -1)) : undefined;
  };
  const widths = numbers("W");
  const size = stream.entries.get("Size");
  const sections = numbers("Index") ?? [0, typeof size === "number" ? size : 0];
  if (widths?.length !== 3 || widths.some((width) => !Number.isInteger(width) || width < 0 || width > 8))
    throw noTable();
  const rows = unpackAll(stream, (value) => value ?? null, budget);
  const [sortWidth = 0, firstWidth = 0, secondWidth = 0] = widths;
  const width = sortWidth + firstWidth + secondWidth;
  if (width === 0) throw noTable();
  const field = (at: number, length: number) => {
    let value = 0;
    for (let index = 0; index < length; index++) value = value * 256 + (rows[at + index] ?? 0);
    return value;
  };
  let at = 0;
  for (let section = 0; section + 1 < sections.length; section += 2) {
    const first = sections[section] ?? 0;
    const count = sections[section + 1] ?? 0;
    for (let index = 0; index < count && at + width <= rows.length; index++, at += width) {
      budget.spend("objects");
      const sort = sortWidth === 0 ? 1 : field(at, sortWidth);
      const one = field(at + sortWidth, firstWidth);
      const two = field(at + sortWidth + firstWidth, secondWidth);
      if (places.has(first + index)) continue;
      places.set(first + index, sort === 1 ? { offset: one } : sort === 2 ? { stream: one, index: two } : null);
    }
  }
}
