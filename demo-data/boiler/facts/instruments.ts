import type { Instrument } from "../../../src/generated/records.ts";
import { calibration, signedByLaboratory } from "../../shop/calibrations.ts";
import { instruments as shopInstruments } from "../../order/facts/instruments.ts";

type Calibration = NonNullable<Instrument["calibrations"]>[number];

/** Instruments of the shop that served this boiler, and the calibration before the one the receiver shows, where it was needed. */
const kept: readonly (readonly [id: string, before?: Calibration])[] = [
  ["PG-04", calibration("2131", "2025-11-10", "2026-05-09", "0.06 bar")],
  ["PG-07"],
  ["TH-05"],
  ["DM-01"],
  ["LM-01"],
  ["MY-01", calibration("2094", "2025-09-30", "2026-03-30", "1 N")],
  ["FM-01", calibration("1967", "2025-03-31", "2026-03-30", "0.1 kA/m")],
  ["WG-01"],
  ["WM-02", calibration("1981", "2025-04-14", "2026-04-13", "1 A")],
  ["TAPE-03"],
  ["CA-05"],
  ["CT-01", calibration("1984", "2025-04-14", "2026-04-13", "2 µm")],
];

const fromShop = kept.map(([id, before]): Instrument => {
  const own = shopInstruments.find((one) => one.id === id);
  if (own === undefined) throw new Error(`the shop has no instrument ${id}`);
  return before === undefined ? own : { ...own, calibrations: [before, ...(own.calibrations ?? [])] };
});

const gauge = shopInstruments.find(({ id }) => id === "PG-04");

/** Instruments that the receiver did not need. */
const own: readonly Instrument[] = [
  {
    ...gauge,
    id: "PG-05",
    name: "test gauge, dial 160 mm, at the blow-down",
    serial: "DW-40725",
    calibrations: [calibration("2186", "2026-01-26", "2026-07-25", "0.06 bar")],
  },
  {
    id: "TH-07",
    name: "thermometer for water and steel, immersion probe and contact probe",
    type: "thermometer",
    manufacturer: "Kelvinmoor",
    serial: "KM-2231",
    range: { minimum: "-10 °C", maximum: "110 °C" },
    maximumError: "0.3 K",
    resolution: "0.1 K",
    repeatability: "0.1 K",
    calibrations: [calibration("2187", "2026-01-26", "2027-01-25", "0.1 °C")],
  },
  {
    id: "UT-02",
    name: "ultrasonic set with angle probes 45°, 60° and 70°",
    type: "ultrasonic set",
    manufacturer: "Echohallow",
    serial: "EH-1407",
    calibrations: [calibration("2204", "2026-02-09", "2027-02-08", "0.2 dB")],
  },
  {
    id: "BG-01",
    name: "bore gauge, three points, 50 mm to 63 mm",
    type: "micrometer",
    manufacturer: "Brasswhittle",
    serial: "TM-512",
    range: { minimum: "50 mm", maximum: "63 mm" },
    resolution: "0.01 mm",
    calibrations: [calibration("2205", "2026-02-09", "2027-02-08", "0.005 mm")],
  },
  {
    id: "TG-01",
    name: "ultrasonic thickness gauge",
    type: "thickness meter",
    manufacturer: "Brasswhittle",
    serial: "TM-917",
    resolution: "0.1 mm",
    calibrations: [calibration("2206", "2026-02-09", "2027-02-08", "0.05 mm")],
  },
];

export const instruments: readonly Instrument[] = [...fromShop, ...own].map(signedByLaboratory);
