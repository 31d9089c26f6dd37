import { grouped } from "../../model/grouped.ts";
import type { JudgedBook } from "../../model/book.ts";
import type { BookRecord } from "../../model/record.ts";
import { milestoneDays } from "../../model/milestone-days.ts";
import { announcedOf, notKnown, type ToHold } from "../../owed/announced.ts";
import { owedItems } from "../../owed/items.ts";
import { owedList, whoOf } from "../../owed/list.ts";
import { whenWords } from "../../owed/words.ts";
import type { Block, Cell, Row, Text } from "../blocks.ts";
import { pageOfComputed, type Context } from "./context.ts";
import { wordsCell } from "./plain-table.ts";
import type { Numbering } from "./record-blocks.ts";
import { titleOfDefinition } from "../../model/titles.ts";
import { upper } from "./titles.ts";

const known = new WeakMap<JudgedBook, ReadonlyMap<BookRecord, readonly ToHold[]>>();

function announcedBy(judged: JudgedBook): ReadonlyMap<BookRecord, readonly ToHold[]> {
  let found = known.get(judged);
  if (found === undefined) {
    const list = owedList(owedItems(judged), milestoneDays(judged.issue), {});
    known.set(judged, (found = grouped(announcedOf(judged, list), ({ announced }) => announced.subject)));
  }
  return found;
}

/** Of an interim issue: what measurements that are still owed of a record will be held against, each with who makes it. */
export function announcedBlocks(context: Context, record: BookRecord, next: Numbering): Block[] {
  const { judged } = context;
  if (judged.state !== "interim" || judged.announced.length === 0) return [];
  const all = announcedBy(judged).get(record) ?? [];
  if (all.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "What the measurement will be held against" },
    {
      type: "table",
      number: next(),
      title: "Limits known before it is measured: nothing has been compared with them yet",
      columns: [
        { head: "What is held against it", align: "left", width: 4 },
        { head: "Limit", align: "left", width: 1.8 },
        { head: "From", align: "left", width: 2.6 },
      ],
      groups: all.map((one) => rowsOf(context, one)),
      wide: true,
      notes: all.map(noteOf),
    },
  ];
}

function rowsOf(context: Context, { announced }: ToHold): Row[] {
  return announced.limits.map(({ means, is, value }, index): Row => {
    const limit: Cell =
      value === null
        ? wordsCell(notKnown)
        : { type: "text", text: [is === "is" ? "" : `${is} `, { type: "whole", text: value }] };
    return {
      cells: [
        wordsCell(index === 0 ? `${upper(announced.of)}: ${means}` : upper(means)),
        limit,
        index === 0 ? { type: "text", text: [sourceOf(context, announced)] } : { type: "empty" },
      ],
    };
  });
}

function sourceOf(context: Context, { definition, subject, pointer }: ToHold["announced"]): Text[number] {
  const computed = (context.computed.get(subject) ?? []).find(
    (one) => one.calculation.id === definition && one.pointer === pointer,
  );
  const title = titleOfDefinition(context.judged.titles, definition);
  return computed === undefined
    ? title
    : { type: "link", to: { page: pageOfComputed(context, computed) }, text: title };
}

/** Who measures, by when, what it is counted at, and why a limit is not known. */
function noteOf({ announced, item }: ToHold): { readonly lead: string; readonly text: Text } {
  const { of, remark, because } = announced;
  return {
    lead: upper(of),
    text: [`${[whoOf(item), whenWords(item), ...(remark === undefined ? [] : [remark]), ...because].join("; ")}.`],
  };
}
