import { fromMemory } from "../model/basis.ts";
import type { Register } from "../model/requirement.ts";
import { pressureBearing } from "./conditions.ts";
import { endCalculation, results, shellCalculation } from "./design-calculations.ts";
import { pressureEquipment } from "./pressure-equipment.ts";
import { directive, inScope, owed, role, sheet } from "./row.ts";

/** What the data book of an unfired pressure vessel must contain. */
export const unfiredVessel: Register = {
  id: "unfired-vessel",
  title: "Unfired pressure vessel",
  scopes: ["unfired-vessels", "gas"],
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
      { kind: "equipment", when: [inScope, { path: "fluid.state", equals: "gas" }] },
      sheet("equipment-category"),
      "design-approved",
      "design",
      directive("Annex II, conformity assessment tables"),
    ),
    owed(
      "equipment-cycles",
      "The full pressure cycles a vessel is designed for",
      { kind: "equipment", when: [{ path: "designStandard.standard", equals: "EN 13445" }] },
      "pressureCycles",
      "design-approved",
      "design",
      fromMemory("EN 13445-3", "2021", "design by formulas is for 500 full cycles at most: their number is stated"),
    ),
    owed(
      "valve-calculation",
      "The sizing of each safety valve",
      { kind: "safety-valve", when: [{ path: "medium.state", equals: "gas" }] },
      sheet("gas-safety-valve"),
      "final-inspection",
      "design",
      directive("Annex I, safety accessories"),
    ),
  ],
};
