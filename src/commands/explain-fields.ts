import { readsOf, statedFields, type Asked } from "../plan/reads.ts";
import type { JudgedBook } from "../model/book.ts";
import { isList, isObject, type Json } from "../model/json.ts";
import { fieldsOn, type Field, type Kind } from "../model/kind.ts";
import type { Register } from "../model/requirement.ts";
import type { ExplainedKind } from "./explained.ts";

/** The kind of which a book has the one it is about from its first day: what it says, nothing recorded later changes. */
const aboutWhich = "equipment";

/**
 * Gives each kind without the fields of which the book has no use: they are for a scope that is not in force, or are read
 * only where that, or what the equipment is, cannot be so. A field stays that anything else reads, or nothing at all; that
 * is owed, or identifies its record; that a record of the book states.
 */
export function kindsOfBook(judged: JudgedBook, register: Register | undefined): (kind: Kind) => ExplainedKind {
  const { definitions } = judged;
  const stated = statedIn(judged);
  const without = withoutOf(judged, stated);
  const rows = new Set(register?.requirements.map(({ id }) => id));
  const never = (one: Asked) => isOtherwise(judged, one) || without(one.field, one.values);
  const inForce = new Set<Field>();
  const read = new Set<Field>();
  for (const { field } of readsOf(definitions.whole ?? definitions)) read.add(field);
  for (const { field, asks, row } of readsOf(definitions)) {
    if ((row === undefined || rows.has(row)) && !asks.some(never)) inForce.add(field);
  }
  const kept = (field: Field) =>
    stated.has(field) ||
    field.required ||
    field.due !== undefined ||
    field.closedBy !== undefined ||
    inForce.has(field);
  // A fact compares what several records state: it keeps a field where another of them is of use.
  for (const statements of statedFields(definitions)) {
    const ends = statements.flatMap((passed) => passed.slice(-1));
    const ofUse = ends.some(kept) || !ends.some((end) => read.has(end));
    for (const field of statements.flat()) (ofUse ? inForce : read).add(field);
  }
  for (const kind of definitions.kinds.values())
    for (const path of namedByKind(kind)) for (const field of fieldsOn(kind, path)) inForce.add(field);
  return (kind) => {
    const leftOut: string[] = [];
    const isOut = (field: Field) => without(field) || (read.has(field) && !kept(field));
    const fields = withoutFields(kind.fields, "", isOut, leftOut);
    return leftOut.length === 0 ? kind : { ...kind, fields, leftOut };
  };
}

const namedByKind = ({ label, number }: Kind) => [label, number].flatMap((path) => (path === undefined ? [] : [path]));

/** Whether a field, or these values of it, are for a scope that is not in force, and no record of the book says else. */
function withoutOf(judged: JudgedBook, stated: ReadonlySet<Field>) {
  const signs = judged.inForce.out.flatMap((scope) => scope.signs);
  const list = signs.map(({ kind, path, values }) => {
    const field = fieldsOn(judged.definitions.kinds.get(kind), path).at(-1);
    const held = field === undefined || values === undefined ? [] : valuesIn(judged, kind, field).flat();
    return { field, values: values?.filter((value) => !held.includes(value)) };
  });
  return (field: Field, asked?: readonly string[]) =>
    list.some((one) =>
      one.field !== field
        ? false
        : one.values === undefined
          ? !stated.has(field)
          : asked?.every((value) => one.values?.includes(value)) === true,
    );
}

/** Whether all equipment of the book says something else there. */
function isOtherwise(judged: JudgedBook, { kind, field, values }: Asked): boolean {
  if (kind !== aboutWhich) return false;
  const found = valuesIn(judged, kind, field);
  return found.length > 0 && found.every((own) => own.length > 0 && !own.some((value) => values.includes(value)));
}

/** What each record of a kind states in a field. */
function valuesIn({ graph, definitions }: JudgedBook, kind: string, wanted: Field): readonly (readonly string[])[] {
  return [...(graph.byKind.get(kind)?.values() ?? [])].map(({ value }) => {
    const found: string[] = [];
    visit(fieldsOf(definitions, kind), value, (field, own) => {
      if (field === wanted && !isObject(own) && !isList(own)) found.push(String(own));
    });
    return found;
  });
}

const fieldsOf = ({ kinds }: JudgedBook["definitions"], kind: string) =>
  kinds.get(kind)?.fields ?? new Map<string, Field>();

/** Every field that a record of the book states. */
function statedIn({ graph, definitions }: JudgedBook): ReadonlySet<Field> {
  const stated = new Set<Field>();
  for (const { kind, value } of graph.records) visit(fieldsOf(definitions, kind), value, (field) => stated.add(field));
  return stated;
}

function visit(fields: ReadonlyMap<string, Field>, value: Json | undefined, see: (field: Field, own: Json) => void) {
  if (!isObject(value)) return;
  for (const [name, own] of Object.entries(value)) {
    const field = fields.get(name);
    if (field === undefined) continue;
    see(field, own);
    const inner = field.fields ?? field.item?.fields;
    if (inner !== undefined) for (const one of isList(own) ? own : [own]) visit(inner, one, see);
  }
}

function withoutFields(
  fields: ReadonlyMap<string, Field>,
  at: string,
  isOut: (field: Field) => boolean,
  leftOut: string[],
): ReadonlyMap<string, Field> {
  return new Map(
    [...fields].flatMap(([name, field]): [string, Field][] => {
      if (isOut(field)) {
        leftOut.push(at + name);
        return [];
      }
      const { fields: inner, item } = field;
      if (inner !== undefined)
        return [[name, { ...field, fields: withoutFields(inner, `${at}${name}.`, isOut, leftOut) }]];
      if (item?.fields === undefined) return [[name, field]];
      return [
        [name, { ...field, item: { ...item, fields: withoutFields(item.fields, `${at}${name}[].`, isOut, leftOut) } }],
      ];
    }),
  );
}
