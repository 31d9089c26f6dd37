import { liquidState, vapourState } from "./regions.ts";
import { region4 } from "./region-4-coefficients.ts";
import { isRefusal, short, type Refusal, type State } from "./state.ts";

const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = region4;

/** Saturation pressure in MPa at 273.15 K, where the equations begin. */
export const leastSaturationPressure = 611.212677e-6;
const criticalTemperature = 647.096;
const criticalPressure = 22.064;
/** Temperature in K up to which regions 1 and 2 meet at saturation, and its saturation pressure in MPa. */
export const highestSaturatedTemperature = 623.15;
const highestSaturatedPressure = 16.5291642527;

/** Saturation pressure in MPa from `T` in K: IAPWS R7-97(2012), equation (30), 273.15 K to the critical point. */
export function saturationPressure(T: number): number | Refusal {
  if (!(T >= 273.15 && T <= criticalTemperature))
    return {
      refused: `the temperature ${short(T)} K lies outside 273.15 to ${criticalTemperature} K, where water can boil`,
    };
  const theta = T + n9 / (T - n10);
  const a = (theta + n1) * theta + n2;
  const b = (n3 * theta + n4) * theta + n5;
  const c = (n6 * theta + n7) * theta + n8;
  const root = (2 * c) / (Math.sqrt(b * b - 4 * a * c) - b);
  return root ** 4;
}

/** Saturation temperature in K from `p` in MPa: IAPWS R7-97(2012), equation (31), up to the critical point. */
export function saturationTemperature(p: number): number | Refusal {
  if (!(p >= leastSaturationPressure && p <= criticalPressure))
    return {
      refused: `the absolute pressure ${short(p)} MPa lies outside 0.000611 to ${criticalPressure} MPa, where water can boil`,
    };
  const beta = Math.sqrt(Math.sqrt(p));
  const e = (beta + n3) * beta + n6;
  const f = (n1 * beta + n4) * beta + n7;
  const g = (n2 * beta + n5) * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n10 + d;
  return (sum - Math.sqrt(sum * sum - 4 * (n9 + n10 * d))) / 2;
}

/** Boiling water: its temperature in K, the liquid and the vapour. */
export interface Saturated {
  readonly T: number;
  readonly liquid: State;
  readonly vapour: State;
}

/** Saturated liquid and vapour at `p` in MPa, up to 16.529 MPa (623.15 K): above, region 3 begins. */
export function saturated(p: number): Saturated | Refusal {
  if (p > highestSaturatedPressure)
    return {
      refused: `the absolute pressure ${short(p)} MPa lies above 16.529 MPa, up to which saturated steam is known here`,
    };
  const T = saturationTemperature(p);
  return isRefusal(T) ? T : { T, liquid: liquidState(p, T), vapour: vapourState(p, T) };
}
