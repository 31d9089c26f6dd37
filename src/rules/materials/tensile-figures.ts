import { commonPractice, fromMemory } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const yieldKind = rule({
  id: "yield-kind",
  title: "The strength a certificate states is the one its grade is specified by",
  basis: fromMemory(
    "EN 10028-2 and its sister standards",
    undefined,
    "ferritic steels are specified by ReH, or Rp0.2 where the yield is not pronounced; Rp1.0 is higher and proves neither",
  ),
  kind: "material-certificate#rows",
  when: [{ path: "tensile[].yieldKind", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    grade: text("grade"),
    // The grades at hand are ferritic: of another one nobody knows by what it is specified.
    specified: quantity("table(grade-yield, grade).tensile", "MPa"),
    tests: anyOf(things("tensile[]", { name: text("test"), sort: optional(text("yieldKind")) })),
  },
  *check({ grade, tests }, row) {
    for (const test of tests)
      if (test.sort === "Rp1.0")
        yield {
          at: [test, "sort"],
          name: test.name,
          message: `tensile test ${test.name} of ${row.name} states Rp1.0; ${grade} is specified by ReH or Rp0.2`,
          why: "the proof strength at 1 % lies above that at 0.2 %: the limit of the grade is not shown to be met",
          hint: "compare with the certificate; if it says so, ask the mill for the yield or the proof strength at 0.2 %",
        };
  },
  examples: [
    { name: "upper yield", given: stated("ReH"), objections: [] },
    { name: "lower yield, which is less", given: stated("ReL"), objections: [] },
    {
      name: "at one percent",
      given: stated("Rp1.0"),
      objections: ["tensile test 1 of X-01 states Rp1.0; P265GH is specified by ReH or Rp0.2"],
    },
  ],
});

function stated(sort: string) {
  return { grade: "P265GH", specified: "410 MPa", tests: [{ name: "1", sort }] };
}

/** A length by itself, such as "80 mm", is one of a piece that is not proportional. */
const fixedLength = /^\s*\d+(?:[.,]\d+)?\s*(?:mm|in)\s*$/u;

export const gaugeLengthProportional = rule({
  id: "gauge-length-proportional",
  title: "The elongation of a certificate is that of a proportional test piece, as the limit of its grade is",
  basis: fromMemory(
    "EN ISO 6892-1",
    undefined,
    "A is the elongation on 5.65·√S0; on a fixed length it is written with that length, and converted by EN ISO 2566-1",
  ),
  kind: "material-certificate#rows",
  when: [{ path: "tensile[].gaugeLength", exists: true }],
  severity: "query",
  owner: "purchasing",
  inputs: {
    tests: anyOf(
      things("tensile[]", {
        name: text("test"),
        gauge: optional(text("gaugeLength")),
        elongation: optional(quantity("elongation", "%")),
      }),
    ),
  },
  *check({ tests }, row) {
    for (const test of tests)
      if (test.gauge !== undefined && fixedLength.test(test.gauge))
        yield {
          at: [test, "gauge"],
          name: test.name,
          message: `tensile test ${test.name} of ${row.name} has its elongation${test.elongation === undefined ? "" : `, ${test.elongation.text},`} on a fixed length of ${test.gauge.trim()}`,
          why: "the limit of the grade is for 5.65·√S0, and was held against the figure as it is printed",
          hint: "answer this query with the converted elongation, or with the section that makes the length proportional",
        };
  },
  examples: [
    { name: "proportional", given: { tests: [{ name: "1", gauge: "5.65·√S0" }] }, objections: [] },
    { name: "by diameter", given: { tests: [{ name: "1", gauge: "5d" }] }, objections: [] },
    {
      name: "a fixed length",
      given: { tests: [{ name: "1", gauge: "80 mm", elongation: "24 %" }] },
      objections: ["tensile test 1 of X-01 has its elongation, 24 %, on a fixed length of 80 mm"],
    },
  ],
});

/** MPa of tensile strength for each point of Vickers hardness, and how far off that may be. */
const [perPoint, spread] = [3.2, 0.25];

export const hardnessAsStrength = rule({
  id: "hardness-as-strength",
  title: "Hardness and tensile strength of one certificate tell of one steel",
  basis: commonPractice(
    "the tensile strength of unalloyed steel in MPa is 3.2 times its Vickers hardness, within a quarter",
  ),
  kind: "material-certificate#rows",
  when: [
    { path: "hardness[].value", exists: true },
    { path: "tensile[].tensileStrength", exists: true },
  ],
  severity: "query",
  owner: "purchasing",
  inputs: {
    readings: anyOf(things("hardness[]", { name: text("test"), value: optional(quantity("value", "HV")) })),
    tests: anyOf(
      things("tensile[]", {
        temperature: optional(quantity("temperature", "°C")),
        strength: optional(quantity("tensileStrength", "MPa")),
      }),
    ),
  },
  *check({ readings, tests }, row) {
    // Hot tests tell of another strength.
    const strengths = tests.flatMap(({ temperature, strength }) =>
      strength === undefined || (temperature !== undefined && temperature.value > 50) ? [] : [strength],
    );
    for (const reading of readings) {
      const { value } = reading;
      if (value === undefined) continue;
      if (strengths.length === 0) {
        yield {
          at: [reading, "value"],
          accuses: [],
          name: reading.name,
          unsure: true,
          message: `${row.name} has ${value.text}, and no tensile strength at room temperature to hold it against`,
          why: "hot tests tell of another strength",
          hint: "enter the tensile test at room temperature from the certificate, or ask the mill for it",
        };
        continue;
      }
      const told = perPoint * value.value;
      if (strengths.some((strength) => Math.abs(told - strength.value) <= spread * strength.value)) continue;
      yield {
        at: [reading, "value"],
        accuses: [],
        name: reading.name,
        message: `${row.name} has ${value.text}, and a tensile strength of ${strengths.map(({ text: said }) => said).join(", ")}`,
        why: `${value.text} tells of about ${Math.round(told)} MPa`,
        hint: "compare both with the certificate; if it says so, ask the mill which of them is of this heat",
      };
    }
  },
  examples: [
    { name: "of one steel", given: hard("145 HV"), objections: [] },
    { name: "a quarter off", given: hard("176 HV"), objections: [] },
    {
      name: "of a harder one",
      given: hard("230 HV"),
      objections: ["X-01 has 230 HV, and a tensile strength of 452 MPa"],
    },
    {
      name: "hot tests alone",
      given: { readings: [{ name: "1", value: "230 HV" }], tests: [{ temperature: "300 °C", strength: "452 MPa" }] },
      objections: ["X-01 has 230 HV, and no tensile strength at room temperature to hold it against"],
    },
  ],
});

function hard(value: string) {
  return { readings: [{ name: "1", value }], tests: [{ strength: "452 MPa" }] };
}
