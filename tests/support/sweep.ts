import { readRecords } from "../../src/load/record-file.ts";
import { judgeAgain, judgeRemembering } from "../../src/judge/judge.ts";
import { lookedAtTogether } from "../../src/judge/suppose.ts";
import type { JudgedBook, LoadedBook } from "../../src/model/book.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import { blocks, type Finding } from "../../src/model/finding.ts";
import { atPointer, isList, isObject, type JsonObject } from "../../src/model/json.ts";
import type { Field } from "../../src/model/kind.ts";
import { addressOf, partsOfAddress, type BookRecord } from "../../src/model/record.ts";
import { fieldOfPointer } from "../../src/model/stable.ts";
import { comparedAnew } from "./compared.ts";
import { withAt } from "./edits.ts";
import { addressOfSlip, type Slip } from "./slips.ts";

/** own: the finding stands at the value, or accuses it · elsewhere: the book is refused, and something else is named · unfound. */
export type Found = "own" | "elsewhere" | "unfound";

/** In the record alone, its papers saying what was right; or in all that would have been copied from it too. */
export type Mode = "alone" | "copied";

export interface Swept {
  readonly slip: Slip;
  readonly found: Found;
  /** Rules of what was found. */
  readonly rules: readonly string[];
}

/**
 * Gives a function that judges a book with one slip in it, and says what was found. Whoever compared the record has overlooked
 * it. `alone`: the papers say what was right, and are read back. `copied`: papers say the same as the record, and so do the
 * sheets of the maker and the other records that state the value for the same thing.
 */
export function sweeper(loaded: LoadedBook, definitions: Definitions): (slip: Slip, mode: Mode) => Swept {
  const { texts: _papers, ...plain } = loaded;
  const remembered = { alone: judgeRemembering(loaded, definitions), copied: judgeRemembering(plain, definitions) };
  const known = {
    alone: new Set(remembered.alone.judged.findings.map(({ key }) => key)),
    copied: new Set(remembered.copied.judged.findings.map(({ key }) => key)),
  };
  const copies = copiesIn(remembered.copied.judged);
  return (slip, mode) => {
    const book = mode === "alone" ? loaded : plain;
    const changed = new Map<BookRecord, readonly BookRecord[]>();
    const faults: Finding[] = [];
    const edit = (record: BookRecord, pointer: string) => {
      const now = changed.get(record)?.[0] ?? record;
      const value = withAt(now.value, pointer, slip.to) as JsonObject;
      const read = readRecords(record.file, JSON.stringify({ kind: record.kind, ...value }), definitions.kinds);
      changed.set(
        record,
        read.records.map((one) => ({ ...one, file: record.file, pointer: record.pointer })),
      );
      faults.push(
        ...read.findings.map((one) => ({
          ...one,
          place: { file: record.file, pointer: record.pointer + one.place.pointer },
        })),
      );
    };
    edit(slip.record, slip.pointer);
    if (mode === "copied") for (const { record, pointer } of copies(slip)) edit(record, pointer);
    const records = book.records.flatMap((record) => changed.get(record) ?? [record]);
    const { judged } = judgeAgain(
      remembered[mode].memory,
      {
        ...book,
        records: comparedAnew(records, definitions.kinds),
        findings: [...book.findings, ...faults],
      },
      false,
    );
    const roots = judged.findings.filter((one) => blocks(one) && !known[mode].has(one.key));
    const own = roots.some((root) => isAt(root, slip));
    return {
      slip,
      found: own ? "own" : roots.length > 0 ? "elsewhere" : "unfound",
      rules: [...new Set(roots.map(({ rule }) => rule))],
    };
  };
}

/** Whether a finding stands at the value that slipped, in it, or at the record or row it stands in. */
function isAt({ place, accuses }: Finding, slip: Slip): boolean {
  const { record, pointer } = slip;
  const at = record.pointer + pointer;
  const near =
    place.file === record.file &&
    (at === place.pointer || at.startsWith(`${place.pointer}/`) || place.pointer.startsWith(`${at}/`));
  const address = addressOfSlip(slip);
  return (
    (near && place.pointer.length >= record.pointer.length) ||
    accuses.some((one) => one === address || one.startsWith(`${address}/`))
  );
}

interface Copy {
  readonly record: BookRecord;
  readonly pointer: string;
}

/**
 * Where else a value would have been copied to: sheets that were made with it, statements of the same fact, and every place
 * with the equal value that a rule looks at together with it.
 */
function copiesIn(judged: JudgedBook): (slip: Slip) => readonly Copy[] {
  const byAddress = new Map<string, Copy[]>();
  const add = (address: string, copy: Copy) => byAddress.set(address, [...(byAddress.get(address) ?? []), copy]);
  for (const one of judged.computed)
    for (const [symbol, { origin }] of one.inputs) {
      if (origin?.type !== "record") continue;
      const address = addressOf(origin.record, origin.pointer);
      for (const { record } of one.sheets) {
        const list = record.value["inputs"];
        for (const [index, row] of (isList(list) ? list : []).entries())
          if (isObject(row) && row["symbol"] === symbol) add(address, { record, pointer: `/inputs/${index}/value` });
      }
    }
  const stated = statementsOf(judged);
  const together = lookedAtTogether(judged);
  const { kinds } = judged.definitions;
  const fieldAt = (record: BookRecord, pointer: string) =>
    fieldOfPointer(kinds.get(record.kind)?.fields, record.value, pointer);
  return (slip) => {
    if (typeof slip.was !== "string" || typeof slip.to !== "string") return [];
    const { was, to } = slip;
    const own = addressOfSlip(slip);
    const field = fieldAt(slip.record, slip.pointer);
    const others = (stated.get(slip.field) ?? []).flatMap((other) =>
      judged.graph.records.flatMap((record) => placesOf(record, other, was)),
    );
    const beside = together(slip.record, slip.pointer).flatMap((places) =>
      [...places].flatMap(([address, pointers]) => {
        const { kind, id } = partsOfAddress(address);
        const record = judged.graph.byKind.get(kind)?.get(id);
        return record === undefined ? [] : [...pointers].map((pointer) => ({ record, pointer }));
      }),
    );
    const copies = [...(byAddress.get(own) ?? []), ...others, ...beside].filter(
      ({ record, pointer }) =>
        addressOf(record, pointer) !== own &&
        atPointer(record.value, pointer) === was &&
        canHold(fieldAt(record, pointer), field, to),
    );
    return [...new Map(copies.map((copy) => [addressOf(copy.record, copy.pointer), copy])).values()];
  };
}

/** Whether a field is of the sort that the value was copied from, and may have the new one. */
const canHold = (field: Field | undefined, from: Field | undefined, to: string): boolean =>
  field !== undefined &&
  field.type === from?.type &&
  field.targets?.join() === from.targets?.join() &&
  (field.options === undefined || field.options.includes(to));

/** By field, the fields that state the same fact: `kind path`, rows without their numbers. */
function statementsOf({ definitions }: JudgedBook): ReadonlyMap<string, readonly string[]> {
  const all = definitions.facts.map(({ statements }) =>
    statements.flatMap((path) => {
      const [, kind, rest] = /^book\.([a-z-]+)\.([\w[\].]+)$/.exec(path) ?? [];
      return kind === undefined || rest === undefined ? [] : [`${kind} ${rest}`];
    }),
  );
  return new Map(
    all.flatMap((fields) => fields.map((field) => [field, fields.filter((one) => one !== field)] as const)),
  );
}

function placesOf(record: BookRecord, field: string, value: string): readonly Copy[] {
  const [kind, path = ""] = field.split(" ");
  if (record.kind !== kind || /\[\]/.test(path)) return [];
  const pointer = `/${path.replaceAll(".", "/")}`;
  return atPointer(record.value, pointer) === value ? [{ record, pointer }] : [];
}
