import { excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const regulation592 = excerptSeen("Indian Boiler Regulations 1950", "regulation 592");
const en12953 = fromMemory("EN 12953-3", undefined, "furnaces under external pressure");
const trd306 = (part: string) => excerptSeen("TRD 306", part);

/** Cylinders under external pressure, and tubes expanded into plates. */
export const externalPressure = {
  furnaceFactorPlastic: {
    value: "2.5",
    means: "safety factor on the proof strength of a furnace or chamber the flame reaches",
    cautious: "high",
    basis: regulation592,
  },
  unfiredFactorPlastic: {
    value: "2",
    means: "safety factor on the proof strength of a cylinder under external pressure that no flame reaches",
    cautious: "high",
    basis: regulation592,
  },
  externalFactorElastic: {
    value: "3",
    means: "safety factor against elastic collapse under external pressure",
    cautious: "high",
    basis: regulation592,
  },
  externalFactorElasticOval: {
    value: "4",
    means: "the same for a cylinder less round than usual",
    cautious: "high",
    basis: trd306("section 9: out-of-roundness above 1.5 %, up to 2 %"),
  },
  testFactorPlastic: {
    value: "1.6",
    means: "safety factor on the yield strength of a cylinder under external pressure at the pressure test",
    cautious: "high",
    basis: ownChoice(
      "2.5 at working pressure over the factor 1.43 of the test is 1.75, less what the steel is stronger cold",
    ),
  },
  testFactorElastic: {
    value: "2.2",
    means: "safety factor against elastic collapse at the pressure test",
    cautious: "high",
    basis: trd306("section 9"),
  },
  testFactorElasticOval: {
    value: "3",
    means: "the same for a cylinder less round than usual",
    cautious: "high",
    basis: trd306("section 9: out-of-roundness above 1.5 %, up to 2 %"),
  },
  outOfRoundnessLeast: {
    value: "1.5 %",
    means: "out-of-roundness always reckoned with under external pressure, however round the cylinder is",
    cautious: "high",
    basis: en12953,
  },
  outOfRoundnessUsual: {
    value: "1.5 %",
    means: "out-of-roundness above which the greater factor against elastic collapse holds",
    cautious: "low",
    basis: trd306("section 9"),
  },
  outOfRoundnessMost: {
    value: "2 %",
    means: "greatest out-of-roundness of a cylinder under external pressure",
    cautious: "low",
    basis: trd306("section 9"),
  },
  externalDiameterMost: {
    value: "1800 mm",
    means: "greatest mean diameter of a cylinder under external pressure",
    cautious: "low",
    basis: regulation592,
  },
  furnaceThicknessLeast: {
    value: "7 mm",
    means: "least nominal thickness of a plain furnace",
    cautious: "high",
    basis: trd306("section 11"),
  },
  furnaceThicknessMost: {
    value: "22 mm",
    means: "greatest nominal thickness of a furnace; some rules stop at 20 mm",
    cautious: "low",
    basis: en12953,
  },
  chamberThicknessLeast: {
    value: "10 mm",
    means: "least nominal thickness of the plates of a reversal chamber",
    cautious: "high",
    basis: fromMemory("EN 12953-3", undefined, "reversal chambers"),
  },
  chamberThicknessMost: {
    value: "30 mm",
    means: "greatest nominal thickness of a heated cylinder other than a furnace",
    cautious: "low",
    basis: trd306("section 11"),
  },
  furnacePlainLengthMost: {
    value: "3000 mm",
    means: "greatest plain length of a furnace between flexible elements or ends",
    cautious: "low",
    basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 546"),
  },
  tubeLoadMost: {
    value: "40 N/mm",
    means: "greatest pull on a plain expanded tube for each millimetre of its circumference",
    cautious: "low",
    basis: ownChoice("well inside every rule for plain expanded joints; beyond it stay tubes or welds carry the plate"),
  },
  expandedJointStressMost: {
    value: "150 MPa",
    means: "greatest pull on a plain expanded joint for each square millimetre of its area",
    cautious: "low",
    basis: fromMemory("TRD 305", undefined, "expanded tubes, plain joint"),
  },
} satisfies Parameters;
