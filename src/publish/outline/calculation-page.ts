import { describeBasis } from "../../model/basis.ts";
import type { BoundInput, ComparedValue, Computed, ComputedStep } from "../../model/book.ts";
import type { Comparison } from "../../model/calculation.ts";
import { related, substitute, symbolDisplay, typeset } from "../../model/formula/typeset.ts";
import { printAllowed, printNumber, printRequired } from "../../model/print-number.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";
import { formulaOf } from "../../compute/run.ts";
import type { Block, CalculationStep, Cell, Note, Page, Row, Text } from "../blocks.ts";
import { calculationPage } from "./address.ts";
import { labelOf, linkTo, nameOf, plain, rowOf, kindOf, targetOf, type Context } from "./context.ts";
import { findingGroups } from "./finding-blocks.ts";
import { thicknessFigure } from "../figures/steel-rule.ts";
import { numbering, scanBlocks } from "./record-blocks.ts";
import { lowerTitle } from "./titles.ts";

export function pageOfComputed(context: Context, computed: Computed): string {
  return calculationPage(
    computed.calculation.id,
    computed.subject,
    rowOf(context, computed.subject, computed.pointer) ?? "",
  );
}

/** One calculation as an inspector wants it: symbols, steps, limits, acceptance, recorded against recomputed, caution. */
export function calculationPageOf(context: Context, computed: Computed, number: string, section: number): Page {
  const { calculation, subject, pointer } = computed;
  const next = numbering(number);
  const row = rowOf(context, subject, pointer);
  const label = labelOf(context, subject);
  const kind = lowerTitle(kindOf(context, subject).title);
  const blocks: Block[] = [
    {
      type: "paragraph",
      text: [calculation.scope],
      notes: [{ lead: "Basis", text: [describeBasis(calculation.basis)] }],
    },
    { type: "heading", level: 2, text: "Symbols" },
    symbolsTable(context, computed, next),
    { type: "heading", level: 2, text: "Calculation" },
    { type: "calculation", steps: computed.steps.map((step) => stepBlock(computed, step)) },
    ...acceptance(computed),
    ...thicknessFigure(computed, next),
    ...limits(computed),
    ...crossCheck(computed),
    ...sheets(context, computed, next),
    ...findingGroups(
      context,
      context.judged.findings.filter(({ key, severity }) => computed.findings.includes(key) && severity !== "note"),
    ),
    ...computed.sheets.flatMap(({ record }) => scanBlocks(context, record)),
    {
      type: "caution",
      text: [
        [
          calculation.caution ??
            "This recomputation covers the formula and limits shown above, with the values recorded in this book. It does not replace the calculation required by the applicable code, nor the judgement of a licensed designer.",
        ],
        ["Loads, details and failure modes that are not on this page were not checked here."],
      ],
    },
  ];
  return {
    url: pageOfComputed(context, computed),
    number,
    kindLine: `Calculation, ${kind} ${subject.id}${row === undefined ? "" : `, ${row}`}${label === "" ? "" : `, ${label}`}`,
    title: calculation.title,
    under: underOf(context, computed),
    blocks,
    section,
  };
}

function underOf(context: Context, computed: Computed): Text {
  const agree = computed.sheets.map(({ record, values }) => ({
    record,
    good: values.every(({ verdict }) => verdict === "passed"),
  }));
  const result = resultSentence(computed);
  const sheet: Text = agree.flatMap(({ record, good }): Text => [
    good ? " The maker’s sheet " : " The maker’s sheet ",
    linkTo(context, record),
    good ? " agrees with it." : " does not agree with it.",
  ]);
  return [
    `${result}The calculation ${computed.verdict === "passed" ? "passed" : computed.verdict === "failed" ? "failed" : "is not judged"}.`,
    ...sheet,
  ];
}

/** The first acceptance in figures; without one, the last result. */
function resultSentence(computed: Computed): string {
  const [first] = computed.accept;
  const last = computed.steps.at(-1);
  if (first === undefined) return last === undefined ? "" : `${upper(last.step.means)}: ${resultOf(last)}. `;
  const { acceptance, left, right } = first;
  const own = unitOfSymbol(computed, acceptance.left);
  const unit = own === "1" ? unitOfSymbol(computed, acceptance.right) : own;
  return `${upper(acceptance.means)}: ${withUnit(figure(left, 5), unit)} against ${withUnit(figure(right, 5), unit)}. `;
}

/** "All passed.", or how many did not. */
export function verdictSentence(all: readonly Computed[]): string {
  const failed = all.filter(({ verdict }) => verdict === "failed").length;
  return failed === 0 ? "All passed." : `${failed} failed.`;
}

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Rounded the safe way where the step says so, else nine significant digits at most. */
export function resultOf(done: ComputedStep): string {
  const { step, value } = done;
  if (step.options !== undefined) return step.options[value] ?? String(value);
  return withUnit(roundedOf(done) ?? figure(value), step.unit);
}

function roundedOf({ step, value }: ComputedStep): string | undefined {
  if (step.round === undefined) return undefined;
  const { decimals, direction } = step.round;
  return direction === "up"
    ? printRequired(value, decimals)
    : direction === "down"
      ? printAllowed(value, decimals)
      : printNumber(value, decimals);
}

/** Display forms of the symbols of a calculation. */
export function formsOf(computed: Computed): Map<string, string> {
  const list = [
    ...Object.entries(computed.calculation.inputs),
    ...computed.calculation.steps.map((step) => [step.symbol, step] as const),
  ];
  return new Map(list.flatMap(([symbol, { display }]) => (display === undefined ? [] : [[symbol, display] as const])));
}

function stepBlock(computed: Computed, done: ComputedStep): CalculationStep {
  const { step, value, governing, lines } = done;
  const display = formsOf(computed);
  const formula = formulaOf(step.formula);
  const named = computed.calculation.functions?.find((one) => formula.type === "call" && formula.name === one.name);
  const left = symbolDisplay(step.symbol, display.get(step.symbol));
  const values = new Map(
    [...computed.inputs].flatMap(([symbol, bound]) =>
      bound.value === undefined ? [] : [[symbol, shortNumber(bound)] as const],
    ),
  );
  for (const other of computed.steps) values.set(other.step.symbol, figure(other.value));
  const notes: Note[] = [
    ...(named === undefined ? [] : [{ text: [named.means] }, { lead: "Basis", text: [describeBasis(named.basis)] }]),
    ...(step.basis === undefined ? [] : [{ lead: "Basis", text: [describeBasis(step.basis)] }]),
    ...(step.round?.direction === "up"
      ? [{ text: ["Required values are rounded up."] }]
      : step.round?.direction === "down"
        ? [{ text: ["Allowed values are rounded down."] }]
        : []),
  ];
  const rounded = roundedOf(done);
  return {
    means: `${upper(step.means)}.`,
    formula: related(left, "=", typeset(formula, display)),
    ...(named === undefined && { substituted: related(left, "=", substitute(formula, values, display)) }),
    result: step.options !== undefined ? (step.options[value] ?? String(value)) : withUnit(figure(value, 9), step.unit),
    ...(rounded !== undefined && { rounded: withUnit(rounded, step.unit) }),
    ...(governing !== undefined && { governs: governs(governing, step.unit) }),
    lines,
    notes,
  };
}

const places = ["first", "second", "third", "fourth", "fifth"];

function governs({ index, values }: NonNullable<ComputedStep["governing"]>, unit: string): string {
  const others = values.flatMap((value, at) => (at === index ? [] : [withUnit(figure(value), unit)]));
  return `The ${places[index] ?? `${index + 1}th`} governs; the other${others.length === 1 ? "" : "s"}: ${others.join(", ")}.`;
}

const shortNumber = ({ value = 0, written }: BoundInput) => {
  const digits = written === undefined ? undefined : /^-?\d+(\.\d+)?/.exec(written)?.[0];
  return digits !== undefined && Number(digits) === value ? digits : figure(value);
};

function symbolsTable(context: Context, computed: Computed, next: () => string): Block {
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
    ],
    groups: [rows],
    wide: true,
  };
}

/** The value as the record has it, when the formula wants another unit. */
function writtenAs({ written, measure }: BoundInput, unit: string): Text {
  const own = written === undefined ? undefined : /^[<>]?-?[\d.]+ (.+)$/.exec(written)?.[1];
  if (written === undefined || measure === undefined || own === undefined || own === unit) return [];
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
      return [`profile, ${origin.name}: ${describeBasis(origin.basis)}`];
    case "table":
      return [`table ${origin.table}, ${origin.row}: ${describeBasis(origin.basis)}`];
    case "calculation":
      return [
        { type: "link", to: { page: pageOfComputed(context, origin.of) }, text: origin.of.calculation.title },
        ` of ${origin.of.subject.kind} ${origin.of.subject.id}`,
      ];
    case "default":
      return ["not recorded; this value is assumed"];
    case undefined:
      return ["rows of the records named in the step"];
  }
}

const signs = { "<=": "≤", "<": "<", ">=": "≥", ">": ">", "=": "=" } as const;

function comparisonText(
  computed: Computed,
  { left, relation, right }: Comparison,
  leftValue: number,
  rightValue: number,
): Text {
  const display = formsOf(computed);
  return [
    {
      type: "symbol",
      display: related(typeset(formulaOf(left), display), signs[relation], typeset(formulaOf(right), display)),
    },
    `: ${figure(leftValue)} ${signs[relation]} ${figure(rightValue)}`,
  ];
}

function acceptance(computed: Computed): Block[] {
  if (computed.accept.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Acceptance" },
    {
      type: "judged",
      items: computed.accept.map(({ acceptance: one, left, right, holds }) => ({
        text: [
          `${upper(one.means)}. `,
          ...comparisonText(computed, one, left, right),
          `, margin ${figure(Math.abs(left - right), 4)}.`,
        ],
        mark: holds ? "passed" : "failed",
      })),
    },
  ];
}

function limits(computed: Computed): Block[] {
  if (computed.limits.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Limits of validity" },
    {
      type: "judged",
      items: computed.limits.map(({ limit, left, right, holds }) => ({
        text: [`${upper(limit.means)}. `, ...comparisonText(computed, limit, left, right), "."],
        mark: holds ? "passed" : "failed",
      })),
      notes: [
        ...new Set(
          computed.limits.flatMap(({ limit }) => (limit.basis === undefined ? [] : [describeBasis(limit.basis)])),
        ),
      ].map((basis) => ({ lead: "Basis", text: [basis] })),
    },
  ];
}

function crossCheck(computed: Computed): Block[] {
  const second = computed.calculation.crossCheck;
  if (second === undefined || computed.crossCheck === undefined) return [];
  const { value, agrees } = computed.crossCheck;
  const first = computed.steps.find(({ step }) => step.symbol === second.symbol)?.value ?? Number.NaN;
  return [
    { type: "heading", level: 2, text: "Second method" },
    {
      type: "judged",
      items: [
        {
          text: [
            `${upper(second.means)}: ${withUnit(figure(value), second.unit)} against ${withUnit(figure(first), second.unit)}.`,
          ],
          mark: agrees ? "passed" : "failed",
        },
      ],
      notes: [{ lead: "Basis", text: [describeBasis(second.basis)] }],
    },
  ];
}

function sheets(context: Context, computed: Computed, next: () => string): Block[] {
  if (computed.sheets.length === 0)
    return [
      { type: "heading", level: 2, text: "Recorded against recomputed" },
      { type: "paragraph", text: ["The book holds no sheet of the maker for this calculation."] },
    ];
  return [
    { type: "heading", level: 2, text: "Recorded against recomputed" },
    {
      type: "paragraph",
      text: [
        "The recomputation does not read the maker’s sheet. Its inputs and results are compared afterwards, one by one.",
      ],
    },
    ...computed.sheets.map(({ record, values }): Block => {
      const group = (sort: string) => values.filter((one) => one.sort === sort);
      return {
        type: "table",
        number: next(),
        title: `Sheet ${record.id}, revision ${plain(record.value["revision"]) || "not stated"}`,
        columns: [
          { head: "Symbol", align: "left", width: 1 },
          { head: "Recorded", align: "left", width: 2 },
          { head: "Recomputed", align: "number", width: 2 },
          { head: "Unit", align: "left", width: 1 },
          { head: "Compared", align: "left", width: 2 },
        ],
        groups: [group("input"), group("result"), group("adopted")]
          .filter((rows) => rows.length > 0)
          .map((rows) =>
            rows.map((one) => ({
              cells: [
                {
                  type: "text",
                  text: [{ type: "symbol", display: symbolDisplay(one.symbol, formsOf(computed).get(one.symbol)) }],
                },
                { type: "text", text: [{ type: "whole", text: one.recorded }] },
                recomputedCell(one),
                { type: "text", text: [one.unit === "1" ? "" : one.unit] },
                { type: "mark", mark: one.verdict },
              ],
            })),
          ),
        notes: [
          {
            lead: "Source",
            text: [
              { type: "link", to: targetOf(context, record), text: record.id },
              " ",
              { type: "code", text: context.source(record) },
            ],
          },
          {
            text: [
              "A recorded result agrees within half a unit of its last digit on the unsafe side, one unit on the safe side.",
            ],
          },
        ],
      };
    }),
  ];
}

function recomputedCell({ recomputed, unit }: ComparedValue): Cell {
  const tail = ` ${unit}`;
  const text = recomputed.endsWith(tail) ? recomputed.slice(0, -tail.length) : recomputed;
  return /^[\d.−-]/.test(text) ? { type: "number", text } : { type: "text", text: [text] };
}
