import type { DimensionCheck, Part } from "../../generated/records.ts";
import { nozzles } from "./nozzles.ts";
import { parts } from "./parts.ts";

type Row = NonNullable<DimensionCheck["rows"]>[number];

const partOf = (id: string): Part => {
  const found = parts.find((part) => part.id === id);
  if (found === undefined) throw new Error(`the facts know no part ${id}`);
  return found;
};
const inMm = (quantity: string | undefined): number => Number.parseFloat(quantity ?? "");
const mm = (value: number, decimals = 0): string => `${value.toFixed(decimals)} mm`;

const row = (
  feature: string,
  limits: Pick<Row, "nominal" | "minimum" | "maximum">,
  measured: string[],
  of: Partial<Row> = {},
): Row => ({
  feature,
  ...of,
  ...limits,
  measured,
  result: "accepted",
});

const between = (feature: string, nominal: number, tolerance: number, measured: number[], of: Partial<Row> = {}): Row =>
  row(
    feature,
    { nominal: mm(nominal), minimum: mm(nominal - tolerance), maximum: mm(nominal + tolerance) },
    measured.map((value) => mm(value)),
    of,
  );

const atMost = (feature: string, maximum: string, measured: string[], of: Partial<Row> = {}): Row =>
  row(feature, { maximum }, measured, of);

/** Walls of a part as its record states them, against nominal less undertolerance. */
const walls = (id: string): Row => {
  const { name, nominalThickness, thicknessUndertolerance, measuredThickness = [] } = partOf(id);
  const least = inMm(nominalThickness) - inMm(thicknessUndertolerance);
  return row(
    `thickness, ${name ?? id}`,
    { ...(nominalThickness !== undefined && { nominal: nominalThickness }), minimum: mm(least, 1) },
    [...measuredThickness],
    { part: id },
  );
};

/** Diameters of a part as its record states them, within half of the out-of-roundness it was designed for. */
const diameters = (id: string): Row => {
  const { name, outsideDiameter, outOfRoundness, measuredDiameters = [] } = partOf(id);
  const nominal = inMm(outsideDiameter);
  const half = (nominal * inMm(outOfRoundness)) / 200;
  return row(
    `outside diameter, ${name ?? id}`,
    {
      ...(outsideDiameter !== undefined && { nominal: outsideDiameter }),
      minimum: mm(nominal - half, 1),
      maximum: mm(nominal + half, 1),
    },
    [...measuredDiameters],
    { part: id },
  );
};

const roundness = (course: string, edge: string, measured: number[]): Row =>
  between(`inside diameter, ${partOf(course).name ?? course}, ${edge} edge`, 1900, 9, measured, {
    part: course,
    shape: "diameters of one section",
  });

const hole = { nominal: "51.5 mm", minimum: "51.3 mm", maximum: "51.7 mm" } as const;

const bores = (plate: string, nest: string, measured: number[]): Row =>
  row(
    `bore of tube holes, ${plate}, ${nest}`,
    hole,
    measured.map((value) => mm(value, 2)),
    { part: plate },
  );

const pitch = (plate: string): Row =>
  row(
    `pitch of tube holes, ${plate}`,
    { nominal: "72.0 mm", minimum: "71.5 mm", maximum: "72.5 mm" },
    ["72.0 mm", "71.9 mm", "72.1 mm"],
    { part: plate },
  );

/** By how much the nozzles were found off their place along the shell, in mm. */
const off: readonly number[] = [2, 1, -1, 1, -2, 0, 2, 1, -1, 1, 1, -1, 2];

const check = (
  id: string,
  title: string,
  date: string,
  drawing: string,
  instruments: string[],
  rows: Row[],
): DimensionCheck => ({
  id,
  title,
  date,
  by: "D2",
  drawing,
  instruments,
  rows,
  result: rows.every(({ result }) => result === "accepted") ? "accepted" : "rejected",
  signatures: [{ role: "quality control", person: "D2", date }],
});

export const dimensionChecks: readonly DimensionCheck[] = [
  check(
    "DIM-01",
    "Tube plates and back plate: thickness, bores and pitch of tube holes",
    "2026-03-06",
    "DRG-04@B",
    ["TG-01", "BG-01", "CA-05"],
    [
      ...["P03", "P04", "P09", "P10"].map(walls),
      bores("P03", "pass 2", [51.48, 51.52, 51.55, 51.5, 51.53]),
      bores("P03", "pass 3", [51.5, 51.54, 51.49, 51.52, 51.51, 51.56]),
      bores("P04", "pass 3", [51.51, 51.5, 51.55, 51.47, 51.53, 51.52]),
      { ...bores("P04", "pass 3, row 7, place 4", [51.86]), result: "rejected" },
      bores("P09", "pass 2", [51.49, 51.53, 51.52, 51.56, 51.5]),
      ...["P03", "P04", "P09"].map(pitch),
    ],
  ),
  check(
    "DIM-02",
    "Shell courses: thickness, roundness and peaking after the longitudinal seams",
    "2026-03-03",
    "DRG-01@C",
    ["TG-01", "TAPE-03", "CA-05"],
    [
      ...["P01", "P02"].map(walls),
      roundness("P01", "front", [1899, 1903, 1901, 1898]),
      roundness("P01", "rear", [1900, 1902, 1899, 1901]),
      roundness("P02", "front", [1902, 1899, 1898, 1901]),
      roundness("P02", "rear", [1899, 1901, 1903, 1900]),
      atMost("peaking at L1, template 600 mm", "4.0 mm", ["1.4 mm"], { joint: "L1", shape: "peaking" }),
      atMost("peaking at L2, template 600 mm", "4.0 mm", ["1.7 mm"], { joint: "L2", shape: "peaking" }),
    ],
  ),
  check(
    "DIM-03",
    "Furnace, hoop, reversal chamber and access tube: thickness and diameters",
    "2026-03-20",
    "DRG-03@B",
    ["TG-01", "TAPE-03", "CA-05"],
    [
      ...["P05", "P06", "P07", "P08", "P11"].map(walls),
      ...["P05", "P06", "P08", "P11"].map(diameters),
      between("width of the hoop", 200, 4, [201], { part: "P07" }),
    ],
  ),
  check(
    "DIM-04",
    "Completed boiler: offset of edges, length, nozzles, manhole",
    "2026-04-24",
    "DRG-01@C",
    ["TAPE-03", "CA-05", "WG-01"],
    [
      atMost("offset of edges, C1", "1.8 mm", ["0.8 mm"], { joint: "C1", shape: "offset of edges" }),
      atMost("offset of edges, FC1", "2.4 mm", ["0.9 mm"], { joint: "FC1", shape: "offset of edges" }),
      atMost("offset of edges, FC2", "2.4 mm", ["1.1 mm"], { joint: "FC2", shape: "offset of edges" }),
      between("length over tube plates", 3990, 10, [3993]),
      ...nozzles.map(({ mark, part, along }, index) =>
        between(`${mark} from the front tube plate`, along, 5, [along + (off[index] ?? 0)], { part }),
      ),
      between("manhole M1, long axis", 420, 3, [421], { part: "P44" }),
      between("manhole M1, short axis", 320, 3, [321], { part: "P44" }),
    ],
  ),
];
