import type { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged, isProtected } from "../refused.ts";
import { readIndirect } from "./indirect.ts";
import { readValue } from "./parse.ts";
import { packedNumbers } from "./packed.ts";
import { entriesOf, isStream, nameOf, type Entries, type PdfValue } from "./values.ts";
import type { ObjectTable, Whereabouts } from "./xref.ts";

/**
 * The objects of a file whose own table is wrong, found by looking for them; of two with one number the later counts, as
 * in a file that was added to.
 */
export function rebuiltTable(bytes: Buffer, budget: Budget): ObjectTable {
  const places = new Map<number, Whereabouts>();
  const starts = startsOf(bytes, budget);
  let trailer: Entries | undefined;
  starts.forEach(({ number, offset }, index) => {
    places.set(number, { offset });
    const head = bytes.subarray(offset, Math.min(starts[index + 1]?.offset ?? bytes.length, offset + 2048));
    if (!head.includes("/ObjStm") && !head.includes("/XRef")) return;
    const { value } = readIndirect({ bytes, at: offset }, budget, (length) => lengthAt(bytes, places, length, budget));
    const type = nameOf(entriesOf(value)?.get("Type"));
    if (type === "XRef") trailer = newest(trailer, entriesOf(value));
    if (type !== "ObjStm" || !isStream(value)) return;
    packedNumbers(value, (item) => item ?? null, budget).forEach(({ number: inner }, at) =>
      places.set(inner, { stream: number, index: at }),
    );
  });
  for (let at = bytes.indexOf("trailer", 0, "latin1"); at >= 0; at = bytes.indexOf("trailer", at + 7, "latin1"))
    trailer = newest(trailer, trailerAt(bytes, at + 7, budget));
  if (trailer === undefined) throw damaged("nothing in it says where its pages are");
  if (trailer.has("Encrypt")) throw isProtected();
  return { places, trailer };
}

/** The later trailer, if it names the root of the file; what an earlier one says of encryption stays true. */
function newest(known: Entries | undefined, later: Entries | undefined): Entries | undefined {
  if (later?.has("Encrypt") === true) throw isProtected();
  return later?.has("Root") === true ? later : known;
}

function trailerAt(bytes: Buffer, at: number, budget: Budget): Entries | undefined {
  const start = bytes.indexOf("<<", at, "latin1");
  return start >= 0 && start - at < 16 ? entriesOf(readValue({ bytes, at: start }, budget)) : undefined;
}

interface Start {
  readonly number: number;
  readonly offset: number;
}

/** Every `12 0 obj` in the file. */
function startsOf(bytes: Buffer, budget: Budget): readonly Start[] {
  const starts: Start[] = [];
  for (let at = bytes.indexOf("obj", 0, "latin1"); at >= 0; at = bytes.indexOf("obj", at + 3, "latin1")) {
    const before = bytes.toString("latin1", Math.max(0, at - 24), at);
    const found = /(?:^|[^\d])(\d{1,10})\s+\d{1,5}\s+$/.exec(before);
    if (found?.[1] === undefined) continue;
    budget.spend("objects");
    const digits = found[0].search(/\d/);
    starts.push({ number: Number(found[1]), offset: at - found[0].length + digits });
  }
  return starts;
}

function lengthAt(bytes: Buffer, places: ReadonlyMap<number, Whereabouts>, length: PdfValue, budget: Budget): PdfValue {
  if (typeof length === "number") return length;
  if (length === null || typeof length !== "object" || !("type" in length) || length.type !== "ref") return null;
  const place = places.get(length.number);
  if (place === undefined || "stream" in place) return null;
  const { value } = readIndirect({ bytes, at: place.offset }, budget, () => null);
  return value;
}
