import type { HeatTreatment, PieceMark, ProductionTest } from "../../generated/records.ts";
import { heatTreatments as receiverEnds } from "../../air-receiver/facts/materials.ts";
import { productionTests as receiverTests } from "../../air-receiver/facts/repairs.ts";
import { pieceOf } from "../../order/making/pieces.ts";
import { stamp } from "./vessel.ts";

const on = (time: string) => `2026-04-23T${time}+02:00`;

/** Both ends in one charge, on the day after the receiver's. */
export const heatTreatments: readonly HeatTreatment[] = receiverEnds.map((charge) => ({
  ...charge,
  charge: "BE-26-N-078",
  parts: ["P02", "P03"],
  started: on("06:50"),
  finished: on("10:17"),
  loadingTemperature: "305 °C",
  heatingRate: "215 K/h",
  holdingLowest: "901 °C",
  holdingHighest: "912 °C",
  holdingTime: "30 min",
  readings: [
    { time: on("09:45"), temperatures: ["901 °C", "904 °C"] },
    { time: on("09:58"), temperatures: ["907 °C", "910 °C"] },
    { time: on("10:15"), temperatures: ["908 °C", "912 °C"] },
  ],
  signatures: [{ role: "supplier", person: "F1", date: "2026-04-24" }],
}));

const piece = pieceOf(stamp);
const pipe = { row: "CRT-005#70344", from: "70344/2", more: { length: "80 mm" } };

export const pieceMarks: readonly PieceMark[] = [
  piece({ id: "PM-01", part: "P01", row: "CRT-003#84713", from: "84713-1041", more: { area: "0.27 m²" } }),
  piece({ id: "PM-02", part: "P02", row: "CRT-009#83978", from: "83978-A" }),
  piece({ id: "PM-03", part: "P03", row: "CRT-009#83978", from: "83978-B" }),
  piece({ id: "PM-04", part: "P04", ...pipe }),
  piece({ id: "PM-05", part: "P05", ...pipe }),
  piece({ id: "PM-06", part: "P06", ...pipe }),
  piece({ id: "PM-07", part: "P07", ...pipe }),
];

/** Its test plate was welded as a run-out of L1, and broken with the receiver's. */
export const productionTests: readonly ProductionTest[] = receiverTests.map((plate) => ({
  ...plate,
  mark: `${stamp} TP1`,
  joints: ["L1"],
  weldingProcedure: "WPS-10@1",
  certificateRows: ["CRT-003#84713"],
  welded: "2026-05-29",
  report: "LK-26-0882",
  tensile: (plate.tensile ?? []).map((one) => ({ ...one, tensileStrength: "471 MPa" })),
  impact: (plate.impact ?? []).map((one) =>
    one.test === "I1"
      ? { ...one, values: ["68 J", "74 J", "71 J"], mean: "71 J" }
      : { ...one, values: ["82 J", "86 J", "78 J"], mean: "82 J" },
  ),
}));
