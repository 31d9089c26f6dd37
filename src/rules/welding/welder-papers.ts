import { fromMemory } from "../../model/basis.ts";
import { addMonths, compareDays } from "../../model/dates.ts";
import { date, optional, table, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { holds, person, said as rolesOf } from "../shared/roles.ts";

const confirming = ["welding coordinator", "quality control", "authorised signatory", "inspection body"] as const;

export const confirmationBy = rule({
  id: "welder-confirmation-by",
  title: "A welder's work is confirmed by the employer's coordinator, who held that role on that day",
  basis: fromMemory("EN ISO 9606-1", "2017", "confirmation every six months by the person responsible for welding"),
  kind: "welder-qualification",
  when: [{ path: "confirmations", exists: true }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    holder: thing("person", {}),
    confirmations: things("confirmations[]", { date: date("date"), named: text("by"), by: thing("by", person) }),
  },
  *check({ holder, confirmations }, certificate) {
    const said = new Set<string>();
    for (const one of confirmations) {
      const himself = one.by.$.id === holder.$.id;
      // One person without the authority is one finding, however often he confirmed.
      if ((!himself && holds(one.by, confirming, one.date)) || said.has(one.by.$.id)) continue;
      said.add(one.by.$.id);
      yield {
        at: [one, "named"],
        on: one.by,
        name: himself ? "own work" : "",
        message: `the confirmation of certificate ${certificate.name} on ${one.date.text} is by ${one.by.$.id}, ${himself ? "the welder himself" : "who was no welding coordinator then"}`,
        why: himself ? "nobody confirms his own work" : rolesOf(one.by),
        hint: "correct the register of people, or have the work confirmed by who had the authority; a confirmation that fails ends the certificate",
      };
    }
  },
  examples: [
    { name: "by the coordinator", given: confirmed("M1", "welding coordinator"), objections: [] },
    { name: "by the examining body", given: confirmed("E1", "inspection body"), objections: [] },
    {
      name: "by another welder",
      given: confirmed("W03", "welder"),
      objections: ["the confirmation of certificate X-01 on 2026-05-20 is by W03, who was no welding coordinator then"],
    },
    {
      name: "by himself, twice",
      given: {
        holder: { $: "W07" },
        confirmations: ["2025-11-20", "2026-05-20"].map((day) => ({ date: day, by: { $: "W07" } })),
      },
      objections: ["the confirmation of certificate X-01 on 2025-11-20 is by W07, the welder himself"],
    },
    {
      name: "by himself",
      given: confirmed("W07", "welding coordinator"),
      objections: ["the confirmation of certificate X-01 on 2026-05-20 is by W07, the welder himself"],
    },
  ],
});

function confirmed(by: string, role: string) {
  return {
    holder: { $: "W07" },
    confirmations: [{ date: "2026-05-20", by: { $: by, roles: [{ role }] } }],
  };
}

export const printedEnd = rule({
  id: "welder-printed-end",
  title:
    "A welder's certificate ends no later than its route of prolongation lets it, counted from the test or the last prolongation",
  basis: fromMemory("EN ISO 9606-1", "2017", "revalidation; operators: EN ISO 14732"),
  kind: "welder-qualification",
  when: [{ path: "validTo", exists: true }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    standard: text("standard.standard"),
    route: text("route"),
    tested: date("testDate"),
    prolonged: optional(date("prolonged")),
    validTo: date("validTo"),
    periods: table("welder-validity"),
  },
  *check({ standard, route, tested, prolonged, validTo, periods }, certificate) {
    const most = periods(standard, route).quantity("months");
    if (most === undefined) return;
    const from = prolonged ?? tested;
    const end = addMonths(from.day, most.value);
    if (compareDays(validTo.day, end) > 0)
      yield {
        at: "validTo",
        accuses: ["validTo", "route"],
        message: `certificate ${certificate.name} is valid to ${validTo.text}; route ${route} lets it hold until ${end}`,
        why: `${prolonged === undefined ? "tested" : "prolonged"} on ${from.text}, ${most.value} months at most`,
        hint: "enter the day of the last prolongation, or correct the end",
      };
  },
  examples: [
    { name: "on the last day", given: ending("9.3b", "2028-01-15"), objections: [] },
    { name: "prolonged since", given: { ...ending("9.3b", "2030-01-15"), prolonged: "2028-01-15" }, objections: [] },
    { name: "without end", given: ending("9.3c", "2040-01-15"), objections: [] },
    {
      name: "three years by tested welds",
      given: ending("9.3b", "2029-01-15"),
      objections: ["certificate X-01 is valid to 2029-01-15; route 9.3b lets it hold until 2028-01-15"],
    },
  ],
});

function ending(route: string, validTo: string) {
  return { standard: "EN ISO 9606-1", route, tested: "2026-01-15", validTo };
}
