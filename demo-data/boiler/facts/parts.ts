import type { Part } from "../../generated/records.ts";
import { manholeAlong } from "./nozzles.ts";
import {
  allowances,
  branches,
  course,
  cylinder,
  flanges,
  flat,
  furnaceDrawing,
  maker,
  necks,
  nest,
  nozzleDrawing,
  part,
  pipe,
  plate,
  smoke,
  stays,
  support,
} from "./part-sorts.ts";

const furnaceSection = (id: string, name: string, round: string[], walls: string[]): Part =>
  part(id, name, "furnace", furnaceDrawing, plate, {
    ...cylinder("16.0 mm", "1450 mm", round, walls),
    outsideDiameter: "850 mm",
    unsupportedLength: "1550 mm",
    weldCoefficient: "1.00",
  });

export const parts: readonly Part[] = [
  course("P01", "shell course 1, front", ["12.1 mm", "12.2 mm", "12.0 mm", "12.1 mm"], branches("P01")),
  course(
    "P02",
    "shell course 2, rear",
    ["12.2 mm", "12.1 mm", "12.1 mm", "12.3 mm"],
    [
      ...branches("P02"),
      {
        opening: "M1",
        along: `${manholeAlong} mm`,
        around: "0 mm",
        branch: "P44",
        branchLength: "60 mm",
        setIn: true,
        axialWidth: "320 mm",
      },
    ],
  ),
  flat("P03", "front tube plate", "tube-plate", "convection", ["20.2 mm", "20.1 mm", "20.3 mm"], {
    outsideDiameter: "1900 mm",
    regions: [
      { region: "steam space", circleDiameter: "320 mm", supports: ["bar-stay", "bar-stay", "welded-edge"] },
      { region: "beside the furnace", circleDiameter: "290 mm", supports: ["welded-edge", "welded-edge", "stay-tube"] },
      { region: "between the passes", circleDiameter: "240 mm", supports: ["stay-tube", "stay-tube", "stay-tube"] },
    ],
    tubeFields: [nest("front, pass 2", "P12", 50, 16), nest("front, pass 3", "P14", 88, 24)],
    breathingSpaces: [
      { space: "front, below the furnace", between: "furnace-shell", width: "95 mm" },
      { space: "front, above the furnace", between: "furnace-tubes", width: "95 mm" },
      { space: "front, round pass 3", between: "tubes-shell", width: "41 mm" },
      { space: "front, below the bar stays", between: "other", width: "100 mm" },
    ],
  }),
  flat("P04", "rear tube plate", "tube-plate", "convection", ["20.1 mm", "20.2 mm", "20.1 mm"], {
    outsideDiameter: "1900 mm",
    regions: [
      { region: "steam space, rear", circleDiameter: "320 mm", supports: ["bar-stay", "bar-stay", "welded-edge"] },
      { region: "round the access tube", circleDiameter: "300 mm", supports: ["access-tube", "bar-stay", "bar-stay"] },
    ],
    tubeFields: [nest("rear, pass 3", "P14", 88, 24)],
    breathingSpaces: [
      { space: "rear, round pass 3", between: "tubes-shell", width: "41 mm" },
      { space: "rear, round the access tube", between: "other", width: "190 mm" },
    ],
  }),
  furnaceSection(
    "P05",
    "furnace section 1, front",
    ["850.8 mm", "849.1 mm", "850.2 mm", "849.6 mm"],
    ["16.1 mm", "16.2 mm", "16.0 mm"],
  ),
  furnaceSection(
    "P06",
    "furnace section 2, rear",
    ["851.0 mm", "848.9 mm", "850.1 mm", "849.8 mm"],
    ["16.2 mm", "16.1 mm", "16.1 mm"],
  ),
  part("P07", "furnace hoop", "furnace-hoop", furnaceDrawing, plate, {
    nominalThickness: "16.0 mm",
    measuredThickness: ["15.9 mm", "15.8 mm", "15.9 mm"],
    ...allowances,
    unsupportedLength: "1550 mm",
    hoop: { depth: "100 mm", width: "200 mm", furnace: "P05" },
    heating: "radiation",
    madeBy: maker,
  }),
  part("P08", "reversal chamber, wrapper", "reversal-chamber", furnaceDrawing, plate, {
    ...cylinder(
      "16.0 mm",
      "600 mm",
      ["1301.0 mm", "1298.6 mm", "1300.4 mm", "1299.3 mm"],
      ["16.1 mm", "16.1 mm", "16.2 mm"],
    ),
    outsideDiameter: "1300 mm",
    unsupportedLength: "600 mm",
    weldCoefficient: "1.00",
  }),
  flat("P09", "chamber tube plate", "tube-plate", "radiation", ["20.2 mm", "20.1 mm", "20.2 mm"], {
    outsideDiameter: "1268 mm",
    regions: [
      {
        region: "chamber, beside the furnace",
        circleDiameter: "280 mm",
        supports: ["welded-edge", "welded-edge", "stay-tube"],
      },
    ],
    tubeFields: [nest("chamber, pass 2", "P12", 50, 16)],
  }),
  flat("P10", "chamber back plate", "flat-plate", "radiation", ["20.1 mm", "20.1 mm", "20.2 mm"], {
    outsideDiameter: "1268 mm",
    regions: [
      { region: "stayed field", circleDiameter: "300 mm", supports: ["bar-stay", "bar-stay", "bar-stay"] },
      { region: "edge of the back plate", circleDiameter: "290 mm", supports: ["welded-edge", "bar-stay", "bar-stay"] },
    ],
  }),
  part("P11", "access tube", "access-tube", furnaceDrawing, pipe, {
    nominalThickness: "12.5 mm",
    measuredThickness: ["12.4 mm", "12.6 mm", "12.5 mm"],
    thicknessUndertolerance: "1.6 mm",
    corrosionAllowance: "0.75 mm",
    length: "230 mm",
    heating: "none",
    outOfRoundness: "1.5 %",
    measuredDiameters: ["406.8 mm", "406.0 mm", "406.5 mm", "406.3 mm"],
    outsideDiameter: "406.4 mm",
    unsupportedLength: "230 mm",
  }),
  smoke("P12", "smoke tubes, pass 2", "3.6 mm", "3150 mm", 50),
  smoke("P13", "stay tubes, pass 2", "6.3 mm", "3150 mm", 16),
  smoke("P14", "smoke tubes, pass 3", "3.6 mm", "3990 mm", 88),
  smoke("P15", "stay tubes, pass 3", "6.3 mm", "3990 mm", 24),
  stays("P16", "bar stays of the steam space", "3990 mm", "none", "52000 mm²", 6),
  stays("P17", "bar stays of the chamber back plate", "290 mm", "radiation", "62000 mm²", 8),
  ...necks,
  ...flanges,
  part("P44", "manhole frame M1, 320 × 420", "manhole", nozzleDrawing, plate, {
    nominalThickness: "25.0 mm",
    ...allowances,
    outsideDiameter: "470 mm",
    heating: "none",
    length: "72 mm",
  }),
  support("P45", "lifting lugs", "lifting-lug", "25.0 mm", 2),
  support("P46", "saddles", "support", "15.0 mm", 2),
  support("P47", "nameplate bracket", "nameplate-bracket", "4.0 mm", 1),
];
