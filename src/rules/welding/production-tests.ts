import { commonPractice, fromMemory } from "../../model/basis.ts";
import { anyOf, exists, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { atLeast, atMost, exactly, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "production-test", severity: "nonconformity", owner: "testing" } as const;
const hint =
  "compare with the laboratory's report; if it says so, raise a nonconformity report and have the joints judged";

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

const energy = exactly(27, "J");
const single = exactly(0.7 * 27, "J");
const fullWidth = 10;
const mean = (values: readonly Measure[]) =>
  exactly(values.reduce((sum, { value }) => sum + value, 0) / values.length, "J");
const share = (limit: Measure, width: Measure | undefined) =>
  exactly(limit.value * Math.min(1, (width?.value ?? fullWidth) / fullWidth), "J");

export const productionTestValues = rule({
  ...shared,
  id: "production-test-values",
  title: "Strength, impact energy and hardness of a production test reach what steel and standard want",
  basis: fromMemory(
    "EN ISO 15614-1",
    "2017",
    "as for a procedure test: tensile strength of the parent metal, greatest hardness; 27 J: Directive 2014/68/EU, Annex I 7.5",
  ),
  inputs: {
    grades: list(text("certificateRows[].grade")),
    strengths: table("grade-yield"),
    tensile: anyOf(
      things("tensile[]", {
        yield: optional(quantity("yieldStrength", "MPa")),
        tensile: optional(quantity("tensileStrength", "MPa")),
        temperature: optional(quantity("temperature", "°C")),
      }),
    ),
    impact: anyOf(
      things("impact[]", {
        width: optional(quantity("specimenWidth", "mm")),
        temperature: optional(quantity("temperature", "°C")),
        values: anyOf(list(quantity("values[]", "J"))),
        mean: optional(quantity("mean", "J")),
      }),
    ),
    hardness: anyOf(things("hardness[]", { value: optional(quantity("value", "HV")) })),
    treated: exists("heatTreatment"),
    hardest: table("procedure-hardness"),
    joints: things("joints[]", {
      parts: things("parts[]", {
        group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
      }),
    }),
    coldest: optional(quantity("book.equipment.limits.minimumAllowableTemperature", "°C")),
  },
  *check({ grades, strengths, tensile, impact, hardness, treated, hardest, joints, coldest }, test) {
    const wanted = grades.flatMap((one) => strengths(one).quantity("tensile") ?? []);
    const [least] = [...wanted].sort((a, b) => a.value - b.value);
    const yields = grades.flatMap((one) => strengths(one).quantity("yield") ?? []);
    const [leastYield] = [...yields].sort((a, b) => a.value - b.value);
    for (const one of tensile) {
      const isHot = one.temperature !== undefined && one.temperature.value > 35;
      if (isHot) continue;
      if (one.tensile !== undefined && least !== undefined && atLeast(one.tensile, least) !== "yes")
        yield {
          at: [one, "tensile"],
          name: `tensile ${one.$.name}`,
          message: `production test ${test.name} broke at ${one.tensile.text}; ${grades.join(", ")} wants at least ${least.text}`,
          why: "tensile strength of the weaker steel",
          hint,
        };
      if (one.yield !== undefined && leastYield !== undefined && one.yield.value < 0.8 * leastYield.value)
        yield {
          at: [one, "yield"],
          name: `yield ${one.$.name}`,
          unsure: true,
          message: `production test ${test.name} yields at ${one.yield.text}; ${grades.join(", ")} is named by ${leastYield.text}`,
          why: "far below the steel it joins",
          hint,
        };
    }
    for (const one of impact) {
      const { values } = one;
      const low =
        values.length > 0 &&
        (atLeast(mean(values), share(energy, one.width)) !== "yes" ||
          values.some((value) => atLeast(value, share(single, one.width)) !== "yes"));
      if (low)
        yield {
          at: [one, "values"],
          name: `impact ${one.$.name}`,
          message: `the impact energies of production test ${test.name} are ${values.map((value) => value.text).join(", ")}: a mean of 27 J, and 18.9 J of each, is the least`,
          why: `mean ${mean(values).value.toFixed(1)} J${one.width === undefined ? "" : `, bars ${one.width.text} wide`}`,
          hint,
        };
      const printed = one.mean;
      if (
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
      const warm = one.temperature;
      if (warm !== undefined && (warm.value > 20 || (coldest !== undefined && warm.value > coldest.value)))
        yield {
          at: [one, "temperature"],
          accuses: [],
          name: `temperature ${one.$.name}`,
          unsure: true,
          message: `the impact bars of production test ${test.name} were broken at ${warm.text}, warmer than ${coldest === undefined ? "20 °C" : `the coldest service, ${coldest.text}`}`,
          why: "steel is tougher when it is warmer; Directive 2014/68/EU, Annex I 7.5, names 20 °C or the lowest operating temperature",
          hint: "add the test at that temperature, or answer this query",
        };
    }
    const groups = joints.flatMap(({ parts }) => parts.map(({ group }) => group));
    const most = groups.flatMap((group) => hardest(treated ? "yes" : "no", group).quantity("most") ?? []);
    const [hard] = [...most].sort((a, b) => a.value - b.value);
    for (const one of hardness)
      if (one.value !== undefined && hard !== undefined && atMost(one.value, hard) !== "yes")
        yield {
          at: [one, "value"],
          name: `hardness ${one.$.name}`,
          message: `production test ${test.name} is ${one.value.text} hard, above ${hard.text}`,
          why: `${treated ? "heat treated" : "as welded"}, groups ${[...new Set(groups)].join(", ")}`,
          hint,
        };
  },
  examples: [
    {
      name: "on every limit",
      given: values({
        tensile: [{ tensile: "410 MPa" }],
        impact: [{ temperature: "-20 °C", values: ["27 J", "35 J", "19 J"], mean: "27 J" }],
        hardness: [{ value: "380 HV" }],
      }),
      objections: [],
    },
    {
      name: "narrow bars, in proportion",
      given: values({ impact: [{ width: "5 mm", temperature: "-20 °C", values: ["14 J", "15 J", "14 J"] }] }),
      objections: [],
    },
    {
      name: "weak, brittle, hard, and a wrong mean",
      given: values({
        tensile: [{ tensile: "409 MPa", yield: "200 MPa" }],
        impact: [{ temperature: "20 °C", values: ["5 J", "6 J", "7 J"], mean: "60 J" }],
        hardness: [{ value: "381 HV" }],
      }),
      objections: [
        "production test X-01 broke at 409 MPa; P265GH wants at least 410 MPa",
        "production test X-01 yields at 200 MPa; P265GH is named by 265 MPa",
        "the impact energies of production test X-01 are 5 J, 6 J, 7 J: a mean of 27 J, and 18.9 J of each, is the least",
        "the mean of the impact values of production test X-01 is printed as 60 J, but is 6.0 J",
        "the impact bars of production test X-01 were broken at 20 °C, warmer than the coldest service, -10 °C",
        "production test X-01 is 381 HV hard, above 380 HV",
      ],
    },
    {
      name: "a hot tensile test",
      given: values({ tensile: [{ tensile: "350 MPa", temperature: "300 °C" }] }),
      objections: [],
    },
  ],
});

function values(own: Readonly<Record<string, unknown>>) {
  return { grades: ["P265GH"], joints: [{ $: "L1", parts: [{ group: "1.1" }] }], coldest: "-10 °C", ...own };
}
