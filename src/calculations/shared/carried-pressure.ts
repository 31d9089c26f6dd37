import type { Basis } from "../../model/basis.ts";
import type { CalculationStep } from "../../model/calculation.ts";

const round = { decimals: 3, direction: "down" } as const;

/**
 * Steps of the pressure (MPa) a cylinder carries from outside: before it yields (`ppl`), before it collapses (`pel`), the
 * lower of both (`pmax`), and the collapse pressure of a perfect cylinder (`pM`). `wall` and `strength` are the symbols of
 * its thickness and of its strength; d, L, uc, E, S1 and S2 are those of the calculation.
 */
export function carried(wall: string, strength: string, what: string, basis: Basis): readonly CalculationStep[] {
  return [
    {
      symbol: "ppl",
      unit: "MPa",
      means: `pressure ${what} carries before it yields`,
      formula: `2*${strength}*${wall}/(S1*d) * (1 + d/(15*L)) / (1 + 0.03*(uc/'1 %')*d / (${wall}*(1 + d/(0.3*L))))`,
      display: "p_pl",
      round,
      basis,
    },
    {
      symbol: "pel",
      unit: "MPa",
      means: `pressure ${what} carries before it collapses`,
      formula: `2.6*E*(${wall}/d)^2.5*(d/L) / S2`,
      display: "p_el",
      round,
      basis,
    },
    {
      symbol: "pmax",
      unit: "MPa",
      means: `highest pressure ${what} carries`,
      formula: "min(ppl, pel)",
      display: "p_max",
      round,
    },
    {
      symbol: "pM",
      unit: "MPa",
      means: "collapse pressure of a perfect cylinder, for the second method",
      formula: `collapsePressure(E, ${wall}, d, L)`,
      display: "p_M",
      round,
    },
  ];
}
