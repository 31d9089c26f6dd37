import { describeBasis } from "../../model/basis.ts";
import type { Computed, Done, Waiting } from "../../model/book.ts";
import type { Finding } from "../../model/finding.ts";
import { countSentence } from "../../model/mark.ts";
import type { Block, Mark, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { thicknessFigure } from "../figures/steel-rule.ts";
import { acceptance, caution, crossCheck, limits } from "./calculation-checks.ts";
import { sheets } from "./calculation-sheets.ts";
import { resultOf, stepBlock } from "./calculation-steps.ts";
import { symbolsTable } from "./calculation-symbols.ts";
import { waitingItem } from "./computed-blocks.ts";
import { linkTo, markOf, pageOfComputed, titleOfComputed, type Context } from "./context.ts";
import { scanBlocks } from "./evidence-blocks.ts";
import { findingGroups } from "./finding-blocks.ts";
import { limitsIn } from "./limits-table.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";
import { numbering, type Numbering } from "./record-blocks.ts";
import { counted, upper } from "./titles.ts";
import { usesBlocks } from "./uses-blocks.ts";

/** What a page of a calculation is called above its title, which says the rest. */
export const calculationKind = "Calculation";

/** One calculation as an inspector wants it: symbols, steps, limits, acceptance, recorded against recomputed, caution. */
export function calculationPageOf(context: Context, computed: Computed, number: string, section: number): Page {
  return {
    url: pageOfComputed(context, computed),
    number,
    kindLine: calculationKind,
    title: titleOfComputed(context, computed),
    under: computed.state === "done" ? underOf(context, computed) : underOfWaiting(context, computed),
    get blocks() {
      return computed.state === "done"
        ? calculationBlocks(context, computed, numbering(number))
        : waitingBlocks(context, computed, numbering(number));
    },
    section,
  };
}

/** What a calculation is for, and where its method comes from. */
const scopeBlock = ({ calculation }: Computed): Block => ({
  type: "paragraph",
  text: [calculation.covers],
  notes: [{ lead: "Basis", text: [describeBasis(calculation.basis)] }],
});

function calculationBlocks(context: Context, computed: Done, next: Numbering): Block[] {
  const { calculation } = computed;
  return [
    scopeBlock(computed),
    { type: "heading", level: 2, text: "Symbols" },
    symbolsTable(context, computed, next),
    { type: "heading", level: 2, text: "Calculation" },
    { type: "calculation", steps: computed.steps.map((step) => stepBlock(computed, step)) },
    ...acceptance(context, computed),
    ...thicknessFigure(computed, next),
    ...limits(context, computed),
    ...crossCheck(context, computed),
    ...sheets(context, computed, next),
    ...usesBlocks(context, [computed]),
    ...findingGroups(context, objections(context, computed)),
    ...computed.sheets.flatMap(({ record }) => scanBlocks(context, record)),
    caution(calculation),
  ];
}

/** The page of a result that waits: what is known, and why there is no more. */
function waitingBlocks(context: Context, computed: Waiting, next: Numbering): Block[] {
  return [
    scopeBlock(computed),
    { type: "heading", level: 2, text: "Why there is no result" },
    { type: "judged", items: [waitingItem(context, computed)] },
    ...(computed.inputs.size === 0
      ? []
      : [{ type: "heading", level: 2, text: "Symbols" } satisfies Block, symbolsTable(context, computed, next)]),
    ...limits(context, computed),
    ...sheets(context, computed, next),
    ...usesBlocks(context, [computed]),
    ...findingGroups(context, objections(context, computed)),
    ...computed.sheets.flatMap(({ record }) => scanBlocks(context, record)),
    caution(computed.calculation),
  ];
}

/** Findings of the recomputation, in the order of the book. */
function objections(context: Context, { outcome: { findings } }: Computed): Finding[] {
  if (findings.length === 0) return [];
  return context.judged.findings.filter(({ key, severity }) => findings.includes(key) && severity !== "note");
}

/** How a mark is said of one calculation. */
const said: Readonly<Record<Mark, string>> = {
  passed: "passed",
  computed: "gives figures of which nothing is asked",
  failed: "failed",
  rejected: "rests on what is rejected",
  answered: "did not pass, which an exception answers",
  "not judged": "is not judged",
  "not due": "is not due",
  "on record": "is on record and judged by nothing",
  "not applicable": "does not apply",
};

function underOf(context: Context, computed: Done): Text {
  const sheets = computed.sheets.flatMap(({ record, values, adopts }): Text => [
    adopts === undefined ? " The maker’s sheet " : " It is adopted by sheet ",
    linkTo(context, record),
    adopts !== undefined
      ? ": nothing independent stands beside it."
      : `: ${countSentence(
          values.map(({ verdict }) => verdict),
          (count) => counted(count, "compared value"),
        )}.`,
  ]);
  return [`${resultSentence(computed)}The calculation ${said[markOf(computed.outcome)]}.`, ...sheets];
}

function underOfWaiting(context: Context, { outcome, sheets: waiting }: Waiting): Text {
  return [
    `The calculation ${said[markOf(outcome)]}: there is no result.`,
    ...waiting.flatMap(({ record, adopts }): Text => [
      adopts === undefined ? " The maker’s sheet " : " The sheet that adopts it, ",
      linkTo(context, record),
      adopts === undefined ? " waits with it: nothing of it is compared." : ", waits with it.",
    ]),
  ];
}

/** The first acceptance in figures; without one, the limits it gives, or its last result. */
function resultSentence(computed: Done): string {
  const [first] = computed.accept;
  const last = computed.steps.at(-1);
  const limited = first === undefined ? limitsIn(computed) : [];
  if (limited.length > 0)
    return `${upper(limited.map(({ done, sense }) => `${done.step.means}: ${sense}${resultOf(done)}`).join("; "))}. `;
  if (first === undefined) return last === undefined ? "" : `${upper(last.step.means)}: ${resultOf(last)}. `;
  const { acceptance, left, right } = first;
  const own = unitOfSymbol(computed, acceptance.left);
  const unit = own === "1" ? unitOfSymbol(computed, acceptance.right) : own;
  return `${upper(acceptance.means)}: ${withUnit(figure(left, 5), unit)} against ${withUnit(figure(right, 5), unit)}. `;
}
