import { grouped } from "../../model/grouped.ts";
import { isList, isObject } from "../../model/json.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { shelfOf } from "../../model/shelf.ts";
import type { Block, Note, Text } from "../blocks.ts";
import { linkTo, plain, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { counted } from "./titles.ts";

/** What is said of a shelf wherever it is spoken of: its name, and whose it is as far as the book says so. */
function shelfWords({ judged }: Context, name: string): string {
  const entries = judged.book.value["shelves"];
  const entry = (isList(entries) ? entries : []).filter(isObject).find((one) => one["name"] === name);
  const holds = plain(entry?.["holds"]);
  return `“${name}”, ${holds === "" ? "of which the book does not say whose it is" : holds}`;
}

/** Of a record that stands on a shelf: on which, whose that is, and how many others of this book name the record. */
export function shelfNotes(context: Context, record: BookRecord): Note[] {
  const shelf = shelfOf(record.file);
  if (shelf === undefined) return [];
  const links = context.judged.graph.back.get(addressOf(record)) ?? [];
  const names = new Set(links.map(({ from }) => from).filter((one) => one !== record)).size;
  const here = names === 0 ? "" : ` In this book ${counted(names, "record names", "records name")} it.`;
  return [
    {
      lead: "Shelf",
      text: [
        `On the shelf ${shelfWords(context, shelf)}. Other books may read it too; they are not seen from here.${here}`,
      ],
    },
  ];
}

const shownRecords = 40;

/** Below a table of records: which of them stand on shelves. */
export function shelfRemark(context: Context, records: readonly BookRecord[]): Text | undefined {
  const shelves = [...byShelf(records)];
  if (shelves.length === 0) return undefined;
  return shelves.flatMap(([shelf, own], index): Text => [
    index === 0 ? "" : " ",
    `On the shelf ${shelfWords(context, shelf)}, which other books may read too: `,
    ...(own.length === records.length
      ? [own.length === 1 ? "this record" : "all of them"]
      : listed(
          own.map((record) => [linkTo(context, record)]),
          shownRecords,
        )),
    ".",
  ]);
}

/** On the front page: how much of the book stands on shelves. */
export function shelfBlocks(context: Context): Block[] {
  const { records } = context.judged.graph;
  const shelves = [...byShelf(records)];
  if (shelves.length === 0) return [];
  const sum = shelves.reduce((all, [, own]) => all + own.length, 0);
  const each = shelves.map(([shelf, own]) => `${own.length} on the shelf ${shelfWords(context, shelf)}`).join("; ");
  return [
    {
      type: "paragraph",
      text: [
        `${sum} of the ${counted(records.length, "record")} of this book stand on shelves, which other books may read too: ${each}. Each is issued here as this book read it.`,
      ],
    },
  ];
}

function byShelf(records: readonly BookRecord[]): ReadonlyMap<string, BookRecord[]> {
  const on = records.filter(({ file }) => shelfOf(file) !== undefined);
  return grouped(on, ({ file }) => shelfOf(file) ?? "");
}
