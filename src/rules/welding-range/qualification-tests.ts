import { fromMemory } from "../../model/basis.ts";
import { anyOf, flag, list, optional, quantity, table, text, things } from "../../model/input.ts";
import { atLeast, atMost, exactly, type Measure } from "../../model/quantity.ts";
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

const mean = (values: readonly Measure[]) =>
  exactly(values.reduce((sum, { value }) => sum + value, 0) / values.length, "J");
const leastEnergy = exactly(27, "J");
const leastSingle = exactly(0.7 * 27, "J");

export const qualificationValues = rule({
  ...shared,
  id: "qualification-values",
  title:
    "Tensile strength, impact energy and hardness of a procedure test reach what steel and standard want; impact energy at least 27 J, whatever more was asked for",
  basis: fromMemory(
    "EN ISO 15614-1",
    "2017",
    "tensile strength of the parent metal, greatest hardness; 27 J: Directive 2014/68/EU, Annex I 7.5",
  ),
  inputs: {
    grade: text("grade"),
    group: text("materialGroup"),
    heatTreated: flag("postWeldHeatTreatment"),
    grades: table("grade-yield"),
    hardest: table("procedure-hardness"),
    tensile: anyOf(things('tests[type="tensile"]', { values: anyOf(list(quantity("value[]", "MPa"))) })),
    impact: anyOf(things('tests[type="impact"]', { values: anyOf(list(quantity("value[]", "J"))) })),
    hardness: anyOf(things('tests[type="hardness"]', { values: anyOf(list(quantity("value[]", "HV"))) })),
  },
  *check({ grade, group, heatTreated, grades, hardest, tensile, impact, hardness }, subject) {
    const hint = "compare with the record; if it says so, the test failed and the procedure is not qualified";
    const name = `procedure qualification ${subject.name}`;
    const wanted = grades(grade).quantity("tensile");
    for (const test of tensile) {
      const low = wanted === undefined ? [] : test.values.filter((one) => atLeast(one, wanted) !== "yes");
      if (low.length > 0)
        yield {
          at: [test, "values"],
          name: "tensile",
          message: `the tensile strength of ${name} is ${low.map((one) => one.text).join(", ")}, below that of ${grade}, ${wanted?.text ?? ""}`,
          why: `all values: ${test.values.map((one) => one.text).join(", ")}`,
          hint,
        };
      if (test.values.length < 2)
        yield {
          at: test,
          accuses: [],
          name: "tensile count",
          unsure: true,
          message: `${name} reports ${test.values.length === 0 ? "no value" : "one value"} of tensile strength`,
          why: "two transverse bars are pulled",
          hint: "enter both values from the record",
        };
    }
    for (const [index, test] of impact.entries()) {
      const { values } = test;
      const few = values.length < 3;
      const weak =
        values.length > 0 &&
        (atLeast(mean(values), leastEnergy) !== "yes" || values.some((one) => atLeast(one, leastSingle) !== "yes"));
      if (weak)
        yield {
          at: [test, "values"],
          name: `impact ${index + 1}`,
          message: `the impact energies of ${name} are ${values.map((one) => one.text).join(", ")}: a mean of 27 J, and 18.9 J of each, is the least`,
          why: `mean ${mean(values).value.toFixed(1)} J`,
          hint,
        };
      if (few)
        yield {
          at: test,
          accuses: [],
          name: `impact count ${index + 1}`,
          unsure: true,
          message: `${name} reports ${values.length} values of a set of impact bars`,
          why: "a set is three bars",
          hint: "enter all values from the record",
        };
    }
    const most = hardest(heatTreated ? "yes" : "no", group).quantity("most");
    for (const test of hardness) {
      const hard = most === undefined ? [] : test.values.filter((one) => atMost(one, most) !== "yes");
      if (hard.length > 0)
        yield {
          at: [test, "values"],
          name: "hardness",
          message: `the hardness of ${name} reaches ${hard.map((one) => one.text).join(", ")}, above ${most?.text ?? ""}`,
          why: `group ${group}, ${heatTreated ? "heat treated" : "as welded"}`,
          hint,
        };
    }
  },
  examples: [
    {
      name: "on every limit",
      given: values({
        tensile: [{ values: ["410 MPa", "430 MPa"] }],
        impact: [{ values: ["27 J", "35 J", "19 J"] }],
        hardness: [{ values: ["380 HV"] }],
      }),
      objections: [],
    },
    {
      name: "weak, brittle and hard",
      given: values({
        tensile: [{ values: ["409 MPa", "430 MPa"] }],
        impact: [{ values: ["5 J", "60 J", "61 J"] }],
        hardness: [{ values: ["381 HV", "250 HV"] }],
      }),
      objections: [
        "the tensile strength of procedure qualification X-01 is 409 MPa, below that of P265GH, 410 MPa",
        "the impact energies of procedure qualification X-01 are 5 J, 60 J, 61 J: a mean of 27 J, and 18.9 J of each, is the least",
        "the hardness of procedure qualification X-01 reaches 381 HV, above 380 HV",
      ],
    },
    {
      name: "one bar pulled, two bars broken",
      given: values({ tensile: [{ values: ["450 MPa"] }], impact: [{ values: ["60 J", "61 J"] }] }),
      objections: [
        "procedure qualification X-01 reports one value of tensile strength",
        "procedure qualification X-01 reports 2 values of a set of impact bars",
      ],
    },
    {
      name: "a steel without a limit here",
      given: { ...values({ tensile: [{ values: ["300 MPa", "310 MPa"] }] }), grade: "A 106 B" },
      objections: [],
    },
  ],
});

function values(own: Readonly<Record<string, readonly { readonly values: readonly string[] }[]>>) {
  return { grade: "P265GH", group: "1.1", heatTreated: false, ...own };
}

export const qualificationLevel = rule({
  ...shared,
  id: "qualification-level",
  title: "A procedure of pressure equipment is qualified at level 2; where no level is stated, level 2 applies",
  basis: fromMemory("EN ISO 15614-1", "2017", "levels: a test at level 2 stands for level 1, never the reverse"),
  severity: "query",
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
        why: "the ranges at hand are those of level 2, which needs more tests",
        hint: "add the qualification at level 2, or answer this query with what the design standard permits",
      };
    if (jointType !== "butt" || impact) return;
    const cap = thicknesses(edition, "butt", "multi", thickness).quantity("untested");
    if (cap !== undefined && (most === undefined || atMost(most, cap) !== "yes"))
      yield {
        at: most === undefined ? "thickness" : "most",
        accuses: [],
        name: "impact",
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
      given: { edition: "2017", impact: false, thickness: "6.3 mm", jointType: "butt", most: "12.0 mm" },
      objections: [],
    },
    {
      name: "level 1",
      given: { edition: "2017", level: "1", impact: true, thickness: "8.0 mm", jointType: "butt", most: "16.0 mm" },
      objections: ["procedure qualification X-01 is of level 1"],
    },
    {
      name: "thicker than 12 mm without impact tests",
      given: { edition: "2017", level: "2", impact: false, thickness: "8.0 mm", jointType: "butt", most: "16.0 mm" },
      objections: ["procedure qualification X-01 covers up to 16.0 mm without impact tests"],
    },
  ],
});
