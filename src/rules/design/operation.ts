import { fromMemory, ownChoice } from "../../model/basis.ts";
import { count, quantity } from "../../model/input.ts";
import { exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** Full cycles up to which the design by formulas counts as static. */
const staticCycles = 500;

export const pressureCycles = rule({
  id: "pressure-cycles",
  title: "A vessel designed for static pressure sees no more than 500 full pressure cycles",
  basis: fromMemory(
    "EN 13445-3",
    "2021",
    "design by formulas is for pressure of a predominantly non-cyclic nature: 500 full cycles",
  ),
  kind: "equipment",
  when: [
    { path: "designStandard.standard", equals: "EN 13445" },
    { path: "pressureCycles", exists: true },
  ],
  severity: "query",
  owner: "design",
  inputs: { cycles: count("pressureCycles") },
  *check({ cycles }, equipment) {
    if (cycles > staticCycles)
      yield {
        at: "cycles",
        message: `equipment ${equipment.name} is to see ${cycles} full pressure cycles, more than ${staticCycles}`,
        why: "its calculations are for static pressure, and fatigue has no method here",
        hint: "correct the number, or answer this query with the fatigue analysis",
      };
  },
  examples: [
    { name: "as many as count for static", given: { cycles: 500 }, objections: [] },
    {
      name: "one more",
      given: { cycles: 501 },
      objections: ["equipment X-01 is to see 501 full pressure cycles, more than 500"],
    },
  ],
});

export const vacuumAsked = rule({
  id: "vacuum-asked",
  title: "Equipment that may come under vacuum is decided by design",
  basis: ownChoice("what a recomputation does not cover is said, and somebody decides it"),
  kind: "equipment",
  when: [{ path: "limits.minimumAllowablePressure", exists: true }],
  severity: "query",
  owner: "design",
  inputs: { least: quantity("limits.minimumAllowablePressure", "bar") },
  *check({ least }, equipment) {
    const answer = holds(least, ">=", exactly(0, "bar"));
    if (answer === "yes") return;
    yield {
      at: "least",
      message: `equipment ${equipment.name} is allowed down to ${least.text}: its shell and ends are not calculated for pressure from outside`,
      why: "a thin shell buckles under vacuum that it bears easily from inside",
      hint: "correct the limit, or answer this query with the calculation for external pressure",
      unsure: answer === "unsure",
    };
  },
  examples: [
    { name: "never below the air around it", given: { least: "0 bar" }, objections: [] },
    {
      name: "vacuum",
      given: { least: "-0.2 bar" },
      objections: [
        "equipment X-01 is allowed down to -0.2 bar: its shell and ends are not calculated for pressure from outside",
      ],
    },
  ],
});
