import { fromMemory } from "../../model/basis.ts";
import { anyOf, date, list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { weldedEnds } from "../../requirements/boiler-conditions.ts";
import { beyondRange, rangeAt, sizeOf, tubeEndWeld } from "./range.ts";
import { months } from "../welding/welder-fault.ts";
import { notInForce, periodsOf } from "../welding/welder-validity.ts";
import { owedBy } from "../../model/owes.ts";

export const tubeEndWelderQualified = rule({
  id: "tube-end-welder-qualified",
  title: "Tube ends are welded by welders tested on tubes in a tube plate, with a qualification in force on that day",
  basis: fromMemory(
    "EN ISO 9606-1",
    "2017",
    "its tests are butt and fillet welds of plates and pipes, so tubes in tube plates take a test piece of their own; the ranges are those the certificate prints, the validity that of other certificates",
  ),
  kind: "tube-end-group",
  when: [weldedEnds],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    day: date("date"),
    diameter: quantity("tube.outsideDiameter", "mm"),
    wall: quantity("tube.nominalThickness", "mm"),
    position: text("position"),
    procedure: thing("weldingProcedure", rangeAt("", "jointTypes")),
    welders: list(
      thing("welders[]", {
        qualifications: list(
          thing("<welder-qualification:person>", {
            tested: text("weldType"),
            testDate: date("testDate"),
            validTo: optional(date("validTo")),
            route: text("route"),
            confirmations: anyOf(list(date("confirmations[].date"))),
            ...rangeAt("range.", "weldTypes"),
          }),
        ),
      }),
    ),
  },
  owes: [owedBy("welding coordination", "testing-complete", "welders.qualifications")],
  *check({ day, welders, confirmationMonths, revalidationMonths, retestMonths, procedure, ...size }, group) {
    const end = { ...size, processes: procedure.processes };
    // Ends outside their procedure are said first: who may weld them is asked of the size and position that hold.
    if (beyondRange(procedure, end).length > 0) return;
    const periods = periodsOf({ confirmationMonths, revalidationMonths, retestMonths });
    for (const who of welders) {
      const lacking = who.qualifications.map((one) =>
        one.tested === tubeEndWeld ? beyondRange(one, end) : [`${one.tested} welds`],
      );
      const covering = who.qualifications.filter((_, index) => lacking[index]?.length === 0);
      const reasons = covering.map((one) => notInForce(one, day.day, periods));
      if (reasons.includes(undefined)) continue;
      const none = covering.length === 0;
      yield {
        at: "day",
        on: who,
        name: none ? `tube ends ${sizeOf(end)}` : "validity tube ends",
        message: none
          ? `welder ${who.$.name} holds no qualification for tube ends of ${sizeOf(end)}`
          : `welder ${who.$.name} held no qualification in force when tube ends were welded on ${day.day}`,
        why: none
          ? who.qualifications.map((one, i) => `${one.$.name} covers only ${(lacking[i] ?? []).join("; ")}`).join(" · ")
          : covering.map((one, index) => `${one.$.name}: ${reasons[index] ?? ""}`).join(" · "),
        hint: none
          ? "add the certificate of a test on tubes in a tube plate, or correct welder, size or position; else raise a nonconformity report"
          : "add the missing confirmation or prolongation if it was made in time, or correct the date; else raise a nonconformity report and have the welds judged",
        related: [{ at: "welders", message: `group ${group.name}` }],
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
    {
      name: "a day later, confirmed in time",
      given: ends("2026-07-16", { confirmations: ["2026-07-15"] }),
      objections: [],
    },
    {
      name: "before the test",
      given: ends("2026-01-14"),
      objections: ["welder W07 held no qualification in force when tube ends were welded on 2026-01-14"],
    },
    {
      name: "tested on a butt weld only",
      given: ends("2026-07-15", { tested: "butt" }),
      objections: ["welder W07 holds no qualification for tube ends of 51 mm × 6.3 mm, process 141, position PH"],
    },
    { name: "as wide as tested", given: ends("2026-07-15", { diameterTo: "51 mm" }), objections: [] },
    {
      name: "wider than tested",
      given: ends("2026-07-15", { diameterTo: "50.9 mm" }),
      objections: ["welder W07 holds no qualification for tube ends of 51 mm × 6.3 mm, process 141, position PH"],
    },
    {
      name: "tested with another process",
      given: ends("2026-07-15", { processes: ["111"] }),
      objections: ["welder W07 holds no qualification for tube ends of 51 mm × 6.3 mm, process 141, position PH"],
    },
  ],
});

function ends(day: string, certificate: Readonly<Record<string, string | readonly string[]>> = {}) {
  const range = {
    welds: [tubeEndWeld],
    processes: ["141"],
    positions: ["PH"],
    wallFrom: "5 mm",
    wallTo: "8 mm",
    diameterFrom: "38 mm",
    diameterTo: "76.1 mm",
  };
  const held = {
    $: "WQ-12",
    tested: tubeEndWeld,
    testDate: "2026-01-15",
    route: "9.3b",
    confirmations: [],
    ...range,
    ...certificate,
  };
  return {
    confirmationMonths: "6",
    revalidationMonths: "24",
    retestMonths: "36",
    day,
    diameter: "51 mm",
    wall: "6.3 mm",
    position: "PH",
    procedure: { $: "WPS-09#1", ...range },
    welders: [{ $: "W07", qualifications: [held] }],
  };
}
