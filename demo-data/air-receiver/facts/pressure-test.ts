import type { PressureTest, SafetyValve } from "../../generated/records.ts";
import { gaugeOf, readingsOf, signedOn, type Reading } from "../../shop/hydrostatic-test.ts";
import { instruments } from "../../order/facts/instruments.ts";

const day = "2026-06-23";
const at = (time: string) => `${day}T${time}+02:00`;

/** Time, gauge A at the top, gauge B at the bottom, water and metal temperature, and what happened. */
export const readings: readonly Reading[] = [
  ["10:05", "0.00", "0.10", "14.5", "14.8", "filled and vented"],
  ["10:11", "4.00", "4.10", "14.5", "14.8", ""],
  ["10:18", "8.00", "8.10", "14.5", "14.7", "stop, looked round"],
  ["10:26", "8.00", "8.10", "14.6", "14.7", ""],
  ["10:29", "9.50", "9.60", "14.6", "14.7", ""],
  ["10:32", "11.00", "11.10", "14.6", "14.7", "stop at PS"],
  ["10:40", "11.00", "11.10", "14.6", "14.7", ""],
  ["10:42", "12.25", "12.35", "14.6", "14.7", ""],
  ["10:44", "13.50", "13.60", "14.6", "14.7", ""],
  ["10:46", "14.75", "14.85", "14.6", "14.7", ""],
  ["10:49", "15.90", "16.00", "14.6", "14.7", "pump cut off"],
  ["10:52", "15.90", "16.00", "14.6", "14.7", "hold begins"],
  ["10:57", "15.90", "16.00", "14.6", "14.7", ""],
  ["11:02", "15.90", "16.00", "14.6", "14.7", ""],
  ["11:07", "15.90", "16.00", "14.6", "14.7", ""],
  ["11:12", "15.90", "16.05", "14.6", "14.7", ""],
  ["11:17", "15.95", "16.05", "14.7", "14.7", ""],
  ["11:22", "15.95", "16.05", "14.7", "14.8", ""],
  ["11:27", "15.95", "16.05", "14.7", "14.8", "hold ends"],
  ["11:31", "11.00", "11.10", "14.7", "14.8", "lowered to PS"],
  ["11:55", "11.00", "11.10", "14.8", "14.9", "examination ends"],
  ["12:01", "0.00", "0.10", "14.8", "14.9", "empty"],
];

const gauge = gaugeOf(instruments);

export const pressureTest: PressureTest = {
  id: "HYD-01",
  equipment: "TQ423-01",
  date: day,
  medium: "water",
  procedure: "PRC-HYD@4",
  drawing: "DRG-01@B",
  serial: "TQ423-01",
  requiredPressure: "15.73 bar",
  testPressure: "15.8 bar",
  gauges: [gauge("A", "PG-03", "0 mm"), gauge("B", "PG-04", "-1200 mm")],
  readings: readingsOf(readings, at),
  thermometers: ["TH-02"],
  pumpIsolated: at("10:49"),
  holdStart: at("10:52"),
  holdEnd: at("11:27"),
  pumpedVolume: "7.1 l",
  visualExamination: { pressure: "11 bar", by: "D2", date: at("11:55"), result: "accepted" },
  permanentSet: "0.0 mm",
  coated: false,
  result: "accepted",
  signatures: signedOn(day, "P1"),
};

export const safetyValve: SafetyValve = {
  id: "SV-01",
  equipment: "TQ423-01",
  tag: "PSV-310",
  serial: "HV-55102",
  manufacturer: "HOLLYVANE",
  model: "HV 20 F, full lift",
  size: "DN 50 / DN 65, d0 20 mm",
  category: "IV",
  bodyNumber: "0000",
  flowDiameter: "20 mm",
  flowArea: "314.2 mm²",
  coefficient: "0.70",
  setPressure: "11 bar",
  overpressure: "10 %",
  backPressure: "0 bar",
  medium: {
    name: "air",
    state: "gas",
    temperature: "20 °C",
    molarMass: "28.96 kg/kmol",
    isentropicExponent: "1.40",
    compressibilityFactor: "1.00",
  },
  atmosphericPressure: "1.013 bar(a)",
  certifiedCapacity: "2450 kg/h",
  certificate: { number: "HV-C-55102", date: "2026-06-26", body: "PENQUILLITH", typeExamination: "PQ-TE-0417" },
  plate: { serial: "HV-55102", setPressure: "11 bar", capacity: "2450 kg/h" },
  bench: {
    date: "2026-06-25",
    procedure: "PRC-SV@7",
    instrument: "PG-07",
    medium: "air",
    readings: [
      { number: 1, pop: "11.00 bar", reseat: "10.20 bar" },
      { number: 2, pop: "11.05 bar", reseat: "10.20 bar" },
      { number: 3, pop: "11.05 bar", reseat: "10.25 bar" },
    ],
    seatTestPressure: "9.9 bar",
    seatTightness: "accepted",
    sealNumber: "S-20419",
    tester: "V1",
  },
  signatures: [{ role: "supplier", person: "V1", date: "2026-06-26" }],
};
