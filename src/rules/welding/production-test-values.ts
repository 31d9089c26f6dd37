import { fromMemory } from "../../model/basis.ts";
import { anyOf, exists, list, optional, quantity, table, text, things } from "../../model/input.ts";
import { atLeast, atMost, exactly, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "production-test", severity: "nonconformity", owner: "testing" } as const;
const hint =
  "compare with the laboratory's report; if it says so, raise a nonconformity report and have the joints judged";
const asFor = (topic: string) => fromMemory("EN ISO 15614-1", "2017", `as for a procedure test: ${topic}`);
/** Above room temperature a steel is weaker than its named strength. */
const hotFrom = 35;
/** Share of the named yield strength below which a weld is asked about. */
const farBelow = 0.8;

export const productionTestStrength = rule({
  ...shared,
  id: "production-test-strength",
  title: "A production test breaks no sooner than the weaker of its steels",
  basis: asFor("tensile strength of the parent metal"),
  when: [{ path: "tensile", exists: true }],
  inputs: {
    grades: list(text("certificateRows[].grade")),
    strengths: table("grade-yield"),
    tensile: things("tensile[]", {
      yield: optional(quantity("yieldStrength", "MPa")),
      tensile: optional(quantity("tensileStrength", "MPa")),
      temperature: optional(quantity("temperature", "°C")),
    }),
  },
  *check({ grades: named, strengths, tensile }, test) {
    const grades = [...new Set(named)];
    const leastOf = (column: "tensile" | "yield") =>
      grades.flatMap((one) => strengths(one).quantity(column) ?? []).sort((a, b) => a.value - b.value)[0];
    const [least, leastYield] = [leastOf("tensile"), leastOf("yield")];
    if (least === undefined)
      yield {
        at: "grades",
        accuses: [],
        name: "tensile limit",
        unsure: true,
        message: `no tensile strength of ${grades.join(", ")} is at hand to hold production test ${test.name} against`,
        why: "the table of strengths has no row of it",
        hint: "add its row to the book as a reference table, from the standard of the steel",
      };
    const cold = tensile.filter(({ temperature }) => temperature === undefined || temperature.value <= hotFrom);
    for (const one of cold) {
      if (one.tensile !== undefined && least !== undefined && atLeast(one.tensile, least) !== "yes")
        yield {
          at: [one, "tensile"],
          name: `tensile ${one.$.name}`,
          message: `production test ${test.name} broke at ${one.tensile.text}; ${grades.join(", ")} wants at least ${least.text}`,
          why: "tensile strength of the weaker steel",
          hint,
        };
      if (one.yield !== undefined && leastYield !== undefined && one.yield.value < farBelow * leastYield.value)
        yield {
          at: [one, "yield"],
          name: `yield ${one.$.name}`,
          unsure: true,
          message: `production test ${test.name} yields at ${one.yield.text}; ${grades.join(", ")} is named by ${leastYield.text}`,
          why: "far below the steel it joins",
          hint,
        };
    }
  },
  examples: [
    { name: "on the limit", given: pulled({ tensile: "410 MPa" }), objections: [] },
    {
      name: "weak",
      given: pulled({ tensile: "409 MPa", yield: "200 MPa" }),
      objections: [
        "production test X-01 broke at 409 MPa; P265GH wants at least 410 MPa",
        "production test X-01 yields at 200 MPa; P265GH is named by 265 MPa",
      ],
    },
    {
      name: "a steel without a limit here",
      given: { ...pulled({ tensile: "450 MPa" }), grades: ["A 106 B"] },
      objections: ["no tensile strength of A 106 B is at hand to hold production test X-01 against"],
    },
    { name: "a hot tensile test", given: pulled({ tensile: "350 MPa", temperature: "300 °C" }), objections: [] },
  ],
});

function pulled(one: Readonly<Record<string, string>>) {
  return { grades: ["P265GH"], tensile: [one] };
}

const energy = exactly(27, "J");
const single = exactly(0.7 * 27, "J");
const fullWidth = 10;
const mean = (values: readonly Measure[]) =>
  exactly(values.reduce((sum, { value }) => sum + value, 0) / values.length, "J");
const said = ({ value }: Measure) => `${Number(value.toFixed(1))} J`;
const share = (limit: Measure, width: Measure | undefined) =>
  exactly(limit.value * Math.min(1, (width?.value ?? fullWidth) / fullWidth), "J");

export const productionTestImpact = rule({
  ...shared,
  id: "production-test-impact",
  title:
    "The impact bars of a production test reach 27 J on average, cold enough; narrow bars in proportion; a printed mean is that of its values",
  basis: asFor("sets of three bars; 27 J: Directive 2014/68/EU, Annex I 7.5"),
  when: [{ path: "impact", exists: true }],
  inputs: {
    impact: things("impact[]", {
      width: optional(quantity("specimenWidth", "mm")),
      temperature: optional(quantity("temperature", "°C")),
      values: anyOf(list(quantity("values[]", "J"))),
      mean: optional(quantity("mean", "J")),
    }),
    coldest: optional(quantity("book.equipment.limits.minimumAllowableTemperature", "°C")),
  },
  *check({ impact, coldest }, test) {
    for (const one of impact) {
      const { values, mean: printed, temperature: warm } = one;
      const low =
        values.length > 0 &&
        (atLeast(mean(values), share(energy, one.width)) !== "yes" ||
          values.some((value) => atLeast(value, share(single, one.width)) !== "yes"));
      if (low)
        yield {
          at: [one, "values"],
          name: `impact ${one.$.name}`,
          message: `the impact energies of production test ${test.name} are ${values.map((value) => value.text).join(", ")}: a mean of ${said(share(energy, one.width))}, and ${said(share(single, one.width))} of each, is the least`,
          why: `mean ${mean(values).value.toFixed(1)} J${printed === undefined ? "" : `, printed as ${printed.text}`}${one.width === undefined ? "" : `, bars ${one.width.text} wide`}`,
          hint,
        };
      // Of values that are too low it is said there what mean was printed.
      if (
        !low &&
        printed !== undefined &&
        values.length > 0 &&
        Math.abs(mean(values).value - printed.value) > printed.halfUnit + 1e-9
      )
        yield {
          at: [one, "mean"],
          name: `mean ${one.$.name}`,
          message: `the mean of the impact values of production test ${test.name} is printed as ${printed.text}, but is ${mean(values).value.toFixed(1)} J`,
          why: `values: ${values.map((value) => value.text).join(", ")}`,
          hint: "compare with the laboratory's report",
        };
      if (warm !== undefined && (warm.value > 20 || (coldest !== undefined && warm.value > coldest.value)))
        yield {
          at: [one, "temperature"],
          accuses: [],
          name: `temperature ${one.$.name}`,
          message: `the impact bars of production test ${test.name} were broken at ${warm.text}, warmer than ${coldest === undefined ? "20 °C" : `the coldest service, ${coldest.text}`}`,
          why: "steel is tougher when it is warmer; Directive 2014/68/EU, Annex I 7.5: at no more than 20 °C, and no warmer than the lowest operating temperature",
          hint: "add the test at that temperature; if the design shows enough toughness in another way, record the exception with its ground",
        };
    }
  },
  examples: [
    {
      name: "on every limit",
      given: broken({ temperature: "-20 °C", values: ["27 J", "35 J", "19 J"], mean: "27 J" }),
      objections: [],
    },
    {
      name: "narrow bars, in proportion",
      given: broken({ width: "5 mm", temperature: "-20 °C", values: ["14 J", "15 J", "14 J"] }),
      objections: [],
    },
    {
      name: "a wrong mean",
      given: broken({ temperature: "-20 °C", values: ["50 J", "60 J", "70 J"], mean: "70 J" }),
      objections: ["the mean of the impact values of production test X-01 is printed as 70 J, but is 60.0 J"],
    },
    {
      name: "brittle; that its mean is wrong too is said beside it",
      given: broken({ temperature: "20 °C", values: ["5 J", "6 J", "7 J"], mean: "60 J" }),
      objections: [
        "the impact energies of production test X-01 are 5 J, 6 J, 7 J: a mean of 27 J, and 18.9 J of each, is the least",
        "the impact bars of production test X-01 were broken at 20 °C, warmer than the coldest service, -10 °C",
      ],
    },
  ],
});

function broken(one: Readonly<Record<string, unknown>>) {
  return { impact: [one], coldest: "-10 °C" };
}

export const productionTestHardness = rule({
  ...shared,
  id: "production-test-hardness",
  title: "The hardness of a production test stays below the greatest of the steel groups of its joints",
  basis: asFor("greatest hardness, HV10"),
  when: [{ path: "hardness", exists: true }],
  inputs: {
    hardness: things("hardness[]", { value: optional(quantity("value", "HV")) }),
    treated: exists("heatTreatment"),
    hardest: table("procedure-hardness"),
    joints: things("joints[]", {
      parts: things("parts[]", {
        group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
      }),
    }),
  },
  *check({ hardness, treated, hardest, joints }, test) {
    const groups = [...new Set(joints.flatMap(({ parts }) => parts.map(({ group }) => group)))];
    const most = groups
      .flatMap((group) => hardest(treated ? "yes" : "no", group).quantity("most") ?? [])
      .sort((a, b) => a.value - b.value)[0];
    for (const one of hardness)
      if (one.value !== undefined && most !== undefined && atMost(one.value, most) !== "yes")
        yield {
          at: [one, "value"],
          name: `hardness ${one.$.name}`,
          message: `production test ${test.name} is ${one.value.text} hard, above ${most.text}`,
          why: `${treated ? "heat treated" : "as welded"}, groups ${groups.join(", ")}`,
          hint,
        };
  },
  examples: [
    { name: "on the limit", given: indented("380 HV"), objections: [] },
    { name: "above it", given: indented("381 HV"), objections: ["production test X-01 is 381 HV hard, above 380 HV"] },
  ],
});

function indented(value: string) {
  return { hardness: [{ value }], joints: [{ $: "L1", parts: [{ group: "1.1" }] }] };
}
