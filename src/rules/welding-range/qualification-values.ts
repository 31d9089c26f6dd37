import { fromMemory } from "../../model/basis.ts";
import { anyOf, flag, list, quantity, table, text, things } from "../../model/input.ts";
import { atLeast, atMost, exactly, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { recomputed } from "./pieces.ts";

const shared = { kind: "procedure-qualification", severity: "nonconformity", owner: "welding coordination" } as const;
/** Of a standard whose limits are at hand, and with a test of that sort: whether it is there, another rule asks. */
const reporting = (type: string) => [
  { path: "standard.standard", equals: recomputed },
  { path: `tests[type="${type}"]`, exists: true },
];
const hint = "compare with the record; if it says so, the test failed and the procedure is not qualified";
const named = ({ name }: { readonly name: string }) => `procedure qualification ${name}`;

/** The stronger of two bars of one weld is at most so many times as strong as the weaker. */
const apart = 1.3;

export const qualificationStrength = rule({
  ...shared,
  id: "qualification-tensile-strength",
  title: "Two bars pulled across the weld of a procedure test reach the tensile strength of its steel",
  basis: fromMemory("EN ISO 15614-1", "2017", "tensile strength of the parent metal"),
  when: reporting("tensile"),
  inputs: {
    grade: text("grade"),
    grades: table("grade-yield"),
    tests: anyOf(things('tests[type="tensile"]', { values: anyOf(list(quantity("value[]", "MPa"))) })),
  },
  *check({ grade, grades, tests }, subject) {
    const wanted = grades(grade).quantity("tensile");
    if (wanted === undefined && tests.length > 0)
      yield {
        at: "grade",
        accuses: [],
        name: "tensile limit",
        unsure: true,
        message: `no tensile strength of ${grade} is at hand to hold the bars of ${named(subject)} against`,
        why: `the table of strengths has no row of ${grade}`,
        hint: "add its row to the book as a reference table, from the standard of the steel",
      };
    for (const test of tests) {
      const low = wanted === undefined ? [] : test.values.filter((one) => atLeast(one, wanted) !== "yes");
      if (low.length > 0)
        yield {
          at: [test, "values"],
          name: "tensile",
          message: `the tensile strength of ${named(subject)} is ${low.map((one) => one.text).join(", ")}, below that of ${grade}, ${wanted?.text ?? ""}`,
          why: `all values: ${test.values.map((one) => one.text).join(", ")}`,
          hint,
        };
      const [weakest] = [...test.values].sort((a, b) => a.value - b.value);
      const far = test.values.find(({ value }) => weakest !== undefined && value > apart * weakest.value);
      if (low.length === 0 && far !== undefined)
        yield {
          at: [test, "values"],
          accuses: [],
          name: "tensile apart",
          unsure: true,
          message: `the bars of ${named(subject)} broke at ${test.values.map((one) => one.text).join(" and ")}`,
          why: "bars of one weld lie near each other",
          hint: "compare both values with the record",
        };
      if (test.values.length < 2)
        yield {
          at: test,
          accuses: [],
          name: "tensile count",
          unsure: true,
          message: `${named(subject)} reports ${test.values.length === 0 ? "no value" : "one value"} of tensile strength`,
          why: "two transverse bars are pulled",
          hint: "enter both values from the record",
        };
    }
  },
  examples: [
    { name: "on the limit", given: pulled("410 MPa", "430 MPa"), objections: [] },
    {
      name: "weak",
      given: pulled("409 MPa", "430 MPa"),
      objections: ["the tensile strength of procedure qualification X-01 is 409 MPa, below that of P265GH, 410 MPa"],
    },
    {
      name: "a digit too many",
      given: pulled("459 MPa", "4630 MPa"),
      objections: ["the bars of procedure qualification X-01 broke at 459 MPa and 4630 MPa"],
    },
    {
      name: "one bar pulled",
      given: pulled("450 MPa"),
      objections: ["procedure qualification X-01 reports one value of tensile strength"],
    },
    {
      name: "a steel without a limit here",
      given: { ...pulled("300 MPa", "310 MPa"), grade: "A 106 B" },
      objections: [
        "no tensile strength of A 106 B is at hand to hold the bars of procedure qualification X-01 against",
      ],
    },
  ],
});

function pulled(...values: readonly string[]) {
  return { grade: "P265GH", tests: [{ values }] };
}

const mean = (values: readonly Measure[]) =>
  exactly(values.reduce((sum, { value }) => sum + value, 0) / values.length, "J");
const leastEnergy = exactly(27, "J");
const leastSingle = exactly(0.7 * 27, "J");

/** Greatest energy of the usual pendulums of impact tests, in J (common practice: 300 J and 450 J). */
const pendulum = 450;

export const qualificationImpact = rule({
  ...shared,
  id: "qualification-impact-energy",
  title: "Three bars of each set of a procedure test reach 27 J on average, whatever more was asked for",
  basis: fromMemory("EN ISO 15614-1", "2017", "sets of three bars; 27 J: Directive 2014/68/EU, Annex I 7.5"),
  when: reporting("impact"),
  inputs: { tests: anyOf(things('tests[type="impact"]', { values: anyOf(list(quantity("value[]", "J"))) })) },
  *check({ tests }, subject) {
    for (const [index, test] of tests.entries()) {
      const { values } = test;
      const beyond = values.find(({ value }) => value > pendulum);
      if (beyond !== undefined)
        yield {
          at: [test, "values"],
          accuses: [],
          name: `pendulum ${index + 1}`,
          unsure: true,
          message: `an impact energy of ${named(subject)} is ${beyond.text}, more than a pendulum has`,
          why: `all values: ${values.map((one) => one.text).join(", ")}`,
          hint: "compare with the record",
        };
      const weak =
        values.length > 0 &&
        (atLeast(mean(values), leastEnergy) !== "yes" || values.some((one) => atLeast(one, leastSingle) !== "yes"));
      if (weak)
        yield {
          at: [test, "values"],
          name: `impact ${index + 1}`,
          message: `the impact energies of ${named(subject)} are ${values.map((one) => one.text).join(", ")}: a mean of 27 J, and 18.9 J of each, is the least`,
          why: `mean ${mean(values).value.toFixed(1)} J`,
          hint,
        };
      if (values.length < 3)
        yield {
          at: test,
          accuses: [],
          name: `impact count ${index + 1}`,
          unsure: true,
          message: `${named(subject)} reports ${values.length} values of a set of impact bars`,
          why: "a set is three bars",
          hint: "enter all values from the record",
        };
    }
  },
  examples: [
    { name: "on both limits", given: { tests: [{ values: ["27 J", "35 J", "19 J"] }] }, objections: [] },
    {
      name: "brittle",
      given: { tests: [{ values: ["5 J", "60 J", "61 J"] }] },
      objections: [
        "the impact energies of procedure qualification X-01 are 5 J, 60 J, 61 J: a mean of 27 J, and 18.9 J of each, is the least",
      ],
    },
    {
      name: "two bars broken",
      given: { tests: [{ values: ["60 J", "61 J"] }] },
      objections: ["procedure qualification X-01 reports 2 values of a set of impact bars"],
    },
  ],
});

export const qualificationHardness = rule({
  ...shared,
  id: "qualification-hardness",
  title: "The hardness of a procedure test stays below the greatest of its steel group",
  basis: fromMemory("EN ISO 15614-1", "2017", "greatest hardness, HV10"),
  when: reporting("hardness"),
  inputs: {
    group: text("materialGroup"),
    heatTreated: flag("postWeldHeatTreatment"),
    hardest: table("procedure-hardness"),
    tests: anyOf(things('tests[type="hardness"]', { values: anyOf(list(quantity("value[]", "HV"))) })),
  },
  *check({ group, heatTreated, hardest, tests }, subject) {
    const most = hardest(heatTreated ? "yes" : "no", group).quantity("most");
    for (const test of tests) {
      const hard = most === undefined ? [] : test.values.filter((one) => atMost(one, most) !== "yes");
      if (hard.length > 0)
        yield {
          at: [test, "values"],
          name: "hardness",
          message: `the hardness of ${named(subject)} reaches ${hard.map((one) => one.text).join(", ")}, above ${most?.text ?? ""}`,
          why: `group ${group}, ${heatTreated ? "heat treated" : "as welded"}`,
          hint,
        };
    }
  },
  examples: [
    { name: "on the limit", given: hardened(false, "380 HV"), objections: [] },
    {
      name: "above it",
      given: hardened(false, "381 HV", "250 HV"),
      objections: ["the hardness of procedure qualification X-01 reaches 381 HV, above 380 HV"],
    },
    {
      name: "softened by its heat treatment: less is permitted",
      given: hardened(true, "321 HV"),
      objections: ["the hardness of procedure qualification X-01 reaches 321 HV, above 320 HV"],
    },
  ],
});

function hardened(heatTreated: boolean, ...values: readonly string[]) {
  return { group: "1.1", heatTreated, tests: [{ values }] };
}
