import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readRecords } from "../../src/load/record-file.ts";
import type { LoadedBook } from "../../src/model/book.ts";
import type { Finding } from "../../src/model/finding.ts";
import { answerable } from "../../src/model/exceptions.ts";
import { isList, isObject, pointerStep, type Json, type JsonObject } from "../../src/model/json.ts";
import type { Kind } from "../../src/model/kind.ts";
import { byCodePoint } from "../../src/model/order.ts";
import { addressOf, type BookRecord } from "../../src/model/record.ts";
import { profiles } from "../../src/profiles/index.ts";
import { registers } from "../../src/requirements/index.ts";
import { packageRoot } from "../../src/root.ts";
import { diceOf, type Dice } from "./mutations.ts";

/** A book after some changes by chance, and what they were. */
export interface Edited {
  readonly loaded: LoadedBook;
  readonly done: readonly string[];
}

interface Draft {
  readonly records: BookRecord[];
  readonly findings: Finding[];
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly dice: Dice;
}

const among = <Item>({ dice }: Pick<Draft, "dice">, items: readonly Item[]): Item | undefined =>
  items[Math.floor(dice() * items.length)];

/**
 * Changes a loaded book by chance, the same for the same seed: values, rows and records are added, changed, removed and
 * moved, one to four of them. What is changed is read again as from its file, so that the schema objects to it.
 */
export function editBook(loaded: LoadedBook, kinds: ReadonlyMap<string, Kind>, seed: number): Edited {
  const dice = diceOf(seed);
  const draft: Draft = { records: [...loaded.records], findings: [...loaded.findings], kinds, dice };
  const count = dice() < 0.6 ? 1 : 1 + Math.floor(dice() * 4);
  const done: string[] = [];
  for (let n = 0; n < count; n++) done.push((among(draft, edits) ?? changeValue)(draft));
  // As loading sorts them; of two records with one id the earlier stays first.
  draft.records.sort((a, b) => byCodePoint(a.kind, b.kind) || byCodePoint(a.id, b.id));
  return { loaded: { ...loaded, records: draft.records, findings: draft.findings }, done };
}

type Edit = (draft: Draft) => string;

const nothing = "nothing";

/** One of the records that may be changed at will: what makes a folder a book stays. */
function anyRecord(draft: Draft): BookRecord | undefined {
  // A record of each kind is as likely as one of any other: most of a book is welds and papers.
  const kind = among(draft, [...new Set(draft.records.map((one) => one.kind))]);
  return among(draft, draft.dice() < 0.5 ? draft.records : draft.records.filter((one) => one.kind === kind));
}

interface Spot {
  readonly pointer: string;
  readonly value: Json;
}

/** Every value below another, with its pointer. */
function spotsIn(value: Json, pointer = ""): readonly Spot[] {
  const inner = isList(value) ? [...value.entries()] : isObject(value) ? Object.entries(value) : [];
  return inner.flatMap(([name, one]) => {
    const at = pointer + pointerStep(name);
    return [{ pointer: at, value: one }, ...spotsIn(one, at)];
  });
}

/** A value with another at a pointer; undefined takes it out. */
export function withAt(value: Json, pointer: string, to: Json | undefined): Json {
  const [, step = "", ...rest] = pointer.split("/");
  const name = step.replaceAll("~1", "/").replaceAll("~0", "~");
  const inner = rest.map((one) => `/${one}`).join("");
  if (isList(value)) {
    const at = Number(name);
    const item = value[at];
    if (inner !== "" && item !== undefined) return value.with(at, withAt(item, inner, to));
    return to === undefined ? value.toSpliced(at, 1) : value.toSpliced(at, 1, to);
  }
  if (!isObject(value)) return value;
  const old = value[name];
  const fresh = inner !== "" && old !== undefined ? withAt(old, inner, to) : to;
  return Object.fromEntries(
    Object.entries({ ...value, [name]: fresh ?? null }).filter(([key]) => key !== name || fresh !== undefined),
  );
}

/** Puts a record in the place of another, read as from its file. */
function replace(
  draft: Draft,
  old: BookRecord,
  value: JsonObject,
  at: Pick<BookRecord, "file" | "pointer"> = old,
): void {
  const index = draft.records.indexOf(old);
  const read = readRecords(old.file, JSON.stringify({ kind: old.kind, ...value }), draft.kinds);
  draft.records.splice(index, 1, ...read.records.map((record) => ({ ...record, ...at })));
  const said = draft.findings.filter(
    ({ place }) => place.file !== old.file || !place.pointer.startsWith(`${old.pointer}/`),
  );
  const fresh = read.findings.map((one) => ({
    ...one,
    place: { file: at.file, pointer: at.pointer + one.place.pointer },
  }));
  draft.findings.splice(0, draft.findings.length, ...said, ...fresh);
}

const isScalar = (value: Json): value is string | number | boolean =>
  ["string", "number", "boolean"].includes(typeof value);

/** Another value of its sort: nearly the same, or what stands there in another record. */
function otherwise(draft: Draft, record: BookRecord, pointer: string, value: string | number | boolean): Json {
  if (typeof value === "boolean") return !value;
  const form = pointer.replaceAll(/\/\d+(?=\/|$)/g, "/0");
  const others = draft.records
    .filter(({ kind }) => kind === record.kind)
    .flatMap((one) => spotsIn(one.value))
    .filter((spot) => isScalar(spot.value) && spot.pointer.replaceAll(/\/\d+(?=\/|$)/g, "/0") === form);
  const taken = among(draft, others)?.value;
  if (taken !== undefined && taken !== value && draft.dice() < 0.6) return taken;
  if (typeof value === "number") return value + (draft.dice() < 0.5 ? 1 : -1);
  const digit = /\d(?!.*\d)/.exec(value)?.index;
  if (digit === undefined) return `${value} B`;
  return `${value.slice(0, digit)}${(Number(value[digit]) + 1) % 10}${value.slice(digit + 1)}`;
}

const changeValue: Edit = (draft) => {
  const record = anyRecord(draft);
  const spot =
    record &&
    among(
      draft,
      spotsIn(record.value).filter(({ value }) => isScalar(value)),
    );
  if (record === undefined || spot === undefined || !isScalar(spot.value)) return nothing;
  const to = otherwise(draft, record, spot.pointer, spot.value);
  replace(draft, record, withAt(record.value, spot.pointer, to) as JsonObject);
  return `${addressOf(record, spot.pointer)} is ${JSON.stringify(to)} instead of ${JSON.stringify(spot.value)}`;
};

const removeValue: Edit = (draft) => {
  const record = anyRecord(draft);
  const spot =
    record &&
    among(
      draft,
      spotsIn(record.value).filter(({ pointer }) => pointer !== "/id"),
    );
  if (record === undefined || spot === undefined) return nothing;
  replace(draft, record, withAt(record.value, spot.pointer, undefined) as JsonObject);
  return `${addressOf(record, spot.pointer)} is gone`;
};

/** A field that another record of the kind has, and this one has not. */
const addValue: Edit = (draft) => {
  const record = anyRecord(draft);
  const other =
    record &&
    among(
      draft,
      draft.records.filter(({ kind }) => kind === record.kind),
    );
  const name =
    record &&
    among(
      draft,
      Object.keys(other?.value ?? {}).filter((one) => record.value[one] === undefined),
    );
  const value = other?.value[name ?? ""];
  if (record === undefined || name === undefined || value === undefined) return nothing;
  replace(draft, record, { ...record.value, [name]: value });
  return `${addressOf(record)} has ${name} as ${other?.id ?? ""}`;
};

const changeList: Edit = (draft) => {
  const record = anyRecord(draft);
  const spot =
    record &&
    among(
      draft,
      spotsIn(record.value).filter(({ value }) => isList(value) && value.length > 0),
    );
  if (record === undefined || spot === undefined || !isList(spot.value)) return nothing;
  const { value: list, pointer } = spot;
  const at = Math.floor(draft.dice() * list.length);
  const [item = null] = list.slice(at, at + 1);
  const how = draft.dice();
  const [said, to] =
    how < 0.3
      ? ["lost", list.toSpliced(at, 1)]
      : how < 0.6
        ? ["repeats", [...list, item]]
        : how < 0.8
          ? ["moves to its end", [...list.toSpliced(at, 1), item]]
          : ["moves to its beginning", [item, ...list.toSpliced(at, 1)]];
  replace(draft, record, withAt(record.value, pointer, to) as JsonObject);
  return `row ${at} of ${addressOf(record, pointer)} ${said}`;
};

const removeRecord: Edit = (draft) => {
  const record = anyRecord(draft);
  if (record === undefined || record.kind === "book" || record.kind === "issue") return nothing;
  draft.records.splice(draft.records.indexOf(record), 1);
  return `${addressOf(record)} is gone`;
};

const addRecord: Edit = (draft) => {
  const record = anyRecord(draft);
  if (record === undefined || record.kind === "book" || record.kind === "issue") return nothing;
  const id = draft.dice() < 0.9 ? `${record.id.slice(0, 30)}-${Math.floor(draft.dice() * 1000)}` : record.id;
  const at = { file: `${record.file.slice(0, -5)}-more.json`, pointer: "" };
  draft.records.push({ ...record, id, ...at, value: { ...record.value, id } });
  return `${record.kind}:${id} is added, as ${record.id}`;
};

const moveRecord: Edit = (draft) => {
  const record = anyRecord(draft);
  if (record === undefined || record.kind === "book" || record.kind === "issue") return nothing;
  replace(draft, record, record.value, { file: `moved/${record.file}`, pointer: "" });
  return `${addressOf(record)} stands in another file`;
};

/** A record as its schema shows one: an exception, a table of the book's own, of a kind it may have none of. */
const addExample: Edit = (draft) => {
  const kind = among(draft, exampleKinds);
  if (kind === undefined) return nothing;
  const schema = JSON.parse(readFileSync(join(packageRoot, `schemas/${kind}.schema.json`), "utf8")) as Json;
  const [example] = isObject(schema) && isList(schema["examples"]) ? schema["examples"] : [];
  const file = `examples/${kind}.json`;
  const read = readRecords(file, JSON.stringify(example), draft.kinds);
  draft.records.push(...read.records);
  draft.findings.push(...read.findings);
  return `${kind} has its example`;
};

const exampleKinds = [...answerable.keys(), "reference-table", "reference-table"];

/** What a book is judged by is another. */
const changeFrame: Edit = (draft) => {
  const book = draft.records.find(({ kind }) => kind === "book");
  const [field, names] = among(draft, frames) ?? ["", []];
  const name = among(draft, names);
  if (book === undefined || name === undefined) return nothing;
  replace(draft, book, { ...book.value, [field]: name });
  return `${field} of the book is ${name}`;
};

const frames: readonly (readonly [field: string, names: readonly string[]])[] = [
  ["register", registers.map(({ id }) => id)],
  ["profile", profiles.map(({ id }) => id)],
];

const edits: readonly Edit[] = [
  changeFrame,
  addExample,
  changeValue,
  changeValue,
  changeValue,
  changeValue,
  removeValue,
  addValue,
  changeList,
  changeList,
  removeRecord,
  addRecord,
  moveRecord,
];
