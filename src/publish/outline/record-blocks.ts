import type { Field } from "../../model/kind.ts";
import { isList, isObject, type Json, type JsonObject } from "../../model/json.ts";
import type { Outcome } from "../../model/finding.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { rowName } from "../../model/stable.ts";
import type { Block, Cell, Column, Fact, Note, Row, TableBlock, Text } from "../blocks.ts";
import { rowAnchor } from "./address.ts";
import { kindOf, linkTo, markOf, nameOf, plain, titleOfOutcome, type Context } from "./context.ts";
import { findingLinks } from "./finding-blocks.ts";
import { cellOf, commonUnit, isScalar, labelOfField, textOf } from "./values.ts";

/** Fields that stand elsewhere on the page than among the facts. */
const apart: ReadonlySet<string> = new Set([
  "id",
  "remarks",
  "source",
  "sources",
  "attachments",
  "signatures",
  "transcription",
  "kind",
  "format",
]);

/** Numbers tables of a page: "7.3.1", "7.3.2" … or "1", "2" where the page has no number. */
export type Numbering = () => string;

export function numbering(page: string | undefined): Numbering {
  let last = 0;
  return () => `${page === undefined ? "" : `${page}.`}${++last}`;
}

/** Everything a record says, laid out from its schema: facts, then its objects and lists. `prefix` makes anchors unique on shared pages. */
export function recordBlocks(
  context: Context,
  record: BookRecord,
  next: Numbering,
  prefix = "",
  skip: ReadonlySet<string> = new Set(),
): Block[] {
  const kind = kindOf(context, record);
  const own = [...kind.fields].filter(([name]) => !apart.has(name) && !skip.has(name));
  const facts = factsOf(context, record, own, record.value, "");
  const rest = own.flatMap(([name, field]) => {
    const value = record.value[name];
    return value === undefined || fitsInFacts(field, value)
      ? []
      : nested(context, record, field, value, `/${name}`, { next, prefix, skip });
  });
  const remarks = record.value["remarks"];
  return [
    ...(facts.length > 0 ? [{ type: "facts", facts, notes: sourceNotes(context, record) } satisfies Block] : []),
    ...rest,
    ...(typeof remarks === "string" ? [{ type: "prose", markdown: remarks } satisfies Block] : []),
  ];
}

function fitsInFacts(field: Field, value: Json): boolean {
  return (
    isScalar(field) || (field.type === "list" && field.item !== undefined && isScalar(field.item) && isList(value))
  );
}

function factsOf(
  context: Context,
  record: BookRecord,
  fields: readonly (readonly [string, Field])[],
  value: JsonObject,
  pointer: string,
): Fact[] {
  return fields.flatMap(([name, field]): Fact[] => {
    const member = value[name];
    if (member === undefined || !fitsInFacts(field, member)) return [];
    return [{ label: labelOfField(field), value: textOf(context, record, field, member, `${pointer}/${name}`) }];
  });
}

/** What stays the same while the nested values of a record are laid out. */
interface Layout {
  readonly next: Numbering;
  readonly prefix: string;
  /** Paths that other blocks of the page show already: `remarks`, `rows[].chemistry`. */
  readonly skip: ReadonlySet<string>;
}

function nested(
  context: Context,
  record: BookRecord,
  field: Field,
  value: Json,
  pointer: string,
  layout: Layout,
): Block[] {
  if (isObject(value)) {
    const fields = [...(field.fields ?? [])];
    const facts = factsOf(context, record, fields, value, pointer);
    const inner = fields.flatMap(([name, one]) => {
      const member = value[name];
      return member === undefined || fitsInFacts(one, member)
        ? []
        : nested(context, record, one, member, `${pointer}/${name}`, layout);
    });
    const heading: Block = { type: "heading", level: 3, text: labelOfField(field) };
    return [heading, ...(facts.length > 0 ? [{ type: "facts", facts } satisfies Block] : []), ...inner];
  }
  if (!isList(value) || value.length === 0) return [];
  return tablesOfRows(context, record, field, value, pointer, layout);
}

/** A table with more columns is turned: fields become rows, if there are few enough rows to become columns. */
const widest = 8;
const fewRows = 6;

interface NamedColumn extends Column {
  readonly name: string;
  readonly field: Field;
}

function turnedTable(
  context: Context,
  record: BookRecord,
  field: Field,
  rows: readonly Json[],
  pointer: string,
  columns: readonly NamedColumn[],
  { next, prefix }: Layout,
): Block[] {
  const [key, ...rest] = columns;
  const heads = rows.map((row, index) => rowName(field, row) ?? String(index + 1));
  const anchors = heads.map((head): Block => ({ type: "anchor", anchor: `${prefix}${rowAnchor(head)}` }));
  const table: TableBlock = {
    type: "table",
    number: next(),
    title: labelOfField(field),
    columns: [
      { head: key === undefined ? "" : key.head, align: "left", width: 2 },
      ...heads.map((head): Column => ({ head, align: "left", width: 2.4 })),
    ],
    groups: inFives(
      rest.map(({ name, field: one, head }): Row => ({
        cells: [
          { type: "text", text: [head] },
          ...rows.map((row, index): Cell => {
            const value = isObject(row) ? row[name] : undefined;
            return value === undefined
              ? { type: "empty" }
              : { type: "text", text: textOf(context, record, one, value, `${pointer}/${index}/${name}`) };
          }),
        ],
      })),
    ),
    wide: rows.length > 3,
  };
  return [...anchors, table];
}

/** A list of objects as a table; lists inside a row that need room of their own follow as tables named by the row. */
function tablesOfRows(
  context: Context,
  record: BookRecord,
  field: Field,
  rows: readonly Json[],
  pointer: string,
  layout: Layout,
): Block[] {
  const { next, prefix, skip } = layout;
  const path = pointer.slice(1).replaceAll(/\/\d+/g, "[]").replaceAll("/", ".");
  const fields = [...(field.item?.fields ?? [])].filter(
    ([name]) => name !== "row" || rows.some((row) => isObject(row) && row["row"] !== undefined),
  );
  const used = fields.filter(([name]) => rows.some((row) => isObject(row) && row[name] !== undefined));
  const own = used.filter(([, one]) => !(one.type === "list" && one.item?.type === "object"));
  const deep = used.filter(
    ([name, one]) => one.type === "list" && one.item?.type === "object" && !skip.has(`${path}[].${name}`),
  );
  const columns = own.map(([name, one]): NamedColumn => {
    const unit =
      one.type === "quantity" ? commonUnit(rows.map((row) => (isObject(row) ? row[name] : undefined))) : undefined;
    const number = (one.type === "quantity" && unit !== undefined) || one.type === "integer" || one.type === "number";
    return {
      name,
      field: one,
      head: labelOfField(one),
      align: number ? "number" : "left",
      ...(unit !== undefined && unit !== "" && { unit }),
    };
  });
  const deeper = () =>
    rows.flatMap((row, index) =>
      deep.flatMap(([name, one]) => {
        const value = isObject(row) ? row[name] : undefined;
        if (!isList(value) || value.length === 0) return [];
        const title = `${labelOfField(one)}, ${rowName(field, row) ?? String(index + 1)}`;
        return tablesOfRows(context, record, { ...one, title }, value, `${pointer}/${index}/${name}`, layout);
      }),
    );
  if (columns.length > widest && rows.length <= fewRows)
    return [...turnedTable(context, record, field, rows, pointer, columns, layout), ...deeper()];
  const printedRows = rows.map((row, index): Row => {
    const name = rowName(field, row);
    return {
      ...(name !== undefined && { anchor: `${prefix}${rowAnchor(name)}` }),
      cells: columns.map(({ name: column, field: one, unit }) =>
        cellOf(
          context,
          record,
          one,
          isObject(row) ? row[column] : undefined,
          `${pointer}/${index}/${column}`,
          one.type === "quantity"
            ? (unit ?? commonUnit(rows.map((other) => (isObject(other) ? other[column] : undefined))))
            : undefined,
        ),
      ),
    };
  });
  const table: TableBlock = {
    type: "table",
    number: next(),
    title: labelOfField(field),
    columns: columns.map(({ name: _name, field: _field, ...column }) => column),
    groups: inFives(printedRows),
    wide: columns.length > 5,
  };
  return [...(columns.length > 0 ? [table] : []), ...deeper()];
}

/** Rows without groups of their own are set in groups of five, so that the eye keeps its line. */
export function inFives(rows: readonly Row[]): Row[][] {
  const groups: Row[][] = [];
  for (let index = 0; index < rows.length; index += 5) groups.push(rows.slice(index, index + 5));
  return groups.length > 1 && (groups.at(-1)?.length ?? 0) === 1
    ? [...groups.slice(0, -2), [...(groups.at(-2) ?? []), ...(groups.at(-1) ?? [])]]
    : groups;
}

/** Where the record stands, which original it was taken from, and who compared the two. */
export function sourceNotes(context: Context, record: BookRecord): Note[] {
  const notes: Note[] = [{ lead: "Source", text: [{ type: "code", text: context.source(record) }] }];
  const original = linkOf(context, record, "/source/original");
  const page = isObject(record.value["source"]) ? record.value["source"]["page"] : undefined;
  if (original !== undefined)
    notes.push({
      lead: "Original",
      text: [
        linkTo(context, original),
        ...(page === undefined ? [] : [`, page ${plain(page)}`]),
        ...compared(context, record),
      ],
    });
  return notes;
}

function compared(context: Context, record: BookRecord): string[] {
  const transcription = record.value["transcription"];
  if (!isObject(transcription)) return [". Not yet compared with the data by a person"];
  const who = linkOf(context, record, "/transcription/comparedBy");
  return [
    `, compared with the data by ${who === undefined ? plain(transcription["comparedBy"]) || "nobody yet" : `${plain(who.value["name"])} (${who.id})`}${transcription["date"] === undefined ? "" : ` on ${plain(transcription["date"])}`}`,
  ];
}

export function comparedSentence(context: Context, record: BookRecord): string {
  if (!isObject(record.value["source"])) return "";
  return compared(context, record)
    .join("")
    .replace(/^[,.] /, "");
}

export function linkOf(context: Context, record: BookRecord, pointer: string): BookRecord | undefined {
  return context.judged.graph.out.get(record)?.get(pointer)?.to;
}

/** Originals the record was taken from or that are attached to it. */
export function scanBlocks(context: Context, record: BookRecord): Block[] {
  const links = [...(context.judged.graph.out.get(record)?.values() ?? [])].filter(
    (link) => link.to?.kind === "original",
  );
  const originals = [...new Set(links.flatMap((link) => link.to ?? []))];
  if (originals.length === 0) return [];
  return [
    { type: "heading", level: 2, text: originals.length === 1 ? "Original" : "Originals" },
    ...originals.map((original): Block => {
      const page = isObject(record.value["source"]) ? record.value["source"]["page"] : undefined;
      const isSource = linkOf(context, record, "/source/original") === original;
      return scanOf(
        original,
        typeof page === "number" && isSource ? page : undefined,
        comparedSentence(context, record),
      );
    }),
  ];
}

export function scanOf(
  original: BookRecord,
  page: number | undefined,
  comparedBy: string,
): Extract<Block, { type: "scan" }> {
  const { title, path, sha256, pages } = original.value;
  return {
    type: "scan",
    title: `${original.id}, ${plain(title)}`,
    path: plain(path),
    sha256: plain(sha256),
    pages: typeof pages === "number" ? pages : 0,
    compared: comparedBy,
    ...(page !== undefined && { page }),
  };
}

/**
 * The checks of a record that its page lists and counts. A requirement that is met is seen from the record itself, and
 * the register lists it; a calculation stands with its figures.
 */
export function shownOutcomes(context: Context, record: BookRecord): readonly Outcome[] {
  return (context.outcomes.get(addressOf(record)) ?? []).filter(
    ({ definition, verdict }) =>
      verdict !== "passed" || !(context.requirements.has(definition) || context.calculations.has(definition)),
  );
}

/** What was judged about this record, sentence by sentence, gravest first. */
export function judgedBlock(context: Context, record: BookRecord, heading = "What was judged"): Block[] {
  const shown = shownOutcomes(context, record).filter(({ verdict }) => verdict !== "not applicable");
  const none = shownOutcomes(context, record).length - shown.length;
  if (shown.length === 0) return [];
  const rank = { failed: 0, "not judged": 1, "not due": 2, passed: 3, "not applicable": 4 } as const;
  const items = shown
    .map((outcome) => {
      const row = outcome.subject?.id.split("#")[1];
      const mark = markOf(outcome);
      const because = findingLinks(context, outcome);
      return {
        text: [titleOfOutcome(context, outcome), ...(row === undefined ? [] : [` (${row})`])] as Text,
        mark,
        ...(because.length > 0 && { because }),
      };
    })
    .sort((a, b) => rank[a.mark] - rank[b.mark]);
  return [
    { type: "heading", level: 2, text: heading },
    {
      type: "judged",
      items,
      ...(none > 0 && { notes: [{ text: [`${none} more check${none === 1 ? " does" : "s do"} not apply here.`] }] }),
    },
  ];
}

/** Who names this record: links back, by kind. */
export function namedBy(context: Context, record: BookRecord): Block[] {
  const links = context.judged.graph.back.get(addressOf(record)) ?? [];
  const from = [...new Set(links.map((link) => link.from))].filter((one) => one !== record);
  if (from.length === 0) return [];
  const shown = from.slice(0, 60).map((one) => nameOf(context, one));
  return [
    { type: "heading", level: 2, text: "Named by" },
    {
      type: "paragraph",
      text: shown
        .flatMap((one, index) => (index === 0 ? [one] : [", ", one]))
        .concat(from.length > 60 ? [` and ${from.length - 60} more.`] : ["."]),
    },
  ];
}

export function signatureBlock(context: Context, record: BookRecord): Block[] {
  const listed = record.value["signatures"];
  if (!isList(listed) || listed.length === 0) return [];
  return [
    {
      type: "signatures",
      rows: listed.flatMap((one, index) => {
        if (!isObject(one)) return [];
        const person = linkOf(context, record, `/signatures/${index}/person`);
        const name =
          person === undefined ? plain(one["person"]) : `${plain(person.value["name"]) || person.id} (${person.id})`;
        return [{ for: plain(one["role"]), that: "signed the original", date: plain(one["date"]), by: name }];
      }),
    },
  ];
}
