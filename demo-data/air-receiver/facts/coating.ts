import type { CoatingReport } from "../../generated/records.ts";
import { zoneOf } from "../../order/making/coating.ts";

/** The coat of the inside, two layers of epoxy. */
export const coatingReport: CoatingReport = {
  id: "COAT-01",
  report: "TQ423-DOC-06",
  surface: "inside of the vessel",
  parts: ["P01", "P02", "P03", "P04", "P05", "P06", "P07", "P08", "P09", "P10"],
  procedure: "PRC-COAT@1",
  date: "2026-07-03",
  by: "D2",
  instruments: ["CT-01"],
  prepared: "2026-06-29T09:30+02:00",
  preparation: "Sa 2½",
  preparationAsked: "Sa 2½",
  layers: [
    {
      layer: "1",
      product: "epoxy, grey",
      batch: "EP-1184",
      applied: "2026-06-29T12:00+02:00",
      surfaceTemperature: "19 °C",
      airTemperature: "21 °C",
      humidity: "46 %",
      dewPoint: "9 °C",
    },
    {
      layer: "2",
      product: "epoxy, white",
      batch: "EP-1190",
      applied: "2026-07-01T08:30+02:00",
      surfaceTemperature: "20 °C",
      airTemperature: "22 °C",
      humidity: "50 %",
      dewPoint: "11 °C",
    },
  ],
  nominal: "250 µm",
  minimum: "200 µm",
  maximum: "400 µm",
  readingsAsked: 10,
  zones: [
    zoneOf("end 1", 248, 262, 271, 255, 266, 259, 270, 264, 258, 251),
    zoneOf("course 1", 257, 268, 281, 274, 262, 259, 266, 272, 279, 263),
    zoneOf("course 2", 252, 265, 274, 269, 261, 258, 273, 277, 264, 255),
    zoneOf("end 2", 244, 258, 269, 263, 252, 249, 267, 271, 260, 254),
    zoneOf("nozzles and N6", 241, 256, 262, 250, 248, 265, 259, 253, 246, 261),
  ],
  poreTest: "low voltage, wet sponge",
  pores: 0,
  result: "accepted",
  signatures: [{ role: "quality control", person: "D2", date: "2026-07-03" }],
};
