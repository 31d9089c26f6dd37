import type { CalculationExample } from "../model/calculation.ts";

type Changes = Readonly<Record<string, number>>;
const bar = { p: 1, A: 60000, a: 1590, d: 45, en: 45, c: 0.75, δ: 0.8, f: 140, σs: 62, dmin: 25 };
const tube = { p: 1.3, A: 63504, a: 25702, d: 60.3, en: 6.3, c: 0.75, δ: 0.75, f: 99, σs: 70, emin: 5 };

const made = (of: Changes) => ({
  by: (
    source: string,
    changes: Changes,
    expect: Changes,
    within: number,
    ...outside: readonly string[]
  ): CalculationExample => ({
    source,
    class: "constructed",
    given: { ...of, ...changes },
    expect,
    within,
    ...(outside.length > 0 && { outside }),
  }),
});
const { by: barBy } = made(bar);
const { by: tubeBy } = made(tube);

export const barExamples: readonly CalculationExample[] = [
  barBy(
    "worked by hand: 58 410 N; √(4·58410/(π·62)) + 1.5 + 0.8; π/4·42.7² = 1432.0 mm²",
    {},
    { AL: 58410, F: 58410, σp: 62, ds: 34.634013, dreq: 36.934013, σ: 40.788861 },
    0.000001,
  ),
  barBy(
    "constructed: exactly the required diameter, a section of 40 mm at 62 MPa: π·400·62 mm² at 1 MPa",
    { A: 80000, a: 2088.50219097313, d: 42.3, en: 42.3 },
    { ds: 40, dreq: 42.3, σ: 62 },
    1e-9,
  ),
  barBy("constructed: a millimetre too thin", { d: 36, en: 36 }, { dreq: 36.934013 }, 0.000001),
  barBy(
    "constructed: a weak steel decides, and the least diameter",
    { A: 3000, f: 50, d: 25, en: 25 },
    { F: 1410, σp: 50, dreq: 25 },
    1e-9,
  ),
  barBy(
    "constructed: more of the plate is occupied than there is",
    { a: 60001 },
    { AL: -1 },
    0,
    "the stay carries more plate than is occupied",
  ),
  barBy(
    "constructed: allowances eat the whole bar",
    { d: 2.3, en: 2.3 },
    { As: 0 },
    1e-9,
    "a section is left after allowances",
  ),
  barBy(
    "constructed: the strength was taken for another section",
    { en: 4.5 },
    { F: 58410 },
    1e-9,
    "the governing section of a bar is its diameter",
  ),
];

export const stayTubeExamples: readonly CalculationExample[] = [
  tubeBy(
    "worked by hand: a tube of 60.3 × 6.3 in a field of 3 × 3 at a pitch of 84; all 0.75 mm are taken from inside",
    { c: 0 },
    { AL: 37802, F: 49142.6, σp: 70, ea: 5.55, As: 954.6122, σ: 51.479124, ereq: 5 },
    0.0001,
  ),
  tubeBy(
    "worked by hand: the same corroded from outside and thinner from inside, π·(58.8 − 4.8)·4.8 = 814.3 mm²",
    {},
    { dc: 58.8, ea: 4.8, As: 814.3008, σ: 60.349442 },
    0.0001,
  ),
  tubeBy(
    "constructed: exactly the required wall, 51·π·45·5 mm² at 1 MPa on a corroded tube of 50 × 5",
    { p: 1, A: 40000, a: 3950.224300057125, d: 51.5, en: 6.5, σs: 51 },
    { es: 5, ereq: 6.5, σ: 51 },
    1e-9,
  ),
  tubeBy("constructed: a wall of 5 mm for it", { en: 5, σs: 51 }, { ea: 3.5 }, 1e-9),
  tubeBy(
    "constructed: more load than a solid bar of its diameter carries",
    { A: 200000 },
    { es: 29.4, ereq: 30.9 },
    1e-9,
  ),
  tubeBy(
    "constructed: more of the plate is occupied than there is",
    { a: 63505 },
    { AL: -1 },
    0,
    "the stay carries more plate than is occupied",
  ),
  tubeBy("constructed: allowances eat the whole wall", { en: 1.5 }, { ea: 0 }, 1e-9, "a wall is left after allowances"),
  tubeBy(
    "constructed: an outside diameter of twice the wall",
    { d: 12.6 },
    { F: 49142.6 },
    1e-9,
    "the outside diameter is above twice the wall",
  ),
];
