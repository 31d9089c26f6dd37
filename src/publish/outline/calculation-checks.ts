import { describeBasis } from "../../model/basis.ts";
import type { Computed, Done, Judged } from "../../model/book.ts";
import type { Calculation, Comparison } from "../../model/calculation.ts";
import { related, typeset } from "../../model/formula/typeset.ts";
import { formulaOf } from "../../model/formula/formula-of.ts";
import type { Block, Mark, Text } from "../blocks.ts";
import { formsOf } from "./calculation-symbols.ts";
import { markOfJudged, type Context } from "./context.ts";
import { reasonsOfKeys } from "./finding-blocks.ts";
import { figure, withUnit } from "./numbers.ts";
import { upper } from "./titles.ts";

export function acceptance(context: Context, computed: Done): Block[] {
  if (computed.accept.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Acceptance" },
    {
      type: "judged",
      items: computed.accept.map(({ acceptance: one, left, right, margin, ...judged }) => ({
        text: [
          `${upper(one.means)}. `,
          ...comparisonText(computed, one, left, right),
          margin < 0 ? `, short by ${figure(-margin, 4)}.` : `, margin ${figure(margin, 4)}.`,
        ],
        ...markAndReason(context, judged),
      })),
    },
  ];
}

/** Mark of a comparison, and what stands against it. */
function markAndReason(context: Context, judged: Judged): { readonly mark: Mark; readonly because?: Text } {
  const because = judged.finding === undefined ? [] : reasonsOfKeys(context, [judged.finding]);
  return { mark: markOfJudged(context, judged), ...(because.length > 0 && { because }) };
}

export function limits(context: Context, computed: Computed): Block[] {
  if (computed.limits.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Limits of validity" },
    {
      type: "judged",
      items: computed.limits.map(({ limit, left, right, ...judged }) => ({
        text: [`${upper(limit.means)}. `, ...comparisonText(computed, limit, left, right), "."],
        ...markAndReason(context, judged),
      })),
      notes: [
        ...new Set(
          computed.limits.flatMap(({ limit }) => (limit.basis === undefined ? [] : [describeBasis(limit.basis)])),
        ),
      ].map((basis) => ({ lead: "Basis", text: [basis] })),
    },
  ];
}

/** The same quantity by a second method. */
export function crossCheck(context: Context, computed: Done): Block[] {
  const second = computed.calculation.crossCheck;
  if (second === undefined || computed.crossCheck === undefined) return [];
  const { value, ...judged } = computed.crossCheck;
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
          ...markAndReason(context, judged),
        },
      ],
      notes: [{ lead: "Basis", text: [describeBasis(second.basis)] }],
    },
  ];
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

/** What a recomputation is not: printed on every page of one. */
export function caution(calculation: Calculation): Block {
  return {
    type: "caution",
    text: [
      [
        calculation.caution ??
          "This recomputation covers the formula and limits shown above, with the values recorded in this book. It does not replace the calculation required by the applicable code, nor the judgement of a licensed designer.",
      ],
      ["Loads, details and failure modes that are not on this page were not checked here."],
    ],
  };
}
