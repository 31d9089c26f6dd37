import type { Behind, Carried, CarriedRecord, LeftValue } from "../begin/carry/carry.ts";
import type { Json } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import type { Ended } from "./new-from.ts";

/** Everything that is said of what a new book took from the last one. */
export interface Taken {
  /** Path of the last book as a person here would type it. */
  readonly from: string;
  readonly orderDate: string;
  /** Last day whose evidence counted there. */
  readonly cutOff: string;
  readonly carried: Carried;
  readonly files: number;
  /** Maps of the shop's sheets, by path. */
  readonly maps: readonly string[];
  /** Files of carried originals that were not there. */
  readonly missing: readonly string[];
  /** Of the record of the book, what is as it was there, since nobody chose otherwise; not the shelves. */
  readonly book: readonly (readonly [string, Json])[];
  /** Record files of the last book that could not be read. */
  readonly unreadable: readonly string[];
  readonly ended: Ended;
  /** Carried records that stay on shelves, which the new book names too. */
  readonly onShelves: readonly CarriedRecord[];
}

const reasons: readonly (readonly [Behind, string])[] = [
  ["evidence of that job", "evidence of that job"],
  ["of that order alone", "of that order alone"],
  ["not named", "named by nothing that came along"],
  ["at fault", "at fault against their schema: mend them there, or enter them here"],
  ["lacks what identifies it", "without what identifies them here"],
];

/** What came along, what stayed behind, and what has ended since. */
export function takenText(taken: Taken): string {
  const { from, orderDate, cutOff, carried, files, maps, missing, unreadable, ended, onShelves } = taken;
  const { records, left, behind, bookLeft } = carried;
  const stayed = reasons.flatMap(([why, words]) => {
    const kinds = kindCounts(behind.filter((one) => one.why === why).map(({ record }) => record.kind));
    return kinds === "" ? [] : [`  ${words}: ${kinds}`];
  });
  return [
    `came along from ${plain(from)}: ${counted(records.length, "record")}, with ${counted(files, "file")}`,
    ...(records.length === 0 ? [] : [`  ${kindCounts(records.map(({ from: record }) => record.kind))}`]),
    ...(taken.book.length === 0 ? [] : [`  of the record of the book: ${taken.book.map(bookValue).join(" · ")}`]),
    ...(onShelves.length === 0
      ? []
      : [
          `  of these ${kindCounts(onShelves.map(({ from: record }) => record.kind))} stay on the shelves, which the new book names too; ` +
            "what has ended of them is said once a record names them",
        ]),
    ...(maps.length === 0 ? [] : [`  what the shop's sheets call things: ${maps.map(plain).join(", ")}`]),
    ...list("left out of them", leftLines(left), left.length),
    ...list("files that were not there to be copied", missing.map(plain)),
    `stayed behind: ${counted(behind.length, "record")}`,
    ...stayed,
    ...(bookLeft.length === 0 ? [] : [`  of the record of the book: ${bookLeft.join(", ")}`]),
    ...list("not read there, so that nothing of it is known here", unreadable.map(plain)),
    ...(carried.book["demonstration"] === true
      ? [
          "that book is a demonstration with invented data, and this one says the same of itself: demonstration in book.json",
        ]
      : []),
    ...(cutOff > orderDate
      ? [
          `evidence counts up to ${cutOff} as it did there, beyond the day of the order; to count less: dataCutOff in issue.json`,
        ]
      : []),
    ...(ended.ended.length === 0
      ? [`ended by ${orderDate}: ${nothingEnded(records.length, onShelves.length)}`]
      : list(
          `ended by ${orderDate}`,
          ended.ended.map(({ message, why }) => `${plain(message)}: ${plain(why)}`),
        )),
    ...list(
      "cannot be said",
      ended.unsaid.map(({ kind, id, title }) => `${kind} ${plain(id)}: whether ${lower(title)}`),
    ),
    "",
  ].join("\n");
}

/** What "nothing has ended" was asked of: what stays on shelves is judged only where a record of the new book names it. */
function nothingEnded(records: number, onShelves: number): string {
  if (records === 0) return "nothing came along that could end";
  if (records === onShelves) return "not asked of what stays on the shelves";
  return `nothing that was asked${onShelves === 0 ? "" : `; not asked of the ${counted(onShelves, "record")} on the shelves`}`;
}

/** "demonstration true", "parameters": what nobody asked for is not to come along unseen. */
const bookValue = ([name, value]: readonly [string, Json]) =>
  typeof value === "object" ? name : `${name} ${plain(String(value))}`;

const lower = (title: string) => `${title.charAt(0).toLowerCase()}${title.slice(1)}`;

const list = (title: string, lines: readonly string[], count = lines.length): readonly string[] =>
  lines.length === 0 ? [] : [`${title}: ${count}`, ...lines.map((line) => `  ${line}`)];

/** One line for all records of a kind that leave out the same value for the same reason. */
function leftLines(left: readonly LeftValue[]): readonly string[] {
  const groups = new Map<string, { readonly first: LeftValue; readonly ids: string[] }>();
  for (const one of left) {
    const key = JSON.stringify([one.kind, one.value, one.why]);
    const group = groups.get(key) ?? { first: one, ids: [] };
    group.ids.push(one.id);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ first, ids }) => {
    const where = first.pointer.slice(1).replaceAll(/\/\d+(?=\/|$)/g, "");
    const more = ids.length > 3 ? ` and ${ids.length - 3} more` : "";
    return `${first.kind} ${ids.slice(0, 3).map(plain).join(", ")}${more}, ${plain(where)}: "${plain(first.value)}" ${first.why}`;
  });
}

function kindCounts(kinds: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => byCodePoint(a, b))
    .map(([kind, count]) => `${kind} ${count}`)
    .join(" · ");
}

/** The same as values, for `--format json`. */
export function takenJson(taken: Taken): object {
  const { from, orderDate, carried, files, maps, missing, unreadable, ended, onShelves } = taken;
  return {
    from,
    orderDate,
    book: Object.fromEntries(taken.book),
    carried: carried.records.map(({ from: { kind, id }, value }) => ({ kind, id: value["id"] ?? id })),
    files,
    maps,
    missing,
    left: carried.left,
    behind: carried.behind.map(({ record: { kind, id }, why }) => ({ kind, id, why })),
    bookLeft: carried.bookLeft,
    onShelves: onShelves.map(({ from: { kind, id } }) => ({ kind, id })),
    unreadable,
    ended: ended.ended,
    unsaid: ended.unsaid,
  };
}
