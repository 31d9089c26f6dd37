import { fromMemory } from "../model/basis.ts";
import { anyOf, date, list, optional, text, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { weldedEnds } from "../requirements/boiler-conditions.ts";
import { months } from "./welder-fault.ts";
import { notInForce } from "./welder-validity.ts";

export const tubeEndWelderQualified = rule({
  id: "tube-end-welder-qualified",
  title: "Tube ends are welded by welders with a qualification in force on that day",
  basis: fromMemory(
    "EN ISO 9606-1",
    "2017",
    "period of validity; whether its range covers welds of tube ends is not judged",
  ),
  kind: "tube-end-group",
  when: [weldedEnds],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    day: date("date"),
    welders: list(
      thing("welders[]", {
        qualifications: list(
          thing("<welder-qualification:person>", {
            testDate: date("testDate"),
            validTo: optional(date("validTo")),
            route: text("route"),
            confirmations: anyOf(list(date("confirmations[].date"))),
          }),
        ),
      }),
    ),
  },
  *check({ day, welders, confirmationMonths, revalidationMonths }, group) {
    const periods = { confirmation: confirmationMonths.value, revalidation: revalidationMonths.value };
    for (const who of welders) {
      const reasons = who.qualifications.map((one) => notInForce(one, day.day, periods));
      if (reasons.includes(undefined)) continue;
      yield {
        at: "day",
        on: who,
        name: `tube ends ${day.day}`,
        message: `welder ${who.$.id} held no qualification in force when tube ends were welded on ${day.day}`,
        why: who.qualifications.map((one, index) => `${one.$.id}: ${reasons[index] ?? ""}`).join(" · "),
        hint: "add the missing confirmation or prolongation if it was made in time, or correct the date; else raise a nonconformity report and have the welds judged",
        related: [{ at: "welders", message: `group ${group.id}` }],
      };
    }
  },
  examples: [
    { name: "on the last day of the first half-year", given: ends("2026-07-15"), objections: [] },
    {
      name: "a day later, not confirmed",
      given: ends("2026-07-16"),
      objections: ["welder W07 held no qualification in force when tube ends were welded on 2026-07-16"],
    },
    { name: "a day later, confirmed in time", given: ends("2026-07-16", ["2026-07-15"]), objections: [] },
    {
      name: "before the test",
      given: ends("2026-01-14"),
      objections: ["welder W07 held no qualification in force when tube ends were welded on 2026-01-14"],
    },
  ],
});

function ends(day: string, confirmations: readonly string[] = []) {
  return {
    confirmationMonths: "6",
    revalidationMonths: "24",
    day,
    welders: [{ $: "W07", qualifications: [{ $: "WQ-12", testDate: "2026-01-15", route: "9.3b", confirmations }] }],
  };
}
