import type { HeatTreatment, PieceMark } from "../../generated/records.ts";
import { pieceOf } from "../../order/making/pieces.ts";

/** The ends were formed cold and normalised again by their maker, together, in one charge. */
export const heatTreatments: readonly HeatTreatment[] = [
  {
    id: "HT-01",
    charge: "BE-26-N-077",
    type: "normalising",
    procedure: "PRC-FORM@3",
    parts: ["P03", "P04"],
    started: "2026-04-22T06:40+02:00",
    finished: "2026-04-22T10:12+02:00",
    loadingTemperature: "310 °C",
    heatingRate: "210 K/h",
    holdingLowest: "898 °C",
    holdingHighest: "914 °C",
    holdingTime: "32 min",
    readings: [
      { time: "2026-04-22T09:38+02:00", temperatures: ["898 °C", "902 °C"] },
      { time: "2026-04-22T09:50+02:00", temperatures: ["906 °C", "911 °C"] },
      { time: "2026-04-22T10:10+02:00", temperatures: ["908 °C", "914 °C"] },
    ],
    instruments: ["TR-11"],
    result: "accepted",
    signatures: [{ role: "supplier", person: "F1", date: "2026-04-23" }],
  },
];

const piece = pieceOf("423");

export const pieceMarks: readonly PieceMark[] = [
  piece({ id: "PM-01", part: "P01", row: "CRT-003#84713", from: "84713-1041", more: { area: "4.21 m²" } }),
  piece({ id: "PM-02", part: "P02", row: "CRT-003#84721", from: "84721-1042", more: { area: "4.21 m²" } }),
  piece({ id: "PM-03", part: "P03", row: "CRT-001#83950", from: "83950-4" }),
  piece({ id: "PM-04", part: "P04", row: "CRT-002#83962", from: "83962-1" }),
  piece({ id: "PM-05", part: "P05", row: "CRT-004#51806", from: "51806-A" }),
  piece({ id: "PM-06", part: "P06", row: "CRT-004#51806", from: "51806-B" }),
  piece({ id: "PM-07", part: "P07", row: "CRT-006#51822", from: "51822-A" }),
  piece({ id: "PM-08", part: "P08", row: "CRT-005#70344", from: "70344/2", more: { length: "120 mm" } }),
  piece({ id: "PM-09", part: "P09", row: "CRT-005#70344", from: "70344/2", more: { length: "120 mm" } }),
  piece({ id: "PM-10", part: "P10", row: "CRT-006#51840", from: "51840-A" }),
  piece({ id: "PM-11", part: "P11", row: "CRT-007#51853", from: "51853-A" }),
  piece({ id: "PM-12", part: "P12", row: "CRT-008#62011", from: "TF 62011", more: { pieces: 12 } }),
  piece({ id: "PM-13", part: "P13", row: "CRT-008#62017", from: "TF 62017", more: { pieces: 12 } }),
];
