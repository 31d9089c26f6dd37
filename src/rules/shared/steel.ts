/** Density of steel, kg/mm³. */
export const steelDensity = 7.85e-6;
