import type { PressureTest } from "../../generated/records.ts";
import { gaugeOf, readingsOf, signedOn, type Reading } from "../../shop/hydrostatic-test.ts";
import { equipment } from "./boiler.ts";
import { instruments } from "./instruments.ts";

export const testDay = "2026-04-28";
const at = (time: string) => `${testDay}T${time}+02:00`;

/** Time, gauge A at the vent, gauge B at the blow-down, water and metal temperature, and what happened. */
export const readings: readonly Reading[] = [
  ["09:10", "0.00", "0.20", "14.2", "14.4", "filled the day before, vented"],
  ["09:22", "7.60", "7.80", "14.2", "14.4", "half, looked round"],
  ["09:30", "7.60", "7.80", "14.2", "14.4", ""],
  ["09:36", "9.10", "9.30", "14.2", "14.4", ""],
  ["09:41", "10.00", "10.20", "14.2", "14.4", "stop at PS"],
  ["09:50", "10.00", "10.20", "14.2", "14.4", ""],
  ["09:54", "11.50", "11.70", "14.2", "14.4", ""],
  ["09:57", "13.00", "13.20", "14.2", "14.4", ""],
  ["10:00", "14.50", "14.70", "14.2", "14.4", ""],
  ["10:04", "15.45", "15.65", "14.3", "14.4", "pump cut off"],
  ["10:07", "15.45", "15.65", "14.3", "14.4", "hold begins"],
  ["10:12", "15.45", "15.65", "14.3", "14.4", ""],
  ["10:17", "15.45", "15.65", "14.3", "14.4", ""],
  ["10:22", "15.45", "15.65", "14.3", "14.4", ""],
  ["10:27", "15.45", "15.65", "14.3", "14.4", ""],
  ["10:32", "15.50", "15.65", "14.3", "14.4", ""],
  ["10:37", "15.50", "15.70", "14.3", "14.5", ""],
  ["10:42", "15.50", "15.70", "14.4", "14.5", "hold ends"],
  ["10:47", "10.00", "10.20", "14.4", "14.5", "lowered to PS"],
  ["11:35", "10.00", "10.20", "14.5", "14.6", "examination ends"],
  ["11:44", "0.00", "0.20", "14.5", "14.6", "empty"],
];

const gauge = gaugeOf(instruments);

export const pressureTest: PressureTest = {
  id: "HYD-01",
  equipment: equipment.id,
  date: testDay,
  medium: "water",
  procedure: "PRC-HT@3",
  drawing: "DRG-01@C",
  serial: equipment.serial,
  requiredPressure: "15.23 bar",
  testPressure: "15.3 bar",
  gauges: [gauge("A", "PG-04", "0 mm"), gauge("B", "PG-05", "-2040 mm")],
  readings: readingsOf(readings, at),
  thermometers: ["TH-07"],
  pumpIsolated: at("10:04"),
  holdStart: at("10:07"),
  holdEnd: at("10:42"),
  pumpedVolume: "17.2 l",
  visualExamination: { pressure: "10 bar", by: "D2", date: at("11:35"), result: "accepted" },
  permanentSet: "0.0 mm",
  coated: false,
  result: "accepted",
  signatures: signedOn(testDay, "P2"),
};
