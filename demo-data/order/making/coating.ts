import type { CoatingReport } from "../../generated/records.ts";

type Zone = NonNullable<CoatingReport["zones"]>[number];

/** Readings of a zone with the figures that its report states of them, in µm. */
export function zoneOf(zone: string, ...readings: readonly number[]): Zone {
  const sum = readings.reduce((total, one) => total + one, 0);
  const um = (value: number) => `${value} µm`;
  return {
    zone,
    readings: readings.map(um),
    least: um(Math.min(...readings)),
    mean: um(Math.round(sum / readings.length)),
    greatest: um(Math.max(...readings)),
  };
}
