import { fromMemory, ownChoice } from "../../model/basis.ts";
import { text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { owedBy } from "../../model/owes.ts";

const stricter = ["B", "C", "D"];

export const testLevel = rule({
  id: "test-level",
  title: "A joint is judged to its quality level, or to a stricter one",
  basis: ownChoice("what a laxer level accepts may be rejected by the level the joint must reach"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", { level: text("qualityLevel"), method: text("method") }),
    joint: thing("joint", { level: text("qualityLevel") }),
  },
  *check({ report, joint }) {
    if (stricter.indexOf(report.level) > stricter.indexOf(joint.level))
      yield {
        at: [report, "level"],
        on: report,
        message: `report ${report.$.name} judges joint ${joint.$.name} to level ${report.level}; it must reach level ${joint.level}`,
        why: `${report.method} of a joint of level ${joint.level}`,
        hint: "have the results judged again to the level of the joint",
        related: [{ at: [joint, "level"], message: `level ${joint.level} asked for here` }],
      };
  },
  examples: [
    { name: "the same level", given: { report: { level: "B", method: "RT" }, joint: { level: "B" } }, objections: [] },
    {
      name: "a stricter level",
      given: { report: { level: "B", method: "RT" }, joint: { level: "C" } },
      objections: [],
    },
    {
      name: "a laxer level",
      given: { report: { $: "RT-01", level: "C", method: "RT" }, joint: { $: "C2", level: "B" } },
      objections: ["report RT-01 judges joint C2 to level C; it must reach level B"],
    },
  ],
});

export const radiographicClass = rule({
  id: "radiographic-class",
  title: "Radiographs are made by the class the design standard asks for, or the better one",
  basis: fromMemory(
    "EN ISO 17636-1",
    undefined,
    "class A, basic techniques; class B, improved; the profile says which",
  ),
  kind: "ndt-report",
  when: [{ path: "method", equals: "RT" }],
  severity: "nonconformity",
  owner: "testing",
  inputs: { made: text("radiography.techniqueClass"), asked: text("profile.radiographicClass") },
  owes: [owedBy("testing", "testing-complete", "made")],
  *check({ made, asked }, report) {
    if (made < asked)
      yield {
        at: "made",
        message: `the films of report ${report.name} are of class ${made}; class ${asked} is asked for by the design standard`,
        why: `the profile of this book names class ${asked} for its design standard`,
        hint: "compare with the report; have the films made again, or have the class decided by who designed it",
      };
  },
  examples: [
    { name: "the class", given: { made: "A", asked: "A" }, objections: [] },
    { name: "the better class", given: { made: "B", asked: "A" }, objections: [] },
    {
      name: "the lesser class",
      given: { made: "A", asked: "B" },
      objections: ["the films of report X-01 are of class A; class B is asked for by the design standard"],
    },
  ],
});
