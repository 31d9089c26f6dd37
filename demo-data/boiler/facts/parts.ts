import type { Part } from "../../../src/generated/records.ts";
import { manholeAlong, nozzles, wayRound } from "./nozzles.ts";

export const arrangement = "DRG-01@C";
export const furnaceDrawing = "DRG-03@B";
export const platesDrawing = "DRG-04@B";
export const nozzleDrawing = "DRG-05@B";

const maker = "TARNEQUILL";
const plate = { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "plate" } as const;
const tube = {
  standard: "EN 10216-2",
  edition: "2013+A1:2019",
  grade: "P235GH",
  form: "tube",
  options: "TC1",
} as const;
const pipe = { ...tube, grade: "P265GH" } as const;
const bar = { standard: "EN 10273", edition: "2007", grade: "P235GH", form: "bar" } as const;
const forging = { standard: "EN 10222-2", edition: "2017", grade: "P245GH", form: "forging" } as const;
const section = { standard: "EN 10025-2", edition: "2019", grade: "S235JR", form: "plate" } as const;

const allowances = { thicknessUndertolerance: "0.3 mm", corrosionAllowance: "0.75 mm" } as const;

type Sizes = Omit<Part, "id" | "name" | "role" | "drawing" | "material" | "quantity">;

const part = (
  id: string,
  name: string,
  role: NonNullable<Part["role"]>,
  drawing: string,
  material: NonNullable<Part["material"]>,
  sizes: Sizes,
  quantity = 1,
): Part => ({
  id,
  name,
  role,
  drawing,
  pressureBearing: true,
  quantity,
  material: { ...material },
  ...sizes,
  requiredCertificateType: sizes.requiredCertificateType ?? "3.1",
});

const cylinder = (thickness: string, length: string, round: string[], walls: string[]) => ({
  nominalThickness: thickness,
  measuredThickness: walls,
  ...allowances,
  length,
  heating: "radiation" as const,
  outOfRoundness: "1.5 %",
  measuredDiameters: round,
  madeBy: maker,
});

const course = (id: string, name: string, walls: string[], openings: Part["openings"]): Part =>
  part(id, name, "shell-course", arrangement, plate, {
    nominalThickness: "12.0 mm",
    measuredThickness: walls,
    ...allowances,
    insideDiameter: "1900 mm",
    outsideDiameter: "1924 mm",
    length: "1975 mm",
    heating: "none",
    weldCoefficient: "0.85",
    ...(openings !== undefined && { openings }),
    madeBy: maker,
  });

const flat = (
  id: string,
  name: string,
  role: "tube-plate" | "flat-plate",
  heating: "convection" | "radiation",
  walls: string[],
  sizes: Pick<Part, "outsideDiameter" | "regions" | "tubeFields" | "breathingSpaces">,
): Part =>
  part(id, name, role, platesDrawing, plate, {
    nominalThickness: "20.0 mm",
    measuredThickness: walls,
    ...allowances,
    ...sizes,
    heating,
    madeBy: maker,
  });

type Field = NonNullable<Part["tubeFields"]>[number];

const nest = (field: string, tubePart: string, tubes: number, stayTubes: number): Field => ({
  field,
  tube: tubePart,
  pattern: "triangular",
  pitch: "72 mm",
  holeDiameter: "51.5 mm",
  expandedLength: "18 mm",
  tubes,
  stayTubes,
});

/** Tubes are ordered with the tolerance of hot finished tube: an eighth of the wall, 0.4 mm at least. */
const smoke = (id: string, name: string, wall: "3.6 mm" | "6.3 mm", length: string, quantity: number): Part => {
  const stays = wall === "6.3 mm";
  return part(
    id,
    name,
    stays ? "stay-tube" : "tube",
    furnaceDrawing,
    tube,
    {
      nominalThickness: wall,
      thicknessUndertolerance: stays ? "0.79 mm" : "0.45 mm",
      corrosionAllowance: "0.75 mm",
      outsideDiameter: "51 mm",
      length,
      heating: "convection",
      ...(stays && { carriedArea: "24000 mm²", occupiedArea: "9600 mm²" }),
    },
    quantity,
  );
};

const stays = (
  id: string,
  name: string,
  length: string,
  heating: "none" | "radiation",
  area: string,
  quantity: number,
) =>
  part(
    id,
    name,
    "stay",
    platesDrawing,
    bar,
    {
      nominalThickness: "45.0 mm",
      thicknessUndertolerance: "0.8 mm",
      corrosionAllowance: "0.75 mm",
      outsideDiameter: "45 mm",
      length,
      heating,
      carriedArea: area,
      occupiedArea: "1590 mm²",
    },
    quantity,
  );

const branches = (shell: string): NonNullable<Part["openings"]> =>
  nozzles
    .filter((nozzle) => nozzle.shell === shell)
    .map(({ mark, part: branch, projection, along, at }) => ({
      opening: mark,
      along: `${along} mm`,
      around: `${wayRound(at, 1900, 1924)} mm`,
      branch,
      branchLength: projection,
      setIn: true,
    }));

const necks = nozzles.map(({ part: id, mark, use, wall, undertolerance, diameter, length }) =>
  part(id, `nozzle ${mark}, ${use}`, "nozzle-neck", nozzleDrawing, pipe, {
    nominalThickness: wall,
    thicknessUndertolerance: undertolerance,
    corrosionAllowance: "0.75 mm",
    outsideDiameter: diameter,
    length,
    heating: "none",
  }),
);

const flanges = nozzles.map(({ flange, mark, size, wall, diameter }) =>
  part(flange, `flange of ${mark}, ${size}, welding neck`, "flange", nozzleDrawing, forging, {
    nominalThickness: wall,
    outsideDiameter: diameter,
  }),
);

const support = (
  id: string,
  name: string,
  role: "support" | "lifting-lug" | "nameplate-bracket",
  wall: string,
  quantity: number,
): Part => ({
  ...part(id, name, role, arrangement, section, { nominalThickness: wall, requiredCertificateType: "2.2" }, quantity),
  pressureBearing: false,
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
  part("P05", "furnace section 1, front", "furnace", furnaceDrawing, plate, {
    ...cylinder(
      "16.0 mm",
      "1450 mm",
      ["850.8 mm", "849.1 mm", "850.2 mm", "849.6 mm"],
      ["16.1 mm", "16.2 mm", "16.0 mm"],
    ),
    outsideDiameter: "850 mm",
    unsupportedLength: "1550 mm",
    weldCoefficient: "1.00",
  }),
  part("P06", "furnace section 2, rear", "furnace", furnaceDrawing, plate, {
    ...cylinder(
      "16.0 mm",
      "1450 mm",
      ["851.0 mm", "848.9 mm", "850.1 mm", "849.8 mm"],
      ["16.2 mm", "16.1 mm", "16.1 mm"],
    ),
    outsideDiameter: "850 mm",
    unsupportedLength: "1550 mm",
    weldCoefficient: "1.00",
  }),
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
