import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "production-test", severity: "nonconformity", owner: "testing" } as const;

export const productionTestMade = rule({
  ...shared,
  id: "production-test-made",
  title: "A production test is welded as the joints it stands for: same procedure, by their welders, of their steels",
  basis: commonPractice("a test plate is an extension of its seam: same procedure, welders, steel and heat treatment"),
  inputs: {
    procedure: thing("weldingProcedure", {}),
    welders: list(text("welders[]")),
    grades: list(text("certificateRows[].grade")),
    treated: exists("heatTreatment"),
    joints: things("joints[]", {
      procedure: thing("weldingProcedure", {}),
      treated: exists("<heat-treatment:joints[]>"),
      grades: list(text("parts[].material.grade")),
      welders: anyOf(list(text("<weld-log:joint>.runs[].welders[]"))),
    }),
  },
  *check({ procedure, welders, grades, treated, joints }, test) {
    const alike = new Map<string, (typeof joints)[number][]>();
    for (const joint of joints) {
      const problems = [
        ...(joint.procedure.$.id === procedure.$.id
          ? []
          : [`to ${procedure.$.name}, not to ${joint.procedure.$.name}`]),
        ...(joint.welders.length === 0 || welders.every((one) => joint.welders.includes(one))
          ? []
          : [`by ${welders.join(", ")}, not by ${[...new Set(joint.welders)].join(", ")}`]),
        ...(joint.grades.some((one) => grades.includes(one))
          ? []
          : [`of ${grades.join(", ")}, not of ${joint.grades.join(", ")}`]),
        ...(joint.treated === treated ? [] : [joint.treated ? "without heat treatment" : "with heat treatment"]),
      ];
      if (problems.length === 0) continue;
      const said = problems.join("; ");
      alike.set(said, [...(alike.get(said) ?? []), joint]);
    }
    // Joints that differ from the plate in the same way are one thing to say.
    for (const [said, own] of alike)
      yield {
        at: "welders",
        accuses: [],
        name: own.map((joint) => joint.$.id).join(", "),
        message: `production test ${test.name} was welded ${said}; it stands for joint ${own.map((joint) => joint.$.name).join(", ")}`,
        why: "a test plate welded otherwise says nothing of the joint",
        hint: "correct the slip; else have the joint judged without the test",
        related: own.map((joint) => ({ at: joint, message: "joint it stands for" })),
      };
  },
  examples: [
    { name: "as its joint", given: made({}), objections: [] },
    {
      name: "by another welder to another procedure",
      given: made({ procedure: { $: "WPS-04 revision 1" }, welders: ["W07"] }),
      objections: [
        "production test X-01 was welded to WPS-04 revision 1, not to WPS-03 revision 2; by W07, not by W03; it stands for joint L1",
      ],
    },
    {
      name: "of another steel",
      given: made({ grades: ["S235JR"] }),
      objections: ["production test X-01 was welded of S235JR, not of P265GH; it stands for joint L1"],
    },
  ],
});

function made(own: Readonly<Record<string, unknown>>) {
  return {
    procedure: { $: "WPS-03 revision 2" },
    welders: ["W03"],
    grades: ["P265GH"],
    joints: [{ $: "L1", procedure: { $: "WPS-03 revision 2" }, grades: ["P265GH"], welders: ["W03", "W03"] }],
    ...own,
  };
}

export const productionTestOfSeam = rule({
  ...shared,
  id: "production-test-of-seam",
  title: "A production test is welded along with a joint it stands for, of a heat that is in it",
  basis: commonPractice(
    "a test plate is an extension of its seam: tacked to its end, welded on with it, of its plates",
  ),
  severity: "query",
  inputs: {
    welded: date("welded"),
    named: anyOf(list(text("certificateRows[]"))),
    rows: anyOf(things("certificateRows[]", {})),
    joints: things("joints[]", {
      runs: anyOf(things("<weld-log:joint>.runs[]", { day: date("date"), finished: optional(date("finished")) })),
      heats: anyOf(things("parts[].<piece-mark:part>.certificateRow", {})),
    }),
  },
  *check({ welded, rows, joints }, test) {
    const days = joints.flatMap(({ runs }) => runs.flatMap(({ day, finished }) => [day, finished ?? day]));
    const first = [...days].sort((a, b) => a.from - b.from)[0];
    const last = [...days].sort((a, b) => b.from - a.from)[0];
    const apart =
      first !== undefined &&
      last !== undefined &&
      (canPrecede(first, welded) === "no" || canPrecede(welded, last) === "no") &&
      !days.some((day) => day.day === welded.day);
    if (apart)
      yield {
        at: "welded",
        accuses: [],
        name: "day",
        message: `production test ${test.name} was welded on ${welded.text}; its joints were welded from ${first.day} to ${last.day}`,
        why: joints.map(({ $ }) => $.name).join(", "),
        hint: "compare the days; a plate welded by itself answers this query only where the order permits it",
      };
    const heats = new Map(joints.flatMap((joint) => joint.heats).map(({ $ }) => [$.id, $.name]));
    const strange = rows.filter(({ $ }) => !heats.has($.id));
    if (heats.size > 0 && rows.length > 0 && strange.length === rows.length)
      yield {
        at: "named",
        accuses: [],
        name: "heat",
        message: `production test ${test.name} is of ${strange.map(({ $ }) => $.name).join(" and ")}; no part of its joints is of that`,
        why: `the joints' parts: ${[...heats.values()].sort().join("; ")}`,
        hint: "compare with the marks of the plate, or answer this query with what was agreed",
      };
  },
  examples: [
    { name: "on the day, of the plate", given: alongside("2026-05-28", "R-1"), objections: [] },
    {
      name: "a week later, of another heat",
      given: alongside("2026-06-05", "R-9"),
      objections: [
        "production test X-01 was welded on 2026-06-05; its joints were welded from 2026-05-27 to 2026-05-28",
        "production test X-01 is of R-9; no part of its joints is of that",
      ],
    },
  ],
});

function alongside(welded: string, row: string) {
  const runs = [
    { day: "2026-05-27T08:00+02:00" },
    { day: "2026-05-28T08:00+02:00", finished: "2026-05-28T11:00+02:00" },
  ];
  return { welded, named: [row], rows: [{ $: row }], joints: [{ $: "L1", runs, heats: [{ $: "R-1" }, { $: "R-2" }] }] };
}
