import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { jsonFiles } from "./changes.ts";

/** Numbers between 0 and 1 that are the same for the same seed. */
export type Dice = () => number;

export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  };
}

type Value = unknown;
type Holder = Record<string, Value> | Value[];

const isHolder = (value: Value): value is Holder => typeof value === "object" && value !== null;
const among = <Item>(dice: Dice, items: readonly Item[]): Item => items[Math.floor(dice() * items.length)] as Item;

/** Stands for a number that JSON can write and JavaScript cannot keep: put into the text as it is. */
const rawNumber = (text: string) => `@@${text}@@`;
const rawNumbers = /"@@([^"@]*)@@"/g;

const bidi = "\u202e\u2066abc\u2069";
const table = (columns: number, rows: number) =>
  [`|${" a |".repeat(columns)}`, `|${"---|".repeat(columns)}`, ...Array.from({ length: rows }, () => "| x |")].join(
    "\n",
  );

/** Values nobody should write, and somebody will. */
const strange: readonly ((dice: Dice) => Value)[] = [
  () => "",
  () => " ",
  () => "x".repeat(30_000),
  () => "word ".repeat(5000),
  () => `${bidi}\u0000\u0007\u001b[2J\u0085\u2028`,
  () => "\ud800 lone",
  () => "漢字 العربية 🛠️ e\u0301\u0301\u0301",
  () => `<script>alert(1)</script>"'&]]>`,
  () => table(300, 300),
  () => "# heading\n\n> quote\n\n- a\n  - b\n    - c\n\n```\ncode\n```\n\n[x](../../etc) ![y](http://z)",
  () => `${"> ".repeat(200)}deep`,
  () => `${"- ".repeat(200)}deep`,
  () => "2026-02-30",
  () => "0000-00-00",
  () => "9999-12-31T23:59+14:00",
  () => "2026-06-23",
  () => "../../outside.pdf",
  () => "files/none.pdf",
  () => "-0 mm",
  () => `${"9".repeat(60)} mm`,
  () => "0.000000000000000000000001 bar",
  () => "1 furlong",
  () => "1,85 MPa",
  () => "A/B C#D.html",
  () => "__proto__",
  () => "constructor",
  () => null,
  () => true,
  () => 0,
  () => -1,
  () => 1.5,
  () => rawNumber("1e999"),
  () => rawNumber("-1e999"),
  () => rawNumber("-0"),
  () => rawNumber("123456789012345678901234567890"),
  () => rawNumber("0.1234567890123456789012345"),
  () => [],
  () => ({}),
  () => [[[[]]]],
  () => [null, 1, "x", {}],
  () => ({ a: { b: { c: {} } }, id: "X" }),
  () => {
    let deep: Value = "bottom";
    for (let level = 0; level < 50; level++) deep = [deep];
    return deep;
  },
];

const strangeIds: readonly Value[] = [
  "",
  "a",
  "L1.",
  "X".repeat(40),
  "X".repeat(41),
  "CON",
  "NUL.1",
  "..",
  "INDEX",
  "Ä",
  5,
  null,
  "A.B.C-D",
];

interface Spot {
  readonly holder: Holder;
  readonly name: string | number;
}

/** Every place below a value. */
function spotsIn(value: Value, into: Spot[] = []): Spot[] {
  if (!isHolder(value)) return into;
  for (const name of Array.isArray(value) ? value.keys() : Object.keys(value)) {
    into.push({ holder: value, name });
    spotsIn((value as Record<string | number, Value>)[name], into);
  }
  return into;
}

const get = ({ holder, name }: Spot) => (holder as Record<string | number, Value>)[name];
const set = ({ holder, name }: Spot, value: Value) => void ((holder as Record<string | number, Value>)[name] = value);
function remove({ holder, name }: Spot): void {
  if (Array.isArray(holder)) holder.splice(Number(name), 1);
  else Reflect.deleteProperty(holder, name);
}

/** Record files of a folder, as values that are changed in place. */
export type Files = Map<string, { content: Value }>;

type Mutation = (files: Files, dice: Dice) => string;

const recordsOf = (files: Files) =>
  [...files].flatMap(([path, { content }]) => {
    const list = isHolder(content) && !Array.isArray(content) ? content["records"] : undefined;
    return Array.isArray(list)
      ? list.map((_, name): Spot & { path: string } => ({ path, holder: list as Value[], name }))
      : [];
  });

const anyRecord = (files: Files, dice: Dice): Value => {
  const all = recordsOf(files);
  const singles = [...files.values()].map(({ content }) => content);
  return all.length > 0 && dice() < 0.8 ? get(among(dice, all)) : among(dice, singles);
};

const anySpot = (files: Files, dice: Dice): Spot | undefined => {
  const spots = spotsIn(anyRecord(files, dice));
  return spots.length === 0 ? undefined : among(dice, spots);
};

const mutations: readonly Mutation[] = [
  (files, dice) => {
    const all = recordsOf(files);
    const many = dice() < 0.3 ? Math.floor(all.length * dice()) : 1;
    for (let n = 0; n < many; n++) {
      const left = recordsOf(files);
      if (left.length > 0) remove(among(dice, left));
    }
    return `${many} records removed`;
  },
  (files, dice) => {
    const spot = anySpot(files, dice);
    if (spot === undefined) return "nothing";
    remove(spot);
    return `${spot.name} removed`;
  },
  (files, dice) => {
    const spot = anySpot(files, dice);
    if (spot === undefined) return "nothing";
    const value = among(dice, strange)(dice);
    set(spot, value);
    return `${spot.name} is ${JSON.stringify(value).slice(0, 40)}`;
  },
  (files, dice) => {
    const from = anySpot(files, dice);
    const to = anySpot(files, dice);
    if (from === undefined || to === undefined) return "nothing";
    set(to, structuredClone(get(from)));
    return `${to.name} is what ${from.name} is`;
  },
  (files, dice) => {
    const record = anyRecord(files, dice);
    const other = anyRecord(files, dice);
    if (!isHolder(record) || Array.isArray(record)) return "nothing";
    const id = dice() < 0.5 && isHolder(other) && !Array.isArray(other) ? other["id"] : among(dice, strangeIds);
    record["id"] = id;
    return `id is ${JSON.stringify(id)}`;
  },
  (files, dice) => {
    const lists = spotsIn(anyRecord(files, dice)).filter((spot) => Array.isArray(get(spot)));
    if (lists.length === 0) return "nothing";
    const spot = among(dice, lists);
    const list = get(spot) as Value[];
    if (dice() < 0.4) set(spot, []);
    else for (let n = 0; n < (dice() < 0.2 ? 400 : 1); n++) list.push(structuredClone(list[0] ?? {}));
    return `list ${spot.name} emptied or repeated`;
  },
  (files, dice) => {
    const texts = spotsIn(anyRecord(files, dice)).filter((spot) => typeof get(spot) === "string");
    if (texts.length === 0) return "nothing";
    const spot = among(dice, texts);
    const text = String(get(spot));
    const at = Math.floor(dice() * text.length);
    const sign = among(dice, ["\u202e", " ", "#", "/", "9", "ſ", "\u0000", "é", ".", "<", "|"]);
    set(spot, text.slice(0, at) + sign + text.slice(at + (dice() < 0.5 ? 1 : 0)));
    return `${spot.name} has ${JSON.stringify(sign)}`;
  },
  (files, dice) => {
    const record = anyRecord(files, dice);
    if (!isHolder(record) || Array.isArray(record)) return "nothing";
    record[among(dice, ["remarks", "source", "attachments", "signatures", "imported"])] = among(dice, strange)(dice);
    return "a common field is strange";
  },
];

const oddNames = [
  "Scan (1).pdf",
  "Prüfung.pdf",
  "a\u202efdp.exe",
  "x".repeat(190) + ".pdf",
  "CON.pdf",
  "trailing. ",
  "#1%20.pdf",
  "con/aux.pdf",
  "UPPER.PDF",
  "upper.pdf",
  "漢.pdf",
  "book.html",
];

/** Changes the files of a folder: originals lost, renamed, emptied, swapped; record files with odd names. */
function mutateFiles(dir: string, dice: Dice): string {
  const originals = existsSync(join(dir, "files"))
    ? readdirSync(join(dir, "files"), { recursive: true, withFileTypes: true })
        .filter((one) => one.isFile())
        .map((one) => join(one.parentPath, one.name))
    : [];
  const from = originals.length > 0 ? among(dice, originals) : undefined;
  const to = join(dir, "files", among(dice, oddNames));
  mkdirSync(dirname(to), { recursive: true });
  const what = Math.floor(dice() * 6);
  if (from === undefined || what === 0) writeFileSync(to, dice() < 0.5 ? "" : "%PDF-1.7 nothing more");
  else if (what === 1) rmSync(from);
  else if (what === 2) renameSync(from, to);
  else if (what === 3) copyFileSync(from, to);
  else if (what === 4) writeFileSync(from, "");
  else {
    const records = jsonFiles(dir).filter((path) => !/(?:book|issue)\.json$/.test(path));
    if (records.length > 0)
      renameSync(
        among(dice, records),
        join(dir, among(dice, ["teil (1).json", "ü.json", "con.json", "A.json", "a.json"])),
      );
  }
  return `files changed (${what})`;
}

/** Changes a book folder by chance, the same for the same seed; says what was done. */
export function mutateBook(dir: string, seed: number): readonly string[] {
  const dice = diceOf(seed);
  const files: Files = new Map(
    jsonFiles(dir).map((path) => [path, { content: JSON.parse(readFileSync(path, "utf8")) as Value }]),
  );
  const done: string[] = [];
  const count = 1 + Math.floor(dice() ** 2 * 30);
  for (let n = 0; n < count; n++) done.push(among(dice, mutations)(files, dice));
  for (const [path, { content }] of files) {
    if (isHolder(content) && !Array.isArray(content)) {
      // What makes a folder a book that is published at any time stays; all else may go.
      if (path.endsWith("issue.json")) Object.assign(content, { kind: "issue", id: "ISSUE", state: "interim" });
      if (path.endsWith("book.json")) Object.assign(content, { kind: "book", id: "BOOK", format: 1 });
    }
    writeFileSync(path, JSON.stringify(content, null, 1).replaceAll(rawNumbers, "$1"));
  }
  for (let n = 0; n < Math.floor(dice() * 3); n++) done.push(mutateFiles(dir, dice));
  return done;
}
