import { fromMemory, ownChoice } from "../model/basis.ts";
import { calculation, type CalculationInput } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const ladle = (element: string, means: string): CalculationInput => ({
  path: `chemistry[element="${element}"].value`,
  unit: "%",
  means: `content of ${means}, ladle analysis`,
});
const plate = { C: 0.15, Mn: 1.2, Cr: 0.1, Mo: 0.05, V: 0.02, Ni: 0.5, Cu: 0.2, tol: 0.01 };

export const carbonEquivalent = calculation({
  id: "carbon-equivalent",
  title: "Carbon equivalent of a heat",
  basis: fromMemory(
    "International Institute of Welding",
    undefined,
    "carbon equivalent CE; EN 1011-2 gives the same sum",
  ),
  covers:
    "Carbon equivalent after the International Institute of Welding from the ladle analysis of one heat. Other carbon equivalents (CET, Pcm, those of pipeline codes) are other sums and are not comparable.",
  appliesTo: {
    kind: "material-certificate#rows",
    when: [
      { path: "record.type", equals: ["3.1", "3.2"] },
      { path: "form", equals: ["plate", "tube", "pipe", "forging", "formed-end", "fitting"] },
    ],
  },
  inputs: {
    C: ladle("C", "carbon"),
    Mn: ladle("Mn", "manganese"),
    Cr: ladle("Cr", "chromium"),
    Mo: ladle("Mo", "molybdenum"),
    V: {
      ...ladle("V", "vanadium"),
      means:
        "content of vanadium, ladle analysis; 0.02 %, the most the grades used here allow, where it is not reported",
      need: "optional",
      otherwise: 0.02,
    },
    Ni: ladle("Ni", "nickel"),
    Cu: ladle("Cu", "copper"),
    CEp: {
      path: "carbonEquivalent",
      unit: "%",
      means: "carbon equivalent printed on the certificate",
      need: "optional",
      display: "CE_p",
    },
    tol: {
      path: "profile.carbonEquivalentTolerance",
      unit: "%",
      means: "how far a printed carbon equivalent may lie from the sum",
      display: "Δ",
    },
  },
  owes: [owedBy("purchasing", "material-received", "C", "Mn", "Cr", "Mo", "Ni", "Cu")],
  steps: [
    {
      symbol: "CE",
      unit: "%",
      means: "carbon equivalent",
      formula: "C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
      display: "CE_",
      round: { decimals: 2, direction: "up" },
    },
  ],
  limits: [
    {
      left: "Mn",
      relation: "<=",
      right: "'1.9 %'",
      means: "the steel is a carbon-manganese steel: manganese is at most 1.9 %",
      basis: ownChoice("the sum is meant for carbon-manganese and low-alloy steel"),
    },
    {
      left: "Cr",
      relation: "<=",
      right: "'1 %'",
      means: "the steel is a carbon-manganese steel: chromium is at most 1 %",
      basis: ownChoice("the sum is meant for carbon-manganese and low-alloy steel"),
    },
  ],
  accept: [
    {
      left: "CEp",
      relation: ">=",
      right: "CE - tol",
      means: "the printed carbon equivalent is not lower than the sum of the printed analysis",
      wrong: "the printed carbon equivalent is {left}, but the printed analysis gives {CE}, rounded {right} at least",
      accuses: "CEp",
      needs: "CEp",
      owner: "quality",
    },
    {
      left: "CEp",
      relation: "<=",
      right: "CE + tol",
      means: "the printed carbon equivalent is not higher than the sum of the printed analysis",
      wrong: "the printed carbon equivalent is {left}, but the printed analysis gives {CE}, rounded {right} at most",
      accuses: "CEp",
      needs: "CEp",
      owner: "quality",
    },
  ],
  compared: [{ symbol: "CE", unsafe: "low", within: 0.01 }],
  owner: "welding coordination",
  examples: [
    {
      source: "worked by hand: 0.15 + 1.2/6 + 0.17/5 + 0.7/15",
      class: "constructed",
      given: { ...plate, CEp: 0.43 },
      expect: { CE: 0.430667 },
      within: 0.000001,
    },
    {
      source: "constructed: vanadium not reported, printed at the lower edge of the tolerance",
      class: "constructed",
      given: { C: 0.15, Mn: 1.2, Cr: 0.1, Mo: 0.05, Ni: 0.5, Cu: 0.175, tol: 0.01, CEp: 0.419 },
      expect: { CE: 0.429 },
      within: 0.000001,
    },
    {
      source: "constructed: printed too low",
      class: "constructed",
      given: { ...plate, CEp: 0.42 },
      expect: { CE: 0.430667 },
      within: 0.000001,
    },
    {
      source: "constructed: printed too high, as another formula would give",
      class: "constructed",
      given: { ...plate, CEp: 0.45 },
      expect: { CE: 0.430667 },
      within: 0.000001,
    },
    {
      source: "constructed: manganese beyond carbon-manganese steel",
      class: "constructed",
      given: { ...plate, Mn: 1.92 },
      expect: { CE: 0.550667 },
      within: 0.000001,
      outside: ["the steel is a carbon-manganese steel: manganese is at most 1.9 %"],
    },
    {
      source: "constructed: chromium beyond carbon-manganese steel",
      class: "constructed",
      given: { ...plate, Cr: 1.1 },
      expect: { CE: 0.630667 },
      within: 0.000001,
      outside: ["the steel is a carbon-manganese steel: chromium is at most 1 %"],
    },
  ],
});
