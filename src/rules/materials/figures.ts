import { commonPractice, ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { tested } from "../../requirements/conditions.ts";

const summed = ["Cr", "Cu", "Mo", "Ni"] as const;

const sum = rule({
  id: "residual-sum",
  title: "A printed sum of Cr, Cu, Mo and Ni is the sum of the four",
  basis: ownChoice("arithmetic: a sum that does not follow from its parts shows a slip of the pen in one of them"),
  kind: "material-certificate#rows",
  when: [
    { path: "sumCrCuMoNi", exists: true },
    ...summed.map((element) => ({ path: `chemistry[element="${element}"].value`, exists: true })),
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    printed: quantity("sumCrCuMoNi", "%"),
    chemistry: anyOf(things("chemistry[]", { element: text("element"), value: optional(quantity("value", "%")) })),
  },
  *check({ printed, chemistry }, row) {
    const parts = chemistry.flatMap(({ element, value }) =>
      value !== undefined && summed.some((one) => one === element) ? [{ element, value }] : [],
    );
    const of = (pick: (one: (typeof parts)[number]["value"]) => number) =>
      parts.reduce((all, { value }) => all + pick(value), 0);
    // Mills add what they measured, with more digits than they print.
    const low = of((value) => value.low - value.halfUnit);
    const high = of((value) => value.high + value.halfUnit);
    if (printed.high + printed.halfUnit * 1.001 >= low && printed.low - printed.halfUnit * 1.001 <= high) return;
    yield {
      at: "printed",
      message: `Cr, Cu, Mo and Ni of ${row.name} are printed as ${printed.text} together, but add up to ${Number(of(({ value }) => value).toFixed(4))} %`,
      why: parts.map(({ element, value }) => `${element} ${value.text}`).join(", "),
      hint: "compare with the certificate; ask the mill which figure is right",
    };
  },
  examples: [
    { name: "added up", given: analysis("0.19 %"), objections: [] },
    { name: "within what the last digits leave open", given: analysis("0.21 %"), objections: [] },
    {
      name: "ten times",
      given: analysis("1.9 %"),
      objections: ["Cr, Cu, Mo and Ni of X-01 are printed as 1.9 % together, but add up to 0.19 %"],
    },
    {
      name: "a tenth",
      given: analysis("0.019 %"),
      objections: ["Cr, Cu, Mo and Ni of X-01 are printed as 0.019 % together, but add up to 0.19 %"],
    },
  ],
});

function analysis(printed: string) {
  const values = { Cr: "0.05 %", Cu: "0.08 %", Mo: "0.01 %", Ni: "0.05 %", Mn: "1.10 %" };
  return { printed, chemistry: Object.entries(values).map(([element, value]) => ({ element, value })) };
}

/** Below this a ferritic steel was tested neither at room temperature nor warm, in °C. */
const coldest = 10;

const tensile = rule({
  id: "tensile-temperature",
  title: "A tensile test is made at room temperature or above",
  basis: commonPractice("the grade is defined by tests between 10 and 35 °C, and by tests in the heat"),
  kind: "material-certificate#rows",
  when: [tested, { path: "tensile[].temperature", exists: true }],
  severity: "query",
  owner: "purchasing",
  inputs: { tests: list(thing("tensile[]", { temperature: optional(quantity("temperature", "°C")) })) },
  *check({ tests }, row) {
    for (const [index, test] of tests.entries()) {
      const { temperature } = test;
      if (temperature !== undefined && temperature.high < coldest)
        yield {
          at: [test, "temperature"],
          accuses: [],
          name: String(index + 1),
          message: `a tensile test of ${row.name} was made at ${temperature.text}, below room temperature`,
          why: "steel is stronger in the cold: its strength there says nothing of the grade",
          hint: "compare with the certificate; if it says so, ask the mill for a test at room temperature",
        };
    }
  },
  examples: [
    { name: "in a cold room", given: { tests: [{ temperature: "10 °C" }] }, objections: [] },
    {
      name: "in the cold",
      given: { tests: [{ temperature: "2 °C" }] },
      objections: ["a tensile test of X-01 was made at 2 °C, below room temperature"],
    },
  ],
});

/** Impact tests are ordered at round temperatures of this range, in °C, where a standard lists none. */
const ordered = { coldest: -60, warmest: 25, step: 5 } as const;

const impact = rule({
  id: "impact-temperature",
  title: "An impact test is made at a temperature that its standard or the design names",
  basis: commonPractice(
    "impact tests are made at the temperatures of the standard, the least temperature of the design or another round one",
  ),
  kind: "material-certificate#rows",
  when: [tested, { path: "impact[].temperature", exists: true }],
  severity: "query",
  owner: "purchasing",
  inputs: {
    listed: anyOf(list(quantity("table(grade-impact, standard, edition, grade).points[].temperature", "°C"))),
    designs: anyOf(list(quantity("book.equipment.limits.minimumAllowableTemperature", "°C"))),
    tests: anyOf(things("impact[]", { temperature: quantity("temperature", "°C") })),
  },
  *check({ listed, designs, tests }, row) {
    for (const [index, test] of tests.entries()) {
      const { value } = test.temperature;
      // A design colder than any of these steels is made for does not make its tests right.
      const made = designs.filter((one) => one.value >= ordered.coldest);
      const named = [...listed, ...made].some((one) => Math.abs(one.value - value) < 0.5);
      const round = value >= ordered.coldest && value <= ordered.warmest && Math.abs(value % ordered.step) < 1e-9;
      if (!named && !round)
        yield {
          at: [test, "temperature"],
          accuses: [],
          name: String(index + 1),
          message: `impact tests of ${row.name} were made at ${test.temperature.text}, which neither the standard nor the design names`,
          why: `named: ${[...new Set([...listed, ...designs].map(({ text: one }) => one))].join(", ")}`,
          hint: "compare with the certificate and the order; if it was ordered so, answer this query with that",
        };
    }
  },
  examples: [
    { name: "as listed", given: struck("-20 °C"), objections: [] },
    { name: "colder, as ordered", given: struck("-40 °C"), objections: [] },
    { name: "at that of the design", given: struck("-12 °C"), objections: [] },
    {
      name: "at that of a design too cold for such steel",
      given: { ...struck("-120 °C"), designs: ["-120 °C"] },
      objections: ["impact tests of X-01 were made at -120 °C, which neither the standard nor the design names"],
    },
    {
      name: "at none that is named",
      given: struck("-2.0 °C"),
      objections: ["impact tests of X-01 were made at -2.0 °C, which neither the standard nor the design names"],
    },
    {
      name: "too cold for such steel",
      given: struck("-200 °C"),
      objections: ["impact tests of X-01 were made at -200 °C, which neither the standard nor the design names"],
    },
  ],
});

function struck(temperature: string) {
  return { listed: ["-20 °C", "0 °C"], designs: ["-12 °C"], tests: [{ temperature }] };
}

const carbon = rule({
  id: "carbon-low",
  title: "A steel of carbon has carbon",
  basis: commonPractice(
    "a ferritic pressure steel without carbon does not reach its strength; such a figure lost a digit",
  ),
  kind: "material-certificate#rows",
  when: [tested, { path: 'chemistry[element="C"].value', exists: true }],
  severity: "query",
  owner: "purchasing",
  inputs: {
    grade: text("grade"),
    limits: list(
      thing('table(grade-chemistry, standard, edition, grade).limits[element="C"]', {
        bound: text("bound"),
        content: quantity("content", "%"),
      }),
    ),
    carbon: thing('chemistry[element="C"]', { value: quantity("value", "%") }),
  },
  *check({ grade, limits, carbon: { value, ...found } }, row) {
    const most = limits.find(({ bound }) => bound === "most")?.content;
    if (most === undefined || most.value < 0.1 || value.high >= most.value / 5) return;
    yield {
      at: [{ value, ...found }, "value"],
      accuses: [],
      message: `carbon is ${value.text} on ${row.name}; ${grade} may have ${most.text}, and has little less`,
      why: "less than a fifth of what is permitted",
      hint: "compare with the certificate; if it says so, ask the mill whether it is so",
    };
  },
  examples: [
    { name: "usual", given: melted("0.14 %"), objections: [] },
    { name: "lean", given: melted("0.04 %"), objections: [] },
    {
      name: "a tenth",
      given: melted("0.014 %"),
      objections: ["carbon is 0.014 % on X-01; P265GH may have 0.20 %, and has little less"],
    },
  ],
});

function melted(value: string) {
  return { grade: "P265GH", limits: [{ bound: "most", content: "0.20 %" }], carbon: { value } };
}

/** Figures of a certificate held against each other, and against what such tests are made at. */
export const certificateFigures: readonly Rule[] = [sum, tensile, impact, carbon];
