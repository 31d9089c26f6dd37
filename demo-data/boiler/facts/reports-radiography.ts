import type { NdtReport } from "../../generated/records.ts";
import { spread } from "../../shop/spread.ts";
import { jointOf, lengthOf, owedOf, report, stretch, type Row, type Rows } from "./test-report.ts";

/** Thickness of the thinner part at a joint, in mm. */
const wallOf = (id: string): number =>
  Math.min(...(jointOf(id).thicknesses ?? []).map((one) => Number.parseFloat(one)));

/** The thinnest wire seen: what the procedure asks for the thickness that was penetrated, none of it better. */
function wireOf(id: string): string {
  const wall = wallOf(id);
  if (!isPipe(id)) return wall > 12 ? "W13" : "W14";
  // Through two walls, the indicator on the film side.
  return 2 * wall > 18 ? "W13" : 2 * wall > 12 ? "W14" : "W15";
}

const isPipe = (id: string): boolean => Number.parseFloat(jointOf(id).outsideDiameter ?? "") < 200;

/** One film, with the densities measured on it. */
function film(id: string, number: number, from: number, to: number, more: Partial<Row> = {}): Row {
  const name = `${id}-${number}`;
  const density = [spread(`${name} least`, 2.4, 2.8), spread(`${name} most`, 2.9, 3.4)];
  return stretch(id, from, to, {
    row: name,
    film: `417-${name}`,
    wire: wireOf(id),
    density: density.map((value) => value.toFixed(1)),
    ...more,
  });
}

/** The whole seam on films that overlap by 10 mm. */
function whole(id: string): Rows {
  const length = lengthOf(id);
  const count = Math.ceil(length / 400);
  const cut = (index: number) => Math.round((index * length) / count);
  return Array.from({ length: count }, (_, index) =>
    film(id, index + 1, cut(index), Math.min(length, cut(index + 1) + 10)),
  );
}

/** Both ends of a longitudinal seam, where it meets the circumferential one. */
const ends = (id: string): Rows => {
  const length = lengthOf(id);
  return [film(id, 1, 0, 240), film(id, 2, length - 240, length)];
};

/** Two films opposite each other, at the crossings with the longitudinal seams; together the owed part. */
function crossings(id: string, second: Partial<Row> = {}): Rows {
  const size = 10 * Math.ceil(owedOf(id, "RT") / 2 / 10);
  const half = Math.floor(lengthOf(id) / 2);
  return [film(id, 1, 0, size), film(id, 2, half, half + size, second)];
}

/** One exposure of a neck and its flange: what one film shows sharply, a third of the way round, at most 80 mm. */
const exposed = (id: string): Row => film(id, 1, 0, Math.min(80, Math.floor(lengthOf(id) / 3)));

const single = (kilovolts: number): Partial<NdtReport> => ({
  technique: "EN ISO 17636-1 class B, single wall, source inside, film outside",
  radiography: {
    techniqueClass: "B",
    source: `X-ray ${kilovolts} kV, 5 mA`,
    sourceSize: "2.3 mm",
    distance: "700 mm",
    sourcePlace: "inside, off the centre",
    filmClass: "C4",
  },
});
const double = (kilovolts: number, image: "single" | "double"): Partial<NdtReport> => ({
  technique: `EN ISO 17636-1 class B, double wall, ${image} image, indicator on the film side`,
  radiography: {
    ...single(kilovolts).radiography,
    sourcePlace: "outside the part",
    arrangement: `double wall, ${image} image, indicator on film side`,
  },
});

/** Where the seam of the shell was found not fused, in mm from its zero mark. */
const unfused: Partial<Row> = {
  result: "rejected",
  indications: [{ indication: "1", type: "401 lack of fusion", at: "3110 mm", length: "45 mm", verdict: "rejected" }],
};
const pore: Partial<Row> = {
  indications: [{ indication: "1", type: "2011 gas pore", at: "3198 mm", size: "0.9 mm", verdict: "accepted" }],
};

/** Radiographs, before the shift or after it where anybody welds on that day: after the rejection of C1-2 two further lengths of the same operator, then the repaired place. */
export const radiographicReports: readonly NdtReport[] = [
  report("RT-01", "RT", ["2026-03-05", "15:45"], [...ends("L1"), ...ends("L2")], single(180)),
  report("RT-02", "RT", ["2026-03-06", "06:20"], crossings("C1", unfused), single(180)),
  report("RT-03", "RT", ["2026-03-10", "06:20"], [film("C1", 3, 1500, 1810), film("C1", 4, 4500, 4810)], single(180)),
  report("RT-04", "RT", ["2026-03-12", "08:10"], ["FS1", "FS2", "WL1"].flatMap(whole), single(210)),
  report(
    "RT-05",
    "RT",
    ["2026-03-12", "14:00"],
    [film("C1", 5, 3030, 3240, { film: "417-C1R1-1", repair: "C1R1", ...pore })],
    single(180),
  ),
  report(
    "RT-06",
    "RT",
    ["2026-03-13", "06:00"],
    ["F01", "F02", "F03", "F10", "F11", "F12", "F13"].map(exposed),
    double(230, "single"),
  ),
  report(
    "RT-07",
    "RT",
    ["2026-03-13", "15:40"],
    ["F04", "F05", "F06", "F07", "F08", "F09"].map(exposed),
    double(180, "double"),
  ),
  report("RT-08", "RT", ["2026-03-18", "06:20"], [...crossings("FC1"), ...crossings("FC2")], single(210)),
];
