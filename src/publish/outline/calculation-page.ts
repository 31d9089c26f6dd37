import { describeBasis } from "../../model/basis.ts";
import type { Computed } from "../../model/book.ts";
import type { Finding } from "../../model/finding.ts";
import type { Block, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { thicknessFigure } from "../figures/steel-rule.ts";
import { acceptance, caution, crossCheck, limits } from "./calculation-checks.ts";
import { sheets } from "./calculation-sheets.ts";
import { resultOf, stepBlock } from "./calculation-steps.ts";
import { symbolsTable } from "./calculation-symbols.ts";
import { kindOf, labelOf, linkTo, pageOfComputed, rowOf, type Context } from "./context.ts";
import { scanBlocks } from "./evidence-blocks.ts";
import { findingGroups } from "./finding-blocks.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";
import { numbering, type Numbering } from "./record-blocks.ts";
import { lowerTitle, upper } from "./titles.ts";

/** One calculation as an inspector wants it: symbols, steps, limits, acceptance, recorded against recomputed, caution. */
export function calculationPageOf(context: Context, computed: Computed, number: string, section: number): Page {
  const { calculation, subject, pointer } = computed;
  const row = rowOf(context, subject, pointer);
  const label = labelOf(context, subject);
  const kind = lowerTitle(kindOf(context, subject).title);
  return {
    url: pageOfComputed(context, computed),
    number,
    kindLine: `Calculation, ${kind} ${subject.id}${row === undefined ? "" : `, ${row}`}${label === "" ? "" : `, ${label}`}`,
    title: calculation.title,
    under: underOf(context, computed),
    get blocks() {
      return calculationBlocks(context, computed, numbering(number));
    },
    section,
  };
}

function calculationBlocks(context: Context, computed: Computed, next: Numbering): Block[] {
  const { calculation } = computed;
  return [
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
    ...findingGroups(context, objections(context, computed)),
    ...computed.sheets.flatMap(({ record }) => scanBlocks(context, record)),
    caution(calculation),
  ];
}

/** Findings of the recomputation, in the order of the book. */
function objections(context: Context, { findings }: Computed): Finding[] {
  if (findings.length === 0) return [];
  return context.judged.findings.filter(({ key, severity }) => findings.includes(key) && severity !== "note");
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
