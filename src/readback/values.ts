import type { Graph } from "../model/graph.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { longestName, ofDate, ofLink, ofNumber, ofQuantity, ofText, type Part } from "./wanted.ts";

/** A value that a record takes from a paper. */
export interface Transcribed {
  readonly pointer: string;
  readonly field: Field;
  readonly value: string | number;
  /** What must stand on the paper for it: all of it. */
  readonly parts: readonly Part[];
}

/** What is needed to know by which names a paper may call what a record links to. */
export interface Names {
  readonly graph: Graph;
  readonly kinds: ReadonlyMap<string, Kind>;
}

/**
 * The values a record takes from its paper: every figure, date, number and name but those of which the schema says that no
 * paper shows them. What a paper may put in other words (a choice from our list, a sentence) is none.
 */
export function transcribedValues(record: BookRecord, names: Names): readonly Transcribed[] {
  const kind = names.kinds.get(record.kind);
  const found: Transcribed[] = [];
  if (kind === undefined || kind.unprinted !== undefined) return found;
  visit(record.value, "", kind.fields, (pointer, field, value) => {
    const parts = partsOf(record, pointer, field, value, names);
    if (parts.length > 0) found.push({ pointer, field, value, parts });
  });
  return found;
}

function visit(
  value: Json | undefined,
  pointer: string,
  fields: ReadonlyMap<string, Field> | undefined,
  leaf: (pointer: string, field: Field, value: string | number) => void,
): void {
  if (!isObject(value) || fields === undefined) return;
  for (const [name, field] of fields) {
    // `row` is the name that links use for a row.
    if (field.unprinted !== undefined || name === "row" || !Object.hasOwn(value, name)) continue;
    const at = pointer + pointerStep(name);
    const member = value[name];
    if (isList(member))
      member.forEach((item, index) => {
        if (isObject(item)) visit(item, `${at}/${index}`, field.item?.fields, leaf);
        else if (field.item !== undefined && (typeof item === "string" || typeof item === "number"))
          leaf(`${at}/${index}`, field.item, item);
      });
    else if (isObject(member)) visit(member, at, field.fields, leaf);
    else if (typeof member === "string" || typeof member === "number") leaf(at, field, member);
  }
}

/** What must stand on the paper for a value of a field; nothing where a paper may put it in other words. */
export function partsOf(
  record: BookRecord,
  pointer: string,
  field: Field,
  value: string | number,
  names: Names,
): readonly Part[] {
  if (typeof value === "number") return ofNumber(value);
  switch (field.type) {
    case "quantity":
      return ofQuantity(value);
    case "date":
      return ofDate(value);
    case "link": {
      const to = names.graph.out.get(record)?.get(pointer)?.to;
      // By which names a paper calls a thing that is not in the book, nobody can say; that it is not there is said elsewhere.
      return to === undefined ? [] : ofLink(value, () => namesOf(to, names));
    }
    case "text":
      // A choice from our own list is put in the paper's words there; one with figures (135, 3.1) is not.
      return field.options !== undefined && !/\d/.test(value) ? [] : ofText(value);
    default:
      return [];
  }
}

/** What papers may call the thing a link leads to: any of its own names and numbers. */
function namesOf({ value, kind }: BookRecord, { kinds }: Names): readonly string[] {
  return [...(kinds.get(kind)?.fields ?? [])].flatMap(([name, { type, options }]) => {
    const own = type === "text" && options === undefined && Object.hasOwn(value, name) ? value[name] : undefined;
    return typeof own === "string" && own.length <= longestName ? [own] : [];
  });
}
