import { ownChoice } from "../../model/basis.ts";
import { anyOf, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const heatTreatmentLoad = rule({
  id: "heat-treatment-load",
  title: "A heat treatment names what was in the furnace",
  basis: ownChoice("a charge that names nothing proves nothing of anything"),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    type: text("type"),
    parts: anyOf(things("parts[]", {})),
    joints: anyOf(things("joints[]", {})),
  },
  *check({ type, parts, joints }, charge) {
    if (parts.length + joints.length === 0)
      yield {
        at: "subject",
        accuses: ["subject"],
        message: `${type} ${charge.name} names neither a part nor a joint`,
        why: "nothing shows what it was made on",
        hint: "name the parts or joints that the furnace record lists",
      };
  },
  examples: [
    { name: "a part", given: { type: "stress relief", parts: [{}], joints: [] }, objections: [] },
    {
      name: "nothing",
      given: { type: "stress relief", parts: [], joints: [] },
      objections: ["stress relief X-01 names neither a part nor a joint"],
    },
  ],
});
