import type { Register } from "../model/requirement.ts";
import { pressureBearing } from "./conditions.ts";
import { endCalculation, results, shellCalculation } from "./design-calculations.ts";
import { pressureEquipment } from "./pressure-equipment.ts";
import { directive, inScope, owed, role, sheet } from "./row.ts";

/** What the data book of an unfired pressure vessel must contain. */
export const unfiredVessel: Register = {
  id: "unfired-vessel",
  title: "Unfired pressure vessel",
  // Nothing is fired in it, and no gas passes through tubes: those are of boilers.
  without: [
    {
      kind: "part",
      path: "role",
      values: ["furnace", "furnace-hoop", "reversal-chamber", "access-tube", "tube-plate", "tube", "stay-tube"],
    },
    { kind: "part", path: "tubeFields" },
    { kind: "part", path: "breathingSpaces" },
  ],
  requirements: [
    ...pressureEquipment,
    owed(
      "part-stress",
      "A sheet of the design stress of each pressure part",
      { kind: "part", when: [pressureBearing, role("shell-course", "end")] },
      sheet("design-stress"),
      "design-approved",
      "design",
      results,
    ),
    shellCalculation,
    endCalculation,
    owed(
      "category-sheet",
      "The determination of the category",
      { kind: "equipment", when: [inScope] },
      sheet("equipment-category"),
      "design-approved",
      "design",
      directive("Annex II, conformity assessment tables"),
    ),
    owed(
      "valve-calculation",
      "The sizing of each safety valve",
      { kind: "safety-valve" },
      sheet("gas-safety-valve"),
      "final-inspection",
      "design",
      directive("Annex I, safety accessories"),
    ),
  ],
};
