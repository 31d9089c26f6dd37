import type { Acceptance, Calculation, CalculationStep } from "../../model/calculation.ts";
import { fromMemory } from "../../model/basis.ts";

const method = fromMemory(
  "ASME BPVC Section VIII, Division 1",
  undefined,
  "reinforcement of openings by area replacement, without welds, pads and inward projection",
);
const area = (symbol: string, means: string, formula: string, display: string, direction: "up" | "down") =>
  ({ symbol, unit: "mm²", means, formula, display, round: { decimals: 0, direction }, basis: method }) as const;

/**
 * Second school of reinforcement: the metal an opening takes out of the required shell must stand beside it, within one
 * bore of its centre. From p, Di, es, fs, fb, di, ea, h and k of the opening, as `shell-opening` names them.
 */
export const replacementInputs: Calculation["inputs"] = {
  kA: {
    path: "profile.replacedAreaShare",
    unit: "1",
    means: "share of the required metal taken out that must be replaced near the opening",
    display: "k_A",
  },
};

export const replacementSteps: readonly CalculationStep[] = [
  {
    symbol: "tr",
    unit: "mm",
    means: "wall the shell needs where it is whole",
    formula: "p*Di/(2*fs - p)",
    display: "t_r",
    round: { decimals: 2, direction: "up" },
    basis: method,
  },
  {
    symbol: "tn",
    unit: "mm",
    means: "wall the branch needs by itself",
    formula: "p*di/(2*fb - p)",
    display: "t_n",
    round: { decimals: 2, direction: "up" },
    basis: method,
  },
  {
    symbol: "r",
    unit: "1",
    means: "strength of the branch against that of the shell, at most 1",
    formula: "min(1, fb/fs)",
    round: { decimals: 3, direction: "down" },
    basis: method,
  },
  {
    symbol: "X",
    unit: "mm",
    means: "distance from the centre within which metal counts",
    formula: "max(di, di/2 + es + ea)",
    round: { decimals: 1, direction: "down" },
    basis: method,
  },
  {
    symbol: "hn",
    unit: "mm",
    means: "height of branch that counts",
    formula: "min(2.5*es, 2.5*ea, h)",
    display: "h_n",
    round: { decimals: 1, direction: "down" },
    basis: method,
  },
  area("Ar", "area to be replaced", "di*tr + 2*k*ea*tr*(1 - r)", "A_r", "up"),
  area("A1", "area the shell has to spare", "(2*X - di - 2*k*ea*(1 - r))*(es - tr)", "A_1", "down"),
  area("A2", "area the branch has to spare", "2*hn*(ea - tn)*r", "A_2", "down"),
  area("Aa", "area available", "A1 + A2", "A_a", "down"),
];

export const replacementAccept: Acceptance = {
  left: "Aa",
  relation: ">=",
  right: "kA*Ar",
  means: "the metal to spare beside the opening replaces what the opening takes out",
  wrong: "the metal to spare beside the opening is {left}; at least {right} is to replace what the opening takes out",
  accuses: "en",
  basis: method,
  // Where the design standard judges by pressure area alone, this school is shown as a second method and judges nothing.
  when: { left: "kA", relation: ">", right: "0" },
};
