import type { Finding } from "../model/finding.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { shelfOf, standing } from "../model/shelf.ts";
import { kindWords, lowerTitle } from "../model/titles.ts";
import { foldAlike } from "./alike.ts";
import { faultAt, placeOfId } from "./faults.ts";
import type { DerivedHeat } from "./heats.ts";

/** A second record with an id of its kind: whatever reads either is in doubt. */
export function duplicateId(second: BookRecord, first: BookRecord, kinds: ReadonlyMap<string, Kind>): Finding {
  return faultAt(second, undefined, "/id", {
    rule: "id-unique",
    message: `${kindWords(kinds, second.kind)} "${second.id}" is in the book twice`,
    why: `an id names one record; ${second.id} stands ${standing(first)} and ${standing(second)}`,
    hint: "renumber one of them, and the links that mean it; or remove the copy",
    accuses: [addressOf(second)],
    related: [placeOfId(first, "first used here")],
  });
}

/** Ids of one kind that people and scanners confuse: a query for each but the first. */
export function alikeIds(
  kind: string,
  ids: ReadonlyMap<string, BookRecord>,
  kinds: ReadonlyMap<string, Kind>,
): Finding[] {
  const seen = new Map<string, BookRecord>();
  return [...ids].flatMap(([id, record]) => {
    const fold = foldAlike(id);
    const first = seen.get(fold);
    if (first === undefined) {
      seen.set(fold, record);
      return [];
    }
    const apart = shelfOf(first.file) !== shelfOf(record.file);
    return [
      faultAt(record, undefined, "/id", {
        rule: "id-distinct",
        message: `${kindWords(kinds, kind)} "${first.id}" and "${id}" differ only by case, hyphen, zeros or look-alike signs`,
        why: apart
          ? `they may be one thing written in two ways; one stands ${standing(first)}, the other ${standing(record)}`
          : "they may be one thing written in two ways",
        hint: "compare with the stamp or the document; unify them, or answer this query",
        // Whoever wrote in one place did not see the other: which of the two a link means is open.
        accuses: apart ? [addressOf(first), addressOf(record)] : [],
        related: [placeOfId(first, "the other one")],
      }),
    ];
  });
}

/** Heat numbers of one mill that become one heat, though they are not written alike. */
export function alikeHeats({ record: heat, spellings }: DerivedHeat, kinds: ReadonlyMap<string, Kind>): Finding[] {
  const [first, ...others] = spellings;
  if (first === undefined) return [];
  return others.map(({ number, record, pointer }) =>
    faultAt(record, kinds.get(record.kind), pointer, {
      rule: "id-distinct",
      message: `heat "${number}" is taken to be heat "${first.number}" of the same mill`,
      why: `both are ${heat.id} when written as an id`,
      hint: "compare with the stamp; write the number alike in both certificates, or answer this query",
      accuses: [],
      related: [placeOfId(first.record, `"${first.number}" in this certificate`)],
    }),
  );
}

// By record: its lists are gone through again only where it is another.
const distinct = new WeakMap<BookRecord, Kind>();

/** Rows of one list with one name, wherever the list stands in the record. */
export function duplicateRows(record: BookRecord, kind: Kind, links: Ambiguous): Finding[] {
  if (distinct.get(record) === kind) return [];
  const found: Finding[] = [];
  inFields({ record, kind, links, found }, record.value, kind.fields, "");
  if (found.length === 0) distinct.set(record, kind);
  return found;
}

/** Links that name a row several rows bear, by the list's address, `#` and the name. */
export type Ambiguous = ReadonlyMap<string, readonly Address[]>;

interface In {
  readonly record: BookRecord;
  readonly kind: Kind;
  readonly links: Ambiguous;
  readonly found: Finding[];
}

function inFields(where: In, value: Json, fields: ReadonlyMap<string, Field>, at: string): void {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    if ((field.fields === undefined && field.item === undefined) || !Object.hasOwn(value, name)) continue;
    const inner = field.item?.fields;
    const member = value[name] ?? null;
    const pointer = at + pointerStep(name);
    if (field.fields !== undefined && isObject(member)) inFields(where, member, field.fields, pointer);
    if (!isList(member)) continue;
    if (field.item?.type === "object") where.found.push(...sameNames(where, field, member, pointer));
    if (inner !== undefined)
      for (const [index, row] of member.entries()) inFields(where, row, inner, `${pointer}/${index}`);
  }
}

/** Rows of one list that bear one name: links to it are collected under it. */
export const ambiguousRow = (list: Address, name: string): string => `${list}#${name}`;

function sameNames({ record, kind, links }: In, field: Field, rows: readonly Json[], pointer: string): Finding[] {
  const seen = new Map<string, number>();
  return rows.flatMap((row, index) => {
    const name = rowName(field, row);
    const first = name === undefined ? undefined : seen.get(name);
    if (name === undefined || first === undefined) {
      if (name !== undefined) seen.set(name, index);
      return [];
    }
    return [
      faultAt(record, kind, `${pointer}/${index}`, {
        rule: "row-unique",
        message: `row "${name}" stands twice in ${lowerTitle(kind.title)} ${record.id}`,
        why: `rows ${first + 1} and ${index + 1} bear one name, so a link to it could mean either`,
        hint: `give one of them another "${field.rowKey ?? "name"}", or a "row" of its own`,
        accuses: [
          addressOf(record, `${pointer}/${first}`),
          addressOf(record, `${pointer}/${index}`),
          ...(links.get(ambiguousRow(addressOf(record, pointer), name)) ?? []),
        ],
      }),
    ];
  });
}
