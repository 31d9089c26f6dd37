import { fromMemory } from "../model/basis.ts";
import { anyOf, date, list, optional, text } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { months } from "../rules/welding/welder-fault.ts";
import { notInForce, periodsOf } from "../rules/welding/welder-validity.ts";
import { ordered } from "./ordered.ts";

export const welderInForce = rule({
  id: "welder-in-force",
  title: "A welder qualification is in force on the day of the order",
  basis: fromMemory("EN ISO 9606-1", "2017", "period of validity; operators: EN ISO 14732"),
  kind: "welder-qualification",
  severity: "note",
  owner: "welding coordination",
  inputs: {
    ...ordered,
    ...months,
    testDate: date("testDate"),
    validTo: optional(date("validTo")),
    route: text("route"),
    confirmations: anyOf(list(date("confirmations[].date"))),
  },
  *check({ ordered: day, confirmationMonths, revalidationMonths, retestMonths, ...validity }, qualification) {
    const why = notInForce(validity, day.day, periodsOf({ confirmationMonths, revalidationMonths, retestMonths }));
    if (why !== undefined)
      yield {
        at: "testDate",
        message: `welder qualification ${qualification.name} is not in force on ${day.day}, the day of the order`,
        why,
        hint: "add the confirmations and prolongations made since, or have the welder tested again before welding",
      };
  },
  examples: [
    { name: "on the last day of the first half-year", given: held("2026-07-15"), objections: [] },
    {
      name: "a day later, not confirmed",
      given: held("2026-07-16"),
      objections: ["welder qualification X-01 is not in force on 2026-07-16, the day of the order"],
    },
    {
      name: "a day later, confirmed in time",
      given: { ...held("2026-07-16"), confirmations: ["2026-07-15"] },
      objections: [],
    },
    {
      name: "after the printed last day",
      given: { ...held("2026-04-01"), validTo: "2026-03-31" },
      objections: ["welder qualification X-01 is not in force on 2026-04-01, the day of the order"],
    },
  ],
});

function held(ordered: string) {
  return {
    ordered,
    confirmationMonths: "6",
    revalidationMonths: "24",
    retestMonths: "36",
    testDate: "2026-01-15",
    route: "9.3b",
    confirmations: [],
  };
}
