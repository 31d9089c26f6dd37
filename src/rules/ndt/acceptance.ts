import { fromMemory } from "../../model/basis.ts";
import { isoName } from "../../model/imperfections.ts";
import { table, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const acceptanceLevel = rule({
  id: "acceptance-level",
  title: "The acceptance level of a report answers its quality level, by a standard of its method",
  basis: fromMemory("EN ISO 17635", undefined, "correlation of quality levels, testing and acceptance levels"),
  kind: "ndt-report",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    quality: text("qualityLevel"),
    standard: text("acceptance.standard"),
    level: text("acceptance.level"),
    answers: table("acceptance-of-quality"),
  },
  *check({ method, quality, standard, level, answers }, report) {
    const row = answers(isoName(standard), quality);
    const of = row.text("method");
    const levels = row.texts("levels");
    if (of === "none" || of === undefined)
      yield {
        at: "standard",
        name: "standard",
        message: `report ${report.name} judges by ${standard}; no table at hand says which of its levels answers quality level ${quality}`,
        why: `${method}, level ${level}`,
        hint: "answer this query with the correlation that was agreed, or correct the standard",
        unsure: true,
      };
    else if (of !== method)
      yield {
        at: "standard",
        name: "standard",
        message: `report ${report.name} judges a test by ${method} to ${standard}, which is a standard for ${of}`,
        why: `${standard} has acceptance levels of another method`,
        hint: "compare with the report; correct it, or have the results judged again",
      };
    else if (!levels.includes(level))
      yield {
        at: "level",
        name: "level",
        message: `report ${report.name} judges to level ${level} of ${standard}; quality level ${quality} is answered by ${levels.join(" or ")}`,
        why: "a laxer level accepts what the quality level does not",
        hint: "compare with the report; else have the results judged again to the level that answers it",
      };
  },
  examples: [
    { name: "the level", given: judged("RT", "C", "EN ISO 10675-1", "2"), objections: [] },
    { name: "a stricter one", given: judged("RT", "C", "ISO 10675-1", "1"), objections: [] },
    {
      name: "a laxer one",
      given: judged("RT", "B", "EN ISO 10675-1", "2"),
      objections: ["report X-01 judges to level 2 of EN ISO 10675-1; quality level B is answered by 1"],
    },
    { name: "ultrasonic, level B", given: judged("UT", "B", "EN ISO 11666", "2"), objections: [] },
    {
      name: "ultrasonic, level 3 of level B",
      given: judged("UT", "B", "EN ISO 11666:2018", "3"),
      objections: ["report X-01 judges to level 3 of EN ISO 11666:2018; quality level B is answered by 2"],
      source: "EN ISO 11666, scope: acceptance levels 2 and 3 answer quality levels B and C",
    },
    {
      name: "level 2 without its X",
      given: judged("MT", "C", "EN ISO 23278", "2"),
      objections: ["report X-01 judges to level 2 of EN ISO 23278; quality level C is answered by 1 or 2X"],
    },
    { name: "visual", given: judged("VT", "C", "EN ISO 5817", "C"), objections: [] },
    {
      name: "of another method",
      given: judged("MT", "C", "EN ISO 23277", "2X"),
      objections: ["report X-01 judges a test by MT to EN ISO 23277, which is a standard for PT"],
    },
    {
      name: "a standard no table has",
      given: judged("RT", "C", "ASME VIII-1 UW-51", "full"),
      objections: [
        "report X-01 judges by ASME VIII-1 UW-51; no table at hand says which of its levels answers quality level C",
      ],
    },
  ],
});

function judged(method: string, quality: string, standard: string, level: string) {
  return { method, quality, standard, level };
}
