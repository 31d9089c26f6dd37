import type { Graph } from "../../model/graph.ts";
import { isList, isObject, type Json, type JsonObject } from "../../model/json.ts";
import type { Field, Kind } from "../../model/kind.ts";
import { byCodePoint } from "../../model/order.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { idOf, numberField } from "../starter.ts";
import { withComparisons } from "./compared.ts";
import { kept, type Keeping } from "./keep.ts";
import { keptLinks, namedBy, namedRows, ofThatOrder } from "./select.ts";

export interface Wanted {
  readonly sameDesign: boolean;
  /** Number of what is made now. */
  readonly serial?: string;
}

/** A record of the new book, and the one it was taken from. */
export interface CarriedRecord {
  readonly from: BookRecord;
  readonly value: JsonObject;
}

/** A value that stayed behind though its record comes along, and why. */
export interface LeftValue {
  readonly kind: string;
  readonly id: string;
  readonly pointer: string;
  readonly value: string;
  readonly why: "names what stays behind" | "repeats what names that job";
}

export interface Carried {
  /** By kind and id. */
  readonly records: readonly CarriedRecord[];
  /** Values that the new record of the book takes from the last. */
  readonly book: JsonObject;
  /** Fields of the last record of the book that the new one does not take. */
  readonly bookLeft: readonly string[];
  readonly left: readonly LeftValue[];
  /** Records that stayed behind. */
  readonly behind: readonly { readonly record: BookRecord; readonly why: Behind }[];
}

export type Behind =
  "evidence of that job" | "of that order alone" | "not named" | "at fault" | "lacks what identifies it";

/**
 * What the next job takes over from a book, as its schemas say. Records keep their ids; one that the number of what is made
 * identifies takes the new number as its id.
 */
export function carry(graph: Graph, kinds: ReadonlyMap<string, Kind>, { sameDesign, serial }: Wanted): Carried {
  const all = graph.records.filter(({ kind }) => kinds.get(kind)?.derived === false);
  const carryOf = ({ kind }: BookRecord) => kinds.get(kind)?.carry ?? "never";
  const goes = (record: BookRecord) =>
    carryOf(record) === "always" || (sameDesign && carryOf(record) === "same-design");
  const links = keptLinks(graph, kinds, sameDesign);
  const candidates = new Set(all.filter((record) => goes(record) && !record.faulty));
  const ordered = ofThatOrder(graph, kinds, candidates, links);
  let carried = new Set([...candidates].filter((record) => !ordered.has(record)));
  const jobs = namesOfJob(all, kinds);

  // Where a record cannot come along, those that need it cannot either.
  for (;;) {
    const named = new Set([...namedBy(carried, kinds, links)].filter(({ faulty }) => !faulty));
    const rows = namedRows(carried, links);
    const left: LeftValue[] = [];
    const there = new Set([...carried, ...named]);
    const records = [...there].flatMap((from) => {
      const value = taken(from, kinds.get(from.kind), {
        sameDesign,
        serial,
        link: (pointer) => {
          const to = graph.out.get(from)?.get(pointer)?.to;
          return to !== undefined && there.has(to) && !isRenumbered(kinds.get(to.kind));
        },
        named: (pointer) => rows.has(addressOf(from, pointer)),
        repeats: (text) => jobs.some((name) => text.includes(name)),
        left: (pointer, field, text) => left.push(leftValue(from, pointer, field, text)),
      });
      return value === undefined ? [] : [{ from, value }];
    });
    if (records.length === there.size)
      return {
        records: withComparisons(records, kinds).toSorted(
          (a, b) => byCodePoint(a.from.kind, b.from.kind) || byCodePoint(a.from.id, b.from.id),
        ),
        ...bookValues(all, kinds, there, graph),
        left,
        behind: all.flatMap((record) =>
          there.has(record) || carryOf(record) === "anew"
            ? []
            : [{ record, why: whyBehind(record, goes(record), ordered, carryOf(record)) }],
        ),
      };
    const whole = new Set(records.map(({ from }) => from));
    carried = new Set([...carried].filter((record) => whole.has(record)));
  }
}

function taken(from: BookRecord, kind: Kind | undefined, keeping: Keeping): JsonObject | undefined {
  if (kind === undefined) return undefined;
  const value = kept(from.value, kind, keeping);
  return value !== undefined && isRenumbered(kind) && keeping.serial !== undefined
    ? { ...value, id: idOf(keeping.serial) }
    : value;
}

const isRenumbered = (kind: Kind | undefined) => kind?.carry === "same-design" && numberField(kind) !== undefined;

const leftValue = ({ kind, id }: BookRecord, pointer: string, { type }: Field, value: string): LeftValue => ({
  kind,
  id,
  pointer,
  value,
  why: type === "link" ? "names what stays behind" : "repeats what names that job",
});

/** Numbers that name the old job. A single sign or two would be found in any text. */
function namesOfJob(records: readonly BookRecord[], kinds: ReadonlyMap<string, Kind>): readonly string[] {
  return records.flatMap(({ kind, value }) =>
    [...(kinds.get(kind)?.fields.values() ?? [])].flatMap(({ name, carry: own }) => {
      const text: Json | undefined = own === "anew" ? value[name] : undefined;
      return typeof text === "string" && text.length > 2 ? [text] : [];
    }),
  );
}

/** Of the record made anew: fields that are the same for every job, but for links to what stays, and the names of the others. */
function bookValues(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
  there: ReadonlySet<BookRecord>,
  graph: Graph,
): Pick<Carried, "book" | "bookLeft"> {
  const last = records.find(({ kind }) => kinds.get(kind)?.carry === "anew");
  if (last === undefined) return { book: {}, bookLeft: [] };
  const taken: Record<string, Json> = {};
  const bookLeft: string[] = [];
  for (const { name, type, required, carry: own } of kinds.get(last.kind)?.fields.values() ?? []) {
    const value = last.value[name];
    if (value === undefined || name === "id" || isEmpty(value)) continue;
    const to = graph.out.get(last)?.get(`/${name}`)?.to;
    const goes = own === "always" && (type !== "link" || (to !== undefined && there.has(to)));
    if (goes) taken[name] = value;
    else if (!required) bookLeft.push(name);
  }
  return { book: taken, bookLeft };
}

const isEmpty = (value: Json) =>
  (isList(value) && value.length === 0) || (isObject(value) && Object.keys(value).length === 0);

function whyBehind(record: BookRecord, goes: boolean, ordered: ReadonlySet<BookRecord>, own: Kind["carry"]): Behind {
  if (ordered.has(record)) return "of that order alone";
  if (record.faulty && (goes || own === "named")) return "at fault";
  if (goes) return "lacks what identifies it";
  return own === "named" ? "not named" : "evidence of that job";
}
