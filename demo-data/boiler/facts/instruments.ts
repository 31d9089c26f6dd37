import type { Instrument } from "../../generated/records.ts";
import { calibration, signedByLaboratory } from "../../shop/calibrations.ts";
import { instruments as shopInstruments } from "../../order/facts/instruments.ts";

type Calibration = NonNullable<Instrument["calibrations"]>[number];

/** Instruments of the shop that served this boiler, and the calibration before the one the receiver shows, where it was needed. */
const kept: readonly (readonly [id: string, before?: Calibration])[] = [
  ["PG-04", calibration("2131", "2025-11-10", "2026-05-09", "0.06 bar")],
  ["PG-07"],
  ["TH-05"],
  ["TH-06"],
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
    name: "bore gauge, three points, heads for 35 mm to 65 mm",
    type: "micrometer",
    manufacturer: "Brasswhittle",
    serial: "TM-512",
    range: { minimum: "35 mm", maximum: "65 mm" },
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

const meter = shopInstruments.find(({ id }) => id === "WM-02");
const contact = shopInstruments.find(({ id }) => id === "TH-05");

/** Up to three welders weld at once, each with a clamp meter and a contact thermometer of their own. */
const ofTheWelders: readonly Instrument[] = [
  ...(
    [
      ["WM-03", "AH-2096", calibration("2207", "2026-02-09", "2027-02-08", "1 A")],
      ["WM-04", "AH-2117", calibration("2208", "2026-02-09", "2027-02-08", "1 A")],
    ] as const
  ).map(([id, serial, inForce]) => ({ ...meter, id, serial, calibrations: [inForce] })),
  ...(
    [
      ["TH-08", "KM-2240", calibration("2210", "2026-02-09", "2027-02-08", "0.3 °C")],
      ["TH-09", "KM-2241", calibration("2217", "2026-02-23", "2027-02-22", "0.3 °C")],
    ] as const
  ).map(([id, serial, inForce]) => ({
    ...contact,
    id,
    serial,
    name: "contact thermometer of the welders",
    calibrations: [inForce],
  })),
];

/** What a welder measures with; those who share a set never weld at the same time. */
export const setOf = (welder: string): readonly [meter: string, thermometer: string] => {
  if (welder === "W07") return ["WM-04", "TH-09"];
  return welder === "W03" || welder === "W19" ? ["WM-03", "TH-08"] : ["WM-02", "TH-06"];
};

export const instruments: readonly Instrument[] = [...fromShop, ...own, ...ofTheWelders].map(signedByLaboratory);
