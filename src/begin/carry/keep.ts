import { isList, isObject, pointerStep, type Json, type JsonObject } from "../../model/json.ts";
import type { Carry, Field, Kind } from "../../model/kind.ts";

/** What is known of the old and the new job while a record is taken over field by field. */
export interface Keeping {
  /** The design is the same: fields that say so come along. */
  readonly sameDesign: boolean;
  /** Number of what is made now; without it, a record that is identified by it cannot be begun. */
  readonly serial: string | undefined;
  /** Whether what the link at a pointer names is in the new book. */
  link(pointer: string): boolean;
  /** Whether a carried record names the row at a pointer. */
  named(pointer: string): boolean;
  /** Whether a text repeats what names the old job. */
  repeats(text: string): boolean;
  /** Told of each value that its field would have let through: a link to what stays, a text that names the old job. */
  left(pointer: string, field: Field, value: string): void;
}

/** The value of a record as the next job takes it over, or undefined where what identifies it, or a row of it, stays behind. */
export function kept(value: JsonObject, kind: Kind, keeping: Keeping): JsonObject | undefined {
  // Text of a record that stands for itself is its own, whatever job it mentions.
  const whole = kind.carry === "always" || kind.carry === "named";
  return keptObject(value, kind.fields, "", whole ? "always" : "never", whole, keeping);
}

function keptObject(
  value: JsonObject,
  fields: ReadonlyMap<string, Field>,
  pointer: string,
  inherited: Carry,
  whole: boolean,
  keeping: Keeping,
): JsonObject | undefined {
  const result: Record<string, Json> = {};
  for (const [name, field] of fields) {
    const found = Object.hasOwn(value, name) ? value[name] : undefined;
    const taken =
      found === undefined ? undefined : keptField(found, field, pointer + pointerStep(name), inherited, whole, keeping);
    if (taken !== undefined) result[name] = taken;
    else if (field.required) return undefined;
  }
  return Object.keys(result).length === 0 ? undefined : result;
}

function keptField(
  value: Json,
  field: Field,
  pointer: string,
  inherited: Carry,
  whole: boolean,
  keeping: Keeping,
): Json | undefined {
  if (pointer === "/id") return value;
  const carry = field.carry ?? inherited;
  if (field.carry === "never") return undefined;
  if (carry === "anew" && !whole) return field.required ? keeping.serial : undefined;
  // Of named rows the fields that say so: that a row is named says nothing of the rest.
  const inner = carry === "named" ? "never" : carry === "follows" ? inherited : carry;
  if (field.type === "list" && field.item !== undefined && isList(value)) {
    const { item } = field;
    const items = value.flatMap((one, index) => {
      const at = `${pointer}/${index}`;
      if (carry === "named" && !keeping.named(at)) return [];
      const taken = keptField(one, item, at, inner, whole, keeping);
      return taken === undefined ? [] : [taken];
    });
    return items.length === 0 && value.length > 0 ? undefined : items;
  }
  if (field.type === "object" && field.fields !== undefined && field.fields.size > 0 && isObject(value))
    return keptObject(value, field.fields, pointer, inner, whole, keeping);
  if (carry === "never" || (carry === "same-design" && !keeping.sameDesign)) return undefined;
  if (field.type === "link") {
    if (typeof value !== "string") return undefined;
    if (keeping.link(pointer)) return value;
    keeping.left(pointer, field, value);
    return undefined;
  }
  if (!whole && field.type === "text" && typeof value === "string" && keeping.repeats(value)) {
    keeping.left(pointer, field, value);
    return undefined;
  }
  return value;
}
