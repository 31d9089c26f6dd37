import { describeBasis } from "../../model/basis.ts";
import type { Computed } from "../../model/book.ts";
import { related, symbolDisplay, typeset } from "../../model/formula/typeset.ts";
import { formulaOf } from "../../compute/formula-of.ts";
import type { Block, Cell, Column, Row } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { caution } from "./calculation-checks.ts";
import { sheetsOfAll } from "./calculation-sheets.ts";
import { resultOf } from "./calculation-steps.ts";
import { formsOf } from "./calculation-symbols.ts";
import { grouped, kindOf, subjectLink, type Context } from "./context.ts";
import { figure } from "./numbers.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { numbering } from "./record-blocks.ts";
import { inFives } from "./row-tables.ts";
import { countedTitle, upper } from "./titles.ts";

/** One calculation applied to many records: its formulas once, then a row for each. */
export function calculationSummary(context: Context, all: readonly Computed[], number: string, section: number): Page {
  const [first] = all;
  if (first === undefined) throw new Error("a summary needs at least one calculation");
  const { calculation, subject } = first;
  return {
    url: `calculation/${calculation.id}.html`,
    number,
    title: calculation.title,
    under: [`${countedTitle(all.length, kindOf(context, subject).title)}. ${verdictSentence(all)}`],
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
  const steps = calculation.steps.filter((step) => all.some((one) => one.steps.some((done) => done.step === step)));
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
        const done = one.steps.find((other) => other.step === step);
        return done === undefined
          ? { type: "empty" }
          : { type: "number", text: resultOf(done).replace(/ [^\d].*$/, "") };
      }),
      { type: "mark", mark: one.verdict },
    ],
  }));
  const next = numbering(number);
  return [
    {
      type: "paragraph",
      text: [calculation.scope],
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
      "Acceptance",
      all.map(({ accept }) => accept.map(({ acceptance, holds }) => [acceptance.means, holds])),
    ),
    ...judgedInAll(
      "Limits of validity",
      all.map(({ limits }) => limits.map(({ limit, holds }) => [limit.means, holds])),
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
    caution(calculation),
  ];
}

/** What must hold, once for all subjects: in how many it is asked for, and in how many it holds. */
function judgedInAll(
  heading: string,
  each: readonly (readonly (readonly [means: string, holds: boolean])[])[],
): Block[] {
  const found = grouped(each.flat(), ([means]) => means);
  if (found.size === 0) return [];
  return [
    { type: "heading", level: 2, text: heading },
    {
      type: "judged",
      items: [...found].map(([means, asked]) => {
        const held = asked.filter(([, holds]) => holds).length;
        const all = held === asked.length;
        return {
          text: [`${upper(means)}: ${all ? "all" : `${held} of`} ${asked.length}.`],
          mark: all ? "passed" : "failed",
        };
      }),
    },
  ];
}

/** "All passed.", or how many did not. */
function verdictSentence(all: readonly Computed[]): string {
  const failed = all.filter(({ verdict }) => verdict === "failed").length;
  return failed === 0 ? "All passed." : `${failed} failed.`;
}

function plainSymbol(symbol: string, forms: ReadonlyMap<string, string>): string {
  const { base, sub } = symbolDisplay(symbol, forms.get(symbol));
  return sub === undefined ? base : `${base} ${sub}`;
}

const numberCell = (value: number | undefined): Cell =>
  value === undefined ? { type: "empty" } : { type: "number", text: figure(value) };
