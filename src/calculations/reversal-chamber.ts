import { chamberExamples } from "./reversal-chamber-examples.ts";
import { externalPressure } from "./shared/external-pressure.ts";
import { excerptSeen, fromMemory } from "../model/basis.ts";

export const reversalChamber = externalPressure({
  id: "reversal-chamber",
  title: "Wrapper of a reversal chamber under external pressure",
  covers:
    "Required thickness of the cylindrical wrapper of a reversal chamber between its tube plate and its back plate, against plastic yielding out of round and against elastic collapse. The plates themselves, wrappers that are not round, and openings in the wrapper are not covered.",
  role: "reversal-chamber",
  plasticFactor: "furnaceFactorPlastic",
  inputs: {
    enmin: {
      path: "profile.chamberThicknessLeast",
      unit: "mm",
      means: "least nominal thickness of a reversal chamber",
      display: "e_n,min",
    },
    enmax: {
      path: "profile.chamberThicknessMost",
      unit: "mm",
      means: "greatest nominal thickness of a heated cylinder",
      display: "e_n,max",
    },
  },
  limits: [
    {
      left: "en",
      relation: ">=",
      right: "enmin",
      means: "the nominal thickness is at least the least of a reversal chamber",
      basis: fromMemory("EN 12953-3", undefined, "least thickness of chamber plates"),
    },
    {
      left: "en",
      relation: "<=",
      right: "enmax",
      means: "the nominal thickness is at most the greatest of a heated cylinder",
      basis: excerptSeen("TRD 306", "section 11"),
    },
  ],
  examples: chamberExamples,
});
