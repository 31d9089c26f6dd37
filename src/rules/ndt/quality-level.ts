import { commonPractice } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const qualityLevelFloor = rule({
  id: "quality-level-floor",
  title: "A joint that bears pressure is judged to quality level C or B",
  basis: commonPractice(
    "design standards for pressure equipment ask for level C of EN ISO 5817 at least; D is for structures of little load",
  ),
  kind: "joint",
  when: [{ path: "pressureBearing", equals: true }],
  severity: "query",
  owner: "design",
  inputs: { level: text("qualityLevel") },
  *check({ level }, joint) {
    if (level !== "D") return;
    yield {
      at: "level",
      message: `joint ${joint.name} bears pressure, and is to be of quality level ${level}`,
      why: "imperfections that level D lets pass weaken a joint under pressure",
      hint: "compare with the drawing and the design standard: enter the level they ask for, or answer this query with the clause that permits it",
    };
  },
  examples: [
    { name: "as usual", given: { level: "C" }, objections: [] },
    { name: "stricter", given: { level: "B" }, objections: [] },
    {
      name: "lax",
      given: { level: "D" },
      objections: ["joint X-01 bears pressure, and is to be of quality level D"],
    },
  ],
});
