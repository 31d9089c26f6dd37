import { commonPractice } from "../../model/basis.ts";
import { anyOf, count, list, optional, quantity, text, thing, things, type Values } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const placed = { from: optional(quantity("from", "mm")), to: optional(quantity("to", "mm")) };
type Placed = Values<typeof placed>;

/** Whether two repairs may be of one place: apart only where both places are stated. */
const meets = (one: Placed, other: Placed) =>
  one.from === undefined || one.to === undefined || other.from === undefined || other.to === undefined
    ? true
    : one.from.value <= other.to.value && other.from.value <= one.to.value;

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
    ...placed,
    others: anyOf(things("joint.<repair:joint>", { cycle: optional(count("cycle")), ...placed })),
  },
  *check({ cycle, most, approval, others, ...own }, repair) {
    if (cycle > most.value && approval === undefined)
      yield {
        at: "cycle",
        message: `repair ${repair.name} is number ${cycle} of its place; ${most.text} are permitted without consent`,
        why: "each repair heats the steel again and widens the weld",
        hint: "add the consent of the welding coordinator and of the inspection body",
      };
    else if (cycle > 1 && !others.some((one) => one.cycle === cycle - 1 && meets(own, one)))
      yield {
        at: "cycle",
        name: "before",
        message: `repair ${repair.name} is number ${cycle} of its place; number ${cycle - 1} there is not recorded`,
        why: others.map(({ $, cycle: number }) => `${$.name}: ${String(number ?? "not stated")}`).join(", "),
        hint: `add the repair that was made before, or correct the number${approval === undefined ? "; a repair made again is agreed to before it is made" : ""}`,
      };
  },
  examples: [
    { name: "the last permitted", given: { cycle: 2, most: "2", others: [{ cycle: 1 }] }, objections: [] },
    {
      name: "a first at another place",
      given: {
        cycle: 2,
        most: "2",
        from: "300 mm",
        to: "350 mm",
        others: [{ $: "X-00", cycle: 1, from: "2140 mm", to: "2210 mm" }],
      },
      objections: ["repair X-01 is number 2 of its place; number 1 there is not recorded"],
    },
    {
      name: "a second without a first",
      given: { cycle: 2, most: "2", others: [{ $: "X-01", cycle: 2 }] },
      objections: ["repair X-01 is number 2 of its place; number 1 there is not recorded"],
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

/** mm; depth may be measured from the top of the cap. */
const cap = 3;

export const repairDepth = rule({
  id: "repair-depth",
  title: "An excavation is no deeper than the weld it is in",
  basis: commonPractice(
    "a weld is as deep as its parts are thick, and by up to 3 mm more where depth is measured from the top of the cap",
  ),
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
    if (depth.low - depth.halfUnit <= most + cap) return;
    yield {
      at: "depth",
      message: `repair ${repair.name} is ${depth.text} deep; joint ${joint.$.name} is ${joint.thicknesses.map(({ text: one }) => one).join(" and ")} thick`,
      why: "no part with its weld reinforcement is as thick as that",
      hint: "compare with the repair sheet",
    };
  },
  examples: [
    {
      name: "through the wall",
      given: { depth: "9.5 mm", joint: { thicknesses: ["8.0 mm", "8.0 mm"] } },
      objections: [],
    },
    {
      name: "deeper",
      given: { depth: "12 mm", joint: { $: "C2", thicknesses: ["8.0 mm", "8.0 mm"] } },
      objections: ["repair X-01 is 12 mm deep; joint C2 is 8.0 mm and 8.0 mm thick"],
    },
  ],
});
