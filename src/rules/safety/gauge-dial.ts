import { commonPractice } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf } from "../../requirements/boiler-conditions.ts";

export const gaugeFromNothing = rule({
  id: "gauge-from-nothing",
  title: "The scale of a pressure gauge begins at nothing or below",
  basis: commonPractice("who opens a vessel must see on its gauge that there is no pressure left"),
  kind: "fitting",
  when: [fittingOf("pressure-gauge"), { path: "gaugeRange.minimum", exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: { least: quantity("gaugeRange.minimum", "bar") },
  *check({ least }, gauge) {
    const answer = holds(least, "<=", exactly(0, "bar"));
    if (answer !== "yes")
      yield {
        at: "least",
        message: `the scale of pressure gauge ${gauge.name} begins at ${least.text}`,
        why: "below that it shows nothing, and a vessel under pressure looks empty",
        hint: "compare with the dial; correct the figure, or choose a gauge that begins at nothing",
        unsure: answer === "unsure",
      };
  },
  examples: [
    { name: "from nothing", given: { least: "0 bar" }, objections: [] },
    { name: "from vacuum", given: { least: "-1 bar" }, objections: [] },
    {
      name: "from the middle",
      given: { least: "4 bar" },
      objections: ["the scale of pressure gauge X-01 begins at 4 bar"],
    },
  ],
});

/** Coarser gauges are for showing whether there is pressure at all. */
const coarsest = exactly(2.5, "%");

export const gaugeClass = rule({
  id: "gauge-class",
  title: "A pressure gauge is of class 2.5 or better",
  basis: commonPractice("gauges of boilers and vessels are of class 1.0 to 2.5"),
  kind: "fitting",
  when: [fittingOf("pressure-gauge"), { path: "accuracyClass", exists: true }],
  severity: "query",
  owner: "design",
  inputs: { accuracy: quantity("accuracyClass", "%") },
  *check({ accuracy }, gauge) {
    const answer = holds(accuracy, "<=", coarsest);
    if (answer !== "yes")
      yield {
        at: "accuracy",
        message: `pressure gauge ${gauge.name} is of class ${accuracy.text}, coarser than 2.5 %`,
        why: "of a coarse gauge nobody can tell whether the pressure is within its limit",
        hint: "compare with the dial; correct the class, or answer this query with what was agreed",
        unsure: answer === "unsure",
      };
  },
  examples: [
    { name: "just fine enough", given: { accuracy: "2.5 %" }, objections: [] },
    {
      name: "coarse",
      given: { accuracy: "4.0 %" },
      objections: ["pressure gauge X-01 is of class 4.0 %, coarser than 2.5 %"],
    },
  ],
});
