import { commonPractice, excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const rolling = commonPractice(
  "customary reductions of the wall run from 4 % to 14 % and contradict each other; the procedure for expanding decides",
);
const pumps = fromMemory("TRD 401", undefined, "feed pumps of steam boilers");

/** Tube ends, water levels and fittings of boilers. */
export const fittings = {
  wallReductionLeast: {
    value: "5 %",
    means: "least reduction of the wall of a tube that only expanding holds",
    cautious: "high",
    basis: rolling,
  },
  wallReductionLeastWelded: {
    value: "2 %",
    means: "least reduction of the wall of a tube that is welded as well",
    cautious: "high",
    basis: commonPractice("a welded end is rolled lightly, only to close the gap behind the weld"),
  },
  wallReductionMost: {
    value: "14 %",
    means: "greatest reduction of the wall by expanding",
    cautious: "low",
    basis: rolling,
  },
  wallReductionTolerance: {
    value: "0.5 %",
    means: "how far a recorded reduction of the wall may lie from the recomputed one, in percent of the wall",
    cautious: "low",
    basis: ownChoice("rounding of the recorded figure to a whole percent"),
  },
  waterCoverLeast: {
    value: "100 mm",
    means: "least height of the lowest permissible water level above the highest heated surface",
    cautious: "high",
    basis: fromMemory("EN 12953-6", undefined, "lowest water level"),
  },
  boilerGaugeRangeLeast: {
    value: "1.5",
    means: "least range of the pressure gauge of a boiler, as a multiple of the maximum allowable pressure",
    cautious: "high",
    basis: excerptSeen("49 CFR 229.107", "(a) graduated to one and a half times the allowed pressure, of locomotives"),
  },
  boilerGaugeRangeMost: {
    value: "2.5",
    means: "range of the pressure gauge of a boiler above which the pointer hardly moves, as such a multiple",
    cautious: "low",
    basis: commonPractice("a gauge is read in the middle of its scale: about twice the pressure"),
  },
  feedFlowFactor: {
    value: "1.25",
    means: "flow of a feed pump at the maximum allowable pressure, as a multiple of the steam output",
    cautious: "high",
    basis: pumps,
  },
  feedPressureFactor: {
    value: "1.1",
    means: "multiple of the maximum allowable pressure at which a feed pump still delivers the steam output",
    cautious: "high",
    basis: pumps,
  },
  feedReserveFactor: {
    value: "1.03",
    means: "pressure a feed pump reaches, as a multiple of the highest set pressure of the safety valves",
    cautious: "high",
    basis: fromMemory("ASME BPVC Section I", undefined, "feedwater supply: 3 % above the highest set pressure"),
  },
} satisfies Parameters;
