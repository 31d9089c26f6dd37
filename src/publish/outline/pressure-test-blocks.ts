import { isList, isObject } from "../../model/json.ts";
import { parseDate } from "../../model/dates.ts";
import { measure, parseQuantity } from "../../model/quantity.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block } from "../blocks.ts";
import { timeChart, type Series } from "../figures/time-chart.ts";
import { figure as shown } from "./numbers.ts";
import { plain, type Context } from "./context.ts";
import type { Extra } from "./extras.ts";
import type { Numbering } from "./record-blocks.ts";

/** The chart of both gauges with the band of the hold, and what was required beside what was done. */
export function pressureTestBlocks(context: Context, record: BookRecord, next: Numbering): Extra {
  const series = seriesOf(record);
  const first = series.start;
  const figure: Block[] =
    first === undefined || series.all.every(({ points }) => points.length < 2)
      ? []
      : [chart(record, series.all, { start: first, most: highestOf(context, record) }, next())];
  return { before: figure, after: [], skip: new Set() };
}

function seriesOf(record: BookRecord): { readonly start: number | undefined; readonly all: readonly Series[] } {
  const readings = record.value["readings"];
  const rows = (isList(readings) ? readings : []).filter(isObject).flatMap((row) => {
    const time = parseDate(plain(row["time"]));
    return time.ok ? [{ row, at: time.date.from }] : [];
  });
  const start = rows[0]?.at;
  const gauges = record.value["gauges"];
  const label = (letter: string) => {
    const gauge = (isList(gauges) ? gauges : []).filter(isObject).find((one) => one["gauge"] === letter);
    return `gauge ${letter}${gauge === undefined ? "" : `, ${plain(gauge["instrument"])}`}`;
  };
  const points = (field: string) =>
    rows.flatMap(({ row, at }): (readonly [number, number])[] => {
      const value = bar(plain(row[field]));
      return value === undefined || start === undefined ? [] : [[(at - start) / 60_000, value]];
    });
  return {
    start,
    all: [
      { label: label("A"), points: points("gaugeA") },
      { label: label("B"), points: points("gaugeB") },
    ],
  };
}

function bar(text: string): number | undefined {
  const parsed = parseQuantity(text, { unit: "bar" });
  return parsed.ok ? measure(parsed.quantity, "bar").value : undefined;
}

/** The highest test pressure, as the hold was judged by it. */
function highestOf(context: Context, record: BookRecord): number | undefined {
  const held = context.computed.get(record)?.find(({ calculation }) => calculation.id === "pressure-hold");
  return held?.inputs.get("PTu")?.value;
}

interface Frame {
  readonly start: number;
  readonly most: number | undefined;
}

function chart(record: BookRecord, series: readonly Series[], { start, most }: Frame, number: string): Block {
  const need = bar(plain(record.value["requiredPressure"]));
  const [from, to] = ["holdStart", "holdEnd"].map((field) => {
    const date = parseDate(plain(record.value[field]));
    return date.ok ? (date.date.from - start) / 60_000 : undefined;
  });
  const offset = parseDate(plain(record.value["holdStart"]));
  const shift = offset.ok ? offset.date.offset : 0;
  const clock = (minute: number) => new Date(start + (minute + shift) * 60_000).toISOString().slice(11, 16);
  const band = need !== undefined && most !== undefined && from !== undefined && to !== undefined;
  const unit = "bar";
  return {
    type: "figure",
    number,
    caption: [
      "Pressure on two gauges. The hatched band is where both must stay during the hold. The readings are in the table below.",
    ],
    figure: timeChart({
      title: `Pressure test ${record.id}: pressure over time`,
      description: series
        .map(
          ({ label, points }) =>
            `${label}: ${points.length} readings, highest ${shown(Math.max(...points.map(([, value]) => value)), 4)} ${unit}`,
        )
        .join("; "),
      unit,
      series,
      levels: need === undefined ? [] : [{ value: need, label: `required ${plain(record.value["requiredPressure"])}` }],
      ...(band && {
        band: {
          from,
          to,
          low: need,
          high: most,
          label: `hold as stated, ${shown(to - from, 3)} min`,
        },
      }),
      clock,
    }),
  };
}
