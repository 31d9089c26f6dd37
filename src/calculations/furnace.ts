import { furnaceExamples } from "./furnace-examples.ts";
import { leastSpan, neighbourOfFurnace } from "./functions/hoop.ts";
import { externalPressure } from "./shared/external-pressure.ts";
import { derivedFrom, excerptSeen, fromMemory } from "../model/basis.ts";

export const furnace = externalPressure({
  id: "furnace",
  title: "Furnace under external pressure",
  covers:
    "Required thickness of a plain cylindrical furnace between its effective supports, against plastic yielding out of round and against elastic collapse. Corrugated furnaces, loads along the axis, and the heat the flame may give to the diameter are not covered.",
  caution:
    "The proof strength of the grade counts in full; TRD 306 (excerpt seen) lets no steel of a furnace count for more than 17Mn4.",
  role: "furnace",
  plasticFactor: "furnaceFactorPlastic",
  inputs: {
    l: { path: "length", unit: "mm", means: "length of the plain section", unsafe: "low" },
    joined: {
      path: "<joint:parts[]>.parts[]",
      unit: "rows",
      means: "parts that joints name with this section",
      need: "any",
      rows: neighbourOfFurnace,
    },
    enmin: {
      path: "profile.furnaceThicknessLeast",
      unit: "mm",
      means: "least nominal thickness of a furnace",
      display: "e_n,min",
    },
    enmax: {
      path: "profile.furnaceThicknessMost",
      unit: "mm",
      means: "greatest nominal thickness of a furnace",
      display: "e_n,max",
    },
    Lmax: {
      path: "profile.furnacePlainLengthMost",
      unit: "mm",
      means: "greatest plain length between flexible elements",
      display: "L_max",
    },
  },
  owes: ["l"],
  functions: [leastSpan],
  steps: [
    {
      symbol: "Lm",
      unit: "mm",
      means: "least length between supports, from the section and what is welded to it",
      formula: "leastSpan(joined, l)",
      display: "L_m",
      round: { decimals: 0, direction: "up" },
    },
  ],
  limits: [
    {
      left: "en",
      relation: ">=",
      right: "enmin",
      means: "the nominal thickness is at least the least of a furnace",
      basis: excerptSeen("TRD 306", "section 11"),
    },
    {
      left: "en",
      relation: "<=",
      right: "enmax",
      means: "the nominal thickness is at most the greatest of a furnace",
      basis: fromMemory("EN 12953-3", undefined, "greatest thickness of a furnace"),
    },
  ],
  accept: [
    {
      left: "L",
      relation: ">=",
      right: "Lm",
      means: "the length between supports is at least what the section, its hoops and its plates leave",
      accuses: "L",
      basis: derivedFrom("a support lies at the middle of a hoop and at the face of a plate"),
    },
    {
      left: "L",
      relation: "<=",
      right: "Lmax",
      means: "the plain length is short enough without a further flexible element",
      accuses: "L",
      basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 546"),
    },
  ],
  examples: furnaceExamples,
});
