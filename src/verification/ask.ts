import { addressOf } from "../model/record.ts";
import { run } from "../compute/run.ts";
import type { Calculation, ListArgument } from "../model/calculation.ts";
import type { Inputs, Thing } from "../model/input.ts";
import { ProgramError } from "../model/program-error.ts";
import { convert } from "../model/units.ts";
import { isRefusal, type Refusal } from "../steam/index.ts";

/**
 * One result of a calculation for values in its declared units. Only what the question gives is put in; steps that need
 * more are left out. Throws `ProgramError` when the result is among those.
 */
export function ask(calculation: Calculation, given: Readonly<Record<string, ListArgument>>, symbol: string): number {
  const value = run(calculation, new Map(Object.entries(given))).values.get(symbol);
  if (value === undefined) throw new ProgramError(`${calculation.id} gives no ${symbol} for what the source states`);
  return value;
}

/** So many rows with the same texts, as a named function gets them. */
export const rows = (count: number, texts: Readonly<Record<string, string>>): readonly Thing<Inputs>[] =>
  Array.from({ length: count }, (_, index) => ({
    ...texts,
    $: {
      address: addressOf({ kind: "row", id: String(index + 1) }),
      kind: "row",
      id: String(index + 1),
      name: String(index + 1),
    },
  }));

/** A property of steam or water that the equations give. Throws `ProgramError` outside their range. */
export function known<T>(value: T | Refusal): T {
  if (isRefusal(value)) throw new ProgramError(value.refused);
  return value;
}

const as = (from: string, to: string) => (value: number) => convert(value, from, to);

/** British and American units of the sources, into those of the calculations. */
export const mm = as("in", "mm");
export const inches = as("mm", "in");
export const MPa = as("psi", "MPa");
export const psi = as("MPa", "psi");
export const bar = as("psi", "bar");
export const celsius = as("°F", "°C");
export const kelvin = as("°F", "K");
export const kilograms = as("lb", "kg");
export const pounds = as("kg", "lb");
export const inches2 = (mm2: number): number => mm2 / 25.4 ** 2;
/** Pound-force: a pound at the standard acceleration of free fall, 9.80665 m/s². */
export const newtons = (lbf: number): number => convert(lbf, "lb", "kg") * 9.80665;
/** International British thermal units per pound, from kJ/kg. */
export const btu = (kJ: number): number => kJ / 2.326;
/** Cubic feet per pound, from m³/kg. */
export const feet3 = (m3: number): number => (m3 * 0.45359237) / 0.3048 ** 3;
/** Atmosphere in pounds per square inch; books of the time round to 14.7. */
export const atmosphere = 14.6959;
