import type { Field } from "../../model/kind.ts";
import { isList, isObject, type Json } from "../../model/json.ts";
import { rowName } from "../../model/stable.ts";
import type { Refusal } from "../../model/book.ts";
import { addressOf, publishedPath, type BookRecord } from "../../model/record.ts";
import type { Cell, Inline, Text } from "../blocks.ts";
import { fileOf } from "./original-file.ts";
import { kindOf, linkTo, plain, type Context } from "./context.ts";
import { kindWords } from "../../model/titles.ts";

/** "insideDiameter" → "Inside diameter"; a title of the schema wins. */
export function labelOfField(field: Pick<Field, "name" | "title">): string {
  if (field.title !== "" && field.title !== field.name) return field.title;
  const words = field.name.replaceAll(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export const isScalar = (field: Field) => !["object", "list"].includes(field.type);

/** A value of a record as text: exactly as written, links as links. */
export function textOf(context: Context, record: BookRecord, field: Field, value: Json, pointer: string): Text {
  if (isList(value)) {
    const parts = value.map((item, index) => textOf(context, record, field.item ?? field, item, `${pointer}/${index}`));
    return parts.flatMap((part, index) => (index === 0 ? part : [", ", ...part]));
  }
  if (isObject(value)) return summaryOf(context, record, field, value, pointer);
  if (field.type === "link") return [linkInline(context, record, pointer, String(value))];
  if (["quantity", "date", "integer", "number"].includes(field.type))
    return [{ type: "whole", text: printed(String(value)) }];
  const refusal = refusalAt(context, record, field, pointer);
  if (refusal !== undefined)
    return refusal.said === "" ? [{ type: "strong", text: "rejected" }] : [`rejected, ${refusal.said}`];
  if (typeof value === "boolean") return [value ? "yes" : "no"];
  if (record.kind === "original" && pointer === "/path") return [pathOf(context, record, String(value))];
  return [field.options === undefined ? String(value) : termOf(String(value))];
}

/** Where a reader finds the file of an original: a shelf's folder is not in the issue, its originals lie below its name. */
function pathOf(context: Context, original: BookRecord, recorded: string): string {
  const file = fileOf(context, original);
  return file === undefined ? recorded : publishedPath(file);
}

/** What became of a rejected value, where the value is one. */
function refusalAt({ judged }: Context, record: BookRecord, field: Field, pointer: string): Refusal | undefined {
  return field.closedBy === undefined ? undefined : judged.refusals.get(addressOf(record, pointer));
}

/** A term of a list as people write it: "shell-course" is a shell course, "B+C2" stays what it is. */
export const termOf = (text: string): string => (/^[a-z]+(-[a-z]+)+$/.test(text) ? text.replaceAll("-", " ") : text);

/** A minus is set as a minus; the digits of evidence are never regrouped. */
const printed = (text: string) => text.replace(/^-(?=\d)(?!\d{4}-)/, "−").replace(/^(\d{4}-\d{2}-\d{2})T/, "$1 ");

/** A link as the record wrote it; one that leads nowhere stays text. */
export function linkInline(context: Context, record: BookRecord, pointer: string, text: string): Inline {
  const link = context.judged.graph.out.get(record)?.get(pointer);
  if (link === undefined || link.target === null) return { type: "whole", text };
  const { row, revision } = link.target;
  const shown =
    row !== undefined
      ? `${link.target.id}, ${row}`
      : revision !== undefined
        ? `${link.target.id}, revision ${revision}`
        : link.target.id;
  // A name of what is not in the book is a name all the same.
  if (link.to === undefined) return { type: "whole", text: `${kindWords(context.kinds, link.target.kind)} ${shown}` };
  return linkTo(context, link.to, nameInText(context, link.to) ?? shown, link.toPointer ?? "");
}

/** "J. Fennimarsh (N2)": kinds whose records must have a name are called by it. */
function nameInText(context: Context, record: BookRecord): string | undefined {
  const field = kindOf(context, record).fields.get("name");
  return field?.required === true ? `${plain(record.value["name"])} (${record.id})` : undefined;
}

/** An object in one line: its scalar values, named. */
function summaryOf(
  context: Context,
  record: BookRecord,
  field: Field,
  value: { readonly [name: string]: Json },
  pointer: string,
): Text {
  const key = rowName({ ...field, rowKey: field.rowKey ?? "" }, value);
  const parts = Object.entries(value).flatMap(([name, member]): Text[] => {
    const inner = field.fields?.get(name);
    if (inner === undefined) return [];
    const text = textOf(context, record, inner, member, `${pointer}/${name}`);
    return text.length === 0
      ? []
      : [name === "row" || plain(member) === key ? text : [`${labelOfField(inner).toLowerCase()} `, ...text]];
  });
  return parts.flatMap((part, index) => (index === 0 ? part : [", ", ...part]));
}

/** A cell of a table: numbers with a unit of the column lose it there, the rest stays text. */
export function cellOf(
  context: Context,
  record: BookRecord,
  field: Field,
  value: Json | undefined,
  pointer: string,
  unit?: string,
): Cell {
  if (value === undefined) return { type: "empty" };
  if (typeof value === "string" && field.type === "quantity" && unit !== undefined) {
    const number =
      unit === "1" || unit === "" ? value : value.endsWith(` ${unit}`) ? value.slice(0, -unit.length - 1) : null;
    if (number !== null && /^[<>]?[+-]?\d/.test(number) && !number.includes(" "))
      return { type: "number", text: printed(number) };
  }
  if (typeof value === "number") return { type: "number", text: printed(String(value)) };
  if (refusalAt(context, record, field, pointer)?.state === "open") return { type: "mark", mark: "rejected" };
  const text = textOf(context, record, field, value, pointer);
  return text.length === 0 ? { type: "empty" } : { type: "text", text };
}

/** The unit all values of a column are written in, if it is one. */
export function commonUnit(values: readonly (Json | undefined)[]): string | undefined {
  const units = new Set(
    values.flatMap((value) =>
      typeof value === "string" ? [/^[<>]?[+-]?\d+(?:\.\d+)?(?: (.+))?$/.exec(value)?.[1] ?? ""] : [],
    ),
  );
  return units.size === 1 ? [...units][0] : undefined;
}
