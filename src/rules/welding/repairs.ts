import { commonPractice } from "../../model/basis.ts";
import { count, optional, quantity, text } from "../../model/input.ts";
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
  },
  *check({ cycle, most, approval }, repair) {
    if (cycle > most.value && approval === undefined)
      yield {
        at: "cycle",
        message: `repair ${repair.name} is number ${cycle} of its place; ${most.text} are permitted without consent`,
        why: "each repair heats the steel again and widens the weld",
        hint: "add the consent of the welding coordinator and of the inspection body",
      };
  },
  examples: [
    { name: "the last permitted", given: { cycle: 2, most: "2" }, objections: [] },
    {
      name: "one more",
      given: { cycle: 3, most: "2" },
      objections: ["repair X-01 is number 3 of its place; 2 are permitted without consent"],
    },
    {
      name: "one more, with consent",
      given: { cycle: 3, most: "2", approval: "letter of 2026-06-09" },
      objections: [],
    },
  ],
});
