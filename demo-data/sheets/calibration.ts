import type { Instrument } from "../../src/generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { figure, printed } from "./original.ts";

/** Readings of a calibration, made from the instrument's range: reference, rising, falling, greatest deviation. */
function points(instrument: Instrument): string[][] {
  const most = figure(instrument.range?.maximum);
  const deviations = [
    [0, 0],
    [0.2, 2],
    [0.4, 2],
    [0.6, 3],
    [0.8, 2],
    [1, 1],
  ] as const;
  return deviations.map(([share, thousandths]) => {
    const reference = most * share;
    const off = most * 0.001 * thousandths;
    return [reference, reference + off, reference + off * 1.4, off * 1.4].map((value) => value.toFixed(2));
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
        points(instrument),
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
