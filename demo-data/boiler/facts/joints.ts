import type { Joint } from "../../generated/records.ts";
import { nozzles } from "./nozzles.ts";

const map = "DRG-02@C";
const contract = "order OD-2604, technical part, 5.1";
const all = "EN 12953-5, all welds (from memory)";

type Tests = NonNullable<Joint["requiredTests"]>;

const visual: Tests[number] = { method: "VT", extent: "100 %", basis: all };
const spots: Tests = [visual, { method: "RT", extent: "10 %", basis: contract }];
const ultrasonic: Tests = [visual, { method: "UT", extent: "25 %", basis: contract }];
const surface: Tests = [visual, { method: "MT", extent: "25 %", basis: contract }];

interface Weld {
  readonly id: string;
  readonly type: NonNullable<Joint["type"]>;
  readonly role: NonNullable<Joint["role"]>;
  readonly parts: string[];
  readonly thicknesses: string[];
  readonly length: string;
  readonly diameter?: string;
  readonly process: "121" | "135" | "141";
  readonly position?: "PA" | "PB" | "PC";
  readonly procedure: string;
  readonly tests: Tests;
  readonly deposited?: string;
  readonly throat?: string;
  readonly detail?: NonNullable<Joint["detail"]>;
  readonly coefficient?: string;
  /** Joints that end on it, and where, in mm from the zero mark. */
  readonly crossings?: readonly (readonly [joint: string, at: number])[];
}

const weld = (one: Weld): Joint => ({
  id: one.id,
  mark: `417 ${one.id}`,
  type: one.type,
  role: one.role,
  pressureBearing: one.type !== "attachment",
  parts: one.parts,
  thicknesses: one.thicknesses,
  ...(one.deposited !== undefined && { depositedThickness: one.deposited }),
  ...(one.throat !== undefined && { throat: one.throat }),
  ...(one.diameter !== undefined && { outsideDiameter: one.diameter }),
  length: one.length,
  detail: one.detail ?? "ss nb",
  processes: [one.process],
  positions: [one.position ?? "PA"],
  weldingProcedure: one.procedure,
  drawing: map,
  ...(one.coefficient !== undefined && { weldCoefficient: one.coefficient }),
  qualityLevel: "C",
  requiredTests: one.tests,
  ...(one.crossings !== undefined && { crossings: one.crossings.map(([joint, at]) => ({ joint, at: `${at} mm` })) }),
  postWeldHeatTreatment: false,
});

/** Both sides, by the mechanised welder. */
const seam = (
  id: string,
  role: "longitudinal" | "circumferential",
  joined: string[],
  thickness: string,
  diameter: string,
  length: string,
  crossings?: NonNullable<Weld["crossings"]>,
): Joint =>
  weld({
    id,
    type: "butt",
    role,
    ...(crossings !== undefined && { crossings }),
    parts: joined,
    thicknesses: joined.map(() => thickness),
    deposited: thickness,
    diameter,
    length,
    process: "121",
    procedure: "WPS-11@2",
    detail: "bs",
    tests:
      role === "longitudinal" && diameter !== "1924 mm"
        ? [visual, { method: "RT", extent: "100 %", basis: contract }]
        : spots,
    coefficient: role === "longitudinal" && diameter !== "1924 mm" ? "1.00" : "0.85",
  });

/** A plate set into a cylinder, welded through. */
const corner = (id: string, joined: [string, string], thicknesses: [string, string], length: string): Joint =>
  weld({
    id,
    type: "corner",
    role: "circumferential",
    parts: joined,
    thicknesses,
    deposited: thicknesses[0],
    length,
    process: "135",
    procedure: "WPS-12@1",
    detail: "bs",
    tests: ultrasonic,
  });

const branch = (
  id: string,
  shell: string,
  neck: string,
  wall: string,
  diameter: string,
  length: string,
  small: boolean,
): Joint =>
  weld({
    id,
    type: "branch",
    role: "nozzle",
    parts: [shell, neck],
    thicknesses: ["12.0 mm", wall],
    deposited: "12.0 mm",
    diameter,
    length,
    process: small ? "141" : "135",
    procedure: small ? "WPS-15@1" : "WPS-14@1",
    tests: surface,
  });

const round = (diameter: string): string => `${Math.round(Math.PI * Number.parseFloat(diameter))} mm`;
const two = (id: number) => String(id).padStart(2, "0");

export const joints: readonly Joint[] = [
  seam("L1", "longitudinal", ["P01"], "12.0 mm", "1924 mm", "1975 mm"),
  seam("L2", "longitudinal", ["P02"], "12.0 mm", "1924 mm", "1975 mm"),
  seam("C1", "circumferential", ["P01", "P02"], "12.0 mm", "1924 mm", "6007 mm", [
    ["L1", 150],
    ["L2", 3150],
  ]),
  corner("E1", ["P01", "P03"], ["12.0 mm", "20.0 mm"], "5969 mm"),
  corner("E2", ["P02", "P04"], ["12.0 mm", "20.0 mm"], "5969 mm"),
  seam("FS1", "longitudinal", ["P05"], "16.0 mm", "850 mm", "1450 mm"),
  seam("FS2", "longitudinal", ["P06"], "16.0 mm", "850 mm", "1450 mm"),
  seam("FC1", "circumferential", ["P05", "P07"], "16.0 mm", "850 mm", "2620 mm", [["FS1", 70]]),
  seam("FC2", "circumferential", ["P07", "P06"], "16.0 mm", "850 mm", "2620 mm", [["FS2", 1380]]),
  seam("WL1", "longitudinal", ["P08"], "16.0 mm", "1300 mm", "600 mm"),
  corner("K1", ["P05", "P03"], ["16.0 mm", "20.0 mm"], "2670 mm"),
  corner("K2", ["P06", "P09"], ["16.0 mm", "20.0 mm"], "2670 mm"),
  corner("K3", ["P08", "P09"], ["16.0 mm", "20.0 mm"], "3984 mm"),
  corner("K4", ["P08", "P10"], ["16.0 mm", "20.0 mm"], "3984 mm"),
  corner("K5", ["P11", "P10"], ["12.5 mm", "20.0 mm"], "1277 mm"),
  corner("K6", ["P11", "P04"], ["12.5 mm", "20.0 mm"], "1277 mm"),
  ...nozzles.map(({ shell, part, wall, diameter }, index) =>
    branch(`N${two(index + 1)}`, shell, part, wall, diameter, round(diameter), Number.parseFloat(diameter) < 60),
  ),
  ...nozzles.map(({ part, flange, wall, diameter }, index) =>
    weld({
      id: `F${two(index + 1)}`,
      type: "butt",
      role: "circumferential",
      parts: [part, flange],
      thicknesses: [wall, wall],
      deposited: wall,
      diameter,
      length: round(diameter),
      process: "141",
      procedure: "WPS-16@1",
      tests: spots,
      coefficient: "0.85",
    }),
  ),
  weld({
    id: "M01",
    type: "branch",
    role: "nozzle",
    parts: ["P02", "P44"],
    thicknesses: ["12.0 mm", "25.0 mm"],
    deposited: "12.0 mm",
    length: "1400 mm",
    process: "135",
    procedure: "WPS-14@1",
    tests: surface,
  }),
  ...["P03", "P04"].flatMap((end, side) =>
    [1, 2, 3].map((number) =>
      weld({
        id: `S${side + 1}${number}`,
        type: "fillet",
        role: "attachment",
        parts: ["P16", end],
        thicknesses: ["45.0 mm", "20.0 mm"],
        throat: "10 mm",
        length: "282 mm",
        process: "135",
        position: "PB",
        procedure: "WPS-17@1",
        tests: surface,
        detail: "ml",
      }),
    ),
  ),
  ...["P10", "P04"].map((end, side) =>
    weld({
      id: `S3${side + 1}`,
      type: "fillet",
      role: "attachment",
      parts: ["P17", end],
      thicknesses: ["45.0 mm", "20.0 mm"],
      throat: "10 mm",
      length: "1131 mm",
      process: "135",
      position: "PB",
      procedure: "WPS-17@1",
      tests: surface,
      detail: "ml",
    }),
  ),
  ...(
    [
      ["A1", "P45", "P01", "25.0 mm"],
      ["A2", "P45", "P02", "25.0 mm"],
      ["A3", "P46", "P01", "15.0 mm"],
      ["A4", "P46", "P02", "15.0 mm"],
      ["A5", "P47", "P01", "4.0 mm"],
    ] as const
  ).map(([id, attached, shell, wall]) =>
    weld({
      id,
      type: "attachment",
      role: "attachment",
      parts: [attached, shell],
      thicknesses: [wall, "12.0 mm"],
      throat: wall === "4.0 mm" ? "3 mm" : "8 mm",
      length: "600 mm",
      process: "135",
      position: "PB",
      procedure: "WPS-18@1",
      tests: surface,
      detail: wall === "4.0 mm" ? "sl" : "ml",
    }),
  ),
];
