import { describeBasis } from "../../model/basis.ts";
import type { BoundInput, Computed } from "../../model/book.ts";
import { symbolDisplay } from "../../model/formula/typeset.ts";
import type { Block, Cell, Row, Text } from "../blocks.ts";
import { nameOf, pageOfComputed, type Context } from "./context.ts";
import { figure } from "./numbers.ts";
import { provedText } from "./proved-blocks.ts";
import { subjectWords } from "../../model/titles.ts";

/** The inputs of a calculation: symbol, value, unit, meaning, and where each comes from. */
export function symbolsTable(context: Context, computed: Computed, next: () => string): Block {
  const rows = Object.entries(computed.calculation.inputs).flatMap(([symbol, input]): Row[] => {
    const bound = computed.inputs.get(symbol);
    if (bound === undefined) return [];
    const value: Cell =
      bound.rows !== undefined
        ? { type: "text", text: [`${bound.rows} rows`] }
        : input.options !== undefined
          ? { type: "text", text: [bound.written ?? ""] }
          : { type: "number", text: shortNumber(bound) };
    return [
      {
        cells: [
          { type: "text", text: [{ type: "symbol", display: symbolDisplay(symbol, input.display) }] },
          value,
          { type: "text", text: [input.unit === "1" || input.unit === "rows" ? "" : input.unit] },
          { type: "text", text: [input.means, ...writtenAs(bound, input.unit)] },
          { type: "text", text: originText(context, bound) },
          { type: "text", text: provedText(context, computed, symbol) },
        ],
      },
    ];
  });
  return {
    type: "table",
    number: next(),
    title: "Symbols, values, and where they come from",
    columns: [
      { head: "Symbol", align: "left", width: 1 },
      { head: "Value", align: "number", width: 1.2 },
      { head: "Unit", align: "left", width: 1 },
      { head: "Meaning", align: "left", width: 4 },
      { head: "Where it comes from", align: "left", width: 3 },
      { head: "Proved by", align: "left", width: 2.5 },
    ],
    groups: [rows],
    wide: true,
  };
}

/** The value as the record has it, when the formula wants another unit. */
function writtenAs({ written, measured }: BoundInput, unit: string): Text {
  const own = written === undefined ? undefined : /^[<>]?-?[\d.]+ (.+)$/.exec(written)?.[1];
  if (written === undefined || measured === undefined || own === undefined || own === unit) return [];
  return [", recorded as ", { type: "whole", text: written }];
}

function originText(context: Context, { origin }: BoundInput): Text {
  switch (origin?.type) {
    case "record":
      return [
        nameOf(context, origin.record),
        " ",
        { type: "code", text: context.source(origin.record, origin.pointer) },
      ];
    case "profile":
      return [`profile: ${describeBasis(origin.basis)}`];
    case "table":
      return [`table “${tableTitle(context, origin.table)}”, ${origin.row}: ${describeBasis(origin.basis)}`];
    case "calculation":
      return [
        { type: "link", to: { page: pageOfComputed(context, origin.of) }, text: origin.of.calculation.title },
        ` of ${subjectWords(context.judged.definitions.kinds, origin.of.subject)}`,
      ];
    case "default":
      return ["not recorded; this value is assumed"];
    case undefined:
      return ["rows of the records named in the step"];
  }
}

/** Display forms of the symbols of a calculation. */
export function formsOf(computed: Computed): Map<string, string> {
  const list = [
    ...Object.entries(computed.calculation.inputs),
    ...computed.calculation.steps.map((step) => [step.symbol, step] as const),
  ];
  return new Map(list.flatMap(([symbol, { display }]) => (display === undefined ? [] : [[symbol, display] as const])));
}

/** The digits as recorded where the formula takes them unconverted; else the figure of the value. */
export const shortNumber = ({ value = 0, written, origin }: BoundInput) => {
  // A result is handed on in full; its own page prints it so.
  const digits =
    written === undefined || origin?.type === "calculation" ? undefined : /^-?\d+(\.\d+)?/.exec(written)?.[0];
  return digits !== undefined && Number(digits) === value ? digits : figure(value);
};

/** Tables are called by their title; the page that lists the tables has their names. */
const tableTitle = ({ judged }: Context, id: string): string =>
  judged.definitions.tables.find((table) => table.id === id)?.title ?? id;
