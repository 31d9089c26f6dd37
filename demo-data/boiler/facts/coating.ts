import type { CoatingReport } from "../../generated/records.ts";
import { zoneOf } from "../../order/making/coating.ts";

/** The coat of the outside, under the lagging. */
export const coatingReport: CoatingReport = {
  id: "COAT-01",
  report: "TQ417-DOC-06",
  surface: "outside of the boiler",
  parts: ["P01", "P02", "P03", "P04", "P45", "P46"],
  procedure: "PRC-PAINT@3",
  date: "2026-05-04",
  by: "D2",
  instruments: ["CT-01"],
  prepared: "2026-04-30",
  preparation: "St 3",
  preparationAsked: "St 3",
  layers: [
    {
      layer: "1",
      product: "heat-resistant aluminium paint",
      batch: "AL-0907",
      applied: "2026-05-04T07:30+02:00",
      surfaceTemperature: "17 °C",
      airTemperature: "18 °C",
      humidity: "49 %",
      dewPoint: "7 °C",
    },
  ],
  minimum: "25 µm",
  maximum: "60 µm",
  readingsAsked: 10,
  zones: [
    zoneOf("course 1", 38, 41, 44, 36, 40, 43, 39, 42, 37, 40),
    zoneOf("course 2", 42, 39, 45, 41, 38, 40, 44, 43, 39, 41),
    zoneOf("front plate", 35, 37, 41, 39, 36, 38, 40, 42, 37, 38),
    zoneOf("rear plate", 37, 40, 38, 43, 41, 36, 39, 42, 38, 40),
    zoneOf("saddles and lugs", 44, 47, 42, 46, 49, 45, 43, 48, 46, 44),
  ],
  result: "accepted",
  signatures: [{ role: "quality control", person: "D2", date: "2026-05-04" }],
};
