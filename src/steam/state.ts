/** Properties of one phase at a pressure and a temperature. */
export interface State {
  /** Specific volume in m³/kg. */
  readonly v: number;
  /** Specific enthalpy in kJ/kg. */
  readonly h: number;
  /** Specific entropy in kJ/(kg·K). */
  readonly s: number;
  /** Isobaric heat capacity in kJ/(kg·K). */
  readonly cp: number;
  /** Speed of sound in m/s. */
  readonly w: number;
  /** (∂v/∂p) at constant temperature in m³/(kg·MPa). */
  readonly vp: number;
  /** (∂v/∂T) at constant pressure in m³/(kg·K). */
  readonly vT: number;
}

/** Why there is no value: the pressure or temperature lies outside the range of the equation. */
export interface Refusal {
  readonly refused: string;
}

/** Whether a function refused instead of giving a value. */
export const isRefusal = (value: unknown): value is Refusal =>
  typeof value === "object" && value !== null && "refused" in value;

/** A figure in a refusal: six digits tell enough. */
export const short = (value: number) => String(Number(value.toPrecision(6)));

/** Dimensionless Gibbs free energy γ and its derivatives by reduced pressure and by inverse reduced temperature. */
export interface Gibbs {
  readonly g: number;
  readonly p: number;
  readonly pp: number;
  readonly t: number;
  readonly tt: number;
  readonly pt: number;
}

/** Specific gas constant of water in kJ/(kg·K): IAPWS R7-97(2012), equation (1). */
const R = 0.461526;

/**
 * Properties from γ: IAPWS R7-97(2012), tables 3 and 12. `T` in K, `tau` its reduced inverse, `unit` the reducing pressure
 * in MPa. The factors 1000 turn kJ/(kg·MPa) into m³/kg and kJ/kg into m²/s².
 */
export function stateOf({ g, p, pp, t, tt, pt }: Gibbs, T: number, tau: number, unit: number): State {
  const mixed = p - tau * pt;
  return {
    v: (R * T * p) / (1000 * unit),
    h: R * T * tau * t,
    s: R * (tau * t - g),
    cp: -R * tau * tau * tt,
    w: Math.sqrt((1000 * R * T * p * p) / ((mixed * mixed) / (tau * tau * tt) - pp)),
    vp: (R * T * pp) / (1000 * unit * unit),
    vT: (R * mixed) / (1000 * unit),
  };
}
