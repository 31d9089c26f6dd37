import { derivedFrom, fromMemory } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** Share of the set pressure that may be lost on the way to a valve while it blows. */
const mostLost = 0.03;

export const valveInletLoss = rule({
  id: "valve-inlet-loss",
  title: "On the way to a safety valve no more than 3 % of its set pressure are lost",
  basis: fromMemory(
    "EN ISO 4126-9",
    undefined,
    "pressure drop of the inlet line at certified capacity: 3 % of the set pressure",
  ),
  kind: "safety-valve",
  when: [{ path: "inletLoss", exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: { loss: quantity("inletLoss", "bar"), set: quantity("setPressure", "bar") },
  *check({ loss, set }, valve) {
    const answer = holds(loss, "<=", exactly(mostLost * set.value, "bar"));
    if (answer === "yes") return;
    yield {
      at: "loss",
      message: `${loss.text} are lost on the way to safety valve ${valve.name}, more than 3 % of its set pressure, ${set.text}`,
      why: "a valve that loses more closes again while it blows, and chatters",
      hint: "correct the figure, or widen or shorten the branch",
      unsure: answer === "unsure",
      related: [{ at: "set", message: `${set.text} here` }],
    };
  },
  examples: [
    { name: "just little enough", given: { loss: "0.3 bar", set: "10 bar" }, objections: [] },
    {
      name: "more",
      given: { loss: "0.31 bar", set: "10 bar" },
      objections: ["0.31 bar are lost on the way to safety valve X-01, more than 3 % of its set pressure, 10 bar"],
    },
  ],
});

/** The share of the bore at which the ring between disc and seat is as wide as the bore itself. */
const fullLift = 0.25;

export const valveLift = rule({
  id: "valve-lift",
  title: "The disc of a safety valve lifts by a quarter of its flow diameter",
  basis: derivedFrom("the area between disc and seat, π·d·h, is no smaller than that of the bore, π·d²/4"),
  kind: "safety-valve",
  when: [
    { path: "lift", exists: true },
    { path: "flowDiameter", exists: true },
  ],
  severity: "query",
  owner: "design",
  inputs: { lift: quantity("lift", "mm"), bore: quantity("flowDiameter", "mm") },
  *check({ lift, bore }, valve) {
    const answer = holds(lift, ">=", exactly(fullLift * bore.value, "mm"));
    if (answer === "yes") return;
    yield {
      at: "lift",
      message: `safety valve ${valve.name} lifts by ${lift.text}, less than a quarter of its flow diameter, ${bore.text}`,
      why: "the gap at the disc is then narrower than the bore its capacity is calculated with",
      hint: "compare with the certificate; correct the figure, or answer this query with a coefficient that was certified at this lift",
      unsure: answer === "unsure",
      related: [{ at: "bore", message: `${bore.text} here` }],
    };
  },
  examples: [
    { name: "a quarter", given: { lift: "10 mm", bore: "40 mm" }, objections: [] },
    {
      name: "less",
      given: { lift: "4 mm", bore: "40 mm" },
      objections: ["safety valve X-01 lifts by 4 mm, less than a quarter of its flow diameter, 40 mm"],
    },
  ],
});
