import type { JudgedBook } from "../model/book.ts";
import type { Graph } from "../model/graph.ts";
import { atPointer, isObject, pointerStep, type Json, stepsOf } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import type { Owner } from "../model/vocabulary.ts";
import { placeWords } from "../model/words.ts";

/** A record or a row of it. */
export interface At {
  readonly record: BookRecord;
  readonly pointer: string;
}

/** What a list of things owed needs of a judged book. */
export type Book = Pick<
  JudgedBook,
  "graph" | "definitions" | "book" | "issue" | "missing" | "announced" | "findings" | "titles" | "loaded"
>;

/** A firm or person of the book. */
export interface Party {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
}

/** An original a place was or is to be read from. */
export interface OriginalOf {
  readonly id: string;
  readonly path: string;
  readonly page: number | null;
}

const text = (value: Json | undefined): string =>
  typeof value === "string" || typeof value === "number" ? String(value) : "";

/** "joint C2", "weld log WL-L1, run fill". */
export const thingWords = ({ definitions }: Pick<Book, "definitions">, { record, pointer }: At): string =>
  placeWords(definitions.kinds, record, pointer).of;

/** What a record is called beside its id, such as "Shell course 1"; "" where its kind has no such field, or the id says it. */
export function titleOf({ definitions }: Pick<Book, "definitions">, record: BookRecord): string {
  const label = definitions.kinds.get(record.kind)?.label;
  if (label === undefined) return "";
  const title = text(atPointer(record.value, `/${label.replaceAll("[]", "").replaceAll(".", "/")}`));
  return record.id.includes(title) ? "" : title;
}

/** The objects a place lies in, the innermost first, each with its pointer and the fields its schema gives it. */
function around(kind: Kind | undefined, { record, pointer }: At) {
  const steps = stepsOf(pointer);
  return Array.from({ length: steps.length + 1 }, (_, count) => {
    const at = steps
      .slice(0, steps.length - count)
      .map(pointerStep)
      .join("");
    const fields = at === "" ? kind?.fields : fieldOfPointer(kind?.fields, record.value, at)?.fields;
    return { at, value: atPointer(record.value, at), fields: fields ?? new Map<string, Field>() };
  });
}

/**
 * Firms and persons that fields of a place name for a role (`x-acts`), in the nearest object that names any: the row, the
 * object around it, the record.
 */
export function partiesAt(book: Book, at: At, plays: (role: Owner) => boolean): readonly Party[] {
  for (const { at: pointer, value, fields } of around(book.definitions.kinds.get(at.record.kind), at)) {
    if (!isObject(value)) continue;
    const found = [...fields].flatMap(([name, field]) => {
      if (!(field.acts ?? []).some(plays)) return [];
      const party = partyAt(book, at.record, pointer + pointerStep(name));
      return party === undefined ? [] : [party];
    });
    if (found.length > 0) return found;
  }
  return [];
}

function partyAt({ graph, definitions }: Book, record: BookRecord, pointer: string): Party | undefined {
  const link = linkAt(graph, record, pointer);
  if (link?.target == null) return undefined;
  const { kind, id } = link.target;
  const name = link.to === undefined ? "" : titleOf({ definitions }, link.to);
  return { kind, id, name: name === "" ? id : name };
}

const linkAt = (graph: Graph, record: BookRecord, pointer: string) => graph.out.get(record)?.get(pointer);

/** The original that a field of a place, or the place itself, was read from, as `sources` and `source` say; null where none does. */
export function originalAt(book: Book, { record, pointer }: At, field: string | null): OriginalOf | null {
  const place = field === null ? pointer : `${pointer}${pointerStep(field)}`;
  const single = isObject(record.value["sources"]) ? Object.keys(record.value["sources"]) : [];
  const named = single
    .filter((key) => place === key || place.startsWith(`${key}/`))
    .sort((a, b) => b.length - a.length)
    .map((key) => `/sources${pointerStep(key)}`);
  const wider = around(book.definitions.kinds.get(record.kind), { record, pointer }).map(({ at }) => `${at}/source`);
  for (const source of [...named, ...wider]) {
    const link = linkAt(book.graph, record, `${source}/original`);
    if (link?.target == null) continue;
    const page = atPointer(record.value, `${source}/page`);
    return {
      id: link.target.id,
      path: text(link.to?.value["path"]),
      page: typeof page === "number" ? page : null,
    };
  }
  return null;
}

/** The day a record plans for itself (`x-date: plan`); of the issue none, whose days are those of the book. */
export function plannedIn(book: Book, record: BookRecord): string | null {
  if (record === book.issue) return null;
  const fields = book.definitions.kinds.get(record.kind)?.fields ?? new Map<string, Field>();
  const days = [...fields].flatMap(([name, { date }]) => (date === "plan" ? [text(record.value[name])] : []));
  return days.find((day) => day !== "") ?? null;
}
