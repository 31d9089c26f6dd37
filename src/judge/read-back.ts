import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { OriginalText, TextsByPath } from "../model/page-text.ts";
import type { ReadBack } from "../model/read-back.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { pathNamedBy } from "../model/shelf.ts";
import { recordWords } from "../model/titles.ts";
import { placeWords } from "../model/words.ts";
import { readRecords, type Cited, type NotThere, type Reading } from "../readback/record.ts";
import type { Transcribed } from "../readback/values.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { keyOf } from "../model/finding-key.ts";
import { spokenLink } from "../link/target.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const basis = ownChoice("what a program wrote on a paper a program can read there; it trusts the file's own text");

export const readBackRules: readonly BuiltIn[] = [
  {
    id: "read-back",
    title: "What a record takes from a paper stands on the page it cites",
    severity: "query",
    basis,
    reads: [{ kinds: "any", paths: ["source.original", "source.page", "source.to"] }],
  },
  {
    id: "read-back-recognised",
    title: "What a record takes from a scan stands in the text that a machine recognised there",
    severity: "note",
    basis,
  },
];

const shown = 6;

/**
 * Looks for each value of each record on the page it was taken from, where the original has a text. What is not there
 * doubts its place; what was doubted before is not looked for. Returns what became of each record that cites a page.
 */
export function readBack(court: Court, texts: TextsByPath): ReadonlyMap<Address, ReadBack> {
  const { world } = court;
  const results = new Map<Address, ReadBack>();
  const textOf = (original: BookRecord): OriginalText | undefined => {
    const { path } = original.value;
    return typeof path === "string" ? texts.get(pathNamedBy(original, path)) : undefined;
  };
  const doubted = (record: BookRecord, pointer: string) => world.ledger.doubts(addressOf(record, pointer)).length > 0;
  const records = world.graph.records.filter((record) => !doubted(record, "/source"));
  const { notes } = world;
  const isSound = (record: BookRecord) => !world.ledger.knows(addressOf(record));
  const memory = notes === undefined ? {} : { memory: { keep: notes.now !== null, isSound } };
  const all = readRecords(records, { names: world, textOf, passed: doubted, ...memory });
  for (const record of records) {
    const readings = all.get(record) ?? [];
    const sound = readings.filter(({ cited }) => !doubted(cited.original, "") && !doubted(record, cited.pointer));
    if (sound.length === 0) continue;
    for (const reading of sound) if (reading.absent.length > 0) say(court, record, reading, sound.length > 1);
    results.set(addressOf(record), togetherOf(sound));
  }
  return results;
}

/** Of a paper read from two of its pages, both must hold what is taken from them. */
function wholeOf(readings: readonly Reading[]): readonly string[] {
  const isWhole = ({ state, values, absent, passed }: Reading) =>
    state === "read" && values > 0 && absent.length === 0 && passed === 0;
  const ids = new Set(readings.map(({ cited }) => cited.original.id));
  return [...ids].filter((id) => readings.filter(({ cited }) => cited.original.id === id).every(isWhole));
}

const worst = ["unread", "no text", "recognised", "read"] as const;

function togetherOf(readings: readonly Reading[]): ReadBack {
  const state = worst.find((one) => readings.some((reading) => reading.state === one)) ?? "read";
  const why = readings.find((one) => one.why !== undefined)?.why;
  return {
    state,
    values: readings.reduce((sum, { values }) => sum + values, 0),
    absent: readings.reduce((sum, { absent }) => sum + absent.length, 0),
    ...(why !== undefined && { why }),
    whole: wholeOf(readings),
  };
}

function say(court: Court, record: BookRecord, { cited, state, absent }: Reading, several: boolean): void {
  const { world } = court;
  const [only] = absent;
  if (only === undefined) return;
  const rule = state === "recognised" ? "read-back-recognised" : "read-back";
  const pointer = absent.length === 1 ? only.value.pointer : cited.pointer;
  const name = several ? locate(world, record, cited.pointer).name : "";
  const finding = newFinding(finderOf(readBackRules, rule), locate(world, record, pointer), {
    key: keyOf(rule, record, name),
    message: messageOf(court, record, cited, absent),
    why:
      state === "recognised"
        ? "the text of that page was recognised by a machine, which misreads"
        : only.elsewhere === true && absent.length === 1
          ? "the values beside it and the other rows say where it stands"
          : "the record cites that page for it, and the page has a text of its own",
    hint: "compare with the original; correct the value or the page that is cited; where the paper says it in another form, answer this query",
    about: JSON.stringify([
      cited.original.value["sha256"],
      cited.from,
      cited.to,
      absent.map(({ value }) => value.value),
    ]),
    related: absent.length === 1 ? [] : absent.slice(0, 20).map((one) => relatedOf(court, record, one)),
    accuses: rule === "read-back" ? absent.map(({ value }) => addressOf(record, value.pointer)) : [],
  });
  addFinding(court, finding);
}

function messageOf(court: Court, record: BookRecord, cited: Cited, absent: readonly NotThere[]): string {
  const of = recordWords(court.world.kinds, record);
  const pages = cited.from === cited.to ? `page ${cited.from}` : `pages ${cited.from} to ${cited.to}`;
  const [only] = absent;
  if (absent.length === 1 && only?.elsewhere === true)
    return `${of}: ${saidOf(court, record, only)} stands on ${pages} of ${cited.original.id} only where other values do; in its place the page has ${only.nearest ?? "another"}`;
  if (absent.length === 1 && only !== undefined) {
    const has = only.nearest === undefined ? "" : `; the page has ${only.nearest}`;
    return `${of}: ${saidOf(court, record, only)} is not on ${pages} of ${cited.original.id}${has}`;
  }
  const list = absent.slice(0, shown).map((one) => {
    const where = one.elsewhere === true ? "in its place the page has" : "the page has";
    const has = one.nearest === undefined ? "" : ` (${where} ${one.nearest})`;
    return `${saidOf(court, record, one)}${has}`;
  });
  const more = absent.length > shown ? ` and ${absent.length - shown} more` : "";
  const places = absent.some((one) => one.elsewhere === true) ? ", or not in their places there" : "";
  return `${of}: ${absent.length} values are not on ${pages} of ${cited.original.id}${places}: ${list.join(", ")}${more}`;
}

function saidOf({ world }: Court, record: BookRecord, { value }: NotThere): string {
  const { field } = placeWords(world.kinds, record, value.pointer);
  return `${field === "" ? "value" : field} ${spokenValue(value)}`;
}

/** A value as a sentence says it: of a link the thing and its row, without the signs of our notation. */
const spokenValue = ({ field, value }: Transcribed): string =>
  field.type === "link" ? spokenLink(String(value)) : String(value);

function relatedOf({ world }: Court, record: BookRecord, one: NotThere) {
  const { subject, place } = locate(world, record, one.value.pointer);
  const has = one.nearest === undefined ? "" : `; the page has ${one.nearest}`;
  const where = one.elsewhere === true ? "is not in its place" : "is not there";
  return { subject, place, message: `${spokenValue(one.value)} ${where}${has}` };
}
