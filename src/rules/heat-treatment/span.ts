import { commonPractice } from "../../model/basis.ts";
import { date, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const dayLength = 86_400_000;
const longest = 7;

export const heatTreatmentSpan = rule({
  id: "heat-treatment-span",
  title: "A heat treatment lasts no longer than a week",
  basis: commonPractice("a charge is heated, held and cooled within hours, a heavy one within days"),
  kind: "heat-treatment",
  severity: "query",
  owner: "welding coordination",
  inputs: { started: date("started"), finished: date("finished"), type: text("type") },
  *check({ started, finished, type }, charge) {
    // By the longest of days alone, the days between them count whole.
    if (finished.from - started.to <= longest * dayLength) return;
    yield {
      at: "finished",
      accuses: [],
      message: `${type} ${charge.name} is entered from ${started.text} to ${finished.text}, longer than a week`,
      why: "both times are entered in one record",
      hint: "compare with the chart and correct the wrong one; if it took so long, answer this query with that",
      related: [{ at: "started", message: `started ${started.text}` }],
    };
  },
  examples: [
    {
      name: "a heavy charge",
      given: { started: "2026-06-11T06:00+02:00", finished: "2026-06-14T14:00+02:00", type: "stress relief" },
      objections: [],
    },
    {
      name: "a month",
      given: { started: "2026-05-11T06:00+02:00", finished: "2026-06-11T14:00+02:00", type: "stress relief" },
      objections: [
        "stress relief X-01 is entered from 2026-05-11T06:00+02:00 to 2026-06-11T14:00+02:00, longer than a week",
      ],
    },
  ],
});
