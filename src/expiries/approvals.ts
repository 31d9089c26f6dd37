import { fromMemory } from "../model/basis.ts";
import { compareDays } from "../model/dates.ts";
import { date } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { basis, holds, person, said } from "../rules/shared/roles.ts";
import { ordered } from "./ordered.ts";

export const approvalInForce = rule({
  id: "mill-approval-in-force",
  title: "The approval of a mill has not ended on the day of the order",
  basis: fromMemory("EN 764-5", "2014", "specific product control on the maker's quality system"),
  kind: "mill-approval",
  severity: "note",
  owner: "purchasing",
  inputs: { ...ordered, to: date("validTo") },
  *check({ ordered: day, to }, approval) {
    if (compareDays(day.day, to.day) > 0)
      yield {
        at: "to",
        message: `mill approval ${approval.name} has ended on ${day.day}, the day of the order`,
        why: `it was valid to ${to.day}`,
        hint: "ask the mill for the approval that covers its certificates of this order",
      };
  },
  examples: [
    { name: "on the last day", given: { ordered: "2026-12-31", to: "2026-12-31" }, objections: [] },
    {
      name: "a day later",
      given: { ordered: "2027-01-01", to: "2026-12-31" },
      objections: ["mill approval X-01 has ended on 2027-01-01, the day of the order"],
    },
  ],
});

export const roleHeld = rule({
  id: "roles-in-force",
  title: "A person still holds the roles of the register of people on the day of the order",
  basis,
  kind: "person",
  severity: "note",
  owner: "quality",
  inputs: { ...ordered, ...person },
  *check({ ordered: day, ...who }, handle) {
    const over = who.roles.filter(({ role, to }) => to !== undefined && !holds({ ...who, $: handle }, [role], day));
    for (const role of new Set(over.map((one) => one.role)))
      yield {
        at: "roles",
        name: role,
        message: `person ${handle.name} no longer holds the role "${role}" on ${day.day}, the day of the order`,
        why: said({ ...who, $: handle }),
        hint: "enter the person's role again if it was renewed, or name another person",
      };
  },
  examples: [
    {
      name: "on the last day",
      given: { ordered: "2026-06-30", roles: [{ role: "quality control", to: "2026-06-30" }] },
      objections: [],
    },
    {
      name: "a day later",
      given: { ordered: "2026-07-01", roles: [{ role: "quality control", to: "2026-06-30" }] },
      objections: ['person X-01 no longer holds the role "quality control" on 2026-07-01, the day of the order'],
    },
    {
      name: "renewed without an end",
      given: {
        ordered: "2026-07-01",
        roles: [{ role: "quality control", to: "2026-06-30" }, { role: "quality control" }],
      },
      objections: [],
    },
  ],
});
