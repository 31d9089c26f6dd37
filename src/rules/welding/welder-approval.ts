import { fromMemory } from "../../model/basis.ts";
import { flag, optional, table, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const welderApproved = rule({
  id: "welder-approved",
  title: "Welders of equipment of category II to IV are approved by a third party",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I, permanent joining: personnel approved by a competent third party",
  ),
  kind: "welder-qualification",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    approval: flag("thirdPartyApproval"),
    category: optional(text("book.equipment.directive.category")),
    approvals: table("welder-approval"),
  },
  *check({ approval, category, approvals }, certificate) {
    if (!approval && category !== undefined && approvals(category).text("asked") === "yes")
      yield {
        at: "approval",
        message: `certificate ${certificate.name} is not approved by a third party; the equipment is of category ${category}`,
        why: "from category II upwards an inspection body or a recognised third party approves those who weld",
        hint: "add the approval, or the certificate of a test that a third party approved",
      };
  },
  examples: [
    { name: "approved", given: { approval: true, category: "IV" }, objections: [] },
    { name: "not needed", given: { approval: false, category: "I" }, objections: [] },
    {
      name: "from category II",
      given: { approval: false, category: "II" },
      objections: ["certificate X-01 is not approved by a third party; the equipment is of category II"],
    },
  ],
});

export const welderRoute = rule({
  id: "welder-route",
  title: "A qualification of welders of category II to IV has an end",
  basis: fromMemory(
    "EN ISO 9606-1",
    "2017",
    "revalidation; the route without an end is not accepted for categories II to IV",
  ),
  kind: "welder-qualification",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    route: text("route"),
    category: optional(text("book.equipment.directive.category")),
    routes: table("welder-route"),
  },
  *check({ route, category, routes }, certificate) {
    if (category !== undefined && routes(route, category).text("accepted") === "no")
      yield {
        at: "route",
        message: `certificate ${certificate.name} is prolonged by route 9.3c; the equipment is of category ${category}`,
        why: "that route rests on the maker's own quality system and has no end; it is not permitted from category II upwards",
        hint: "add a prolongation by route 9.3a or 9.3b, or have the test repeated",
      };
  },
  examples: [
    { name: "prolonged by tested welds", given: { route: "9.3b", category: "IV" }, objections: [] },
    { name: "in category I", given: { route: "9.3c", category: "I" }, objections: [] },
    {
      name: "in category II",
      given: { route: "9.3c", category: "II" },
      objections: ["certificate X-01 is prolonged by route 9.3c; the equipment is of category II"],
    },
  ],
});
