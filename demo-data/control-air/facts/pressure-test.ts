import type { PressureTest, SafetyValve } from "../../generated/records.ts";
import { pressureTest as receiverTest, safetyValve as receiverValve } from "../../air-receiver/facts/pressure-test.ts";
import { instruments } from "../../order/facts/instruments.ts";
import { gaugeOf, readingsOf, type Reading } from "../../shop/hydrostatic-test.ts";
import { serial } from "./vessel.ts";

/** In the afternoon of the receiver's test, with the same gauges and the same witnesses. */
const at = (time: string) => `2026-06-23T${time}+02:00`;

/** Time, gauge A at the top, gauge B at the bottom, water and metal temperature, and what happened. */
export const readings: readonly Reading[] = [
  ["13:20", "0.00", "0.05", "14.8", "15.2", "filled and vented"],
  ["13:26", "4.00", "4.05", "14.8", "15.1", ""],
  ["13:32", "8.00", "8.05", "14.8", "15.1", "stop, looked round"],
  ["13:40", "8.00", "8.05", "14.8", "15.1", ""],
  ["13:42", "9.50", "9.55", "14.9", "15.1", ""],
  ["13:44", "11.00", "11.05", "14.9", "15.1", "stop at PS"],
  ["13:52", "11.00", "11.05", "14.9", "15.1", ""],
  ["13:53", "12.25", "12.30", "14.9", "15.1", ""],
  ["13:54", "13.50", "13.55", "14.9", "15.1", ""],
  ["13:55", "14.75", "14.80", "14.9", "15.1", ""],
  ["13:56", "15.90", "15.95", "14.9", "15.1", "pump cut off"],
  ["13:59", "15.90", "15.95", "14.9", "15.1", "hold begins"],
  ["14:04", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:09", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:14", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:19", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:24", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:29", "15.90", "15.95", "14.9", "15.1", ""],
  ["14:34", "15.90", "15.95", "14.9", "15.1", "hold ends"],
  ["14:37", "11.00", "11.05", "14.9", "15.1", "lowered to PS"],
  ["14:50", "11.00", "11.05", "15.0", "15.2", "examination ends"],
  ["14:55", "0.00", "0.05", "15.0", "15.2", "empty"],
];

const gauge = gaugeOf(instruments);

export const pressureTest: PressureTest = {
  ...receiverTest,
  equipment: serial,
  serial,
  gauges: [gauge("A", "PG-03", "0 mm"), gauge("B", "PG-04", "-356 mm")],
  readings: readingsOf(readings, at),
  pumpIsolated: at("13:56"),
  holdStart: at("13:59"),
  holdEnd: at("14:34"),
  pumpedVolume: "0.1 l",
  visualExamination: { pressure: "11 bar", by: "D2", date: at("14:50"), result: "accepted" },
};

const number = "HV-55110";
const capacity = "612 kg/h";

/** The maker's smaller size of the receiver's valve, set on the same bench a day later. */
export const safetyValve: SafetyValve = {
  ...receiverValve,
  equipment: serial,
  tag: "PSV-311",
  serial: number,
  model: "HV 10 F, full lift",
  size: "DN 25 / DN 32, d0 10 mm",
  flowDiameter: "10 mm",
  flowArea: "78.54 mm²",
  certifiedCapacity: capacity,
  certificate: {
    ...receiverValve.certificate,
    number: "HV-C-55110",
    date: "2026-06-29",
    typeExamination: "PQ-TE-0416",
  },
  plate: { serial: number, setPressure: "11 bar", capacity },
  bench: {
    ...receiverValve.bench,
    date: "2026-06-26",
    readings: [
      { number: 1, pop: "11.05 bar", reseat: "10.25 bar" },
      { number: 2, pop: "11.00 bar", reseat: "10.20 bar" },
      { number: 3, pop: "11.05 bar", reseat: "10.25 bar" },
    ],
    sealNumber: "S-20431",
  },
  signatures: [{ role: "supplier", person: "V1", date: "2026-06-29" }],
};
