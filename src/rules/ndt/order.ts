import { excerptSeen, ownChoice } from "../../model/basis.ts";
import { canPrecede, hoursBetween, type DateValue } from "../../model/dates.ts";
import { anyOf, date, flag, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const run = { welded: date("date"), finished: optional(date("finished")) };
const endOf = ({ welded, finished }: { readonly welded: DateValue; readonly finished: DateValue | undefined }) =>
  finished ?? welded;

export const testAfterWelding = rule({
  id: "test-after-welding",
  title: "A joint is tested after its last run was welded",
  basis: ownChoice("a test shows the weld as it was on that day"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", { day: date("date"), method: text("method") }),
    joint: thing("joint", {
      logs: list(thing("<weld-log:joint>", { runs: list(thing("runs[]", run)) })),
      tests: anyOf(things("<ndt-report:rows[].joint>", { day: date("record.date") })),
    }),
  },
  *check({ report, joint }) {
    const tooLate = (end: DateValue, day: DateValue) => canPrecede(end, day) === "no";
    const late = joint.logs
      .flatMap((log) => log.runs.map((run) => ({ log, run, end: endOf(run) })))
      .find(({ end }) => tooLate(end, report.day));
    if (late === undefined) return;
    // When every one of several tests comes before the weld, the date of the weld is the odd one; else that of the report.
    const several = joint.tests.length > 1;
    const all = several && joint.tests.every(({ day }) => tooLate(late.end, day));
    const odd = all
      ? ([late.run, late.run.finished === undefined ? "welded" : "finished"] as const)
      : ([report, "day"] as const);
    yield {
      at: [report, "day"],
      on: all ? late.log : report,
      accuses: several ? [odd] : [],
      message: `report ${report.$.name} tested joint ${joint.$.name} on ${report.day.text}; its last run was welded on ${late.end.text}`,
      why: all ? "every test of the joint is earlier than the weld" : `the weld log is ${late.log.$.name}`,
      hint: "correct the wrong date; if both are right, the joint is to be tested again",
      related: [{ at: late.log, message: `welded on ${late.end.text}` }],
    };
  },
  examples: [
    { name: "on the same day", given: tested("2026-05-27", "2026-05-27"), objections: [] },
    {
      name: "a day before",
      given: tested("2026-05-26", "2026-05-27"),
      objections: ["report RT-01 tested joint C2 on 2026-05-26; its last run was welded on 2026-05-27"],
    },
    { name: "an hour after", given: tested("2026-05-27T15:00+02:00", "2026-05-27T14:00+02:00"), objections: [] },
    {
      name: "an hour before",
      given: tested("2026-05-27T13:00+02:00", "2026-05-27T14:00+02:00"),
      objections: [
        "report RT-01 tested joint C2 on 2026-05-27T13:00+02:00; its last run was welded on 2026-05-27T14:00+02:00",
      ],
    },
  ],
});

function tested(day: string, welded: string) {
  return {
    report: { $: "RT-01", day, method: "RT" },
    joint: { $: "C2", logs: [{ $: "WL-03", runs: [{ welded }] }], tests: [{ day }] },
  };
}

/** Hours to a tenth, never rounded to more rest than there was. */
function span(least: number, most: number): string {
  const [from, to] = [least, most].map((hours) => Math.floor(hours * 10 + 1e-6) / 10);
  return from === to ? `${from} h` : `${from} h to ${to} h`;
}

export const testDelay = rule({
  id: "test-delay",
  title: "A thick weld rests before it is tested for cracks",
  basis: excerptSeen("EN 1011-2", "delay before testing, against cracks that open late"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", { day: date("date"), method: text("method") }),
    delay: quantity("profile.testingDelay", "h"),
    thin: quantity("profile.testingDelayThickness", "mm"),
    exempt: text("profile.testingDelayExempt"),
    joint: thing("joint", {
      parts: list(
        thing("parts[]", {
          group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
        }),
      ),
      thicknesses: list(quantity("thicknesses[]", "mm")),
      treated: flag("weldingProcedure.postWeldHeatTreatment"),
      logs: list(thing("<weld-log:joint>", { runs: list(thing("runs[]", run)) })),
    }),
  },
  *check({ report, delay, thin, exempt, joint }) {
    const thick = joint.thicknesses.some((one) => atMost(one, thin) !== "yes");
    if (report.method === "VT" || !thick || joint.treated) return;
    const groups = exempt.split(", ");
    if (joint.parts.every(({ group }) => groups.includes(group))) return;
    const ends = joint.logs.flatMap((log) => log.runs.map((one) => ({ log, end: endOf(one) })));
    const early = ends.filter(
      ({ end }) => canPrecede(end, report.day) === "yes" && hoursBetween(end, report.day).least < delay.value,
    );
    const [first] = [...early].sort((a, b) => b.end.to - a.end.to);
    if (first === undefined) return;
    const hours = hoursBetween(first.end, report.day);
    yield {
      at: [report, "day"],
      on: first.log,
      name: report.$.id,
      message: `report ${report.$.name} tested joint ${joint.$.name} on ${report.day.text}, less than ${delay.text} after ${first.end.text}`,
      why: `${joint.thicknesses.map((one) => one.text).join(" and ")} thick; ${span(Math.max(0, hours.least), hours.most)} lie between the end of welding and the test`,
      hint: "state the times of both, or have the joint tested again",
      unsure: hours.most >= delay.value,
      related: [{ at: first.log, message: `welded until ${first.end.text}` }],
    };
  },
  examples: [
    {
      name: "16 hours to the minute",
      given: delayed("2026-05-28T08:00+02:00", "2026-05-27T16:00+02:00"),
      objections: [],
    },
    {
      name: "a minute less",
      given: delayed("2026-05-28T07:59+02:00", "2026-05-27T16:00+02:00"),
      objections: [
        "report MT-01 tested joint C2 on 2026-05-28T07:59+02:00, less than 16 h after 2026-05-27T16:00+02:00",
      ],
    },
    { name: "two days later, times not stated", given: delayed("2026-05-29", "2026-05-27"), objections: [] },
    {
      name: "the next day, times not stated",
      given: delayed("2026-05-28", "2026-05-27"),
      objections: ["report MT-01 tested joint C2 on 2026-05-28, less than 16 h after 2026-05-27"],
    },
    {
      name: "12 mm thick",
      given: delayed("2026-05-28", "2026-05-27", { thicknesses: ["12 mm", "12 mm"] }),
      objections: [],
    },
    {
      name: "of steels the profile exempts",
      given: { ...delayed("2026-05-28", "2026-05-27", {}, ["1.1", "1.1"]), exempt: "1.1, 8.1" },
      objections: [],
    },
    {
      name: "one of two exempt",
      given: { ...delayed("2026-05-28", "2026-05-27", {}, ["1.1", "1.2"]), exempt: "1.1, 8.1" },
      objections: ["report MT-01 tested joint C2 on 2026-05-28, less than 16 h after 2026-05-27"],
    },
    { name: "heat treated", given: delayed("2026-05-28", "2026-05-27", { treated: true }), objections: [] },
  ],
});

function delayed(
  day: string,
  finished: string,
  changes: { readonly thicknesses?: readonly string[]; readonly treated?: boolean } = {},
  groups: readonly string[] = ["1.1"],
) {
  return {
    report: { $: "MT-01", day, method: "MT" },
    delay: "16 h",
    thin: "12 mm",
    exempt: "none",
    joint: {
      $: "C2",
      thicknesses: ["14 mm", "14 mm"],
      treated: false,
      parts: groups.map((group) => ({ group })),
      logs: [{ $: "WL-03", runs: [{ welded: finished, finished }] }],
      ...changes,
    },
  };
}

export const rowLength = rule({
  id: "test-row-length",
  title: "A tested length is the distance between its ends",
  basis: ownChoice("three figures of one row, of which two give the third"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    length: quantity("length", "mm"),
    from: optional(quantity("from", "mm")),
    to: optional(quantity("to", "mm")),
    seam: quantity("joint.length", "mm"),
  },
  *check({ length, from, to, seam }, row) {
    if (from === undefined || to === undefined) return;
    const between = to.value - from.value + (to.value < from.value ? seam.value : 0);
    const slack = length.halfUnit + from.halfUnit + to.halfUnit;
    if (Math.abs(length.value - between) > slack + 1e-9)
      yield {
        at: "length",
        accuses: ["length", "from", "to"],
        message: `${row.name} is ${length.text} long; from ${from.text} to ${to.text} are ${Number(between.toFixed(3))} mm`,
        why: `the joint is ${seam.text} long`,
        hint: "compare with the report and correct the wrong figure",
      };
  },
  examples: [
    { name: "they agree", given: { length: "300 mm", from: "100 mm", to: "400 mm", seam: "3744 mm" }, objections: [] },
    {
      name: "over the zero mark",
      given: { length: "300 mm", from: "3644 mm", to: "200 mm", seam: "3744 mm" },
      objections: [],
    },
    { name: "only the length is stated", given: { length: "300 mm", seam: "3744 mm" }, objections: [] },
    {
      name: "they do not",
      given: { length: "30 mm", from: "100 mm", to: "400 mm", seam: "3744 mm" },
      objections: ["X-01 is 30 mm long; from 100 mm to 400 mm are 300 mm"],
    },
  ],
});
