import { commonPractice } from "../../model/basis.ts";
import { anyOf, exists, list, text, thing, things } from "../../model/input.ts";
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
      if (problems.length > 0)
        yield {
          at: "welders",
          accuses: [],
          name: joint.$.id,
          message: `production test ${test.name} was welded ${problems.join("; ")}; it stands for joint ${joint.$.name}`,
          why: "a test plate welded otherwise says nothing of the joint",
          hint: "correct the slip; else have the joint judged without the test",
          related: [{ at: joint, message: "joint it stands for" }],
        };
    }
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
