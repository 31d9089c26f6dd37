import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Categories in which a body approves how permanent joints are made; below them anybody may. */
const approved = ["II", "III", "IV"];

export const qualificationApprovedByBody = rule({
  id: "qualification-approved-by-body",
  title: "The procedures of equipment of category II to IV are approved by an inspection body",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I 3.1.2: operating procedures of permanent joints are approved by a competent third party, notified or recognised",
  ),
  kind: "procedure-qualification",
  when: [
    { path: "approvedBy", exists: true },
    { path: "book.equipment.directive.category", exists: true },
  ],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    named: anyOf(list(text("approvedBy"))),
    firms: anyOf(list(thing("approvedBy", { roles: anyOf(list(text("roles[]"))) }))),
    categories: anyOf(list(text("book.equipment.directive.category"))),
  },
  *check({ firms, categories }, qualification) {
    const category = categories.find((one) => approved.includes(one));
    for (const firm of firms)
      // Of a firm that may approve nothing the register of firms speaks.
      if (category !== undefined && firm.roles.includes("client") && !firm.roles.includes("inspection body"))
        yield {
          at: "named",
          on: firm,
          accuses: [],
          message: `procedure qualification ${qualification.name} is approved by ${firm.$.name}, which is registered as ${firm.roles.join(", ")}; the equipment is of category ${category}`,
          why: "from category II upwards an inspection body approves how permanent joints are made",
          hint: "name the body that approved it, or have the procedure approved by one",
        };
  },
  examples: [
    { name: "by a body", given: approvedBy("inspection body", "IV"), objections: [] },
    { name: "by the client, where anybody may", given: approvedBy("client", "I"), objections: [] },
    {
      name: "by the client",
      given: approvedBy("client", "IV"),
      objections: [
        "procedure qualification X-01 is approved by GREYVAULT, which is registered as client; the equipment is of category IV",
      ],
    },
  ],
});

function approvedBy(role: string, category: string) {
  return { firms: [{ $: "GREYVAULT", roles: [role] }], categories: [category] };
}
