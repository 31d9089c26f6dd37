import { fromMemory } from "../../model/basis.ts";
import { list, optional, quantity, text, thing } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { tested } from "../../requirements/conditions.ts";
import { asCompared } from "../shared/rounding.ts";

const strength = fromMemory(
  "EN 10028-2 and its sister standards",
  undefined,
  "mechanical properties; each row of the table says its own basis",
);

const words = { yield: "yield strength", tensile: "tensile strength", elongation: "elongation" } as const;
const fields = { yield: "yieldStrength", tensile: "tensileStrength", elongation: "elongation" } as const;

interface Limits {
  readonly limits: { readonly yield: Measure; readonly tensileLow: Measure; readonly tensileHigh: Measure };
  readonly elongation: Measure | undefined;
}

/** What the grade wants of each result of a test at room temperature. */
function wantedBy({ limits, elongation }: Limits): readonly {
  readonly field: keyof typeof words;
  readonly low: Measure;
  readonly high?: Measure;
}[] {
  return [
    { field: "yield", low: limits.yield },
    { field: "tensile", low: limits.tensileLow, high: limits.tensileHigh },
    ...(elongation === undefined ? [] : [{ field: "elongation" as const, low: elongation }]),
  ];
}

/** Tests without a stated temperature were made at room temperature. */
const isAtRoom = ({ temperature }: { readonly temperature: Measure | undefined }) =>
  temperature === undefined || temperature.value <= 35;

const rangeOf = ({ low, high }: { readonly low: Measure; readonly high?: Measure }) =>
  high === undefined ? `at least ${low.text}` : `${low.text} to ${high.text}`;

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
        direction: optional(text("direction")),
      }),
    ),
    grade: text("grade"),
    rounding: text("profile.certificateRounding"),
  },
  *check({ limits, elongation, tests, grade, rounding }, row) {
    const atRoom = tests.filter(isAtRoom);
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
      for (const one of wantedBy({ limits, elongation })) {
        const { field, low, high } = one;
        const value = test[field];
        if (value === undefined) continue;
        const answers = [
          atLeast(asCompared(value, low, rounding), low),
          high === undefined ? "yes" : atMost(asCompared(value, high, rounding), high),
        ];
        if (answers.every((answer) => answer === "yes")) continue;
        yield {
          name: `${field}${label}`,
          at: [test, field],
          message: `${words[field]} is ${value.text} on ${row.name}; ${grade} wants ${rangeOf(one)}`,
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
  *lacks({ limits, elongation, tests }) {
    for (const test of tests.filter(isAtRoom)) {
      // Without it no limit of the elongation is found, and nothing would be said of it.
      if (test.direction === undefined)
        yield { at: test, path: "direction", why: "elongation is limited by the direction of the test piece" };
      for (const one of wantedBy({ limits, elongation }))
        if (test[one.field] === undefined)
          yield { at: test, path: fields[one.field], why: `${words[one.field]}: ${rangeOf(one)}` };
    }
  },
  lacksDue: "material-received",
  examples: [
    {
      name: "on every limit",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        elongation: "22 %",
        tests: [
          { direction: "transverse", yield: "265 MPa", tensile: "410 MPa", elongation: "22 %" },
          { direction: "transverse", yield: "300 MPa", tensile: "530 MPa", elongation: "22 %", temperature: "20 °C" },
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
        tests: [{ direction: "transverse", yield: "264.5 MPa", tensile: "530.4 MPa" }],
      },
      objections: [],
    },
    {
      name: "too far though rounded",
      given: {
        rounding: "to the limit's digits",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ direction: "transverse", yield: "264.4 MPa", tensile: "530.5 MPa" }],
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
          { direction: "transverse", yield: "264 MPa", tensile: "409 MPa", elongation: "21 %" },
          { direction: "transverse", yield: "300 MPa", tensile: "531 MPa", elongation: "25 %" },
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
        tests: [{ direction: "transverse", yield: "456 MPa", tensile: "318 MPa", elongation: "25 %" }],
      },
      objections: ["yield 456 MPa is not below tensile strength 318 MPa on X-01"],
    },
    {
      name: "only hot",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ direction: "transverse", yield: "200 MPa", tensile: "400 MPa", temperature: "200 °C" }],
      },
      objections: ["X-01 has no tensile test at room temperature"],
    },
    {
      name: "no yield strength",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ direction: "transverse", tensile: "450 MPa" }],
      },
      objections: [],
      lacks: ["yieldStrength"],
    },
    {
      name: "a test of which nothing is reported, beside one that is too soft",
      given: {
        rounding: "unrounded",
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        elongation: "22 %",
        tests: [
          { direction: "transverse", yield: "264 MPa", tensile: "450 MPa", elongation: "25 %" },
          {},
          { temperature: "200 °C" },
        ],
      },
      objections: ["yield strength is 264 MPa on X-01; P265GH wants at least 265 MPa"],
      lacks: ["direction", "yieldStrength", "tensileStrength", "elongation"],
    },
  ],
});
