import type { Instrument, PressureTest } from "../generated/records.ts";

type Gauge = NonNullable<PressureTest["gauges"]>[number];

/** Time, gauges A and B in bar, water and metal temperature in °C, and what happened. */
export type Reading = readonly [time: string, a: string, b: string, water: string, metal: string, happened: string];

/** Readings as the report has them; `at` makes a moment of a time of the day. */
export const readingsOf = (
  readings: readonly Reading[],
  at: (time: string) => string,
): NonNullable<PressureTest["readings"]> =>
  readings.map(([time, a, b, water, metal]) => ({
    time: at(time),
    gaugeA: `${a} bar`,
    gaugeB: `${b} bar`,
    waterTemperature: `${water} °C`,
    metalTemperature: `${metal} °C`,
  }));

/** A gauge as the report describes it: as the register of instruments does. */
export const gaugeOf =
  (instruments: readonly Instrument[]) =>
  (name: "A" | "B", instrument: string, elevation: string): Gauge => {
    const registered = instruments.find(({ id }) => id === instrument);
    return {
      gauge: name,
      instrument,
      ...(registered?.range?.maximum !== undefined && { range: registered.range.maximum }),
      ...(registered?.accuracyClass !== undefined && { accuracyClass: registered.accuracyClass }),
      ...(registered?.resolution !== undefined && { resolution: registered.resolution }),
      elevation,
    };
  };

/** Who signs the report: quality control, the inspection body and the client's man, on the day. */
export const signedOn = (day: string, clientsMan: string): NonNullable<PressureTest["signatures"]> => [
  { role: "quality control", person: "D2", date: day },
  { role: "inspection body", person: "E1", date: day },
  { role: "client", person: clientsMan, date: day },
];
