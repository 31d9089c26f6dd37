import type { Instrument } from "../../generated/records.ts";
import { calibration, signedByLaboratory } from "../../shop/calibrations.ts";

type Calibration = NonNullable<Instrument["calibrations"]>[number];

/** An instrument with one calibration in force. */
const instrument = (
  id: string,
  type: Instrument["type"],
  name: string,
  maker: string,
  serial: string,
  inForce: Calibration,
  more: Partial<Instrument> = {},
): Instrument =>
  signedByLaboratory({
    id,
    name,
    ...(type !== undefined && { type }),
    manufacturer: maker,
    serial,
    ...more,
    calibrations: [inForce],
  });

const testGauge: Partial<Instrument> = {
  range: { minimum: "0 bar", maximum: "25 bar" },
  accuracyClass: "1.0 %",
  division: "0.2 bar",
  resolution: "0.05 bar",
  repeatability: "0.05 bar",
};

export const instruments: readonly Instrument[] = [
  instrument(
    "PG-03",
    "pressure gauge",
    "test gauge, dial 160 mm, upper",
    "Dialwick",
    "DW-40711",
    calibration("2291", "2026-05-04", "2026-11-03", "0.06 bar"),
    testGauge,
  ),
  instrument(
    "PG-04",
    "pressure gauge",
    "test gauge, dial 160 mm, lower",
    "Dialwick",
    "DW-40718",
    calibration("2292", "2026-05-04", "2026-11-03", "0.06 bar"),
    testGauge,
  ),
  instrument(
    "PG-07",
    "pressure gauge",
    "bench gauge of the valve maker",
    "Dialwick",
    "DW-51180",
    calibration("2240", "2026-03-16", "2026-09-15", "0.04 bar"),
    {
      range: { minimum: "0 bar", maximum: "25 bar" },
      accuracyClass: "0.6 %",
      division: "0.1 bar",
      resolution: "0.05 bar",
      repeatability: "0.02 bar",
    },
  ),
  instrument(
    "TH-02",
    "thermometer",
    "contact and immersion thermometer",
    "Kelvinmoor",
    "KM-2207",
    calibration("2293", "2026-05-04", "2027-05-03", "0.1 °C"),
    {
      range: { minimum: "-10 °C", maximum: "110 °C" },
      maximumError: "0.3 K",
      resolution: "0.1 K",
      repeatability: "0.1 K",
    },
  ),
  instrument(
    "TH-05",
    "thermometer",
    "contact thermometer of the testers",
    "Kelvinmoor",
    "KM-2214",
    calibration("2216", "2026-02-23", "2027-02-22", "0.3 °C"),
    {
      range: { minimum: "-20 °C", maximum: "250 °C" },
      resolution: "1 K",
    },
  ),
  instrument(
    "TR-11",
    "recorder",
    "furnace recorder, two thermocouples",
    "Fennimarsh Recorders",
    "CD-0911",
    calibration("2145", "2025-10-13", "2026-10-12", "3 °C"),
    {
      range: { minimum: "0 °C", maximum: "1200 °C" },
      resolution: "1 K",
    },
  ),
  instrument(
    "DM-01",
    "densitometer",
    "transmission densitometer",
    "Quernlight",
    "GS-3301",
    calibration("2211", "2026-02-16", "2027-02-15", "0.02"),
  ),
  instrument(
    "LM-01",
    "light meter",
    "illuminance meter",
    "Quernlight",
    "GS-1180",
    calibration("2212", "2026-02-16", "2027-02-15", "25 lx"),
  ),
  instrument(
    "MY-01",
    "magnetic yoke",
    "hand yoke, 45 N lift",
    "Fluxhollow",
    "FH-604",
    calibration("2258", "2026-03-30", "2026-09-29", "1 N"),
  ),
  instrument(
    "FM-01",
    "field meter",
    "tangential field meter",
    "Fluxhollow",
    "FH-622",
    calibration("2259", "2026-03-30", "2027-03-29", "0.1 kA/m"),
  ),
  instrument(
    "WG-01",
    "weld gauge",
    "weld gauge, reinforcement and throat",
    "Brasswhittle",
    "TM-771",
    calibration("2213", "2026-02-16", "2027-02-15", "0.1 mm"),
  ),
  instrument(
    "WM-02",
    "welding meter",
    "clamp meter for current and voltage",
    "Ampereham",
    "AH-2091",
    calibration("2270", "2026-04-13", "2027-04-12", "1 A"),
  ),
  instrument(
    "UT-03",
    "thickness meter",
    "ultrasonic thickness meter",
    "Brasswhittle",
    "TM-903",
    calibration("2271", "2026-04-13", "2027-04-12", "0.05 mm"),
    {
      resolution: "0.1 mm",
    },
  ),
  instrument(
    "TAPE-03",
    "tape",
    "steel tape 10 m, class I",
    "Brasswhittle",
    "TM-118",
    calibration("2214", "2026-02-16", "2027-02-15", "0.3 mm"),
  ),
  instrument(
    "CA-05",
    "calliper",
    "calliper 300 mm",
    "Brasswhittle",
    "TM-406",
    calibration("2215", "2026-02-16", "2027-02-15", "0.02 mm"),
  ),
  instrument(
    "CT-01",
    "coating thickness meter",
    "magnetic induction meter",
    "Brasswhittle",
    "TM-955",
    calibration("2272", "2026-04-13", "2027-04-12", "2 µm"),
  ),
];
