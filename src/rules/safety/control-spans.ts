import { commonPractice } from "../../model/basis.ts";
import { optional, quantity } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

interface Span {
  readonly id: string;
  readonly scope?: string;
  readonly title: string;
  readonly basis: string;
  readonly sort: string;
  readonly unit: "bar" | "kW";
  readonly low: string;
  readonly high: string;
  /** The upper value is at most so many times the lower. */
  readonly most: number;
  readonly words: readonly [low: string, high: string];
}

const spans: readonly Span[] = [
  {
    id: "controller-span",
    title: "A pressure controller turns the burner on again near where it turned it off",
    basis: "a controller keeps a boiler within a few tenths of its pressure, not within half of it",
    sort: "pressure-controller",
    unit: "bar",
    low: "cutIn",
    high: "cutOut",
    most: 2,
    words: ["turns it on at", "turns the burner off at"],
  },
  {
    id: "burner-span",
    scope: "fired",
    title: "A burner is turned down to a tenth of its heat input at the least",
    basis: "forced-draught burners are turned down to a third, and rarely to a tenth",
    sort: "burner",
    unit: "kW",
    low: "heatInputLeast",
    high: "heatInputMost",
    most: 12,
    words: ["is turned down to", "gives"],
  },
];

/** Two settings of one device lie within what such devices span. */
export const controlSpans: readonly Rule[] = spans.map(
  ({ id, scope, title, basis, sort, unit, low, high, most, words }) =>
    rule({
      id,
      title,
      basis: commonPractice(basis),
      kind: "fitting",
      ...(scope !== undefined && { scope }),
      when: [
        { path: "sort", equals: sort },
        { path: low, exists: true },
        { path: high, exists: true },
      ],
      severity: "query",
      owner: "supplier",
      inputs: { least: optional(quantity(low, unit)), greatest: optional(quantity(high, unit)) },
      *check({ least, greatest }, fitting) {
        if (least === undefined || greatest === undefined || greatest.value <= most * least.value) return;
        yield {
          at: "least",
          accuses: [],
          message: `${fitting.name} ${words[1]} ${greatest.text} and ${words[0]} ${least.text}`,
          why: `more than ${most} times as much`,
          hint: "compare both settings with the sheet of the device",
        };
      },
      examples: [
        { name: "within it", given: { least: `8.6 ${unit}`, greatest: `9.2 ${unit}` }, objections: [] },
        {
          name: "a digit too few",
          given: { least: `0.5 ${unit}`, greatest: `9.2 ${unit}` },
          objections: [`X-01 ${words[1]} 9.2 ${unit} and ${words[0]} 0.5 ${unit}`],
        },
      ],
    }),
);
