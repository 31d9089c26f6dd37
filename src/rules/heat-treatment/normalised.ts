import { commonPractice } from "../../model/basis.ts";
import { optional, quantity, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** K/h; still air cools the thickest plates of boilers faster, a closed furnace slower. */
const slow = 150;

export const normalisedInAir = rule({
  id: "normalised-in-air",
  title: "What is normalised cools in air",
  basis: commonPractice(
    "normalising ends in still air, at some hundred kelvin an hour and more; below 150 K/h it cooled in the furnace, is annealed, and softer",
  ),
  kind: "heat-treatment",
  when: [
    { path: "type", equals: "normalising" },
    { path: "coolingRate", exists: true },
  ],
  severity: "query",
  owner: "supplier",
  inputs: { type: text("type"), rate: optional(quantity("coolingRate", "K/h")) },
  *check({ rate }, treatment) {
    if (rate === undefined || rate.high >= slow) return;
    yield {
      at: "rate",
      accuses: [],
      message: `heat treatment ${treatment.name} is a normalising that cooled at ${rate.text} at most`,
      why: `slower than ${slow} K/h steel is annealed, and is not in condition +N`,
      hint: "compare with the chart; if it cooled in the furnace, have it normalised again, and test pieces with it",
    };
  },
  examples: [
    { name: "in air", given: { type: "normalising", rate: "900 K/h" }, objections: [] },
    {
      name: "in the furnace",
      given: { type: "normalising", rate: "50 K/h" },
      objections: ["heat treatment X-01 is a normalising that cooled at 50 K/h at most"],
    },
  ],
});
