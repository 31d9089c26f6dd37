import type { CalculationExample } from "../model/calculation.ts";

const shares = { ks: 50, k1: 2, k2: 1, k3: 2, kd: 0.8, kA: 1 };
const shell = { p: 1.3, Di: 2400, es: 14.95, fs: 137.8, fb: 137.8 };
const branch = { do: 139.7, en: 8, c: 0, δ: 0, h: 100, k: 1 };
const common = { ...shell, ...branch, ...shares };
const thick = { do: 219.1, en: 25 };

export const shellOpeningExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: branch of 139.7 with 8 mm left, passing through: 314 763.32/3219.911 + ½, times 1.3",
    class: "constructed",
    given: common,
    expect: { ea: 8, di: 123.7, eb: 8, ls: 190.00922, lb: 32.45921, Ap: 314763.3196, Af: 3219.91143, σ: 127.731854 },
    within: 0.0001,
  },
  {
    source:
      "worked by hand: the same by area replacement, 123.7·11.3744 to replace; 123.7·3.5756 + 2·20·(8 − 0.5863) to spare is half",
    class: "constructed",
    given: common,
    expect: {
      tr: 11.374408,
      tn: 0.586256,
      r: 1,
      X: 123.7,
      hn: 20,
      Ar: 1407.01422,
      A1: 442.30078,
      A2: 296.54976,
      Aa: 738.85055,
    },
    within: 0.0001,
  },
  {
    source:
      "worked by hand: a branch twice as thick, of a weaker steel: 107.7·11.3744 + 2·16·11.3744·0.0566 are replaced",
    class: "constructed",
    given: { ...common, en: 16, fb: 130 },
    expect: { r: 0.943396, X: 107.7, hn: 37.375, Ar: 1245.6264, A1: 378.61476, A2: 1090.13665, Aa: 1468.75141 },
    within: 0.0001,
  },
  {
    source:
      "worked by hand: a small thick branch, for which bore, shell and wall count and not two bores: 23.4 + 14.95 + 15",
    class: "constructed",
    given: { ...common, do: 76.8, en: 15 },
    expect: { di: 46.8, X: 53.35, A1: 214.17799, A2: 1104.67038, Ar: 532.32227, Aa: 1318.84836 },
    within: 0.0001,
  },
  {
    source: "worked by hand: oval manhole, 320 along the axis, frame of 25 × 60: 629 015.38/5756.748 + ½, times 1.6",
    class: "constructed",
    given: { ...common, p: 1.6, Di: 3000, es: 16.95, fs: 176.7, fb: 176.7, do: 0, w: 320, en: 25, h: 60 },
    expect: { di: 320, eb: 25, ls: 226.13558, lb: 60, Ap: 629015.3765, Af: 5756.74815, σ: 175.625192 },
    within: 0.0001,
  },
  {
    source: "worked by hand: the same branch set on the shell, of a weaker steel: 8·14.95 mm² less metal",
    class: "constructed",
    given: { ...common, k: 0, fb: 130 },
    expect: { Af: 3100.31143, σ: 132.634262, f: 130 },
    within: 0.0001,
  },
  {
    source: "worked by hand: a small branch with allowances, 60.3 − 2·6.75 = 46.8",
    class: "constructed",
    given: { ...common, do: 60.3, c: 0.75, δ: 0.5 },
    expect: { ea: 6.75, di: 46.8, eb: 6.75, lb: 19.01217, Ap: 264985.775, Af: 3069.88242, σ: 112.863258 },
    within: 0.0001,
  },
  {
    source: "worked by hand: a thick branch of which no more counts than the shell is thick",
    class: "constructed",
    given: { ...common, ...thick },
    expect: { ea: 25, di: 169.1, eb: 14.95, lb: 52.4552, Ap: 365170.1695, Af: 3848.34546, σ: 124.007226 },
    within: 0.0001,
  },
  {
    source: "worked by hand: bore of exactly 0.8 of the shell, 820 − 2·10",
    class: "constructed",
    given: { ...common, p: 1, Di: 1000, es: 10, do: 820, en: 10, fs: 150, fb: 150 },
    expect: { di: 800, lb: 90, Ap: 295249.3781, Af: 2004.98756, σ: 147.757461 },
    within: 0.0001,
  },
  {
    source: "constructed: a bore above 0.8 of the shell",
    class: "constructed",
    given: { ...common, p: 1, Di: 1000, es: 10, do: 821, en: 10 },
    expect: { di: 801 },
    within: 1e-9,
    outside: ["the opening is small against the shell"],
  },
  {
    source: "constructed: neither a diameter nor a width",
    class: "constructed",
    given: { ...common, do: 0, c: 0.5 },
    expect: { di: 1 },
    within: 1e-9,
    outside: ["the branch has a diameter, or the opening a width"],
  },
];
