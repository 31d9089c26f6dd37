import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = { owner: "testing" } as const;
const places = ["weld metal", "heat-affected zone"];

export const hardnessPlaces = rule({
  ...shared,
  id: "hardness-places",
  title: "A joint is indented in its weld metal and in its heat-affected zone, at three points each",
  basis: commonPractice("three points of each place; the zone beside the weld is where a joint hardens"),
  kind: "hardness-report",
  severity: "query",
  inputs: {
    rows: list(thing("rows[]", { joint: text("joint"), place: text("place"), values: anyOf(list(text("values[]"))) })),
  },
  *check({ rows }, report) {
    for (const joint of [...new Set(rows.map((row) => row.joint))]) {
      const own = rows.filter((row) => row.joint === joint);
      const few = places.filter(
        (place) => own.filter((row) => row.place === place).flatMap(({ values }) => values).length < 3,
      );
      const [first] = own;
      if (few.length > 0 && first !== undefined)
        yield {
          at: [first, "place"],
          accuses: [],
          name: joint,
          message: `report ${report.name} has fewer than three readings of the ${few.join(" and of the ")} of joint ${joint}`,
          why: own.map((row) => `${row.place}: ${row.values.join(", ")}`).join("; "),
          hint: "add the readings of the report, or answer this query",
        };
    }
  },
  examples: [
    { name: "three of each", given: placed(3, 3), objections: [] },
    {
      name: "none beside the weld",
      given: placed(3, 0),
      objections: ["report X-01 has fewer than three readings of the heat-affected zone of joint L1"],
    },
    {
      name: "two of each",
      given: placed(2, 2),
      objections: [
        "report X-01 has fewer than three readings of the weld metal and of the heat-affected zone of joint L1",
      ],
    },
  ],
});

function placed(...counts: readonly number[]) {
  const values = (count: number) => Array.from({ length: count }, () => "200 HV");
  return { rows: counts.map((count, index) => ({ joint: "L1", place: places[index] ?? "", values: values(count) })) };
}

export const hardnessAtStage = rule({
  ...shared,
  id: "hardness-at-stage",
  title: "The stage at which a hardness is reported is that of the heat treatments recorded by that day",
  basis: ownChoice("the report states the stage, the charge states the day"),
  kind: "hardness-report",
  severity: "nonconformity",
  inputs: {
    day: date("date"),
    stage: text("stage"),
    rows: list(
      thing("rows[]", {
        joint: text("joint"),
        charges: anyOf(things("joint.<heat-treatment:joints[]>", { end: date("finished") })),
        runs: anyOf(list(date("joint.<weld-log:joint>.runs[].date"))),
        ofParts: anyOf(things("joint.parts[].<heat-treatment:parts[]>", { start: date("started") })),
      }),
    ),
  },
  *check({ day, stage, rows }, report) {
    const treated = stage === "after heat treatment";
    for (const { joint, charges, runs, ofParts } of rows) {
      const before = charges.find(({ end }) => canPrecede(end, day) !== "no");
      const [later] = charges;
      // A charge may name the parts alone; what was done to them before they were welded is another thing.
      const withParts = ofParts.some(({ start }) => runs.every((run) => canPrecede(start, run) === "no"));
      if (treated ? before !== undefined || (later === undefined && withParts) : before === undefined) continue;
      const said = !treated
        ? `states the hardness of joint ${joint} as welded; its heat treatment ended on ${before?.end.text ?? ""}`
        : later === undefined
          ? `states the hardness of joint ${joint} after heat treatment; no heat treatment of it is recorded`
          : `states the hardness of joint ${joint} after heat treatment, which ended on ${later.end.text}`;
      const charge = before ?? later;
      yield {
        at: "day",
        accuses: [],
        message: `report ${report.name} of ${day.text} ${said}`,
        why: "heat treatment changes what was measured before it, and the limit with it",
        hint: "correct the stage or the day, add the heat treatment, or measure again",
        ...(charge !== undefined && { related: [{ at: charge, message: `ended on ${charge.end.text}` }] }),
      };
      return;
    }
  },
  examples: [
    { name: "the day after", given: treated("2026-06-09"), objections: [] },
    {
      name: "the day before",
      given: treated("2026-06-07"),
      objections: [
        "report X-01 of 2026-06-07 states the hardness of joint C2 after heat treatment, which ended on 2026-06-08",
      ],
    },
    {
      name: "of a joint never treated",
      given: { day: "2026-06-07", stage: "after heat treatment", rows: [{ joint: "L1" }] },
      objections: [
        "report X-01 of 2026-06-07 states the hardness of joint L1 after heat treatment; no heat treatment of it is recorded",
      ],
    },
    {
      name: "with its parts",
      given: {
        day: "2026-06-09",
        stage: "after heat treatment",
        rows: [{ joint: "C2", runs: ["2026-06-01"], ofParts: [{ start: "2026-06-08" }] }],
      },
      objections: [],
    },
    {
      name: "its parts before they were welded",
      given: {
        day: "2026-06-09",
        stage: "after heat treatment",
        rows: [{ joint: "C2", runs: ["2026-06-01"], ofParts: [{ start: "2026-05-08" }] }],
      },
      objections: [
        "report X-01 of 2026-06-09 states the hardness of joint C2 after heat treatment; no heat treatment of it is recorded",
      ],
    },
    { name: "as welded, before it", given: { ...treated("2026-06-07"), stage: "as welded" }, objections: [] },
    {
      name: "as welded, after it",
      given: { ...treated("2026-06-09"), stage: "as welded" },
      objections: [
        "report X-01 of 2026-06-09 states the hardness of joint C2 as welded; its heat treatment ended on 2026-06-08",
      ],
    },
  ],
});

function treated(day: string) {
  return {
    day,
    stage: "after heat treatment",
    rows: [{ joint: "C2", charges: [{ $: "HT-01", end: "2026-06-08" }] }],
  };
}
