import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const testerIndependent = rule({
  id: "tester-independent",
  title: "Nobody reviews his own report, and nobody tests his own weld",
  basis: commonPractice("two people, two looks; who welded does not release the weld"),
  kind: "ndt-report",
  severity: "query",
  owner: "testing",
  inputs: {
    operator: thing("operator", {}),
    reviewer: thing("reviewer", {}),
    rows: list(
      thing("rows[]", {
        joint: thing("joint", {
          logs: anyOf(things("<weld-log:joint>", { welders: anyOf(things("runs[].welders[]", {})) })),
        }),
      }),
    ),
  },
  *check({ operator, reviewer, rows }, report) {
    if (operator.$.id === reviewer.$.id)
      yield {
        at: "reviewer",
        accuses: [],
        name: "reviewer",
        message: `${reviewer.$.name} made the tests of report ${report.name} and reviewed them`,
        why: "operator and reviewer are one person",
        hint: "have it reviewed by another certified person, or answer this query with the rule that allows it",
      };
    const own = rows.filter(({ joint }) =>
      joint.logs.some(({ welders }) => welders.some((welder) => welder.$.id === operator.$.id)),
    );
    if (own.length > 0)
      yield {
        at: "operator",
        accuses: [],
        name: "welder",
        message: `${operator.$.name} tested joints in report ${report.name} that ${operator.$.name} welded: ${[...new Set(own.map(({ joint }) => joint.$.name))].join(", ")}`,
        why: "the weld log names the same person",
        hint: "have them tested by another person, or correct who it was",
      };
  },
  examples: [
    { name: "three people", given: by("N1", "N3", "W1"), objections: [] },
    {
      name: "one who reviews himself",
      given: by("N1", "N1", "W1"),
      objections: ["N1 made the tests of report X-01 and reviewed them"],
    },
    {
      name: "a welder who tests his own weld",
      given: by("W1", "N3", "W1"),
      objections: ["W1 tested joints in report X-01 that W1 welded: C2"],
    },
  ],
});

function by(operator: string, reviewer: string, welder: string) {
  return {
    operator: { $: operator },
    reviewer: { $: reviewer },
    rows: [{ joint: { $: "C2", logs: [{ welders: [{ $: welder }] }] } }],
  };
}
