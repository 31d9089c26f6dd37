import { cylinder, sharedExamples } from "./shared/external-examples.ts";
import type { CalculationExample } from "../model/calculation.ts";

const own = { l: 900, enmin: 7, enmax: 22, Lmax: 3000 };
const section = { $: "P02", role: "furnace", thickness: "16 mm" };
const hoop = ($: string) => ({ $, role: "furnace-hoop", thickness: "16 mm", width: "200 mm" });
const plate = { $: "P01", role: "tube-plate", thickness: "20 mm" };
const bisection = "both conditions solved for the thickness by bisection on the pressure, outside this program";

export const furnaceExamples: readonly CalculationExample[] = [
  ...sharedExamples(own),
  {
    source: "worked by hand: 1270 and half of each of two hoops 200 wide, more than stated",
    class: "constructed",
    given: { ...cylinder, ...own, l: 1270, joined: [section, hoop("P03"), hoop("P04"), hoop("P03")] },
    expect: { Lm: 1470 },
    within: 0.000001,
  },
  {
    source: "worked by hand: 1480 through a plate of 20 with its lip, and half a hoop: 1480 − 40 + 100",
    class: "constructed",
    given: { ...cylinder, ...own, l: 1480, L: 1540, joined: [section, hoop("P03"), plate] },
    expect: { Lm: 1540 },
    within: 1e-9,
  },
  {
    source: "constructed: a millimetre less is stated",
    class: "constructed",
    given: { ...cylinder, ...own, l: 1480, L: 1539, joined: [section, hoop("P03"), plate] },
    expect: { Lm: 1540 },
    within: 1e-9,
  },
  {
    source: `${bisection}; plain over the greatest length, exactly`,
    class: "second method",
    given: { ...cylinder, ...own, l: 3000, L: 3000, joined: [] },
    expect: { Lm: 3000, epl: 20.095886, eel: 14.29008 },
    within: 0.000001,
  },
  {
    source: `${bisection}; plain over 3.1 m`,
    class: "second method",
    given: { ...cylinder, ...own, l: 3100, L: 3100, joined: [] },
    expect: { Lm: 3100, epl: 20.225169, eel: 14.478742 },
    within: 0.000001,
  },
  {
    source: "constructed: thinner than any furnace",
    class: "constructed",
    given: { ...cylinder, ...own, Do: 500, en: 6.9 },
    expect: { ea: 5.85 },
    within: 1e-9,
    outside: ["the nominal thickness is at least the least of a furnace"],
  },
  {
    source: "constructed: thicker than any furnace",
    class: "constructed",
    given: { ...cylinder, ...own, en: 22.1 },
    expect: { ea: 21.05 },
    within: 1e-9,
    outside: ["the nominal thickness is at most the greatest of a furnace"],
  },
];
