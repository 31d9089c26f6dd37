import { saturated } from "./saturation.ts";
import { isRefusal, type Refusal, type State } from "./state.ts";

/**
 * Isentropic exponent k = −(v/p)·(∂p/∂v) at constant entropy of one phase: w²/(p·v). `p` in MPa. Of dry saturated steam it
 * is the exponent of a compression; its expansion follows `wetExponent`.
 */
export function isentropicExponent(p: number, { v, w }: Pick<State, "v" | "w">): number {
  return (w * w) / (p * 1e6 * v);
}

/**
 * Isentropic exponent of dry saturated steam at `p` in MPa on the wet side, where its expansion goes: liquid and vapour in
 * equilibrium. Along the isentrope dv/dp = dv″/dp − (v″ − v′)/(s″ − s′)·ds″/dp; with Clapeyron's equation the quotient is
 * dT/dp of saturation, and the derivatives of the saturated vapour follow from those of region 2.
 */
export function wetExponent(p: number): number | Refusal {
  const boiling = saturated(p);
  if (isRefusal(boiling)) return boiling;
  const { T, liquid, vapour } = boiling;
  // K/MPa: m³/kg times 1000 is kJ/(kg·MPa).
  const slope = (1000 * T * (vapour.v - liquid.v)) / (vapour.h - liquid.h);
  const ofVolume = vapour.vp + vapour.vT * slope;
  const ofEntropy = -1000 * vapour.vT + (vapour.cp / T) * slope;
  const alongIsentrope = ofVolume - (slope * ofEntropy) / 1000;
  return -vapour.v / (p * alongIsentrope);
}
