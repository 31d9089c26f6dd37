import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, things } from "../../model/input.ts";
import { atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

export const jointCoefficient = rule({
  id: "joint-coefficient",
  title: "The coefficient of a longitudinal joint is the one its part is calculated with",
  basis: ownChoice("one seam has one coefficient; testing follows from the one, thickness from the other"),
  kind: "joint",
  when: [
    { path: "role", equals: "longitudinal" },
    { path: "weldCoefficient", exists: true },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    coefficient: quantity("weldCoefficient", "1"),
    parts: anyOf(things("parts[]", { coefficient: optional(quantity("weldCoefficient", "1")) })),
  },
  *check({ coefficient, parts }, joint) {
    for (const part of parts) {
      if (part.coefficient === undefined || part.coefficient.value === coefficient.value) continue;
      const less = atMost(coefficient, part.coefficient) === "yes";
      yield {
        at: "coefficient",
        name: part.$.id,
        message: `joint ${joint.name} has the coefficient ${coefficient.text}; part ${part.$.name} is calculated with ${part.coefficient.text}`,
        why: less ? "the wall is thinner than this seam allows" : "the seam is planned better than it is counted on",
        hint: "correct the wrong one",
        unsure: !less,
        related: [{ at: [part, "coefficient"], message: `${part.coefficient.text} stated here` }],
      };
    }
  },
  examples: [
    { name: "the same", given: { coefficient: "0.85", parts: [{ coefficient: "0.850" }] }, objections: [] },
    { name: "a part without", given: { coefficient: "0.85", parts: [{}] }, objections: [] },
    {
      name: "counted on for more",
      given: { coefficient: "0.7", parts: [{ $: "P01", coefficient: "0.85" }] },
      objections: ["joint X-01 has the coefficient 0.7; part P01 is calculated with 0.85"],
    },
    {
      name: "counted on for less",
      given: { coefficient: "1.0", parts: [{ $: "P01", coefficient: "0.85" }] },
      objections: ["joint X-01 has the coefficient 1.0; part P01 is calculated with 0.85"],
    },
  ],
});
