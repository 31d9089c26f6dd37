import { isList, isObject, type Json } from "../../model/json.ts";
import type { Field } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Sought } from "../publication.ts";
import { kindOf, type Context } from "./context.ts";
import { labelOfField } from "./values.ts";

/**
 * What people look a record up by beside its id, which its page is called by: the fields whose schema says so
 * (`x-sought`), each with the name of the field. The find page knows no other names.
 */
export function soughtIn(context: Context, record: BookRecord, anchor?: string): Sought[] {
  const at = anchor === undefined ? {} : { anchor };
  const fields = kindOf(context, record).fields;
  const found = [...fields].flatMap(([name, field]) => namesIn(field, record.value[name]));
  const seen = new Set<string>();
  return found
    .filter(({ text }) => !seen.has(text) && seen.add(text))
    .map(({ label, text }) => ({
      ...at,
      text: anchor === undefined ? `${label} ${text}` : `${record.id}, ${label} ${text}`,
    }));
}

function namesIn(field: Field, value: Json | undefined): readonly { readonly label: string; readonly text: string }[] {
  if (value === undefined) return [];
  if (isList(value)) return value.flatMap((one) => namesIn(field.item ?? field, one));
  if (isObject(value)) return [...(field.fields ?? [])].flatMap(([name, inner]) => namesIn(inner, value[name]));
  return field.sought === true && String(value) !== ""
    ? [{ label: labelOfField(field).toLowerCase(), text: String(value) }]
    : [];
}
