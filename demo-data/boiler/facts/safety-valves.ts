import type { SafetyValve } from "../../generated/records.ts";
import { equipment } from "./boiler.ts";

interface Opened {
  readonly id: string;
  readonly tag: string;
  readonly serial: string;
  readonly seal: string;
  /** Pressure of opening and of closing in bar, three times. */
  readonly openings: readonly (readonly [pop: string, reseat: string])[];
}

const capacity = "2420 kg/h";
const setPressure = "10.0 bar";

/** Two valves of one type on nozzles N2 and N3, lift restricted: either relieves more than half of what the burner raises. */
const valve = ({ id, tag, serial, seal, openings }: Opened): SafetyValve => ({
  id,
  equipment: equipment.id,
  tag,
  serial,
  manufacturer: "HOLLYVANE",
  model: "HV 38 S, full lift, lift restricted",
  size: "DN 65 / DN 100, d0 38 mm",
  category: "IV",
  bodyNumber: "0000",
  flowDiameter: "38 mm",
  flowArea: "1134.1 mm²",
  coefficient: "0.36",
  setPressure,
  overpressure: "5 %",
  backPressure: "0 bar",
  medium: { name: "saturated steam", state: "steam", temperature: "184.1 °C" },
  atmosphericPressure: "1.013 bar(a)",
  certifiedCapacity: capacity,
  certificate: {
    number: `HV-C-${serial.slice(-5)}`,
    date: "2026-04-22",
    body: "PENQUILLITH",
    typeExamination: "PQ-TE-0433",
  },
  plate: { serial, setPressure, capacity },
  bench: {
    date: "2026-04-21",
    procedure: "PRC-SVS@4",
    instrument: "PG-07",
    medium: "saturated steam",
    readings: openings.map(([pop, reseat], index) => ({
      number: index + 1,
      pop: `${pop} bar`,
      reseat: `${reseat} bar`,
    })),
    seatTestPressure: "9.0 bar",
    seatTightness: "accepted",
    sealNumber: seal,
    tester: "V1",
  },
  signatures: [{ role: "supplier", person: "V1", date: "2026-04-22" }],
});

export const safetyValves: readonly SafetyValve[] = [
  valve({
    id: "SV-01",
    tag: "PSV-211",
    serial: "HV-54877",
    seal: "S-20341",
    openings: [
      ["9.95", "9.30"],
      ["10.00", "9.35"],
      ["10.00", "9.35"],
    ],
  }),
  valve({
    id: "SV-02",
    tag: "PSV-212",
    serial: "HV-54878",
    seal: "S-20342",
    openings: [
      ["10.05", "9.40"],
      ["10.00", "9.40"],
      ["10.05", "9.40"],
    ],
  }),
];
