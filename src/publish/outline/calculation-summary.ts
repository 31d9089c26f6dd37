import { describeBasis } from "../../model/basis.ts";
import type { Computed, Judged } from "../../model/book.ts";
import { countSentence } from "../../model/mark.ts";
import { related, symbolDisplay, typeset } from "../../model/formula/typeset.ts";
import { formulaOf } from "../../model/formula/formula-of.ts";
import type { Block, Cell, Column, Mark, Row } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { caution } from "./calculation-checks.ts";
import { sheetsOfAll } from "./calculation-sheets.ts";
import { resultOf } from "./calculation-steps.ts";
import { formsOf } from "./calculation-symbols.ts";
import { kindOf, markOf, markOfJudged, subjectLink, worst, type Context } from "./context.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { figure } from "./numbers.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { numbering } from "./record-blocks.ts";
import { inFives } from "./row-tables.ts";
import { countedTitle, upper } from "./titles.ts";
import { usesBlocks } from "./uses-blocks.ts";

/** One calculation applied to many records: its formulas once, then a row for each. */
export function calculationSummary(context: Context, all: readonly Computed[], number: string, section: number): Page {
  const [first] = all;
  if (first === undefined) throw new Error("a summary needs at least one calculation");
  const { calculation, subject } = first;
  return {
    url: `calculation/${calculation.id}.html`,
    number,
    title: calculation.title,
    under: [
      `${countSentence(
        all.map(({ outcome }) => markOf(outcome)),
        (count) => countedTitle(count, kindOf(context, subject).title),
      )}.`,
    ],
    section,
    get blocks() {
      return summaryBlocks(context, first, all, number);
    },
  };
}

function summaryBlocks(context: Context, first: Computed, all: readonly Computed[], number: string): Block[] {
  const { calculation, subject } = first;
  const forms = formsOf(first);
  const inputs = Object.entries(calculation.inputs).filter(([symbol]) =>
    all.some((one) => one.inputs.get(symbol)?.value !== undefined),
  );
  const done = all.filter((one) => one.state === "done");
  const steps = calculation.steps.filter((step) => done.some((one) => one.steps.some((own) => own.step === step)));
  const symbolColumn = (symbol: string, unit: string): Column => ({
    head: plainSymbol(symbol, forms),
    symbol: symbolDisplay(symbol, forms.get(symbol)),
    align: "number",
    width: 1,
    ...(unit !== "1" && { unit }),
  });
  const columns: Column[] = [
    { head: kindOf(context, subject).title, align: "left", width: 2.4 },
    ...inputs.map(([symbol, { unit }]) => symbolColumn(symbol, unit)),
    ...steps.map(({ symbol, unit }) => symbolColumn(symbol, unit)),
    { head: "Verdict", align: "left", width: 1.5 },
  ];
  const rows = all.map((one): Row => ({
    cells: [
      {
        type: "text",
        text: [subjectLink(context, one)],
      },
      ...inputs.map(([symbol]): Cell => numberCell(one.inputs.get(symbol)?.value)),
      ...steps.map((step): Cell => {
        const own = one.state === "done" ? one.steps.find((other) => other.step === step) : undefined;
        return own === undefined ? { type: "empty" } : { type: "number", text: resultOf(own).replace(/ [^\d].*$/, "") };
      }),
      markCell(context, one),
    ],
  }));
  const next = numbering(number);
  return [
    {
      type: "paragraph",
      text: [calculation.covers],
      notes: [{ lead: "Basis", text: [describeBasis(calculation.basis)] }],
    },
    { type: "heading", level: 2, text: "Formulas" },
    {
      type: "facts",
      facts: steps.map((step) => ({
        label: step.means,
        value: [
          {
            type: "symbol",
            display: related(
              symbolDisplay(step.symbol, forms.get(step.symbol)),
              "=",
              typeset(formulaOf(step.formula), forms),
            ),
          },
        ],
      })),
    },
    { type: "heading", level: 2, text: "Symbols" },
    {
      ...plainTable(
        next(),
        "Symbols of the inputs",
        { Symbol: 1, Unit: 1, Meaning: 6 },
        inputs.map(([symbol, { unit, means }]): Row => ({
          cells: [
            { type: "text", text: [{ type: "symbol", display: symbolDisplay(symbol, forms.get(symbol)) }] },
            wordsCell(unit === "1" || unit === "rows" ? "" : unit),
            wordsCell(means),
          ],
        })),
      ),
      wide: false,
    },
    ...judgedInAll(
      context,
      "Acceptance",
      calculation.accept.map(({ means }) => means),
      all.map((one) => ({
        one,
        judged: one.state === "done" ? one.accept.map((own) => [own.acceptance.means, own] as const) : [],
      })),
    ),
    ...judgedInAll(
      context,
      "Limits of validity",
      calculation.limits.map(({ means }) => means),
      all.map((one) => ({ one, judged: one.limits.map((own) => [own.limit.means, own] as const) })),
    ),
    { type: "heading", level: 2, text: "Inputs and results" },
    {
      type: "table",
      number: next(),
      title: `${calculation.title}, each from its own records`,
      columns,
      groups: inFives(rows),
      wide: true,
    },
    ...sheetsOfAll(context, all, next),
    ...usesBlocks(context, all),
    caution(calculation),
  ];
}

interface Compared {
  readonly one: Computed;
  readonly judged: readonly (readonly [means: string, judged: Judged])[];
}

/** What must hold, once for all subjects: of how many it is asked, and what became of it; who waits, waits for each. */
function judgedInAll(context: Context, heading: string, asked: readonly string[], all: readonly Compared[]): Block[] {
  const items = [...new Set(asked)].flatMap((means) => {
    const marks = all.flatMap(({ one, judged }): Mark[] => {
      const own = judged.filter(([name]) => name === means);
      if (own.length > 0) return own.map(([, found]) => markOfJudged(context, found));
      return one.state === "waiting" ? [markOf(one.outcome)] : [];
    });
    if (marks.length === 0) return [];
    return [{ text: [`${upper(means)}: ${countSentence(marks, String)}.`], mark: worst(marks) }];
  });
  return items.length === 0
    ? []
    : [
        { type: "heading", level: 2, text: heading },
        { type: "judged", items },
      ];
}

function markCell(context: Context, { state, outcome }: Computed): Cell {
  const because = state === "waiting" ? reasonsOf(context, [outcome]) : [];
  return { type: "mark", mark: markOf(outcome), ...(because.length > 0 && { because }) };
}

function plainSymbol(symbol: string, forms: ReadonlyMap<string, string>): string {
  const { base, sub } = symbolDisplay(symbol, forms.get(symbol));
  return sub === undefined ? base : `${base} ${sub}`;
}

const numberCell = (value: number | undefined): Cell =>
  value === undefined ? { type: "empty" } : { type: "number", text: figure(value) };
