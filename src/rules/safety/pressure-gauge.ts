import { commonPractice } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { atLeast, atMost, exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf } from "../../requirements/boiler-conditions.ts";
import { owedBy } from "../../model/owes.ts";

export const gaugeRange = rule({
  id: "gauge-range",
  title: "The pressure gauge of a boiler has a range in which its pressure can be read",
  basis: commonPractice("a range of one and a half times the pressure at least, about twice at best; see the profile"),
  kind: "fitting",
  when: [fittingOf("pressure-gauge")],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    range: quantity("gaugeRange.maximum", "bar"),
    most: quantity("equipment.limits.maximumAllowablePressure", "bar"),
    least: quantity("profile.boilerGaugeRangeLeast", "1"),
    greatest: quantity("profile.boilerGaugeRangeMost", "1"),
  },
  owes: [owedBy("quality", "final-inspection", "range")],
  *check({ range, most, least, greatest }, gauge) {
    const times = (factor: number) => ({
      ...exactly(factor * most.value, "bar"),
      low: factor * most.low,
      high: factor * most.high,
    });
    const enough = atLeast(range, times(least.value));
    const coarse = atMost(range, times(greatest.value)) !== "yes";
    if (enough === "yes" && !coarse) return;
    yield {
      at: "range",
      message: `pressure gauge ${gauge.name} reads to ${range.text}, ${enough === "yes" ? `more than ${greatest.text}` : `less than ${least.text}`} times ${most.text}`,
      why:
        enough === "yes"
          ? "so wide a scale is read too coarsely"
          : "the pointer must not reach the end of the scale while a safety valve blows or at a test",
      hint: "compare with the dial; choose a gauge of about twice the pressure",
      unsure: enough !== "no",
      related: [{ at: "most", message: `${most.text} here` }],
    };
  },
  examples: [
    {
      name: "one and a half times",
      given: dial("15 bar"),
      objections: [],
      source: "49 CFR 229.107 (a): graduated to not less than one and one-half times the allowed pressure",
    },
    { name: "two and a half times", given: dial("25 bar"), objections: [] },
    {
      name: "less",
      given: dial("14.9 bar"),
      objections: ["pressure gauge X-01 reads to 14.9 bar, less than 1.5 times 10 bar"],
    },
    {
      name: "more",
      given: dial("25.1 bar"),
      objections: ["pressure gauge X-01 reads to 25.1 bar, more than 2.5 times 10 bar"],
    },
  ],
});

function dial(range: string) {
  return { range, most: "10 bar", least: "1.5", greatest: "2.5" };
}

export const gaugeRedMark = rule({
  id: "gauge-red-mark",
  title: "The red mark of the pressure gauge of a boiler stands at the maximum allowable pressure",
  basis: commonPractice("a red mark shows who watches the gauge where the pressure must not go"),
  kind: "fitting",
  when: [fittingOf("pressure-gauge")],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    mark: quantity("redMark", "bar"),
    most: quantity("equipment.limits.maximumAllowablePressure", "bar"),
  },
  owes: [owedBy("quality", "final-inspection", "mark")],
  *check({ mark, most }, gauge) {
    const answer = holds(mark, "=", most);
    if (answer !== "yes")
      yield {
        at: "mark",
        message: `the red mark of pressure gauge ${gauge.name} stands at ${mark.text}; the maximum allowable pressure is ${most.text}`,
        why: "the mark is the limit the operator sees",
        hint: "look at the dial: correct the figure, or have the mark moved",
        unsure: answer === "unsure",
        related: [{ at: "most", message: `${most.text} here` }],
      };
  },
  examples: [
    { name: "there", given: { mark: "10.0 bar", most: "10 bar" }, objections: [] },
    {
      name: "elsewhere",
      given: { mark: "10.3 bar", most: "10 bar" },
      objections: ["the red mark of pressure gauge X-01 stands at 10.3 bar; the maximum allowable pressure is 10 bar"],
    },
  ],
});
