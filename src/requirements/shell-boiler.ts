import type { Register } from "../model/requirement.ts";
import { pressureEquipment } from "./pressure-equipment.ts";
import { directive, owed } from "./row.ts";
import { boilerCalculations } from "./shell-boiler-calculations.ts";
import { boilerFittings } from "./shell-boiler-fittings.ts";
import { commonPractice } from "../model/basis.ts";

/** What the data book of a fired shell boiler for steam must contain. */
export const shellBoiler: Register = {
  id: "shell-boiler",
  title: "Shell boiler for steam",
  scopes: ["shell-boilers"],
  requirements: [
    ...pressureEquipment,
    ...boilerCalculations,
    owed(
      "heating-surface",
      "The heating surface",
      { kind: "equipment" },
      "heatingSurface",
      "design-approved",
      "design",
      commonPractice("the output of a boiler is judged by its heating surface"),
    ),
    owed(
      "book-design-data",
      "The sheet of design data",
      { kind: "book" },
      'book.document[type="design-data"]',
      "design-approved",
      "design",
      directive("Annex III, technical documentation: general description"),
    ),
    owed(
      "plate-output",
      "The steam output on the nameplate",
      { kind: "nameplate" },
      "steamOutput",
      "final-inspection",
      "quality",
      directive("Annex I, marking: further information, such as the output"),
    ),
    ...boilerFittings,
  ],
};
