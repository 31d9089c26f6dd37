import type { Joint, NdtReport } from "../../generated/records.ts";
import { at } from "./calendar.ts";
import { joints } from "./joints.ts";
import { procedureInForce } from "./testing-procedures.ts";

type Method = NdtReport["method"];
export type Rows = NonNullable<NdtReport["rows"]>;
export type Row = Rows[number];

/** Day and time of a test. */
export type When = readonly [day: string, time: string];

const done: Readonly<Record<Method, Partial<NdtReport>>> = {
  VT: {
    acceptance: { standard: "EN ISO 5817", edition: "2014", level: "C" },
    technique: "direct",
    illuminance: "680 lx",
    operator: "N1",
    reviewer: "N3",
    instruments: ["LM-01", "WG-01"],
  },
  RT: {
    acceptance: { standard: "EN ISO 10675-1", edition: "2021", level: "2" },
    operator: "N2",
    reviewer: "N3",
    instruments: ["DM-01"],
  },
  MT: {
    acceptance: { standard: "EN ISO 23278", edition: "2015", level: "2X" },
    technique: "yoke, alternating current, wet black on white",
    seenBy: "colour contrast",
    directions: 2,
    fieldStrength: "3.2 kA/m",
    illuminance: "780 lx",
    operator: "N1",
    reviewer: "N3",
    instruments: ["MY-01", "FM-01", "LM-01"],
  },
  PT: {
    acceptance: { standard: "EN ISO 23277", edition: "2015", level: "2X" },
    technique: "red dye, solvent removable, type II C e",
    seenBy: "colour contrast",
    operator: "N1",
    reviewer: "N3",
    instruments: ["TH-05", "LM-01"],
    surfaceTemperature: "19 °C",
    penetrationTime: "15 min",
    developmentTime: "15 min",
    illuminance: "900 lx",
  },
  UT: {
    acceptance: { standard: "EN ISO 11666", edition: "2018", level: "3" },
    technique: "EN ISO 17640, 45°, 60° and 70°, 3 mm side-drilled hole",
    ultrasonic: { testingLevel: "A", frequencies: ["4 MHz"], transferCorrection: "2 dB", drift: "-1 dB" },
    operator: "N2",
    reviewer: "N3",
    instruments: ["UT-02"],
  },
};

/** A report to the procedure in force; what a method leaves open is given with it. */
export function report(
  id: string,
  method: Method,
  [day, time]: When,
  rows: Rows,
  more: Partial<NdtReport> = {},
): NdtReport {
  const { operator = "", ...usual } = done[method];
  return {
    id,
    method,
    date: at(day, time),
    procedure: procedureInForce(method),
    drawing: "DRG-02@C",
    qualityLevel: "C",
    ...usual,
    operator,
    laboratory: "GLIMMERFIELD",
    ...more,
    rows,
    signatures: [{ role: "testing", person: operator, date: day }],
  };
}

export function jointOf(id: string): Joint {
  const found = joints.find((one) => one.id === id);
  if (found === undefined) throw new Error(`the facts know no joint ${id}`);
  return found;
}

/** Length of a joint in mm. */
export const lengthOf = (id: string): number => Number.parseFloat(jointOf(id).length ?? "");

/** Part of its length in mm that a joint asks one method to test. */
export function owedOf(id: string, method: Method): number {
  const extent = jointOf(id).requiredTests?.find((one) => one.method === method)?.extent;
  if (extent === undefined) throw new Error(`joint ${id} asks for no ${method}`);
  return (lengthOf(id) * Number.parseFloat(extent)) / 100;
}

/** A stretch of a joint without indication; past the zero mark it goes on from there. */
export const stretch = (joint: string, from: number, to: number, more: Partial<Row> = {}): Row => ({
  joint,
  from: `${from} mm`,
  to: `${to} mm`,
  length: `${to - from} mm`,
  result: "accepted",
  ...more,
});

/** Stretches that together make the owed part, evenly along the joint: the longer, the more of them. */
export function spots(id: string, method: Method): Rows {
  const length = lengthOf(id);
  const count = length > 3000 ? 4 : length > 1000 ? 3 : length > 400 ? 2 : 1;
  const size = 10 * Math.ceil(owedOf(id, method) / count / 10);
  return Array.from({ length: count }, (_, index) => {
    const from = Math.floor((index * length) / count);
    return stretch(id, from, from + size, count > 1 ? { row: `${id}-${index + 1}` } : {});
  });
}
