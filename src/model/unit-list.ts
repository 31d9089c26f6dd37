/**
 * The units a record may be written in, grouped by what they measure. `of` gives the base quantities with exponents,
 * `unit: [numerator, denominator]` the exact factor to the coherent SI unit. `point` marks a scale with a zero of its own;
 * where that is not the zero of the SI unit, a second pair says where it lies. Factors are definitions; the
 * tests name the published tables they were compared with.
 */
export interface UnitGroup {
  /** What a message calls it: "length". */
  readonly quantity: string;
  readonly of: string;
  readonly point?: true;
  readonly units: Readonly<Record<string, UnitFactor>>;
  /** A value such as a record writes, for messages. */
  readonly example: string;
}

/** Numerator and denominator of the factor, and of the zero in the SI unit where it is another. */
export type UnitFactor = readonly [Whole, Whole] | readonly [Whole, Whole, Whole, Whole];
type Whole = number | bigint;

/** Base quantities, in the order of the exponents of a dimension. Hardness and sound level are never mixed with others. */
export const bases = ["m", "kg", "s", "K", "A", "mol", "cd", "rad", "HV", "HBW", "HRC", "dB"] as const;

const pressure = { of: "kg m-1 s-2" };
/** 1 lbf = 0.45359237 kg × 9.80665 m/s²; 1 in² = 0.00064516 m². */
const psi = [44482216152605n, 6451600000n] as const;
const ksi = [44482216152605n, 6451600n] as const;
/** π to 18 decimals: a degree is π/180 rad. */
const degree = [3141592653589793238n, 180000000000000000000n] as const;

// prettier-ignore
export const unitGroups: readonly UnitGroup[] = [
  { quantity: "pure number", of: "", example: "0.85", units: { "1": [1, 1], "%": [1, 100], ppm: [1, 1_000_000] } },
  { quantity: "length", of: "m", example: "14.0 mm",
    units: { mm: [1, 1000], m: [1, 1], cm: [1, 100], in: [254, 10_000], "µm": [1, 1_000_000] } },
  { quantity: "area", of: "m2", example: "1256 mm²", units: { "mm²": [1, 1_000_000], "cm²": [1, 10_000], "m²": [1, 1] } },
  { quantity: "volume", of: "m3", example: "2000 l", units: { l: [1, 1000], ml: [1, 1_000_000], "m³": [1, 1], "cm³": [1, 1_000_000], "mm³": [1, 1_000_000_000] } },
  { quantity: "second moment of area", of: "m4", example: "85300 mm⁴", units: { "mm⁴": [1, 1_000_000_000_000n], "cm⁴": [1, 100_000_000], "m⁴": [1, 1] } },
  { quantity: "mass", of: "kg", example: "1240 kg", units: { kg: [1, 1], g: [1, 1000], mg: [1, 1_000_000], t: [1000, 1], lb: [45_359_237, 100_000_000] } },
  { quantity: "time", of: "s", example: "30 min", units: { s: [1, 1], min: [60, 1], h: [3600, 1], d: [86_400, 1] } },
  { quantity: "frequency", of: "s-1", example: "4 MHz", units: { Hz: [1, 1], kHz: [1000, 1], MHz: [1_000_000, 1] } },
  { quantity: "force", of: "kg m s-2", example: "12.5 kN", units: { N: [1, 1], kN: [1000, 1], MN: [1_000_000, 1] } },
  { quantity: "gauge pressure or stress", ...pressure, example: "11.0 bar",
    units: { bar: [100_000, 1], MPa: [1_000_000, 1], "N/mm²": [1_000_000, 1], kPa: [1000, 1], Pa: [1, 1], mbar: [100, 1], GPa: [1_000_000_000, 1], psi, ksi, "kgf/cm²": [980_665, 10] } },
  { quantity: "absolute pressure", ...pressure, point: true, example: "1.013 bar(a)",
    units: { "bar(a)": [100_000, 1], "MPa(a)": [1_000_000, 1], "kPa(a)": [1000, 1], "Pa(a)": [1, 1], "mbar(a)": [100, 1], "psi(a)": psi } },
  { quantity: "temperature", of: "K", point: true, example: "20 °C", units: { "°C": [1, 1, 27_315, 100], K: [1, 1], "°F": [5, 9, 45_967, 180] } },
  { quantity: "temperature difference", of: "K", example: "15 K", units: { "ΔK": [1, 1] } },
  { quantity: "heating or cooling rate", of: "K s-1", example: "100 K/h", units: { "K/h": [1, 3600], "K/min": [1, 60] } },
  { quantity: "mass flow", of: "kg s-1", example: "4000 kg/h", units: { "kg/h": [1, 3600], "kg/s": [1, 1], "t/h": [1000, 3600] } },
  { quantity: "volume flow", of: "m3 s-1", example: "120 m³/h", units: { "m³/h": [1, 3600], "m³/s": [1, 1], "l/min": [1, 60_000] } },
  { quantity: "speed", of: "m s-1", example: "350 mm/min", units: { "mm/min": [1, 60_000], "mm/s": [1, 1000], "m/s": [1, 1], "m/min": [1, 60] } },
  { quantity: "energy", of: "kg m2 s-2", example: "40 J", units: { J: [1, 1], kJ: [1000, 1], MJ: [1_000_000, 1] } },
  { quantity: "power", of: "kg m2 s-3", example: "250 kW", units: { kW: [1000, 1], W: [1, 1], MW: [1_000_000, 1] } },
  { quantity: "heat input", of: "kg m s-2", example: "1.2 kJ/mm", units: { "kJ/mm": [1_000_000, 1], "kJ/cm": [100_000, 1], "J/mm": [1000, 1] } },
  { quantity: "specific energy", of: "m2 s-2", example: "2780 kJ/kg", units: { "kJ/kg": [1000, 1], "J/kg": [1, 1] } },
  { quantity: "specific volume", of: "m3 kg-1", example: "0.1774 m³/kg", units: { "m³/kg": [1, 1] } },
  { quantity: "hydrogen content", of: "m3 kg-1", example: "5 ml/100g", units: { "ml/100g": [1, 100_000] } },
  { quantity: "density", of: "kg m-3", example: "998 kg/m³", units: { "kg/m³": [1, 1], "g/cm³": [1000, 1], "mg/l": [1, 1000] } },
  { quantity: "molar mass", of: "kg mol-1", example: "28.97 kg/kmol", units: { "kg/kmol": [1, 1000], "kg/mol": [1, 1], "g/mol": [1, 1000] } },
  { quantity: "amount of substance", of: "mol", example: "1 mol", units: { mol: [1, 1], kmol: [1000, 1], mmol: [1, 1000] } },
  { quantity: "concentration", of: "mol m-3", example: "0.02 mmol/l", units: { "mmol/l": [1, 1] } },
  { quantity: "electrical current", of: "A", example: "160 A", units: { A: [1, 1], mA: [1, 1000], kA: [1000, 1] } },
  { quantity: "voltage", of: "kg m2 s-3 A-1", example: "24.5 V", units: { V: [1, 1], mV: [1, 1000], kV: [1000, 1] } },
  { quantity: "electrical conductance", of: "kg-1 m-2 s3 A2", example: "1 S", units: { S: [1, 1], mS: [1, 1000], "µS": [1, 1_000_000] } },
  { quantity: "conductivity", of: "kg-1 m-3 s3 A2", example: "4000 µS/cm", units: { "µS/cm": [1, 10_000], "mS/m": [1, 1000], "S/m": [1, 1] } },
  { quantity: "magnetic field strength", of: "A m-1", example: "2.5 kA/m", units: { "kA/m": [1000, 1] } },
  { quantity: "illuminance", of: "cd m-2", example: "500 lx", units: { lx: [1, 1] } },
  { quantity: "irradiance", of: "kg s-3", example: "10 W/m²", units: { "W/m²": [1, 1] } },
  { quantity: "angle", of: "rad", example: "30 °", units: { "°": degree, rad: [1, 1] } },
  { quantity: "Vickers hardness", of: "HV", example: "210 HV", units: { HV: [1, 1], HV10: [1, 1], HV30: [1, 1], HV5: [1, 1], HV1: [1, 1] } },
  { quantity: "Brinell hardness", of: "HBW", example: "180 HBW", units: { HBW: [1, 1] } },
  { quantity: "Rockwell hardness", of: "HRC", example: "20 HRC", units: { HRC: [1, 1] } },
  { quantity: "sound level difference", of: "dB", example: "4 dB", units: { dB: [1, 1] } },
];

/** Other spellings of a unit, beyond those that Unicode itself holds equal (`mm2`, `mm²`; `µ`, `μ`). */
export const spellings: ReadonlyMap<string, string> = new Map([
  ["L", "l"],
  ["mL", "ml"],
  ["mL/100g", "ml/100g"],
  ["°C/h", "K/h"],
  ["°C/min", "K/min"],
  ["deg", "°"],
]);

/** Units that are refused although everybody knows them, because they leave something to guess: what to write. */
export const refused: ReadonlyMap<string, string> = new Map([
  ["barg", 'a gauge pressure is written "bar"'],
  ["bar(g)", 'a gauge pressure is written "bar"'],
  ["barü", 'a gauge pressure is written "bar"'],
  ["psig", 'a gauge pressure is written "psi"'],
  ["bara", 'an absolute pressure is written "bar(a)"'],
  ["psia", 'an absolute pressure is written "psi(a)"'],
  ["atm", 'copy the pressure as "bar" (gauge) or "bar(a)" (absolute)'],
  ["at", 'copy the pressure as "kgf/cm²" (gauge) or "bar(a)" (absolute)'],
  ["C", 'a temperature is written "°C"'],
  ["oC", 'a temperature is written "°C"'],
  ["degC", 'a temperature is written "°C"'],
  ["F", 'a temperature is written "°F"'],
  ["°K", 'write "K" without the degree sign'],
  ["kp/cm2", 'write "kgf/cm²"'],
  ["kg/cm2", 'a pressure or stress is written "kgf/cm²"'],
  ["ton", 'a tonne of 1000 kg is written "t"'],
  ["tons", 'a tonne of 1000 kg is written "t"'],
  ["hr", 'an hour is written "h"'],
  ["hrs", 'an hour is written "h"'],
  ["sec", 'a second is written "s"'],
  ["mins", 'a minute is written "min"'],
  ["micron", 'write "µm"'],
  ["microns", 'write "µm"'],
  ["um", 'write "µm"'],
  ["inch", 'an inch is written "in"'],
  ["inches", 'an inch is written "in"'],
  ['"', 'an inch is written "in"'],
  ["Nm3/h", 'a flow at standard conditions has no unit here: state the mass flow in "kg/h"'],
  ["HB", 'write "HBW" if it was measured with a hard metal ball'],
]);
