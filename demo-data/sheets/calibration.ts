import type { Instrument } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, type Paper } from "../paper/paper.ts";
import { spread } from "../shop/spread.ts";
import { table } from "../paper/tables.ts";
import { figure, printed } from "./original.ts";

/**
 * Readings of a gauge at one calibration, interpolated to a fifth of its resolution: reference, rising, falling, greatest
 * deviation. What it shows follows from its serial and the certificate: a slope and an unevenness of its own, and a pointer that hangs back
 * when the pressure falls. The resting pointer shows nothing; everything stays within three quarters of the error its class permits.
 */
export function gaugeReadings(instrument: Instrument, certificate: string): string[][] {
  const most = figure(instrument.range?.maximum);
  const permitted = (most * figure(instrument.accuracyClass)) / 100;
  const step = figure(instrument.resolution) / 5;
  const own = (name: string, least: number, greatest: number) =>
    spread(`${certificate}: ${printed(instrument.serial)} ${name}`, least, greatest) * permitted;
  const read = (value: number) => Math.round(value / step) * step;
  const slope = own("slope", -0.4, 0.4);
  return [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => {
    const reference = most * share;
    const off = share === 0 ? 0 : slope * share + own(`at ${share.toString()}`, -0.2, 0.2);
    const behind = share === 0 || share === 1 ? 0 : own(`back at ${share.toString()}`, 0, 0.15);
    const [rising, falling] = [read(reference + off), read(reference + off + behind)];
    const greatest = Math.max(Math.abs(rising - reference), Math.abs(falling - reference));
    return [reference, rising, falling, greatest].map((value) => value.toFixed(2));
  });
}

/** What a finer description of some instruments adds. */
const finer = ({ division, repeatability, maximumError }: Instrument) => {
  const said = [division, repeatability, maximumError];
  return said.every((one) => one === undefined)
    ? []
    : [["Division, repeatability, greatest error", said.map(printed).join(", ")] as const];
};

/** The calibration certificates of an instrument, a sheet for each. */
export function drawCalibrations(paper: Paper, facts: Facts, instrument: Instrument): void {
  const { range } = instrument;
  for (const calibration of instrument.calibrations ?? []) {
    const sheet = newSheet(paper, "Calibration certificate");
    note(paper, "instrument", instrument.id);
    fields(sheet, [
      ["Certificate", calibration.certificate],
      ["Instrument", `${instrument.id}, ${printed(instrument.name)}`],
      ["Maker, serial", `${printed(instrument.manufacturer)}, ${printed(instrument.serial)}`],
      ["Range", range === undefined ? "–" : `${printed(range.minimum)} to ${printed(range.maximum)}`],
      ["Class, resolution", `${printed(instrument.accuracyClass)}, ${printed(instrument.resolution)}`],
      ...finer(instrument),
      ...(instrument.liftingForce === undefined ? [] : [["Lifting force", instrument.liftingForce] as const]),
      ["Calibrated, valid to", `${printed(calibration.date)}, ${printed(calibration.validTo)}`],
      ["As found", printed(calibration.asFound)],
      ["As left", printed(calibration.asLeft)],
      ["Uncertainty", printed(calibration.uncertainty)],
      ["Surroundings", "20 °C, 45 % relative humidity"],
    ]);
    if (instrument.type === "pressure gauge" && range?.maximum !== undefined) {
      heading(sheet, `Readings in ${printed(range.maximum.split(" ")[1])}`);
      table(
        sheet,
        ["Reference", "Rising", "Falling", "Greatest deviation"].map((title) => ({
          title,
          share: 10,
          align: "right" as const,
        })),
        gaugeReadings(instrument, calibration.certificate),
        9,
      );
    }
    const laboratory = calibration.laboratory ?? facts.maker;
    signatures(sheet, [
      {
        role: "laboratory",
        name: facts.name(instrument.signatures?.find(({ row }) => row === calibration.certificate)?.person),
        date: printed(calibration.date),
        stamp: facts.stamp(laboratory),
      },
    ]);
  }
}
