import { ownChoice } from "../../model/basis.ts";
import { list, optional, text } from "../../model/input.ts";
import { atLeast, atMost, measure, parseQuantity, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** A quantity in the unit of a limit; undefined when it cannot be stated in it. */
function inUnitOf(limit: string, value: string): readonly [Measure, Measure] | undefined {
  const bound = parseQuantity(limit, { unit: "any" });
  if (!bound.ok) return undefined;
  const { unit } = bound.quantity;
  const parsed = parseQuantity(value, { unit });
  return parsed.ok ? [measure(bound.quantity, unit), measure(parsed.quantity, unit)] : undefined;
}

/** Whether a value lies on the right side of a limit; a limit that is not stated is kept. */
function keeps(limit: string | undefined, value: string, side: typeof atLeast): "yes" | "no" | "unsure" {
  if (limit === undefined) return "yes";
  const pair = inUnitOf(limit, value);
  return pair === undefined ? "no" : side(pair[1], pair[0]);
}

export const dimensionWithin = rule({
  id: "dimension-within",
  title: "An accepted dimension lies within its limits",
  basis: ownChoice("limits and readings stand in one row"),
  kind: "dimension-check#rows",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    feature: text("feature"),
    minimum: optional(text("minimum")),
    maximum: optional(text("maximum")),
    measured: list(text("measured[]")),
    result: text("result"),
  },
  announces: [
    {
      awaits: "measured[]",
      limits: [
        { path: "minimum", means: "what is permitted", is: "at least" },
        { path: "maximum", means: "what is permitted", is: "at most" },
      ],
    },
  ],
  *check({ feature, minimum, maximum, measured, result }) {
    if (result !== "accepted") return;
    const judged = measured.map((value) => ({
      value,
      answers: [keeps(minimum, value, atLeast), keeps(maximum, value, atMost)],
    }));
    const outside = judged.filter(({ answers }) => answers.some((answer) => answer !== "yes"));
    if (outside.length === 0) return;
    const range = [minimum && `at least ${minimum}`, maximum && `at most ${maximum}`].filter(Boolean).join(" and ");
    yield {
      at: "measured",
      message: `${feature} measures ${outside.map(({ value }) => value).join(" and ")}; ${range} is permitted`,
      why: `measured: ${measured.join(", ")}; the row says accepted`,
      hint: "compare with the sheet; if it is true, raise a nonconformity report and have it decided",
      unsure: outside.every(({ answers }) => !answers.includes("no")),
    };
  },
  examples: [
    { name: "on both limits", given: row("1197 mm", "1203 mm"), objections: [] },
    { name: "in another unit", given: row("120.0 cm"), objections: [] },
    {
      name: "under the lower limit",
      given: row("1196 mm", "1200 mm"),
      objections: ["inside diameter measures 1196 mm; at least 1197 mm and at most 1203 mm is permitted"],
    },
    {
      name: "over the upper limit",
      given: row("1204 mm"),
      objections: ["inside diameter measures 1204 mm; at least 1197 mm and at most 1203 mm is permitted"],
    },
    {
      name: "a unit of something else",
      given: row("1200 °C"),
      objections: ["inside diameter measures 1200 °C; at least 1197 mm and at most 1203 mm is permitted"],
    },
    { name: "without limits", given: { feature: "length", measured: ["3000 mm"], result: "accepted" }, objections: [] },
    { name: "outside, and rejected", given: { ...row("1204 mm"), result: "rejected" }, objections: [] },
  ],
});

function row(...measured: readonly string[]) {
  return { feature: "inside diameter", minimum: "1197 mm", maximum: "1203 mm", measured, result: "accepted" };
}
