import type { Graph } from "../model/graph.ts";
import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { longestName, ofDate, ofLink, ofNumber, ofQuantity, ofText, type Part } from "./wanted.ts";

/** A value that a record takes from a paper. */
export interface Transcribed extends Placed {
  readonly field: Field;
  readonly value: string | number;
  /** What must stand on the paper for it: all of it. */
  readonly parts: readonly Part[];
}

/** Where a value stands in its record. */
export interface Placed {
  readonly pointer: string;
  /** The rows around it, outermost first. */
  readonly rows: readonly Row[];
}

/** A row of a list in a record. */
export interface Row {
  readonly pointer: string;
  /** What tells it from its neighbours: its name, where that comes from a closed list, else its index. */
  readonly key: string;
}

/** What is needed to know by which names a paper may call what a record links to. */
export interface Names {
  readonly graph: Graph;
  readonly kinds: ReadonlyMap<string, Kind>;
}

/** A name beside a value, which a paper may put in other words: the symbol of an element. It is not looked for, but places its row. */
export interface Label extends Placed {
  readonly parts: readonly Part[];
}

/**
 * The values a record takes from its paper: every figure, date, number and name but those of which the schema says that no
 * paper shows them. What a paper may put in other words (a choice from our list, a sentence) is none.
 */
export function transcribedValues(record: BookRecord, names: Names): readonly Transcribed[] {
  const found: Transcribed[] = [];
  visitRecord(record, names, (at, field, value) => {
    const parts = partsOf(record, at.pointer, field, value, names);
    if (parts.length > 0) found.push({ pointer: at.pointer, rows: at.rows, field, value, parts });
  });
  return found;
}

/** The choices from our lists that name a row of a record. */
export function labelsOf(record: BookRecord, names: Names): readonly Label[] {
  const found: Label[] = [];
  visitRecord(record, names, (at, field, value) => {
    if (isChoice(field, value)) found.push({ pointer: at.pointer, rows: at.rows, parts: ofText(String(value)) });
  });
  return found;
}

type Leaf = (at: Placed, field: Field, value: string | number) => void;

function visitRecord(record: BookRecord, { kinds }: Names, leaf: Leaf): void {
  const kind = kinds.get(record.kind);
  if (kind !== undefined && kind.unprinted === undefined) visit(record.value, "", [], kind.fields, leaf);
}

function visit(
  value: Json | undefined,
  pointer: string,
  rows: readonly Row[],
  fields: ReadonlyMap<string, Field> | undefined,
  leaf: Leaf,
): void {
  if (!isObject(value) || fields === undefined) return;
  for (const [name, field] of fields) {
    // `row` is the name that links use for a row.
    if (field.unprinted !== undefined || name === "row" || !Object.hasOwn(value, name)) continue;
    const at = pointer + pointerStep(name);
    const member = value[name];
    if (isList(member))
      member.forEach((item, index) => {
        const place = `${at}/${index}`;
        if (isObject(item))
          visit(item, place, [...rows, { pointer: place, key: keyOf(item, index, field) }], field.item?.fields, leaf);
        else if (field.item !== undefined && (typeof item === "string" || typeof item === "number"))
          leaf({ pointer: place, rows }, field.item, item);
      });
    else if (isObject(member)) visit(member, at, rows, field.fields, leaf);
    else if (typeof member === "string" || typeof member === "number") leaf({ pointer: at, rows }, field, member);
  }
}

function keyOf(row: JsonObject, index: number, { rowKey = "", item }: Field): string {
  const key = row[rowKey];
  const field = item?.fields?.get(rowKey);
  return field !== undefined && typeof key === "string" && isChoice(field, key) ? key : String(index);
}

/** A choice from our own list is put in the paper's words there; one with figures (135, 3.1) is not. */
const isChoice = ({ type, options }: Field, value: string | number): boolean =>
  type === "text" && options !== undefined && !/\d/.test(String(value));

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
      return isChoice(field, value) ? [] : ofText(value);
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
