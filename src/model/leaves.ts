import { isList, isObject, pointerStep, type Json } from "./json.ts";
import type { Field } from "./kind.ts";
import type { BookRecord } from "./record.ts";

/** A value of a record with its field, wherever it is nested. */
export interface Leaf {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly field: Field;
  readonly value: Json;
}

/** Visits every value of a record that has a field, wherever it is nested. */
export function eachLeaf(record: BookRecord, fields: ReadonlyMap<string, Field>, visit: (leaf: Leaf) => void): void {
  visitIn(record, "", record.value, fields, visit);
}

function visitIn(
  record: BookRecord,
  pointer: string,
  value: Json,
  fields: ReadonlyMap<string, Field>,
  visit: (leaf: Leaf) => void,
): void {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    if (member !== undefined) visitAt(record, pointer + pointerStep(name), member, field, visit);
  }
}

function visitAt(record: BookRecord, pointer: string, value: Json, field: Field, visit: (leaf: Leaf) => void): void {
  if (isList(value)) {
    const { item } = field;
    if (item !== undefined)
      value.forEach((one, index) => {
        visitAt(record, `${pointer}/${index}`, one, item, visit);
      });
  } else if (isObject(value)) {
    if (field.fields !== undefined) visitIn(record, pointer, value, field.fields, visit);
  } else visit({ record, pointer, field, value });
}
