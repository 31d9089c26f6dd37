import { liquidState, vapourState } from "./regions.ts";
import { boundary23 } from "./region-4-coefficients.ts";
import { highestSaturatedTemperature, saturationPressure } from "./saturation.ts";
import { isRefusal, short, type Refusal, type State } from "./state.ts";

const highestPressure = 100;
const highestTemperature = 1073.15;
/** Relative width within which a pressure counts as that of saturation: far above the rounding of region 4. */
const atSaturation = 1e-9;

/** Liquid water at `p` in MPa (absolute) and `T` in K: 273.15 to 623.15 K, from saturation to 100 MPa. */
export function liquid(p: number, T: number): State | Refusal {
  if (!(T >= 273.15 && T <= highestSaturatedTemperature))
    return {
      refused: `the water temperature ${short(T)} K lies outside 273.15 to ${highestSaturatedTemperature} K, the range known here`,
    };
  const boiling = saturationPressure(T);
  if (isRefusal(boiling)) return boiling;
  if (!(p >= boiling * (1 - atSaturation)))
    return { refused: `at ${short(p)} MPa and ${short(T)} K there is no liquid: it boils below ${short(boiling)} MPa` };
  if (p > highestPressure) return { refused: `the pressure ${short(p)} MPa lies above ${highestPressure} MPa` };
  return liquidState(p, T);
}

/**
 * Steam, dry saturated or superheated, at `p` in MPa (absolute) and `T` in K: 273.15 to 1073.15 K, up to saturation, and
 * above 623.15 K up to the boundary of region 3.
 */
export function vapour(p: number, T: number): State | Refusal {
  if (!(T >= 273.15 && T <= highestTemperature))
    return {
      refused: `the steam temperature ${short(T)} K lies outside 273.15 to ${highestTemperature} K, the range known here`,
    };
  if (!(p > 0)) return { refused: `the absolute pressure ${short(p)} MPa is not above nought` };
  const limit = highestVapourPressure(T);
  if (isRefusal(limit)) return limit;
  if (p > limit * (1 + atSaturation))
    return {
      refused: `at ${short(p)} MPa and ${short(T)} K there is no steam known here: it ends at ${short(limit)} MPa`,
    };
  return vapourState(p, T);
}

/** In MPa; above 623.15 K the boundary between regions 2 and 3, IAPWS R7-97(2012), equation (5). */
function highestVapourPressure(T: number): number | Refusal {
  if (T <= highestSaturatedTemperature) return saturationPressure(T);
  const [a, b, c] = boundary23;
  return Math.min(highestPressure, a + (b + c * T) * T);
}
