import { fromMemory, ownChoice } from "../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing } from "../model/input.ts";
import { atLeast, atMost, type Measure } from "../model/quantity.ts";
import { rule } from "../model/rule.ts";
import { tested } from "../requirements/conditions.ts";

const ladle = fromMemory(
  "EN 10028-2 and its sister standards",
  undefined,
  "limits of the ladle analysis; each row of the table says its own basis",
);

/** What a row of the table limits: an element, or a sum of elements written with "+". */
const partsOf = (element: string): readonly string[] => element.split("+");

/**
 * Certificate values are compared as printed, unrounded: rounding to the digits of the limit would be the laxer reading,
 * and the digits of a limit are not always known.
 */
export const chemistryLimits = rule({
  id: "chemistry-limits",
  title: "Every element the grade limits is reported, and lies within its limits",
  basis: ladle,
  kind: "material-certificate#rows",
  when: [tested],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    limits: list(
      thing("table(grade-chemistry, standard, edition, grade).limits[]", {
        element: text("element"),
        bound: text("bound"),
        content: quantity("content", "%"),
        report: text("report"),
      }),
    ),
    chemistry: list(thing("chemistry[]", { element: text("element"), value: quantity("value", "%") })),
    grade: text("grade"),
  },
  *check({ limits, chemistry, grade }, row) {
    for (const { element, bound, content, report } of limits) {
      const least = bound === "least";
      const range = `${least ? "at least" : "at most"} ${content.text}`;
      const values = partsOf(element).map((part) => chemistry.find((one) => one.element === part));
      const found = values.filter((one) => one !== undefined);
      if (found.length < values.length) {
        if (report === "always")
          yield {
            name: element,
            at: "chemistry",
            accuses: [],
            message: `${row.id} reports no ${partsOf(element)
              .filter((part) => !found.some((one) => one.element === part))
              .join(", ")}, which ${grade} limits`,
            why: `${element}: ${range}`,
            hint: "ask the mill for the missing figure; an element that is not reported is not within its limit",
          };
        continue;
      }
      const low = found.reduce((sum, one) => sum + one.value.low, 0);
      const high = found.reduce((sum, one) => sum + one.value.high, 0);
      const guard = 1e-9;
      const holds = least ? low >= content.value - guard : high <= content.value + guard;
      const fails = least ? high < content.value - guard : low > content.value + guard;
      const [first] = found;
      if (!holds && first !== undefined)
        yield {
          name: element,
          at: [first, "value"],
          accuses: found.map((one) => [one, "value"] as const),
          message: `${element} is ${found.length === 1 ? first.value.text : `${Number(high.toFixed(6))} %`} on ${row.id}; ${grade} wants ${range}`,
          why: "ladle analysis as printed, unrounded",
          hint: "compare with the certificate; if it says so, raise a nonconformity report with the mill",
          unsure: !fails,
        };
    }
  },
  examples: [
    {
      name: "on the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "C", bound: "most", content: "0.20 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.20 %" }],
      },
      objections: [],
    },
    {
      name: "over the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "C", bound: "most", content: "0.20 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.204 %" }],
      },
      objections: ["C is 0.204 % on X-01; P265GH wants at most 0.20 %"],
    },
    {
      name: "on the least",
      given: {
        grade: "P265GH",
        limits: [{ element: "Al", bound: "least", content: "0.020 %", report: "always" }],
        chemistry: [{ element: "Al", value: "0.020 %" }],
      },
      objections: [],
    },
    {
      name: "under the least",
      given: {
        grade: "P265GH",
        limits: [{ element: "Al", bound: "least", content: "0.020 %", report: "always" }],
        chemistry: [{ element: "Al", value: "0.012 %" }],
      },
      objections: ["Al is 0.012 % on X-01; P265GH wants at least 0.020 %"],
    },
    {
      name: "known only as less than, below the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Nb", bound: "most", content: "0.030 %", report: "always" }],
        chemistry: [{ element: "Nb", value: "<0.003 %" }],
      },
      objections: [],
    },
    {
      name: "not reported",
      given: {
        grade: "P265GH",
        limits: [{ element: "Mo", bound: "most", content: "0.08 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.14 %" }],
      },
      objections: ["X-01 reports no Mo, which P265GH limits"],
    },
    {
      name: "a sum on its limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Cr+Ni", bound: "most", content: "0.30 %", report: "always" }],
        chemistry: [
          { element: "Cr", value: "0.10 %" },
          { element: "Ni", value: "0.20 %" },
        ],
      },
      objections: [],
    },
    {
      name: "a sum over its limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Cr+Ni", bound: "most", content: "0.30 %", report: "always" }],
        chemistry: [
          { element: "Cr", value: "0.11 %" },
          { element: "Ni", value: "0.20 %" },
        ],
      },
      objections: ["Cr+Ni is 0.31 % on X-01; P265GH wants at most 0.30 %"],
    },
  ],
});

const strength = fromMemory(
  "EN 10028-2 and its sister standards",
  undefined,
  "mechanical properties; each row of the table says its own basis",
);

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
  },
  *check({ limits, elongation, tests, grade }, row) {
    const atRoom = tests.filter((test) => test.temperature === undefined || test.temperature.value <= 35);
    if (atRoom.length === 0)
      yield {
        at: "tests",
        accuses: [],
        name: "none",
        message: `${row.id} has no tensile test at room temperature`,
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
            message: `${row.id} reports no ${words[field]}`,
            why: `${grade} limits it`,
            hint: "ask the mill for the missing figure",
          };
          continue;
        }
        const answers = [
          low === undefined ? "yes" : atLeast(value, low),
          high === undefined ? "yes" : atMost(value, high),
        ];
        if (answers.every((answer) => answer === "yes")) continue;
        yield {
          name: `${field}${label}`,
          at: [test, field],
          message: `${words[field]} is ${value.text} on ${row.id}; ${grade} wants ${high === undefined ? `at least ${low?.text ?? ""}` : `${low?.text ?? ""} to ${high.text}`}`,
          why: "limits of the grade at the certified thickness, at room temperature",
          hint: "compare with the certificate; if it says so, raise a nonconformity report with the mill",
          unsure: !answers.includes("no"),
        };
      }
      if (test.yield !== undefined && test.tensile !== undefined && atLeast(test.yield, test.tensile) === "yes")
        yield {
          name: `order${label}`,
          at: [test, "yield"],
          message: `yield ${test.yield.text} is not below tensile strength ${test.tensile.text} on ${row.id}`,
          why: "steel yields before it breaks: the columns may be swapped",
          hint: "compare with the certificate",
        };
    }
  },
  examples: [
    {
      name: "on every limit",
      given: {
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
      name: "too soft, too hard",
      given: {
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
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "300 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "456 MPa", tensile: "318 MPa", elongation: "25 %" }],
      },
      objections: ["yield 456 MPa is not below tensile strength 318 MPa on X-01"],
    },
    {
      name: "only hot",
      given: {
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ yield: "200 MPa", tensile: "400 MPa", temperature: "200 °C" }],
      },
      objections: ["X-01 has no tensile test at room temperature"],
    },
    {
      name: "no yield strength",
      given: {
        grade: "P265GH",
        limits: { yield: "265 MPa", tensileLow: "410 MPa", tensileHigh: "530 MPa" },
        tests: [{ tensile: "450 MPa" }],
      },
      objections: ["X-01 reports no yield strength"],
    },
  ],
});

const words = { yield: "yield strength", tensile: "tensile strength", elongation: "elongation" } as const;

export const printedMean = rule({
  id: "impact-mean",
  title: "A printed mean of impact values is the mean of the values",
  basis: ownChoice("arithmetic: a mean that does not follow from its values shows a slip of the pen in one of them"),
  kind: "material-certificate#rows",
  when: [{ path: "impact", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    tests: anyOf(
      list(
        thing("impact[]", { values: anyOf(list(quantity("values[]", "J"))), mean: optional(quantity("mean", "J")) }),
      ),
    ),
  },
  *check({ tests }, row) {
    for (const [index, test] of tests.entries()) {
      const { mean, values } = test;
      if (mean === undefined || values.length === 0) continue;
      const computed = values.reduce((sum, one) => sum + one.value, 0) / values.length;
      if (Math.abs(computed - mean.value) > mean.halfUnit * (1 + 1e-9) + 1e-9)
        yield {
          name: String(index + 1),
          at: [test, "mean"],
          message: `the mean of the impact values of ${row.id} is printed as ${mean.text}, but is ${computed.toFixed(1)} J`,
          why: `values: ${values.map(({ text: value }) => value).join(", ")}`,
          hint: "compare with the certificate; ask the mill which figure is right",
        };
    }
  },
  examples: [
    { name: "rounded", given: { tests: [{ values: ["61 J", "64 J", "70 J"], mean: "65 J" }] }, objections: [] },
    {
      name: "a slip",
      given: { tests: [{ values: ["61 J", "64 J", "70 J"], mean: "75 J" }] },
      objections: ["the mean of the impact values of X-01 is printed as 75 J, but is 65.0 J"],
    },
  ],
});
