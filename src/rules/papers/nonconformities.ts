import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, flag, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const closing = commonPractice("no open nonconformity of pressure parts at the test, none at release");
const done = ["closed", "cancelled"];

export const closedBeforeTest = rule({
  id: "nonconformity-closed-before-test",
  title: "What concerns pressure parts is closed before the pressure test",
  basis: closing,
  kind: "pressure-test",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    day: date("date"),
    reports: anyOf(
      things("book.nonconformity-report", {
        pressure: flag("pressureRelated"),
        state: text("state"),
        raised: date("raised"),
        closed: optional(date("closed")),
      }),
    ),
  },
  *check({ day, reports }, test) {
    for (const report of reports) {
      const { pressure, state, raised, closed } = report;
      if (!pressure || canPrecede(raised, day) === "no") continue;
      const late = closed !== undefined && canPrecede(closed, day) === "no";
      if (late || (closed === undefined && !done.includes(state)))
        yield {
          at: late ? [report, "closed"] : [report, "state"],
          on: report,
          message: `nonconformity report ${report.$.name} was not closed when pressure test ${test.name} was made on ${day.text}`,
          why: closed === undefined ? `its state is "${state}"` : `it was closed on ${closed.text}`,
          hint: "correct the wrong date; if it does not concern pressure, have the inspection body confirm that",
          related: [{ at: "day", message: `tested on ${day.text}` }],
        };
    }
  },
  examples: [
    { name: "closed on the day of the test", given: ncr({ closed: "2026-07-01" }), objections: [] },
    {
      name: "closed a day later",
      given: ncr({ closed: "2026-07-02" }),
      objections: ["nonconformity report NCR-01 was not closed when pressure test X-01 was made on 2026-07-01"],
    },
    {
      name: "still open",
      given: ncr({ state: "agreed" }),
      objections: ["nonconformity report NCR-01 was not closed when pressure test X-01 was made on 2026-07-01"],
    },
    { name: "open, but of a bracket", given: ncr({ state: "agreed" }, false), objections: [] },
    { name: "raised after the test", given: ncr({ state: "raised", raised: "2026-07-02" }), objections: [] },
  ],
});

function ncr(changes: Readonly<Record<string, string>>, pressure = true) {
  return { day: "2026-07-01", reports: [{ $: "NCR-01", pressure, state: "closed", raised: "2026-06-01", ...changes }] };
}

export const nonconformityState = rule({
  id: "nonconformity-state",
  title: "A report with a day of closing is closed, and not before it was raised",
  basis: closing,
  kind: "nonconformity-report",
  severity: "nonconformity",
  owner: "quality",
  inputs: { state: text("state"), raised: date("raised"), closed: date("closed") },
  *check({ state, raised, closed }, report) {
    if (!done.includes(state))
      yield {
        at: "state",
        name: "state",
        message: `nonconformity report ${report.name} has the state "${state}" and was closed on ${closed.text}`,
        why: "one of the two is not up to date",
        hint: "correct the state, or take the day of closing out",
      };
    if (canPrecede(raised, closed) === "no")
      yield {
        at: "closed",
        name: "order",
        accuses: ["raised", "closed"],
        message: `nonconformity report ${report.name} was closed on ${closed.text}, before it was raised on ${raised.text}`,
        why: "both days are entered in one record",
        hint: "correct the wrong one against the report",
      };
  },
  examples: [
    {
      name: "closed on the day it was raised",
      given: { state: "closed", raised: "2026-06-01", closed: "2026-06-01" },
      objections: [],
    },
    { name: "cancelled", given: { state: "cancelled", raised: "2026-06-01", closed: "2026-06-03" }, objections: [] },
    {
      name: "a state that is not the last",
      given: { state: "verified", raised: "2026-06-01", closed: "2026-06-03" },
      objections: ['nonconformity report X-01 has the state "verified" and was closed on 2026-06-03'],
    },
    {
      name: "closed before raised",
      given: { state: "closed", raised: "2026-06-01", closed: "2026-05-31" },
      objections: ["nonconformity report X-01 was closed on 2026-05-31, before it was raised on 2026-06-01"],
    },
  ],
});

export const closedByAnother = rule({
  id: "nonconformity-closed-by-another",
  title: "Who corrected does not close",
  basis: ownChoice("nobody passes judgement on the own work"),
  kind: "nonconformity-report",
  severity: "nonconformity",
  owner: "quality",
  inputs: { closer: text("closedBy"), corrector: optional(text("correctedBy")) },
  *check({ closer, corrector }, report) {
    if (closer === corrector)
      yield {
        at: "closer",
        message: `nonconformity report ${report.name} was closed by ${closer}, who corrected it`,
        why: "both fields name the same person",
        hint: "have another person verify and close it, or correct the slip",
      };
  },
  examples: [
    { name: "two people", given: { closer: "P05", corrector: "W07" }, objections: [] },
    { name: "nothing was to be corrected", given: { closer: "P05" }, objections: [] },
    {
      name: "one person",
      given: { closer: "W07", corrector: "W07" },
      objections: ["nonconformity report X-01 was closed by W07, who corrected it"],
    },
  ],
});

export const concessionHeld = rule({
  id: "nonconformity-concession",
  title: "Use as is and repair rest on a concession",
  basis: commonPractice("what stays as it is, or is not brought back to the drawing, is agreed to in writing"),
  kind: "nonconformity-report",
  severity: "gap",
  owner: "quality",
  inputs: { disposition: text("disposition"), concession: exists("concession") },
  *check({ disposition, concession }, report) {
    if (["use-as-is", "repair"].includes(disposition) && !concession)
      yield {
        at: "disposition",
        accuses: [],
        message: `nonconformity report ${report.name} ends in "${disposition}" without a concession`,
        why: "it names no deviation that permits it",
        hint: "add the deviation with its agreement, or correct the disposition",
      };
  },
  examples: [
    { name: "use as is, permitted", given: { disposition: "use-as-is", concession: true }, objections: [] },
    { name: "rework, which restores the drawing", given: { disposition: "rework" }, objections: [] },
    {
      name: "use as is, not permitted",
      given: { disposition: "use-as-is" },
      objections: ['nonconformity report X-01 ends in "use-as-is" without a concession'],
    },
    {
      name: "repair, not permitted",
      given: { disposition: "repair" },
      objections: ['nonconformity report X-01 ends in "repair" without a concession'],
    },
  ],
});
