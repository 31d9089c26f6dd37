import { bars, tubes } from "./certificate-rows.ts";
import type { Delivery } from "./certificates.ts";
import type { Row } from "../../order/facts/certificate-rows.ts";

const smoke = { thickness: "3.6 mm", diameter: "51 mm" } as const;
const stay = { thickness: "6.3 mm", diameter: "51 mm" } as const;

/** Smoke and stay tubes by heat, ordered to length with 20 mm to cut off each end. */
const boilerTubes = [
  tubes({
    ...smoke,
    heat: "70112",
    part: "P12",
    pieces: 52,
    length: 3190,
    mass: 698,
    chemistry: "0.11 0.21 0.52 0.010 0.004 - 0.027 0.06 0.12 0.02 0.06",
    ce: "0.23 %",
    pull: "278 412 34",
  }),
  tubes({
    ...smoke,
    heat: "70118",
    part: "P14",
    pieces: 61,
    length: 4030,
    mass: 1035,
    chemistry: "0.12 0.20 0.54 0.011 0.003 - 0.026 0.05 0.11 0.02 0.07",
    ce: "0.24 %",
    pull: "283 418 33",
  }),
  tubes({
    ...smoke,
    heat: "70125",
    part: "P14",
    pieces: 29,
    length: 4030,
    mass: 492,
    chemistry: "0.11 0.22 0.50 0.012 0.004 - 0.028 0.07 0.10 0.02 0.06",
    ce: "0.23 %",
    pull: "274 409 35",
  }),
  tubes({
    ...stay,
    heat: "70131",
    part: "P13",
    pieces: 17,
    length: 3190,
    mass: 377,
    chemistry: "0.12 0.23 0.57 0.009 0.003 - 0.029 0.06 0.12 0.02 0.08",
    ce: "0.25 %",
    pull: "288 424 33",
  }),
  tubes({
    ...stay,
    heat: "70136",
    part: "P15",
    pieces: 25,
    length: 4030,
    mass: 700,
    chemistry: "0.12 0.21 0.56 0.011 0.004 - 0.025 0.05 0.13 0.02 0.07",
    ce: "0.24 %",
    pull: "285 420 34",
  }),
];

/** Pipe of the necks by size; DN 100 came from two heats. */
const necks = [
  tubes({
    heat: "70152",
    part: "P25",
    pieces: 1,
    thickness: "5.0 mm",
    diameter: "21.3 mm",
    length: 2000,
    mass: 4.0,
    chemistry: "0.14 0.22 0.95 0.011 0.004 - 0.028 0.07 0.11 0.02 0.06 - - 0.003",
    ce: "0.33 %",
    pull: "311 456 30",
  }),
  tubes({
    heat: "70157",
    part: "P23",
    pieces: 1,
    thickness: "6.3 mm",
    diameter: "33.7 mm",
    length: 2000,
    mass: 8.5,
    chemistry: "0.15 0.21 0.97 0.012 0.003 - 0.027 0.06 0.12 0.02 0.07 - - 0.003",
    ce: "0.34 %",
    pull: "307 451 31",
  }),
  tubes({
    heat: "70161",
    part: "P21",
    pieces: 1,
    thickness: "7.1 mm",
    diameter: "48.3 mm",
    length: 2000,
    mass: 14.4,
    chemistry: "0.15 0.23 0.99 0.010 0.004 - 0.029 0.07 0.10 0.02 0.06 - - 0.002",
    ce: "0.34 %",
    pull: "304 448 31",
  }),
  tubes({
    heat: "70166",
    part: "P19",
    pieces: 1,
    thickness: "8.8 mm",
    diameter: "76.1 mm",
    length: 2000,
    mass: 29.2,
    chemistry: "0.14 0.24 1.02 0.011 0.003 - 0.026 0.08 0.11 0.02 0.08 - - 0.003",
    ce: "0.34 %",
    pull: "309 455 30",
  }),
  tubes({
    heat: "70170",
    part: "P27",
    pieces: 1,
    thickness: "11.0 mm",
    diameter: "114.3 mm",
    length: 2000,
    mass: 56.0,
    chemistry: "0.15 0.22 1.00 0.013 0.004 - 0.028 0.07 0.12 0.02 0.07 - - 0.003",
    ce: "0.35 %",
    pull: "302 450 30",
  }),
  tubes({
    heat: "70174",
    part: "P18",
    pieces: 1,
    thickness: "11.0 mm",
    diameter: "114.3 mm",
    length: 2000,
    mass: 56.0,
    chemistry: "0.16 0.21 0.98 0.010 0.003 - 0.030 0.06 0.11 0.02 0.06 - - 0.002",
    ce: "0.35 %",
    pull: "308 457 29",
  }),
];

const accessTube = tubes({
  heat: "33914",
  part: "P11",
  pieces: 1,
  thickness: "12.5 mm",
  diameter: "406.4 mm",
  length: 1000,
  mass: 121,
  chemistry: "0.14 0.24 1.06 0.012 0.003 - 0.031 0.08 0.13 0.02 0.07 - - 0.004",
  ce: "0.35 %",
  pull: "296 447 29",
});

const stayBars = [
  bars({
    heat: "29417",
    part: "P16",
    pieces: 3,
    thickness: "45.0 mm",
    diameter: "45 mm",
    length: 4100,
    mass: 154,
    chemistry: "0.13 0.24 0.82 0.014 0.008 - 0.027 0.08 0.14 0.02 0.09 0.001 0.002 0.003",
    pull: "262 421 31",
  }),
  bars({
    heat: "29423",
    part: "P16",
    pieces: 3,
    thickness: "45.0 mm",
    diameter: "45 mm",
    length: 4100,
    mass: 154,
    chemistry: "0.12 0.23 0.85 0.012 0.007 - 0.029 0.07 0.13 0.02 0.08 0.001 0.002 0.003",
    pull: "258 416 32",
  }),
  bars({
    heat: "29440",
    part: "P17",
    pieces: 1,
    thickness: "45.0 mm",
    diameter: "45 mm",
    length: 3000,
    mass: 37,
    chemistry: "0.13 0.22 0.80 0.013 0.009 - 0.026 0.09 0.15 0.02 0.09 0.001 0.002 0.002",
    pull: "265 425 30",
  }),
];

const from =
  (mill: string, prefix: string, first: number, item: number, issued: string, supplier?: string) =>
  (row: Row, index: number): Delivery => ({
    number: `${prefix}-26-${first + index}`,
    mill,
    item: item + index,
    issued,
    received: "2026-02-20",
    ...(supplier !== undefined && { supplier }),
    row,
  });

export const tubeRows: readonly Delivery[] = [
  ...boilerTubes.map(from("NETTLEWEIR", "NT", 2204, 10, "2026-02-11")),
  ...necks.map(from("NETTLEWEIR", "NT", 2181, 15, "2026-01-28", "UMBERHITHE")),
  from("FATHOMREACH", "FR", 5063, 21, "2026-02-05", "UMBERHITHE")(accessTube, 0),
];

export const barRows: readonly Delivery[] = stayBars.map(from("KESTLEBAR", "KB", 1340, 22, "2026-02-09"));
