import { fromMemory } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { fluidNames, fluidOf } from "../shared/fluids.ts";

const basis = fromMemory("Directive 2014/68/EU", undefined, "Article 13: fluids of group 1, and all others");

export const fluidGroup = rule({
  id: "fluid-group",
  title: "A fluid that everybody knows is of the group that its dangers give it",
  basis,
  kind: "equipment",
  when: [{ path: "fluid.name", equals: fluidNames }],
  severity: "nonconformity",
  owner: "design",
  inputs: { name: text("fluid.name"), group: text("fluid.group") },
  *check({ name, group }, equipment) {
    const known = fluidOf(name)?.group;
    if (known !== undefined && known !== group)
      yield {
        at: "group",
        accuses: [],
        message: `equipment ${equipment.name} is for ${name}, in group ${group}; that is a fluid of group ${known}`,
        why: "group 1 holds what explodes, burns, oxidises or poisons; all else is group 2",
        hint: "correct the group, or the name of the fluid",
      };
  },
  examples: [
    { name: "steam", given: { name: "water and steam", group: "2" }, objections: [] },
    { name: "natural gas", given: { name: "natural gas", group: "1" }, objections: [] },
    {
      name: "air as a dangerous fluid",
      given: { name: "compressed air", group: "1" },
      objections: ["equipment X-01 is for compressed air, in group 1; that is a fluid of group 2"],
    },
  ],
});
