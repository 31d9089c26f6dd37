import type { Kind } from "../../model/kind.ts";
import { announcedBlocks } from "./announced-blocks.ts";
import { atPointer } from "../../model/json.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { countSentence, tallyOf, type Tally } from "../../model/mark.ts";
import type { Block, Cell, Column, Mark, Row, TableBlock, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { adoptingBlocks } from "./adoption.ts";
import { chainBlock } from "./chain-block.ts";
import { extraBlocks } from "./extras.ts";
import { kindOf, labelOf, linkTo, markOf, targetOf, worst, type Context } from "./context.ts";
import { computedBlocks } from "./computed-blocks.ts";
import { namedBy, scanBlocks, signatureBlock } from "./evidence-blocks.ts";
import { judgedBlock } from "./judged-block.ts";
import { limitsTable } from "./limits-table.ts";
import { numbering, recordBlocks, type Numbering } from "./record-blocks.ts";
import { inFives } from "./row-tables.ts";
import { checksTable } from "./checks-table.ts";
import { openingUrl } from "./opening.ts";
import { shelfRemark } from "./shelf-words.ts";
import { soughtIn } from "./sought.ts";
import { columnsOf, headOf, listCell, pointersAt, type ListColumn } from "./list-columns.ts";
import { counted, countedTitle } from "./titles.ts";
import { cellOf, commonUnit, labelOfField } from "./values.ts";
import { chainLinks } from "../../judge/chain-links.ts";

/** Opening of a section: what it holds, a table per kind, and links to the pages in it. */
export function openingPage(
  context: Context,
  section: { readonly id: string; readonly title: string },
  number: string,
  index: number,
  kinds: readonly Kind[],
  also: readonly Page[],
): Page {
  const holds = kinds.map((kind) => countedTitle(recordsOf(context, kind).length, kind.title));
  return {
    url: openingUrl(index),
    number,
    title: section.title,
    under: [sectionSentence(context, section.id, kinds, holds)],
    opening: true,
    section: index,
    get blocks() {
      return openingBlocks(context, number, kinds, also);
    },
  };
}

function openingBlocks(context: Context, number: string, kinds: readonly Kind[], also: readonly Page[]): Block[] {
  const next = numbering(number);
  const tables = kinds.flatMap((kind) => summaryTable(context, kind, next));
  const checks = kinds.flatMap((kind) => checksTable(context, kind, recordsOf(context, kind), next));
  if (checks.length > 0) checks.unshift({ type: "heading", level: 2, text: "What is checked of each record" });
  const extra: readonly Block[] =
    also.length === 0
      ? []
      : [
          {
            type: "contents",
            entries: also.map((page) => ({
              number: page.number ?? "",
              title: page.title,
              to: { page: page.url },
              level: 1 as const,
            })),
          },
        ];
  return [
    ...extra,
    ...tables,
    ...checks,
    ...(tables.length + extra.length === 0
      ? [{ type: "paragraph", text: ["No record belongs to this section."] } satisfies Block]
      : []),
  ];
}

/** What the section holds, and what became of every check of its records; for calculations, of every result. */
function sectionSentence(context: Context, id: string, kinds: readonly Kind[], holds: readonly string[]): string {
  const outcomes = kinds.flatMap((kind) =>
    recordsOf(context, kind).flatMap((record) => context.outcomes.get(addressOf(record)) ?? []),
  );
  const { computed, counts } = context.judged;
  const count = (marks: Iterable<Mark> | Tally, one: string, several: string) =>
    `${countSentence(marks, (all) => counted(all, one, several))}.`;
  return [
    ...(holds.length === 0 ? [] : [`${holds.join(", ")}.`]),
    ...(id === "design" && computed.length > 0
      ? [
          count(
            computed.map(({ outcome }) => markOf(outcome)),
            "calculation",
            "calculations",
          ),
        ]
      : []),
    ...(id === "compliance" ? [count(tallyOf(counts), "check of the book", "checks of the book")] : []),
    ...(outcomes.length === 0
      ? []
      : [count(outcomes.map(markOf), "check of these records", "checks of these records")]),
  ].join(" ");
}

export function recordsOf(context: Context, kind: Kind): readonly BookRecord[] {
  return [...(context.judged.graph.byKind.get(kind.name)?.values() ?? [])];
}

/**
 * The gravest mark of a record's checks and of its chain; none when nothing was checked of it. What a chain finds on record
 * only says nothing of the record itself.
 */
function recordMark(context: Context, record: BookRecord): Mark | undefined {
  const known = marks.get(context) ?? new Map<BookRecord, Mark | undefined>();
  marks.set(context, known);
  if (!known.has(record)) known.set(record, gravestMark(context, record));
  return known.get(record);
}

const marks = new WeakMap<Context, Map<BookRecord, Mark | undefined>>();

function gravestMark(context: Context, record: BookRecord): Mark | undefined {
  const outcomes = context.outcomes.get(addressOf(record)) ?? [];
  if (outcomes.length === 0) return undefined;
  const links = chainLinks(context.judged, context.chains, record).map(({ mark }) => mark);
  return worst([...outcomes.map(markOf), ...links.filter((mark) => mark !== "on record")]);
}

function markCell(mark: Mark | undefined): Cell {
  return mark === undefined
    ? { type: "text", text: [{ type: "soft", text: "no check of its own" }] }
    : { type: "mark", mark };
}

/** All records of a kind in a table of its `x-columns`, with the verdict of each. */
export function summaryTable(context: Context, kind: Kind, next: Numbering): Block[] {
  const records = recordsOf(context, kind);
  if (records.length === 0) return [];
  const columns = columnsOf(kind, records).flatMap((own): (Column & ListColumn)[] => {
    const { path, field, row } = own;
    const values = records.flatMap(({ value }) =>
      pointersAt(value, path, row).map((pointer) => atPointer(value, pointer)),
    );
    if (values.length === 0) return [];
    const plainPath = !path.includes("[]");
    const unit = field.type === "quantity" && plainPath ? commonUnit(values) : undefined;
    const number = plainPath && (unit !== undefined || field.type === "integer");
    return [
      {
        ...own,
        head: headOf(labelOfField(field), row),
        align: number ? "number" : "left",
        ...(unit !== undefined && unit !== "" && { unit }),
        width: 2,
      },
    ];
  });
  const judged = records.some((record) => recordMark(context, record) !== undefined);
  const rows = records.map((record): Row => ({
    cells: [
      { type: "text", text: [linkTo(context, record)] },
      ...columns.map((column): Cell => {
        const { path, field, unit } = column;
        if (path.includes("[]")) return listCell(context, record, column);
        const pointer = `/${path.replaceAll(".", "/")}`;
        const value = atPointer(record.value, pointer);
        return cellOf(context, record, field, value, pointer, field.type === "quantity" ? (unit ?? "") : undefined);
      }),
      ...(judged ? [markCell(recordMark(context, record))] : []),
    ],
  }));
  const remark = shelfRemark(context, records);
  const table: TableBlock = {
    type: "table",
    number: next(),
    title: countedTitle(records.length, kind.title),
    columns: [
      { head: kind.title, align: "left", width: 1.6 },
      ...columns.map(({ path: _path, field: _field, row: _row, also: _also, ...column }) => column),
      ...(judged ? [{ head: "Verdict", align: "left", width: 1.5 } satisfies Column] : []),
    ],
    groups: inFives(rows),
    wide: true,
    ...(remark !== undefined && { remark }),
  };
  return [{ type: "heading", level: 2, text: kind.title, anchor: kind.name }, table];
}

/** The page of one record: its chain or its data first, whichever people come for. */
export function recordPage(context: Context, record: BookRecord, number: string, section: number): Page {
  const kind = kindOf(context, record);
  const label = labelOf(context, record);
  return {
    url: targetOf(context, record).page,
    number,
    kindLine: kind.title,
    title: label === "" ? record.id : `${record.id}, ${label}`,
    under: underOf(context, record),
    section,
    sought: soughtIn(context, record),
    get blocks() {
      return recordPageBlocks(context, record, numbering(number));
    },
  };
}

function recordPageBlocks(context: Context, record: BookRecord, next: Numbering): Block[] {
  const { before, after, skip, judged = false } = extraBlocks(context, record, next);
  const chained = context.chains.some((chain) => chain.kind === record.kind);
  return [
    ...(chained ? [chainBlock(context, record)] : []),
    ...before,
    ...(chained ? [{ type: "heading", level: 2, text: "As recorded" } satisfies Block] : []),
    ...recordBlocks(context, record, next, "", skip),
    ...adoptingBlocks(context, record),
    ...after,
    ...announcedBlocks(context, record, next),
    ...limitsTable(context, record, next),
    ...computedBlocks(context, record),
    // A chain shows whatever is judged of its record.
    ...(chained ? [] : judged ? besides(context, record) : judgedBlock(context, record)),
    ...signatureBlock(context, record),
    ...scanBlocks(context, record),
    ...namedBy(context, record),
  ];
}

/** What did not pass, beside what the page shows of its record already: it never hides a verdict. */
const besides = (context: Context, record: BookRecord): Block[] =>
  judgedBlock(context, record, "Also judged", (outcome) => markOf(outcome) !== "passed");

function underOf(context: Context, record: BookRecord): Text {
  const marks = (context.outcomes.get(addressOf(record)) ?? []).map(markOf);
  if (marks.every((mark) => mark === "not applicable")) return [kindOf(context, record).description];
  return [`${countSentence(marks, (count) => `${counted(count, "check")} of this record`)}.`];
}
