import { ladle, surface, tensile, type Row } from "../../order/facts/certificate-rows.ts";
import { orderedFor } from "./certificate-rows.ts";
import type { Delivery } from "./certificates.ts";

interface Flanges {
  readonly heat: string;
  readonly pieces: number;
  readonly part: string;
  /** Thickness of the ring and outside diameter in mm, mass of all pieces in kg. */
  readonly size: readonly [thickness: string, diameter: number, mass: number];
  readonly chemistry: string;
  readonly ce: string;
  readonly pull: string;
}

const flanges = ({ heat, pieces, part, size: [thickness, diameter, mass], chemistry, ce, pull }: Flanges): Row => ({
  heat,
  testUnit: `${heat}/1`,
  pieces,
  ...orderedFor(part),
  deliveryCondition: "+N",
  thickness,
  diameter: `${diameter} mm`,
  mass: `${mass} kg`,
  meltingProcess: "electric, vacuum degassed",
  chemistry: ladle(chemistry),
  carbonEquivalent: ce,
  tensile: tensile(`${heat}/1`, "longitudinal", pull),
  otherTests: surface,
});

/** Welding-neck flanges PN 40 by size; DN 100 came from two heats. */
const rows = [
  flanges({
    heat: "51508",
    pieces: 2,
    part: "P38",
    size: ["16.0 mm", 95, 1.6],
    chemistry: "0.17 0.25 0.92 0.011 0.005 - - 0.09 0.12 0.02 0.08",
    ce: "0.36 %",
    pull: "291 471 30",
  }),
  flanges({
    heat: "51513",
    pieces: 2,
    part: "P36",
    size: ["18.0 mm", 115, 2.7],
    chemistry: "0.16 0.24 0.95 0.012 0.004 - - 0.08 0.11 0.02 0.07",
    ce: "0.35 %",
    pull: "287 466 31",
  }),
  flanges({
    heat: "51524",
    pieces: 2,
    part: "P34",
    size: ["18.0 mm", 150, 4.6],
    chemistry: "0.17 0.26 0.93 0.010 0.004 - - 0.10 0.13 0.02 0.09",
    ce: "0.36 %",
    pull: "293 474 29",
  }),
  flanges({
    heat: "51530",
    pieces: 2,
    part: "P32",
    size: ["22.0 mm", 185, 8.2],
    chemistry: "0.16 0.25 0.98 0.013 0.003 - - 0.08 0.12 0.02 0.08",
    ce: "0.36 %",
    pull: "284 464 30",
  }),
  flanges({
    heat: "51542",
    pieces: 3,
    part: "P31",
    size: ["24.0 mm", 235, 22.8],
    chemistry: "0.17 0.27 0.96 0.011 0.004 - - 0.09 0.11 0.02 0.07",
    ce: "0.36 %",
    pull: "282 467 30",
  }),
  flanges({
    heat: "51547",
    pieces: 2,
    part: "P40",
    size: ["24.0 mm", 235, 15.2],
    chemistry: "0.16 0.24 0.97 0.012 0.003 - - 0.08 0.12 0.02 0.08",
    ce: "0.35 %",
    pull: "288 470 29",
  }),
];

export const forgedRows: readonly Delivery[] = rows.map((row, index) => ({
  number: `HF-26-0${412 + index}`,
  mill: "HAMMERQUIST",
  item: 25 + index,
  issued: "2026-02-03",
  received: "2026-02-19",
  row,
}));
