import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const makers = ["maker", "supplier", "mill"];
/** What a firm is registered for whose people hold a role. */
const firms: Readonly<Record<string, readonly string[]>> = {
  "inspection body": ["inspection body"],
  client: ["client"],
  testing: ["testing", "laboratory", "inspection body", ...makers],
  laboratory: ["laboratory", "testing", ...makers],
  supplier: ["supplier", "mill", "stockist", "laboratory", "testing"],
};

export const roleOfFirm = rule({
  id: "person-role-of-firm",
  title: "A person holds a role that the firm he works for can give",
  basis: commonPractice("an inspector works for the body, a welder for who welds: roles follow from who employs"),
  kind: "person",
  when: [{ path: "employer", exists: true }],
  severity: "query",
  owner: "document control",
  inputs: {
    roles: anyOf(list(text("roles[].role"))),
    firms: anyOf(list(thing("employer", { roles: anyOf(list(text("roles[]"))) }))),
  },
  *check({ roles, firms: employers }, person) {
    for (const firm of employers)
      for (const role of new Set(roles)) {
        const able = firms[role] ?? makers;
        if (firm.roles.length > 0 && !firm.roles.some((one) => able.includes(one)))
          yield {
            at: "roles",
            accuses: [],
            name: role,
            message: `${person.name} is registered as ${role} and works for ${firm.$.name}, which is registered as ${firm.roles.join(", ")}`,
            why: `expected of the firm: ${able.join(" or ")}`,
            hint: "correct the employer or the role; if he was lent or does both, answer this query",
            related: [{ at: firm, message: "registered here" }],
          };
      }
  },
  examples: [
    { name: "an inspector of the body", given: works("inspection body", "inspection body"), objections: [] },
    { name: "a welder of the maker", given: works("welder", "maker"), objections: [] },
    {
      name: "what the firm does is still owed",
      given: { roles: ["welder"], firms: [{ $: "GREYVAULT" }] },
      objections: [],
    },
    {
      name: "an inspector of the maker",
      given: works("inspection body", "maker"),
      objections: ["X-01 is registered as inspection body and works for GREYVAULT, which is registered as maker"],
    },
    {
      name: "a welder of the client",
      given: works("welder", "client"),
      objections: ["X-01 is registered as welder and works for GREYVAULT, which is registered as client"],
    },
  ],
});

function works(role: string, firm: string) {
  return { roles: [role], firms: [{ $: "GREYVAULT", roles: [firm] }] };
}
