import { excerptSeen, ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { atLeast, exactly, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

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
          message: `the mean of the impact values of ${row.name} is printed as ${mean.text}, but is ${computed.toFixed(1)} J`,
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

const fullWidth = 10;
const singleShare = 0.7;
/** Values of a set and of the one that followed it. */
const twoSets = 6;

export const impactEnergy = rule({
  id: "impact-energy",
  title: "Impact tests reach the energy the grade wants at their temperature",
  basis: excerptSeen(
    "EN 10222-1",
    "mean of three; one value may lie below, not below 70 %. Of six, after a set that failed: two below, one of them below 70 %, EN 10021 from memory. In proportion to the width of narrower bars: common practice",
  ),
  kind: "material-certificate#rows",
  when: [{ path: "impact", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    grade: text("grade"),
    limits: things("table(grade-impact, standard, edition, grade).points[]", {
      direction: text("direction"),
      temperature: quantity("temperature", "°C"),
      energy: quantity("energy", "J"),
    }),
    tests: anyOf(
      things("impact[]", {
        direction: optional(text("direction")),
        temperature: quantity("temperature", "°C"),
        width: optional(quantity("specimenWidth", "mm")),
        values: anyOf(list(quantity("values[]", "J"))),
      }),
    ),
  },
  *check({ grade, limits, tests }, row) {
    for (const [index, test] of tests.entries()) {
      const name = `energy${tests.length > 1 ? ` ${index + 1}` : ""}`;
      const hint = "compare with the certificate and the standard of the material";
      // Steel is no less tough when it is warmer: a colder test that reaches the energy of a warmer one is enough.
      const [limit] = limits
        .filter(({ direction }) => test.direction === undefined || direction === test.direction)
        .filter(({ temperature }) => temperature.value >= test.temperature.value)
        .sort((a, b) => a.temperature.value - b.temperature.value || b.energy.value - a.energy.value);
      if (limit === undefined) {
        yield {
          name,
          at: test,
          accuses: [],
          unsure: true,
          message:
            `no limit is at hand for the ${test.direction ?? ""} impact test of ${row.name} at ${test.temperature.text}`.replace(
              "  ",
              " ",
            ),
          why: `limits of ${grade}: ${limits.map((one) => `${one.energy.text} ${one.direction} at ${one.temperature.text}`).join(", ")}`,
          hint,
        };
        continue;
      }
      const share = Math.min(1, (test.width?.value ?? fullWidth) / fullWidth);
      const wanted = (part: number) => exactly(limit.energy.value * share * part, "J");
      const low = test.values.filter((value) => atLeast(value, wanted(1)) !== "yes");
      const far = low.filter((value) => atLeast(value, wanted(singleShare)) !== "yes");
      // A set of three that fails may be followed by three more, and the six judged together.
      const [lowMost, farMost] = test.values.length >= twoSets ? [2, 1] : [1, 0];
      if (
        test.values.length === 0 ||
        (low.length <= lowMost && far.length <= farMost && atLeast(mean(test.values), wanted(1)) === "yes")
      )
        continue;
      yield {
        name,
        at: [test, "values"],
        message: `the impact energies of ${row.name} are ${test.values.map((value) => value.text).join(", ")}; ${grade} wants a mean of ${limit.energy.text} at ${limit.temperature.text}`,
        why: `${share < 1 ? `${wanted(1).value.toFixed(1)} J on bars ${test.width?.text ?? ""} wide; ` : ""}${lowMost === 1 ? `one value may lie below, not below ${wanted(singleShare).value.toFixed(1)} J` : `of six values two may lie below, one of them below ${wanted(singleShare).value.toFixed(1)} J`}`,
        hint: `${hint}; if it is so, raise a nonconformity report with the mill`,
      };
    }
  },
  examples: [
    { name: "at the limit, one below", given: bars({ values: ["27 J", "30 J", "24 J"] }), objections: [] },
    {
      name: "the mean is below",
      given: bars({ values: ["27 J", "29 J", "24 J"] }),
      objections: ["the impact energies of X-01 are 27 J, 29 J, 24 J; P265GH wants a mean of 27 J at -20 °C"],
    },
    {
      name: "two are below",
      given: bars({ values: ["26 J", "26 J", "60 J"] }),
      objections: ["the impact energies of X-01 are 26 J, 26 J, 60 J; P265GH wants a mean of 27 J at -20 °C"],
    },
    {
      name: "one is far below",
      given: bars({ values: ["18 J", "60 J", "60 J"] }),
      objections: ["the impact energies of X-01 are 18 J, 60 J, 60 J; P265GH wants a mean of 27 J at -20 °C"],
    },
    {
      name: "three more after a set that failed",
      given: bars({ values: ["17 J", "45 J", "52 J", "48 J", "55 J", "53 J"] }),
      objections: [],
    },
    {
      name: "three more, and still two far below",
      given: bars({ values: ["17 J", "45 J", "18 J", "48 J", "55 J", "53 J"] }),
      objections: [
        "the impact energies of X-01 are 17 J, 45 J, 18 J, 48 J, 55 J, 53 J; P265GH wants a mean of 27 J at -20 °C",
      ],
    },
    {
      name: "narrower bars, in proportion",
      given: bars({ values: ["14 J", "13.5 J", "13 J"], width: "5 mm" }),
      objections: [],
    },
    {
      name: "colder than a listed temperature: what the warmer one wants",
      given: bars({ values: ["33 J", "33 J", "33 J"], temperature: "-10 °C" }),
      objections: ["the impact energies of X-01 are 33 J, 33 J, 33 J; P265GH wants a mean of 34 J at 0 °C"],
    },
    {
      name: "warmer than every listed temperature",
      given: bars({ values: ["60 J", "60 J", "60 J"], temperature: "23 °C" }),
      objections: ["no limit is at hand for the transverse impact test of X-01 at 23 °C"],
    },
  ],
});

function bars(test: { readonly values: readonly string[]; readonly temperature?: string; readonly width?: string }) {
  const at = (temperature: string, energy: string) => ({ direction: "transverse", temperature, energy });
  return {
    grade: "P265GH",
    limits: [at("-20 °C", "27 J"), at("0 °C", "34 J"), at("20 °C", "40 J")],
    tests: [{ direction: "transverse", temperature: "-20 °C", ...test }],
  };
}

/** The mean of readings, with what their digits leave open. */
function mean(values: readonly Measure[]): Measure {
  const of = (pick: (one: Measure) => number) => values.reduce((sum, one) => sum + pick(one), 0) / values.length;
  return {
    ...exactly(
      of(({ value }) => value),
      "J",
    ),
    low: of(({ low }) => low),
    high: of(({ high }) => high),
  };
}
