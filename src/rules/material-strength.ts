import { fromMemory } from "../model/basis.ts";
import { list, optional, quantity, text, thing } from "../model/input.ts";
import { atLeast, atMost, type Measure } from "../model/quantity.ts";
import { rule } from "../model/rule.ts";
import { tested } from "../requirements/conditions.ts";
import { asCompared } from "./rounding.ts";

const strength = fromMemory(
  "EN 10028-2 and its sister standards",
  undefined,
  "mechanical properties; each row of the table says its own basis",
);

const words = { yield: "yield strength", tensile: "tensile strength", elongation: "elongation" } as const;

export const tensileLimits = rule({
  id: "tensile-limits",
  title: "Yield, tensile strength and elongation meet the grade at the certified thickness",
  basis: strength,
  kind: "material-certificate#rows",
  when: [tested],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    limits: thing("table(grade-strength, standard, edition, grade, thickness)", {
      yield: quantity("yieldStrength", "MPa"),
      tensileLow: quantity("tensileStrength", "MPa"),
      tensileHigh: quantity("tensileStrengthMost", "MPa"),
    }),
    elongation: optional(
      quantity("table(grade-elongation, standard, edition, grade, thickness, tensile[].direction).elongation", "%"),
    ),
    tests: list(
      thing("tensile[]", {
        yield: optional(quantity("yieldStrength", "MPa")),
        tensile: optional(quantity("tensileStrength", "MPa")),
        elongation: optional(quantity("elongation", "%")),
        temperature: optional(quantity("temperature", "°C")),
      }),
    ),
    grade: text("grade"),
    rounding: text("profile.certificateRounding"),
  },
  *check({ limits, elongation, tests, grade, rounding }, row) {
    const atRoom = tests.filter((test) => test.temperature === undefined || test.temperature.value <= 35);
    if (atRoom.length === 0)
      yield {
        at: "tests",
        accuses: [],
        name: "none",
        message: `${row.name} has no tensile test at room temperature`,
        why: `tests at ${tests.map((test) => test.temperature?.text ?? "no stated temperature").join(", ")}`,
        hint: "ask the mill for the test at room temperature, which the grade is defined by",
      };
    for (const [index, test] of atRoom.entries()) {
      const label = atRoom.length > 1 ? ` ${index + 1}` : "";
      const wanted: readonly {
        readonly field: "yield" | "tensile" | "elongation";
        readonly low?: Measure;
        readonly high?: Measure;
      }[] = [
        { field: "yield", low: limits.yield },
        { field: "tensile", low: limits.tensileLow, high: limits.tensileHigh },
        ...(elongation === undefined ? [] : [{ field: "elongation" as const, low: elongation }]),
      ];
      for (const { field, low, high } of wanted) {
        const value = test[field];
        if (value === undefined) {
          yield {
            name: `${field}${label}`,
            at: test,
            accuses: [],
            message: `${row.name} reports no ${words[field]}`,
            why: `${grade} limits it`,
            hint: "ask the mill for the missing figure",
          };
          continue;
        }
        const answers = [
          low === undefined ? "yes" : atLeast(asCompared(value, low, rounding), low),
          high === undefined ? "yes" : atMost(asCompared(value, high, rounding), high),
        ];
        if (answers.every((answer) => answer === "yes")) continue;
        yield {
          name: `${field}${label}`,
          at: [test, field],
          message: `${words[field]} is ${value.text} on ${row.name}; ${grade} wants ${high === undefined ? `at least ${low?.text ?? ""}` : `${low?.text ?? ""} to ${high.text}`}`,
          why: "limits of the grade at the certified thickness, at room temperature",
          hint: "compare with the certificate; if it says so, raise a nonconformity report with the mill",
          unsure: !answers.includes("no"),
        };
      }
      if (test.yield !== undefined && test.tensile !== undefined && atLeast(test.yield, test.tensile) === "yes")
        yield {
          name: `order${label}`,
          at: [test, "yield"],
          message: `yield ${test.yield.text} is not below tensile strength ${test.tensile.text} on ${row.name}`,
          why: "steel yields before it breaks: the columns may be swapped",
          hint: "compare with the certificate",
        };
    }
  },
  examples: [
    {
      name: "on every limit",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        elongation: "22 %",
        tests: [
          { yield: "265 MPa", tensile: "410 MPa", elongation: "22 %" },
          { yield: "300 MPa", tensile: "530 MPa", elongation: "22 %", temperature: "20 °C" },
        ],
      },
      objections: [],
    },
    {
      name: "rounded to the limit, where the profile lets it",
      given: {
        rounding: "to the limit's digits",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "264.5 MPa", tensile: "530.4 MPa" }],
      },
      objections: [],
    },
    {
      name: "too far though rounded",
      given: {
        rounding: "to the limit's digits",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "264.4 MPa", tensile: "530.5 MPa" }],
      },
      objections: [
        "yield strength is 264.4 MPa on X-01; P265GH wants at least 265 MPa",
        "tensile strength is 530.5 MPa on X-01; P265GH wants 410 MPa to 530 MPa",
      ],
    },
    {
      name: "too soft, too hard",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        elongation: "22 %",
        tests: [
          { yield: "264 MPa", tensile: "409 MPa", elongation: "21 %" },
          { yield: "300 MPa", tensile: "531 MPa", elongation: "25 %" },
        ],
      },
      objections: [
        "yield strength is 264 MPa on X-01; P265GH wants at least 265 MPa",
        "tensile strength is 409 MPa on X-01; P265GH wants 410 MPa to 530 MPa",
        "elongation is 21 % on X-01; P265GH wants at least 22 %",
        "tensile strength is 531 MPa on X-01; P265GH wants 410 MPa to 530 MPa",
      ],
    },
    {
      name: "columns swapped",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "300 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "456 MPa", tensile: "318 MPa", elongation: "25 %" }],
      },
      objections: ["yield 456 MPa is not below tensile strength 318 MPa on X-01"],
    },
    {
      name: "only hot",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "200 MPa", tensile: "400 MPa", temperature: "200 °C" }],
      },
      objections: ["X-01 has no tensile test at room temperature"],
    },
    {
      name: "no yield strength",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ tensile: "450 MPa" }],
      },
      objections: ["X-01 reports no yield strength"],
    },
  ],
});
