import { createHash } from "node:crypto";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import { linkRecords } from "../../src/link/graph.ts";
import { loadBook } from "../../src/load/book-files.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Link } from "../../src/model/graph.ts";
import { linesByOriginal } from "../../src/model/comparison.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import { atPointer, isList, isObject, pointerStep, type Json, type JsonObject } from "../../src/model/json.ts";
import { type BookRecord } from "../../src/model/record.ts";
import { packageRoot } from "../../src/root.ts";
import { copyBook } from "../support/copy-book.ts";
import { enlarged, rewriteRecord } from "./enlarge.ts";

/** Which records of a book a copy of it has of its own. */
export interface Growth {
  /** Kinds copied whole. */
  readonly roots: readonly string[];
  /** Kinds of which a record is copied when it names a copied one. */
  readonly followers: readonly string[];
  /** Kinds that stay and list what is copied: their lists name the copies too. */
  readonly listing: readonly string[];
  /** Walls are among them: what they enclose grows with them, as its designer would have it. */
  readonly encloses?: boolean;
}

/** The welds with their logs, tests and inspection; the material stays. */
export const welds: Growth = {
  roots: ["joint"],
  followers: ["weld-log", "ndt-report", "dimension-check", "repair", "nonconformity-report", "inspection-step"],
  listing: ["drawing"],
};

/** All that is made: material, marks, parts, joints and tube ends, with their calculations, tests and inspection. */
export const pressureParts: Growth = {
  roots: ["part", "joint", "material-certificate"],
  followers: [
    "piece-mark",
    "weld-log",
    "ndt-report",
    "repair",
    "nonconformity-report",
    "tube-end-group",
    "calculation-sheet",
    "inspection-step",
  ],
  listing: ["drawing"],
  encloses: true,
};

/** What a copy is numbered by beside its id. A heat is what one mill and one heat number make. */
const numbers: ReadonlySet<string> = new Set([
  "joint/mark",
  "ndt-report/rows/film",
  "piece-mark/mark",
  "piece-mark/pieceNumber",
  "piece-mark/transfers/from",
  "piece-mark/transfers/to",
  "material-certificate/number",
  "material-certificate/rows/heat",
  "calculation-sheet/number",
]);

const picture = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==",
  "base64",
);
/** Bytes of the last chunk of a PNG. */
const lastChunk = 12;

/** A picture of one point that tells whose paper it is: no two papers have the same bytes. */
function pictureOf(name: string): Buffer {
  const text = Buffer.from(`tEXtTitle\0${name}`, "latin1");
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(text.length - 4);
  sum.writeUInt32BE(crc32(text));
  return Buffer.concat([picture.subarray(0, -lastChunk), length, text, sum, picture.subarray(-lastChunk)]);
}

/** What records of copies are read from: a scan, so that no text says the numbers of their originals. */
interface Scan {
  readonly path: string;
  readonly bytes: Buffer;
  readonly record: JsonObject & { readonly id: string };
}

function scanOf(name: string): Scan {
  const [path, bytes] = [`files/copies/${name}.png`, pictureOf(name)];
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  const shown = { title: `Paper of ${name}`, mediaType: "image/png", pages: 1, signed: false, language: "en" };
  return { path, bytes, record: { id: `ORG-${name.replaceAll(".", "-")}`, path, sha256, ...shown } };
}

/** A copied weld log: of no hour, since nobody welds two joints at once, and with a reading of its own in each run. */
function weldedApart(value: Json, kind: string, tail: string): Json {
  if (kind !== "weld-log" || !isObject(value) || !isList(value["runs"])) return value;
  const runs = value["runs"].filter(isObject).map(({ finished, date, preheat, ...run }) => ({
    ...run,
    ...(typeof date === "string" && { date: date.slice(0, 10) }),
    ...(typeof finished === "string" && { finished: finished.slice(0, 10) }),
    ...(typeof preheat === "string" && { preheat: preheat.replace(/^\d+/, (whole) => whole + tail) }),
  }));
  return { ...value, runs };
}

/** Papers without a number of their own. */
const shared = scanOf("COPIES");

/**
 * Writes a large book: a demonstration with what `growth` names copied until it holds at least `joints` joints. Returns
 * how many there are. Ids, links among the copied and numbers get the number of the copy, and their paper is a
 * scan; everything else stays as it is, so the copies are judged like real ones.
 */
export function generateBook(from: string, to: string, joints: number, growth: Growth): number {
  rmSync(to, { recursive: true, force: true });
  copyBook(from, to);
  const kinds = loadKinds([join(packageRoot, "schemas")]);
  const { graph } = linkRecords(loadBook(from, kinds).records, kinds);
  const inside = copied(graph.records, growth, (record) => [...(graph.out.get(record)?.values() ?? [])]);
  const linkAt = (record: BookRecord, pointer: string) => {
    const link = graph.out.get(record)?.get(pointer);
    return link?.to !== undefined && inside.has(link.to) ? link : undefined;
  };
  /** Whether a copy bears another text here than its original. */
  const changes = (record: BookRecord, pointer: string) =>
    linkAt(record, pointer) !== undefined || numbers.has(record.kind + pointer.replaceAll(/\/\d+/g, ""));

  const linked = ({ text, target, to: end, toPointer = "" }: Link, tail: string): string => {
    const [head = "", row] = text.split("#");
    if (row === undefined || end === undefined) return head + tail;
    const key = kinds.get(end.kind)?.fields.get(toPointer.split("/")[1] ?? "")?.rowKey;
    const named = key !== undefined && atPointer(end.value, `${toPointer}/${key}`) === target?.row;
    return `${head}${tail}#${row}${named && changes(end, `${toPointer}/${key}`) ? tail : ""}`;
  };
  /** A paper with a number is read for one record. */
  const paperOf = ({ kind, id }: BookRecord, tail: string): Scan => {
    if (kinds.get(kind)?.number === undefined) return shared;
    const known = scans.get(id + tail) ?? scanOf(id + tail);
    scans.set(id + tail, known);
    return known;
  };
  const scans = new Map<string, Scan>();
  const joined = [...inside].filter(({ kind }) => kind === "joint").length;
  const copies = Math.ceil((joints - joined) / joined);
  const tails = Array.from({ length: copies }, (_, index) => tailOf(index + 1));
  /** Where parts stay, a joint and its copies end on others and on their copies alike. */
  const crossedByAll = (crossings: readonly Json[]): readonly Json[] =>
    crossings.filter(isObject).flatMap((one) =>
      ["", ...tails].map((tail) => ({
        ...one,
        joint: typeof one["joint"] === "string" ? one["joint"] + tail : null,
      })),
    );
  const copyOf = (record: BookRecord, value: Json, pointer: string, tail: string): Json => {
    if (isList(value) && pointer === "/crossings" && growth.encloses !== true) return crossedByAll(value);
    if (isList(value)) return value.map((one, index) => copyOf(record, one, `${pointer}/${index}`, tail));
    if (pointer === "/source") return { original: paperOf(record, tail).record.id, page: 1 };
    if (isObject(value))
      return Object.fromEntries(
        Object.entries(value).map(([name, one]) => [name, copyOf(record, one, pointer + pointerStep(name), tail)]),
      );
    const link = linkAt(record, pointer);
    if (link !== undefined) return linked(link, tail);
    // A mark of the mill begins with the heat.
    if (typeof value === "string" && /^\/transfers\/\d+\/from$/.test(pointer) && changes(record, pointer))
      return value.replace(/^[^-/]+/, (heat) => heat + tail);
    return typeof value === "string" && (pointer === "/id" || changes(record, pointer)) ? value + tail : value;
  };

  mkdirSync(join(to, "copies"));
  const copiesOf = new Map<string, BookRecord[]>();
  for (const kind of [...growth.roots, ...growth.followers]) {
    const own = [...inside].filter((record) => record.kind === kind);
    mkdirSync(join(to, "copies", kind), { recursive: true });
    for (let copy = 1; own.length > 0 && copy <= copies; copy++) {
      const tail = tailOf(copy);
      const records = own.map((record) => weldedApart(copyOf(record, record.value, "", tail), kind, tail));
      writeFileSync(
        join(to, "copies", kind, `${tail.slice(1)}.json`),
        `${JSON.stringify({ kind, records }, null, 2)}\n`,
      );
      copiesOf.set(kind, [
        ...(copiesOf.get(kind) ?? []),
        ...records.filter(isObject).map((value) => asRecord(kind, value)),
      ]);
    }
  }
  const staying = graph.records.filter((record) => !inside.has(record));
  const rewritten = new Map<BookRecord, JsonObject>();
  for (const record of staying.filter(({ kind }) => growth.listing.includes(kind))) {
    const value = listing(
      record,
      (pointer) => linkAt(record, pointer),
      (link) => tails.map((tail) => linked(link, tail)),
    );
    if (value !== undefined) rewritten.set(record, value);
  }
  if (growth.encloses !== true)
    for (const record of inside)
      if (isList(record.value["crossings"]))
        rewritten.set(record, { ...record.value, crossings: crossedByAll(record.value["crossings"]) });
  if (growth.encloses === true)
    for (const [record, value] of enlarged(staying, (record) => rewritten.get(record) ?? record.value, copies + 1))
      rewritten.set(record, value);
  for (const [record, value] of rewritten) {
    const read = readAgain(value, paperOf(record, ".0000").record.id);
    rewriteRecord(to, record, read);
    copiesOf.set(record.kind, [...(copiesOf.get(record.kind) ?? []), asRecord(record.kind, read)]);
  }
  // Whoever typed and compared the last of the book's records did the copies too.
  const [one] = [...(graph.byKind.get("original")?.values() ?? [])]
    .map(({ value }) => value["transcription"])
    .filter(isObject)
    .sort((a, b) => dayOf(b).localeCompare(dayOf(a)));
  const papers = [shared, ...scans.values()];
  const originals = originalsAmong(papers.map(({ record }) => asRecord("original", record)));
  const lines = linesByOriginal([...copiesOf.values()].flat(), kinds, originals);
  const filed = papers.map(({ record }) => {
    const read = lines.get(record.id);
    const done = isObject(one) && read !== undefined ? { ...one, sha256: record["sha256"], records: read } : undefined;
    return { ...record, ...(done !== undefined && { transcription: done }) };
  });
  writeFileSync(join(to, "copies", "scans.json"), `${JSON.stringify({ kind: "original", records: filed }, null, 2)}\n`);
  mkdirSync(join(to, "files", "copies"), { recursive: true });
  for (const { path, bytes } of papers) writeFileSync(join(to, path), bytes);
  return joined * (copies + 1);
}

/** What a copy bears after its id: ".0001". */
const tailOf = (copy: number) => `.${String(copy).padStart(4, "0")}`;

/** A record whose lists name the copies of what they name; undefined where they name nothing that is copied. */
function listing(
  { value }: BookRecord,
  linkAt: (pointer: string) => Link | undefined,
  copiesOf: (link: Link) => readonly string[],
): JsonObject | undefined {
  const longer = Object.entries(value).flatMap(([name, list]) => {
    const links = isList(list) ? list.flatMap((_, index) => linkAt(`${pointerStep(name)}/${index}`) ?? []) : [];
    return isList(list) && links.length > 0 ? [[name, [...list, ...links.flatMap(copiesOf)]] as const] : [];
  });
  return longer.length === 0 ? undefined : { ...value, ...Object.fromEntries(longer) };
}

/** A record as read from another paper; that of before, which says other figures, stays with it. */
function readAgain(value: JsonObject, original: string): JsonObject {
  const before = isObject(value["source"]) ? value["source"]["original"] : undefined;
  const beside = isList(value["attachments"]) ? value["attachments"] : [];
  const revisions = isList(value["revisions"]) ? value["revisions"].filter(isObject) : [];
  return {
    ...value,
    // A copy is a picture of one sheet.
    ...(revisions.length > 0 && {
      revisions: revisions.map((one) => ({ ...one, ...("sheets" in one && { sheets: 1 }) })),
    }),
    source: { original, page: 1 },
    ...(before !== undefined && { attachments: [...beside, before] }),
  };
}

const dayOf = ({ date }: JsonObject): string => (typeof date === "string" ? date : "");

const asRecord = (kind: string, value: JsonObject): BookRecord => ({
  kind,
  id: typeof value["id"] === "string" ? value["id"] : "",
  file: "",
  pointer: "",
  value,
  faulty: false,
});

/** The roots, and what names them or what names these. */
function copied(
  records: readonly BookRecord[],
  { roots, followers }: Growth,
  linksOf: (record: BookRecord) => readonly Link[],
): ReadonlySet<BookRecord> {
  const inside = new Set(records.filter(({ kind }) => roots.includes(kind)));
  for (let before = -1; before < inside.size;) {
    before = inside.size;
    for (const record of records)
      if (followers.includes(record.kind) && linksOf(record).some(({ to }) => to !== undefined && inside.has(to)))
        inside.add(record);
  }
  return inside;
}
