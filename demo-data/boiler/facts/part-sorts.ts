import type { Part } from "../../generated/records.ts";
import { nozzles, wayRound } from "./nozzles.ts";

/** Drawings that show parts. */
export const arrangement = "DRG-01@C";
export const furnaceDrawing = "DRG-03@B";
export const platesDrawing = "DRG-04@B";
export const nozzleDrawing = "DRG-05@B";

export const maker = "TARNEQUILL";
export const plate = { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "plate" } as const;
const tube = {
  standard: "EN 10216-2",
  edition: "2013+A1:2019",
  grade: "P235GH",
  form: "tube",
  options: "TC1",
} as const;
export const pipe = { ...tube, grade: "P265GH" } as const;
const bar = { standard: "EN 10273", edition: "2007", grade: "P235GH", form: "bar" } as const;
const forging = { standard: "EN 10222-2", edition: "2017", grade: "P245GH", form: "forging" } as const;
const section = { standard: "EN 10025-2", edition: "2019", grade: "S235JR", form: "plate" } as const;

export const allowances = { thicknessUndertolerance: "0.3 mm", corrosionAllowance: "0.75 mm" } as const;

type Sizes = Omit<Part, "id" | "name" | "role" | "drawing" | "material" | "quantity">;

export const part = (
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

export const cylinder = (thickness: string, length: string, round: string[], walls: string[]) => ({
  nominalThickness: thickness,
  measuredThickness: walls,
  ...allowances,
  length,
  heating: "radiation" as const,
  outOfRoundness: "1.5 %",
  measuredDiameters: round,
  madeBy: maker,
});

export const course = (id: string, name: string, walls: string[], openings: Part["openings"]): Part =>
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

export const flat = (
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

export const nest = (field: string, tubePart: string, tubes: number, stayTubes: number): Field => ({
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
export const smoke = (id: string, name: string, wall: "3.6 mm" | "6.3 mm", length: string, quantity: number): Part => {
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

export const stays = (
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

export const branches = (shell: string): NonNullable<Part["openings"]> =>
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

export const necks = nozzles.map(({ part: id, mark, use, wall, undertolerance, diameter, length }) =>
  part(id, `nozzle ${mark}, ${use}`, "nozzle-neck", nozzleDrawing, pipe, {
    nominalThickness: wall,
    thicknessUndertolerance: undertolerance,
    corrosionAllowance: "0.75 mm",
    outsideDiameter: diameter,
    length,
    heating: "none",
  }),
);

export const flanges = nozzles.map(({ flange, mark, size, wall, diameter }) =>
  part(flange, `flange of ${mark}, ${size}, welding neck`, "flange", nozzleDrawing, forging, {
    nominalThickness: wall,
    outsideDiameter: diameter,
  }),
);

export const support = (
  id: string,
  name: string,
  role: "support" | "lifting-lug" | "nameplate-bracket",
  wall: string,
  quantity: number,
): Part => ({
  ...part(id, name, role, arrangement, section, { nominalThickness: wall, requiredCertificateType: "2.2" }, quantity),
  pressureBearing: false,
});
