import type { CalculationInput } from "../../model/calculation.ts";

const keys = "material.standard, material.edition, material.grade, nominalThickness";

/** What a wall is tried with at the pressure test: as built, cold. */
export const testWall = {
  PT: {
    path: "book.equipment.testPressure",
    unit: "MPa",
    means: "specified test pressure",
    display: "P_T",
    unsafe: "low",
  },
  en: { path: "nominalThickness", unit: "mm", means: "nominal thickness", display: "e_n", unsafe: "high" },
  δ: { path: "thicknessUndertolerance", unit: "mm", means: "undertolerance of the thickness", unsafe: "low" },
  ReH: {
    path: `table(grade-strength, ${keys}).yieldStrength`,
    unit: "MPa",
    means: "least yield strength at 20 °C",
    display: "R_eH",
    unsafe: "high",
  },
} as const satisfies Record<string, CalculationInput>;
