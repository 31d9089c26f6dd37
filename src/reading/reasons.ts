import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { parsePath, wordsOfSteps } from "../model/path.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { stableName } from "../model/stable.ts";
import type { Table } from "../model/table.ts";
import { subjectWords } from "../model/titles.ts";
import { placeWords, thePlace } from "../model/words.ts";
import { pathWords } from "./absent-words.ts";
import type { Hit } from "./hit.ts";
import type { Reason, Trail } from "./trail.ts";
import type { World } from "./world.ts";
import { findingKey, aboutPlace, aboutRecord } from "../model/finding-key.ts";

const basis = ownChoice(
  "nothing is guessed: without a row, a single value, or a value of the right sort there is no verdict",
);

/** Own reasons for not judging, each once for all that meet it. */
export const reasonRules: readonly BuiltIn[] = [
  { id: "table-row", title: "A table has a value for the keys it is asked for", severity: "query", basis },
  { id: "value-single", title: "Where one value is read, one is stated", severity: "query", basis },
  { id: "value-usable", title: "A value can be used where it is read", severity: "query", basis },
];

/** What a table was asked for. */
export interface Asked {
  readonly table: Pick<Table, "title" | "columns">;
  readonly keys: string;
  readonly at: Reason["at"];
  readonly addresses: readonly Address[];
}

/** A table has no row for the keys, or the row has no value in that column: no row is no pass. */
export function noRow(trail: Trail, asked: Asked, problem: string, column = ""): void {
  // Tables asked for the same keys lack a row for the same reason: one query names them all.
  const key = findingKey("table-row", `${asked.keys}${column === "" ? "" : ` ${column}`}`);
  trail.reasons.push({
    key,
    rule: "table-row",
    message: `the table "${asked.table.title}" has no ${column === "" ? "row" : (asked.table.columns[column]?.means ?? column)} for ${asked.keys}`,
    why: `${problem}; without a value there is no limit to judge by`,
    hint: "correct the key, or add a reference table of the edition that covers it, or answer this query with the value and its source",
    at: asked.at,
    accuses: asked.addresses,
  });
}

/** A path that should lead to one value leads to several that differ. */
export function severalValues(
  world: World,
  trail: Trail,
  start: Hit | null,
  path: string,
  texts: readonly string[],
): void {
  const at = start?.record == null ? null : { record: start.record, pointer: start.pointer };
  const key = findingKey("value-single", nameOf(world, at), wordsOfSteps(parsePath(path).steps));
  const shown = [...new Set(texts)].sort();
  trail.reasons.push({
    key,
    rule: "value-single",
    message: `${at === null ? "the book" : placeWords(world.kinds, at.record, at.pointer).of} states ${shown.length} values of ${pathWords(world, at, path)}, where one is read: ${shown.slice(0, 6).join(", ")}${shown.length > 6 ? ` and ${shown.length - 6} more` : ""}`,
    why: "which of them counts is not for the check to choose",
    hint: "correct the records so that one value is stated, or answer this query",
    at,
    accuses: [],
  });
}

/** What a definition reads somewhere. */
export interface Expected {
  /** Stable word for keys. */
  readonly sort: string;
  readonly words: string;
}

/** A value that is sound in itself, but not of the sort that a definition reads there. */
export function notUsable(world: World, trail: Trail, hit: Hit, text: string, expected: Expected): void {
  const at = hit.record === null ? null : { record: hit.record, pointer: hit.pointer };
  const name = at === null ? keyOfOrigin(hit) : nameOf(world, at);
  const key = findingKey("value-usable", name, expected.sort);
  trail.reasons.push({
    key,
    rule: "value-usable",
    message: `${at === null ? originOf(world, hit) : thePlace(world.kinds, at.record, at.pointer)} is ${text}; ${expected.words} is read there`,
    why: "a value of another sort cannot be put in its place",
    hint: "compare with the original and correct the value, or answer this query with the value that counts",
    at,
    accuses: at === null ? [] : [addressOf(at.record, at.pointer)],
  });
}

function nameOf(world: World, at: { readonly record: BookRecord; readonly pointer: string } | null): string {
  if (at === null) return aboutRecord(null);
  const kind = world.kinds.get(at.record.kind);
  const where = kind === undefined ? at.pointer : stableName(kind, at.record.value, at.pointer);
  return aboutPlace(at.record, where);
}

/** What gives a value that stands in no record, in words. */
function originOf({ definitions }: World, { origin }: Hit): string {
  if (origin?.type === "profile") return `the parameter "${origin.name}" of the profile`;
  if (origin?.type === "table") {
    const table = definitions.tables.find(({ id }) => id === origin.table);
    return `what the table "${table?.title ?? origin.table}" states for ${origin.row}`;
  }
  if (origin?.type !== "calculation") return "the value";
  const { calculation, subject } = origin.of;
  const step = calculation.steps.find(({ symbol }) => symbol === origin.symbol);
  return `the ${step?.means ?? origin.symbol} of ${subjectWords(definitions.kinds, subject)}`;
}

function keyOfOrigin({ origin }: Hit): string {
  if (origin?.type === "profile") return `profile ${origin.name}`;
  if (origin?.type === "table") return `table ${origin.table} (${origin.row})`;
  if (origin?.type === "calculation") return `${origin.of.calculation.id} ${origin.symbol}`;
  return "the value";
}
