import { fromMemory } from "../../model/basis.ts";
import { flag, optional, quantity, table, text } from "../../model/input.ts";
import { atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { recomputed } from "./pieces.ts";

export const qualificationLevel = rule({
  id: "qualification-level",
  title: "A procedure of pressure equipment is qualified at level 2; where no level is stated, level 2 applies",
  basis: fromMemory("EN ISO 15614-1", "2017", "levels: a test at level 2 stands for level 1, never the reverse"),
  kind: "procedure-qualification",
  when: [{ path: "standard.standard", equals: recomputed }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    level: optional(text("level")),
    edition: text("standard.edition"),
    thicknesses: table("procedure-thickness-range"),
    impact: flag("impactTested"),
    thickness: quantity("testThickness", "mm"),
    jointType: text("jointType"),
    most: optional(quantity("range.thickness.maximum", "mm")),
  },
  *check({ level, edition, thicknesses, impact, thickness, jointType, most }, subject) {
    if (level === "1")
      yield {
        at: "level",
        accuses: [],
        name: "level",
        message: `procedure qualification ${subject.name} is of level 1`,
        why: "pressure equipment to EN 13445-4 and EN 12953-4 asks for level 2 (from memory), which needs more tests; the ranges at hand are those of level 2",
        hint: "add the qualification at level 2; where the design standard permits level 1, record the exception with its ground",
      };
    if (jointType !== "butt" || impact) return;
    const cap = thicknesses(edition, "butt", "multi", thickness).quantity("untested");
    if (cap !== undefined && (most === undefined || atMost(most, cap) !== "yes"))
      yield {
        at: most === undefined ? "thickness" : "most",
        accuses: [],
        name: "impact",
        unsure: true,
        message: `procedure qualification ${subject.name} covers ${most === undefined ? "any thickness" : `up to ${most.text}`} without impact tests`,
        why: `tested at ${thickness.text}; where impact values are required it ends at ${cap.text} without them`,
        hint: "narrow the range, or answer this query with why no impact values are required",
      };
  },
  examples: [
    {
      name: "level 2",
      given: { edition: "2017", level: "2", impact: true, thickness: "8.0 mm", jointType: "butt", most: "16.0 mm" },
      objections: [],
    },
    {
      name: "none stated, without impact to 12 mm",
      source: "BS EN ISO 15614-1:2017, national foreword: where no level is specified, level 2 applies",
      given: { edition: "2017", impact: false, thickness: "6.3 mm", jointType: "butt", most: "12.0 mm" },
      objections: [],
    },
    {
      name: "level 1",
      given: { edition: "2017", level: "1", impact: true, thickness: "8.0 mm", jointType: "butt", most: "16.0 mm" },
      objections: ["procedure qualification X-01 is of level 1"],
      source: "BS EN ISO 15614-1:2017, national foreword: level 2 qualifies for level 1, but not vice versa",
    },
    {
      name: "thicker than 12 mm without impact tests",
      given: { edition: "2017", level: "2", impact: false, thickness: "8.0 mm", jointType: "butt", most: "16.0 mm" },
      objections: ["procedure qualification X-01 covers up to 16.0 mm without impact tests"],
    },
  ],
});
