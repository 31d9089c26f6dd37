import { isList, isObject, type Json, type JsonObject } from "../../model/json.ts";
import type { Field } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Fact } from "../blocks.ts";
import { kindOf, type Context } from "./context.ts";
import { sourceNotes } from "./evidence-blocks.ts";
import { tablesOfRows, type Layout } from "./row-tables.ts";
import { isScalar, labelOfField, textOf } from "./values.ts";

/** Fields that stand elsewhere on the page than among the facts. */
const apart: ReadonlySet<string> = new Set([
  "id",
  "remarks",
  "source",
  "sources",
  "attachments",
  "signatures",
  "transcription",
  "imported",
  "kind",
  "format",
]);

/** Numbers tables of a page: "7.3.1", "7.3.2" … or "1", "2" where the page has no number. */
export type Numbering = () => string;

export function numbering(page: string | undefined): Numbering {
  let last = 0;
  return () => `${page === undefined ? "" : `${page}.`}${++last}`;
}

/** Everything a record says, laid out from its schema: facts, then its objects and lists. `prefix` makes anchors unique on shared pages. */
export function recordBlocks(
  context: Context,
  record: BookRecord,
  next: Numbering,
  prefix = "",
  skip: ReadonlySet<string> = new Set(),
): Block[] {
  const kind = kindOf(context, record);
  const own = [...kind.fields].filter(([name]) => !apart.has(name) && !skip.has(name));
  const facts = factsOf(context, record, own, record.value, "");
  const rest = own.flatMap(([name, field]) => {
    const value = record.value[name];
    return value === undefined || fitsInFacts(field, value)
      ? []
      : nested(context, record, field, value, `/${name}`, { next, prefix, skip });
  });
  const remarks = record.value["remarks"];
  return [
    ...(facts.length > 0 ? [{ type: "facts", facts, notes: sourceNotes(context, record) } satisfies Block] : []),
    ...rest,
    ...(typeof remarks === "string" ? [{ type: "prose", markdown: remarks } satisfies Block] : []),
  ];
}

function fitsInFacts(field: Field, value: Json): boolean {
  return (
    isScalar(field) || (field.type === "list" && field.item !== undefined && isScalar(field.item) && isList(value))
  );
}

function factsOf(
  context: Context,
  record: BookRecord,
  fields: readonly (readonly [string, Field])[],
  value: JsonObject,
  pointer: string,
): Fact[] {
  return fields.flatMap(([name, field]): Fact[] => {
    const member = value[name];
    if (member === undefined || !fitsInFacts(field, member)) return [];
    return [{ label: labelOfField(field), value: textOf(context, record, field, member, `${pointer}/${name}`) }];
  });
}

function nested(
  context: Context,
  record: BookRecord,
  field: Field,
  value: Json,
  pointer: string,
  layout: Layout,
): Block[] {
  if (isObject(value)) {
    const fields = [...(field.fields ?? [])];
    const facts = factsOf(context, record, fields, value, pointer);
    const inner = fields.flatMap(([name, one]) => {
      const member = value[name];
      return member === undefined || fitsInFacts(one, member)
        ? []
        : nested(context, record, one, member, `${pointer}/${name}`, layout);
    });
    const heading: Block = { type: "heading", level: 3, text: labelOfField(field) };
    return [heading, ...(facts.length > 0 ? [{ type: "facts", facts } satisfies Block] : []), ...inner];
  }
  if (!isList(value) || value.length === 0) return [];
  return tablesOfRows(context, record, field, value, pointer, layout);
}
