import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const visualFirst = rule({
  id: "visual-first",
  title: "A joint is looked at before it is tested by other methods",
  basis: commonPractice("what the eye finds is put right first: it hides or fakes indications of other methods"),
  kind: "ndt-report#rows",
  when: [
    { path: "record.method", equals: ["RT", "UT", "MT", "PT"] },
    // What is ground out between two welds is tested as it lies open.
    { path: "record.<repair:excavationTest>", exists: false },
    { path: 'joint.<ndt-report:rows[].joint>[record.method="VT"]', exists: true },
  ],
  severity: "query",
  owner: "testing",
  inputs: {
    report: thing("record", {
      method: text("method"),
      day: date("date"),
    }),
    joint: thing("joint", {
      length: quantity("length", "mm"),
      runs: anyOf(things("<weld-log:joint>.runs[]", { day: date("date"), finished: optional(date("finished")) })),
      visual: list(
        thing('<ndt-report:rows[].joint>[record.method="VT"]', {
          length: quantity("length", "mm"),
          day: date("record.date"),
        }),
      ),
    }),
  },
  *check({ report, joint }) {
    // That it was not even welded then is said by another rule.
    if (joint.runs.some(({ day, finished }) => canPrecede(finished ?? day, report.day) === "no")) return;
    // A look that is missing is said by another rule.
    if (joint.visual.reduce((sum, { length }) => sum + length.value, 0) < joint.length.value) return;
    const [first] = joint.visual.toSorted((one, other) => one.day.from - other.day.from);
    if (first === undefined || joint.visual.some(({ day }) => canPrecede(day, report.day) !== "no")) return;
    yield {
      at: [report, "day"],
      on: report,
      accuses: [],
      message: `report ${report.$.name} tested joint ${joint.$.name} by ${report.method} on ${report.day.text}, before it was looked at on ${first.day.text}`,
      why: `the first visual test is ${first.$.name}`,
      hint: "correct the wrong date, or answer this query with the earlier look that is on record elsewhere",
      related: [{ at: first, message: `looked at on ${first.day.text}` }],
    };
  },
  examples: [
    { name: "on the same day", given: seen("2026-06-11", "2026-06-11"), objections: [] },
    { name: "looked at again later", given: seen("2026-06-11", "2026-06-10", "2026-06-14"), objections: [] },
    {
      name: "an hour after",
      given: seen("2026-06-11T08:00+02:00", "2026-06-11T09:00+02:00"),
      objections: [
        "report RT-03 tested joint C2 by RT on 2026-06-11T08:00+02:00, before it was looked at on 2026-06-11T09:00+02:00",
      ],
    },
    {
      name: "not welded yet",
      given: {
        ...seen("2026-06-11T08:00+02:00", "2026-06-13"),
        joint: { ...seen("", "2026-06-13").joint, runs: [{ day: "2026-06-12" }] },
      },
      objections: [],
    },
  ],
});

function seen(day: string, ...visual: readonly string[]) {
  return {
    report: { $: "RT-03", method: "RT", day },
    joint: {
      $: "C2",
      length: "1000 mm",
      runs: [{ day: "2026-06-09" }],
      visual: visual.map((one, index) => ({ $: `VT-0${index + 1}`, length: "1000 mm", day: one })),
    },
  };
}
