/** Where the correlations of water stand, with their coefficients. */
export const kell = "G. S. Kell, J. Chem. Eng. Data 20 (1975) 97";

// Density in kg/m³ and compressibility in 10⁻⁶/bar at temperature in °C, coefficients as printed.
const density = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12];
const densityDivisor = 16.87985e-3;
const compressibility = [50.88496, 0.6163813, 1.459187e-3, 20.08438e-6, -58.47727e-9, 410.411e-12];
const compressibilityDivisor = 19.67348e-3;

const polynomial = (coefficients: readonly number[], t: number) =>
  coefficients.reduceRight((sum, coefficient) => sum * t + coefficient, 0);
const slope = (coefficients: readonly number[], t: number) =>
  polynomial(
    coefficients.slice(1).map((coefficient, index) => coefficient * (index + 1)),
    t,
  );

/** Density of air-free water at atmospheric pressure in kg/m³; `t` in °C, 0 to 100. */
export function densityOfWater(t: number): number {
  return polynomial(density, t) / (1 + densityDivisor * t);
}

/** Volumetric thermal expansion of water in 1/K: the derivative of the density correlation, with its sign turned. */
export function expansionOfWater(t: number): number {
  return densityDivisor / (1 + densityDivisor * t) - slope(density, t) / polynomial(density, t);
}

/** Isothermal compressibility of water at atmospheric pressure in 1/bar. */
export function compressibilityOfWater(t: number): number {
  return (1e-6 * polynomial(compressibility, t)) / (1 + compressibilityDivisor * t);
}
