import { fromMemory } from "../../model/basis.ts";
import { anyOf, flag, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { recomputed } from "./pieces.ts";

const shared = {
  kind: "procedure-qualification",
  when: [{ path: "standard.standard", equals: recomputed }],
  severity: "nonconformity",
  owner: "welding coordination",
} as const;
const ofTests = fromMemory("EN ISO 15614-1", "2017", "examination and testing of test pieces, level 2");
/** Thickness from which impact tests are made where the steel has specified values, in mm. */
const impactFrom = 12;
const setsOfImpact = 2;

export const qualificationTests = rule({
  ...shared,
  id: "qualification-tests",
  title: "A procedure qualification reports every test its test piece needs",
  basis: ofTests,
  inputs: {
    jointType: text("jointType"),
    group: text("materialGroup"),
    impact: flag("impactTested"),
    thickness: quantity("testThickness", "mm"),
    wanted: things("table(procedure-tests, jointType).tests[]", {
      type: text("type"),
      when: text("when"),
    }),
    hardness: flag("hardnessTested"),
    tests: anyOf(things("tests[]", { type: text("type") })),
  },
  *check({ jointType, group, impact, hardness, thickness, wanted, tests }, subject) {
    const isAsked = (when: string) =>
      when === "impact" ? impact : when === "not group 1.1" ? hardness || group !== "1.1" : true;
    const made = tests.map(({ type }) => type);
    const missing = wanted.filter(({ type, when }) => isAsked(when) && !made.includes(type)).map(({ type }) => type);
    if (missing.length > 0)
      yield {
        at: "tests",
        accuses: [],
        name: "missing",
        message: `procedure qualification ${subject.name} reports no ${missing.join(", no ")} test`,
        why: `a ${jointType} weld in group ${group}${impact ? ", with impact tests" : ""}; reported: ${made.join(", ") || "none"}`,
        hint: "enter the tests from the record; if they were not made, the procedure is not qualified",
      };
    if (jointType === "butt" && !impact && thickness.low >= impactFrom)
      yield {
        at: "impact",
        accuses: [],
        name: "impact",
        unsure: true,
        message: `procedure qualification ${subject.name} was made on ${thickness.text} without impact tests`,
        why: `they are made from ${impactFrom} mm where the standard of the steel has impact values`,
        hint: "enter the impact tests from the record, or answer this query with the standard that has no values",
      };
    const sets = made.filter((type) => type === "impact").length;
    if (impact && jointType === "butt" && sets > 0 && sets < setsOfImpact)
      yield {
        at: "tests",
        accuses: [],
        name: "sets",
        unsure: true,
        message: `procedure qualification ${subject.name} reports ${sets} set of impact bars`,
        why: "weld metal and heat affected zone are each tested by a set",
        hint: "enter the other set from the record; if it was not made, ask the body that approved it",
      };
  },
  examples: [
    {
      name: "all of a butt weld",
      given: tested("butt", "visual", "surface", "volumetric", "tensile", "bend", "macro"),
      objections: [],
    },
    { name: "a fillet weld", given: tested("fillet", "visual", "surface", "macro"), objections: [] },
    {
      name: "no bend test",
      given: tested("butt", "visual", "surface", "volumetric", "tensile", "macro"),
      objections: ["procedure qualification X-01 reports no bend test"],
    },
    {
      name: "a stronger group without hardness",
      given: { ...tested("fillet", "visual", "surface", "macro"), group: "1.2" },
      objections: ["procedure qualification X-01 reports no hardness test"],
    },
    {
      name: "impact tests that are not there",
      given: { ...tested("butt", "visual", "surface", "volumetric", "tensile", "bend", "macro"), impact: true },
      objections: ["procedure qualification X-01 reports no impact test"],
    },
    {
      name: "one set of impact bars",
      given: {
        ...tested("butt", "visual", "surface", "volumetric", "tensile", "bend", "macro", "impact"),
        impact: true,
      },
      objections: ["procedure qualification X-01 reports 1 set of impact bars"],
    },
    {
      name: "thick, without impact tests",
      given: {
        ...tested("butt", "visual", "surface", "volumetric", "tensile", "bend", "macro"),
        thickness: "12.0 mm",
      },
      objections: ["procedure qualification X-01 was made on 12.0 mm without impact tests"],
    },
  ],
});

function tested(jointType: "butt" | "fillet", ...types: readonly string[]) {
  const always = { when: "always" };
  const wanted = [
    ...["visual", "surface", "macro"].map((type) => ({ type, ...always })),
    ...(jointType === "butt" ? ["volumetric", "tensile", "bend"] : []).map((type) => ({ type, ...always })),
    ...(jointType === "butt" ? [{ type: "impact", when: "impact" }] : []),
    { type: "hardness", when: "not group 1.1" },
  ];
  return {
    jointType,
    group: "1.1",
    impact: false,
    hardness: false,
    thickness: "8.0 mm",
    wanted,
    tests: types.map((type) => ({ type })),
  };
}
