import { region1 } from "./region-1-coefficients.ts";
import { region2Ideal, region2Residual } from "./region-2-coefficients.ts";
import { stateOf, type State } from "./state.ts";
import { sumOfTerms } from "./term-sums.ts";

const liquidTerms = sumOfTerms(region1);
const idealTerms = sumOfTerms(region2Ideal.map(([J, n]) => [0, J, n]));
const residualTerms = sumOfTerms(region2Residual);

/**
 * Region 1, liquid: IAPWS R7-97(2012), equation (7). `p` in MPa, `T` in K; ranges are the caller's business, see `liquid`.
 */
export function liquidState(p: number, T: number): State {
  const tau = 1386 / T;
  const { g, x, xx, y, yy, xy } = liquidTerms(7.1 - p / 16.53, tau - 1.222);
  return stateOf({ g, p: -x, pp: xx, t: y, tt: yy, pt: -xy }, T, tau, 16.53);
}

/**
 * Region 2, vapour: IAPWS R7-97(2012), equations (15) to (17). `p` in MPa, `T` in K; ranges are the caller's business,
 * see `vapour`.
 */
export function vapourState(p: number, T: number): State {
  const tau = 540 / T;
  const ideal = idealTerms(1, tau);
  const { g, x, xx, y, yy, xy } = residualTerms(p, tau - 0.5);
  const gibbs = {
    g: Math.log(p) + ideal.g + g,
    p: 1 / p + x,
    pp: xx - 1 / (p * p),
    t: ideal.y + y,
    tt: ideal.yy + yy,
    pt: xy,
  };
  return stateOf(gibbs, T, tau, 1);
}
