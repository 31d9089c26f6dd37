/**
 * Properties of water and steam after IAPWS-IF97, regions 1, 2 and 4: MPa (absolute), K, kJ/kg, m³/kg. Outside the range of
 * an equation a function gives a `Refusal`, never a number.
 */
export { equilibriumFlux } from "./equilibrium-flux.ts";
export { isentropicExponent, wetExponent } from "./exponent.ts";
export { saturated, saturationPressure, saturationTemperature } from "./saturation.ts";
export { liquid, vapour } from "./single-phase.ts";
export { isRefusal, type Refusal, type State } from "./state.ts";
