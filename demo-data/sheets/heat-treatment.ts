import type { HeatTreatment } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading } from "../paper/blocks.ts";
import { chart } from "../paper/chart.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, withRoom, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { marksOfTime, minutes } from "./axis.ts";
import { clock, dayIn, figure, listed, printed, signed } from "./original.ts";

type Fields = readonly (readonly [string, string])[];

/** What a furnace record says beside the figures of its charge. */
export interface FurnaceWords {
  readonly title: string;
  /** What lay in the furnace. */
  readonly load: Fields;
  readonly cooling: string;
  readonly role: string;
  /** What the thermocouples sat on. */
  readonly measured: string;
  /** The recorder's curve: minutes since midnight, and °C. */
  readonly curve: readonly (readonly [number, number])[];
  /** Times of day on the axis of the chart. */
  readonly times: readonly string[];
}

/** What a furnace record says where its furnace wrote nothing of its own: the curve runs through the readings. */
export function furnaceWords(record: HeatTreatment): FurnaceWords {
  const { started, finished, readings = [] } = record;
  const at = (moment: string | undefined) => minutes(clock(moment));
  return {
    title: `Record of heat treatment: ${printed(record.type)}`,
    load: [
      ["Parts", listed(record.parts)],
      ["Joints", listed(record.joints)],
    ],
    cooling: printed(record.coolingRate),
    role: "furnace supervisor",
    measured: "Furnace temperature",
    curve: [
      [at(started), figure(record.loadingTemperature)],
      ...readings.map(({ time, temperatures }) => [at(time), figure(temperatures?.[0])] as const),
    ],
    times: marksOfTime(clock(started), clock(finished))
      .map(({ label }) => label)
      .filter((label) => label !== ""),
  };
}

/** A furnace record, with the recorder's curve. */
export function drawHeatTreatment(paper: Paper, facts: Facts, record: HeatTreatment, words: FurnaceWords): void {
  const readings = record.readings ?? [];
  const [id, revision] = printed(record.procedure).split("@");
  const procedure = facts.all("procedure").find((one) => one.id === id);
  let sheet = newSheet(paper, words.title);
  note(paper, "heat-treatment", record.id);
  fields(sheet, [
    ...words.load,
    ["Charge", printed(record.charge)],
    ["Procedure", `${printed(procedure?.number ?? id)} revision ${printed(revision)}`],
    ["Furnace", `${clock(record.started)} to ${clock(record.finished)}, ${dayIn(record.started)}`],
    ["Loaded at, heated at", `${printed(record.loadingTemperature)}, ${printed(record.heatingRate)}`],
    [
      "Holding",
      `${printed(record.holdingTime)}, ${printed(record.holdingLowest)} to ${printed(record.holdingHighest)}`,
    ],
    ["Cooling", words.cooling],
  ]);
  const count = Math.max(...readings.map(({ temperatures = [] }) => temperatures.length));
  sheet = table(
    sheet,
    columns(["Time", ...Array.from({ length: count }, (_, index) => `Thermocouple ${index + 1}`)]),
    readings.map((row) => [clock(row.time), ...(row.temperatures ?? [])]),
  );
  sheet = withRoom(sheet, 320);
  heading(sheet, words.measured);
  chart(sheet, {
    across: words.times.map((label) => ({ at: minutes(label), label })),
    up: [0, 200, 400, 600, 800, 1000],
    unit: "°C",
    tall: 190,
    series: [{ name: printed(record.instruments?.[0]), points: words.curve }],
  });
  const supplier = facts.all("person").find(({ id: mark }) => mark === record.signatures?.[0]?.person)?.employer;
  signatures(
    sheet,
    signed(facts, record.signatures).map((one) => ({
      ...one,
      role: words.role,
      ...(supplier !== undefined && { stamp: facts.stamp(supplier) }),
    })),
  );
}
