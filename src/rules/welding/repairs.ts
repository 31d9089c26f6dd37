import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { anyOf, count, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const repairCycle = rule({
  id: "repair-cycle",
  title: "A place is not repaired again and again",
  basis: commonPractice("a further repair of the same place needs consent"),
  kind: "repair",
  severity: "query",
  owner: "welding coordination",
  inputs: {
    cycle: count("cycle"),
    most: quantity("profile.repairCyclesMost", "1"),
    approval: optional(text("approval")),
    others: anyOf(things("joint.<repair:joint>", { cycle: optional(count("cycle")) })),
  },
  *check({ cycle, most, approval, others }, repair) {
    if (cycle > most.value && approval === undefined)
      yield {
        at: "cycle",
        message: `repair ${repair.name} is number ${cycle} of its place; ${most.text} are permitted without consent`,
        why: "each repair heats the steel again and widens the weld",
        hint: "add the consent of the welding coordinator and of the inspection body",
      };
    else if (cycle > 1 && !others.some((one) => one.cycle === cycle - 1))
      yield {
        at: "cycle",
        name: "before",
        message: `repair ${repair.name} is number ${cycle} of its place; number ${cycle - 1} of that joint is not recorded`,
        why: others.map(({ $, cycle: number }) => `${$.name}: ${String(number ?? "not stated")}`).join(", "),
        hint: "add the repair that was made before, or correct the number",
      };
  },
  examples: [
    { name: "the last permitted", given: { cycle: 2, most: "2", others: [{ cycle: 1 }] }, objections: [] },
    {
      name: "a second without a first",
      given: { cycle: 2, most: "2", others: [{ $: "X-01", cycle: 2 }] },
      objections: ["repair X-01 is number 2 of its place; number 1 of that joint is not recorded"],
    },
    {
      name: "one more",
      given: { cycle: 3, most: "2", others: [{ cycle: 2 }] },
      objections: ["repair X-01 is number 3 of its place; 2 are permitted without consent"],
    },
    {
      name: "one more, with consent",
      given: { cycle: 3, most: "2", approval: "letter of 2026-06-09", others: [{ cycle: 2 }] },
      objections: [],
    },
  ],
});

export const repairDepth = rule({
  id: "repair-depth",
  title: "An excavation is no deeper than the weld it is in",
  basis: derivedFrom("a weld is as deep as its parts are thick; beyond is a hole"),
  kind: "repair",
  when: [{ path: "depth", exists: true }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    depth: quantity("depth", "mm"),
    joint: thing("joint", {
      thicknesses: list(quantity("thicknesses[]", "mm")),
      throat: optional(quantity("throat", "mm")),
    }),
  },
  *check({ depth, joint }, repair) {
    // A plate that another is set on is as deep as it is thick, whatever the throat.
    const most = Math.max(
      ...[...joint.thicknesses, ...(joint.throat === undefined ? [] : [joint.throat])].map(({ high }) => high),
    );
    if (depth.low - depth.halfUnit <= most) return;
    yield {
      at: "depth",
      message: `repair ${repair.name} is ${depth.text} deep; joint ${joint.$.name} is ${joint.thicknesses.map(({ text: one }) => one).join(" and ")} thick`,
      why: "no part is as thick as that",
      hint: "compare with the repair sheet",
    };
  },
  examples: [
    {
      name: "through the wall",
      given: { depth: "8 mm", joint: { thicknesses: ["8.0 mm", "8.0 mm"] } },
      objections: [],
    },
    {
      name: "deeper",
      given: { depth: "9.5 mm", joint: { $: "C2", thicknesses: ["8.0 mm", "8.0 mm"] } },
      objections: ["repair X-01 is 9.5 mm deep; joint C2 is 8.0 mm and 8.0 mm thick"],
    },
  ],
});
