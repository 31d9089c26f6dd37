import { vapourState } from "./regions.ts";
import { leastSaturationPressure, saturated } from "./saturation.ts";
import { vapour } from "./single-phase.ts";
import { isRefusal, short, type Refusal } from "./state.ts";

/** Where the flow through a nozzle is densest. */
export interface Throat {
  /** Mass flux in kg/(s·m²). */
  readonly flux: number;
  /** Pressure in the narrowest section in MPa. */
  readonly p: number;
  /** Mass fraction of vapour there; 1 while superheated. */
  readonly quality: number;
}

/**
 * Greatest mass flux of steam through an ideal nozzle: isentropic expansion from rest at `p0` (MPa, absolute) and `T0` (K)
 * with liquid and vapour in equilibrium, G = √(2·(h0 − h))/v, at the pressure that makes it greatest but not below the back
 * pressure `pb`. Refused outside the range of the equations and where the back pressure is not below `p0`.
 */
export function equilibriumFlux(p0: number, T0: number, pb: number): Throat | Refusal {
  const rest = vapour(p0, T0);
  if (isRefusal(rest)) return rest;
  if (!(pb < p0))
    return { refused: `the back pressure ${short(pb)} MPa is not below ${short(p0)} MPa, the pressure at the inlet` };
  // The throat of steam lies near half of the inlet pressure; a fifth is far below it.
  const lowest = Math.max(pb, 0.2 * p0, leastSaturationPressure);
  let problem: Refusal | undefined;
  const at = (logarithm: number): Throat => {
    const p = Math.exp(logarithm);
    const expanded = expandedTo(p, rest.s, T0);
    if (isRefusal(expanded)) problem = expanded;
    else
      return {
        flux: Math.sqrt(Math.max(0, 2000 * (rest.h - expanded.h))) / expanded.v,
        p,
        quality: expanded.quality,
      };
    return { flux: Number.NaN, p, quality: Number.NaN };
  };
  const throat = greatest(at, Math.log(lowest), Math.log(p0));
  return problem ?? throat;
}

interface Expanded {
  readonly h: number;
  readonly v: number;
  readonly quality: number;
}

/** Steam of entropy `s` at the lower pressure `p`: wet, or superheated below `T0`. */
function expandedTo(p: number, s: number, T0: number): Expanded | Refusal {
  const boiling = saturated(p);
  if (isRefusal(boiling)) return boiling;
  const { T, liquid, vapour } = boiling;
  if (s < vapour.s) {
    const quality = (s - liquid.s) / (vapour.s - liquid.s);
    const between = (from: number, to: number) => from + quality * (to - from);
    return { h: between(liquid.h, vapour.h), v: between(liquid.v, vapour.v), quality };
  }
  return superheated(p, s, T, T0);
}

/** Newton's method between saturation and the temperature at rest; the entropy rises with temperature by cp/T. */
function superheated(p: number, s: number, from: number, to: number): Expanded | Refusal {
  let T = from;
  for (let round = 0; round < 40; round++) {
    const { h, v, cp, s: here } = vapourState(p, T);
    const step = ((s - here) * T) / cp;
    if (Math.abs(step) < 1e-9 * T) return { h, v, quality: 1 };
    T = Math.min(Math.max(T + step, from), to);
  }
  return { refused: `no temperature was found at ${short(p)} MPa for the entropy ${short(s)} kJ/(kg·K)` };
}

const golden = (Math.sqrt(5) - 1) / 2;

/** Golden-section search of the greatest flux; it has one peak, where the flow reaches the speed of sound, or lies at an end. */
function greatest(at: (logarithm: number) => Throat, from: number, to: number): Throat {
  let [low, high] = [from, to];
  let [left, right] = [at(high - golden * (high - low)), at(low + golden * (high - low))];
  // The flux is flat at its peak: this close, its own error is of the square of that.
  while (high - low > 1e-6) {
    if (left.flux >= right.flux) {
      high = Math.log(right.p);
      right = left;
      left = at(high - golden * (high - low));
    } else {
      low = Math.log(left.p);
      left = right;
      right = at(low + golden * (high - low));
    }
  }
  return [at(from), left, right].reduce((one, other) => (other.flux > one.flux ? other : one));
}
