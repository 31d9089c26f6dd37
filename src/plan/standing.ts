import { fieldSteps, isEachStep, stepName } from "../model/field-steps.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import type { Field } from "../model/kind.ts";
import { printStep, type Step } from "../model/path.ts";
import type { Table } from "../model/table.ts";
import { behind, isName, through } from "./known.ts";
import { kindText, rowsOfKind } from "../model/kind-text.ts";

/** Where a path stands while it is walked over the schemas, before any book is read. */
export interface Standing {
  readonly kind: string | null;
  /** List of the kind it stands in a row of ("" in the record itself). */
  readonly list: string;
  readonly fields: ReadonlyMap<string, Field> | null;
  readonly field: Field | null;
  /** Outside records: in the profile, a table or a result. */
  readonly free: Free | null;
  /** Records and rows it came by: a row of the register owes what it names from any of them. */
  readonly anchors: readonly Anchor[];
}

/** A record or row on the way of a path. */
export interface Anchor {
  /** `kind`, or `kind#list` for a row. */
  readonly kind: string;
  /** Steps from there, as they are written in paths. */
  readonly text: string;
  /** What is known of it: the conditions of the definition, and filters on it. */
  readonly conditions: readonly Condition[];
}

export interface Free {
  /** What it is, for messages. */
  readonly of: string;
  /** Names that may follow, each with where they lead; null when none may. */
  readonly names: ReadonlyMap<string, Free> | null;
  /** Unit of the value, where it has one. */
  readonly unit?: string;
  /** Values it may have, where they are known. */
  readonly values?: readonly string[];
}

export const outside = (free: Free): Standing => ({
  kind: null,
  list: "",
  fields: null,
  field: null,
  free,
  anchors: [],
});

/** A row of a table: its columns may follow, and their points. */
export function freeOfTable(name: string, table: Table | undefined): Free {
  const columns = Object.entries(table?.columns ?? {}).map(([column, { unit, points }]): [string, Free] => [
    column,
    {
      of: `column ${column}`,
      names: points === undefined ? null : new Map(points.map((point) => [point, { of: point, names: null }])),
      ...(unit !== undefined && { unit }),
    },
  ]);
  return { of: `table ${name}`, names: new Map(columns) };
}

/** A calculation: its symbols may follow. A class has no unit. */
export function freeOfCalculation(id: string, calculation: Calculation | undefined): Free {
  const symbols = (calculation?.steps ?? []).map(({ symbol, unit, options }): [string, Free] => [
    symbol,
    { of: `result ${symbol}`, names: null, ...(options === undefined && { unit }) },
  ]);
  return { of: `calculation ${id}`, names: new Map(symbols) };
}

/** At a record of a kind, or at a row of `kind#list`; null when there is none such. */
export function standAt(
  definitions: Pick<Definitions, "kinds">,
  of: string,
  conditions: readonly Condition[] = [],
  before: readonly Anchor[] = [],
): Standing | null {
  const { kind: name, list } = kindText(of);
  const kind = definitions.kinds.get(name);
  if (kind === undefined) return null;
  const anchors = [...before, { kind: of, text: "", conditions }];
  if (list === "") return { kind: name, list, fields: kind.fields, field: null, free: null, anchors };
  const item = kind.fields.get(list)?.item;
  return item === undefined
    ? null
    : { kind: name, list, fields: item.fields ?? null, field: item, free: null, anchors };
}

/** At the smallest object that holds a link: `rows[].joint` stands in a row. Null when the path is no link of the kind. */
export function standAround(
  definitions: Pick<Definitions, "kinds">,
  kind: string,
  path: string,
  before: readonly Anchor[],
  known: readonly Condition[] = [],
): Standing | null {
  const names = fieldSteps(path);
  let at = standAt(definitions, kind, known, before);
  for (const [index, name] of names.entries()) {
    if (at === null) return null;
    let field = at.fields?.get(stepName(name));
    if (field !== undefined && isEachStep(name)) field = field.item;
    if (field === undefined) return null;
    if (index === names.length - 1) return field.type === "link" ? at : null;
    const first = isEachStep(name) && at.list === "";
    const row: Standing | null =
      first && at.kind !== null && index === 0
        ? standAt(definitions, rowsOfKind(at.kind, name.slice(0, -2)), [], before)
        : null;
    at = row ?? { ...at, field, fields: field.fields ?? null };
  }
  return null;
}

/** As `at`, one step further on from each record or row the path came by. */
export function stepOn(at: Standing, text: string): readonly Anchor[] {
  return at.anchors.map((anchor) => ({
    ...anchor,
    text: anchor.text === "" || /^[[<]/.test(text) ? anchor.text + text : `${anchor.text}.${text}`,
  }));
}

/** What is known of the record of a row just reached: the row's own conditions that read its record. */
export function ofRecord({ anchors }: Standing): readonly Condition[] {
  const [row] = anchors.slice(-1);
  if (row?.text !== "") return [];
  return row.conditions.flatMap((one) =>
    one.path.startsWith("record.") ? [{ ...one, path: one.path.slice("record.".length) }] : [],
  );
}

/** What is known of a row in a list of the record itself: what is known of the record, as the row reads it. */
function ofRow({ field, anchors }: Standing): readonly Condition[] {
  const [record] = anchors.slice(-1);
  return field !== null && record?.text === field.name ? behind("record", record.conditions) : [];
}

/** What is known of what a link of the record or row itself names: its own conditions that read that through the link. */
export const ofTarget = ({ anchors }: Standing): readonly Condition[] =>
  anchors.flatMap(({ text, conditions }) => (isName(text) ? through(text, conditions) : []));

/** What is known of a record whose link names where the path stands. */
export function ofSource({ anchors }: Standing, link: string): readonly Condition[] {
  const [here] = anchors.slice(-1);
  return here?.text === "" && isName(link) ? behind(link, here.conditions) : [];
}

/** With a filter: on a record or row just reached it is a condition, else a part of the way. */
export function filterOn(at: Standing, text: string, condition: Condition): readonly Anchor[] {
  return at.anchors.map((anchor) =>
    anchor.text === ""
      ? { ...anchor, conditions: [...anchor.conditions, condition] }
      : { ...anchor, text: anchor.text + text },
  );
}

/** At an item of a list; an object in a list of the record itself is a row that the register may know by its own. */
export function inItem(definitions: Pick<Definitions, "kinds">, at: Standing, text: string): Standing {
  const item = at.field?.item ?? null;
  const before = text === "" ? at.anchors : stepOn(at, text);
  const list = rowsOfKind(at.kind ?? "", at.field?.name ?? "");
  const row = item?.type === "object" ? standAt(definitions, list, ofRow(at), before) : null;
  // Only a list of the record itself: the same name deeper down is another list.
  if (row !== null && row.field === item) return row;
  return { ...at, field: item, fields: item?.fields ?? null, anchors: before };
}

/** Filters that follow a step, as they are written. */
export const filtersOf = (rest: readonly Step[]): string => {
  const end = rest.findIndex(({ type }) => type !== "filter" && type !== "items");
  return rest
    .slice(0, end < 0 ? rest.length : end)
    .filter(({ type }) => type === "filter")
    .map(printStep)
    .join("");
};
