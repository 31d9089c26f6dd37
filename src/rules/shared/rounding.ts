import type { Measure } from "../../model/quantity.ts";

export const toLimit = "to the limit's digits";

/**
 * A result of a tensile test as it is compared with its limit: as printed, or, where the profile lets it, rounded half up
 * to the digits the limit is written with. Limits of an analysis are not kept with the digits of their standard, so those
 * are never rounded: 0.014 % is no 0.010 %.
 */
export function asCompared(value: Measure, limit: Measure, rounding: string): Measure {
  if (rounding !== toLimit) return value;
  const scale = 10 ** limit.decimals;
  // The guard keeps 264.5, which no binary number is, from being rounded down.
  const round = (number: number) => Math.floor(number * scale + 0.5 + 1e-9) / scale;
  return { ...value, value: round(value.value), low: round(value.low), high: round(value.high) };
}
