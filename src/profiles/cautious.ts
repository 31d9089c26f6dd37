import { commonPractice, excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import { joined, type Parameter, type Parameters, type Profile } from "../model/profile.ts";
import { boiler } from "./boiler.ts";
import { breathing } from "./breathing.ts";
import { externalPressure } from "./external-pressure.ts";
import { fittings } from "./fittings.ts";
import { plates } from "./plates.ts";
import { quality } from "./quality.ts";
import { standards } from "./standards.ts";

const directive = "Directive 2014/68/EU";

/** Strength and test pressure. */
const strength = {
  safetyFactorYield: {
    value: "1.5",
    means: "safety factor on the proof strength at the calculation temperature",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.1.2: two thirds of the proof strength"),
  },
  safetyFactorTensile: {
    value: "2.4",
    means: "safety factor on the tensile strength at 20 °C",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.1.2: five twelfths of the tensile strength"),
  },
  testFactorPressure: {
    value: "1.43",
    means: "factor of the test pressure on the maximum allowable pressure",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.4"),
  },
  testFactorStress: {
    value: "1.25",
    means: "factor of the test pressure with the ratio of design stresses",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.4"),
  },
  testUpperFactor: {
    value: "1.06",
    means: "highest pressure at the test as a share of the required one",
    cautious: "low",
    basis: excerptSeen("Pennsylvania Code, title 34", "boiler rules: test pressure kept within 106 %"),
  },
  testStressFraction: {
    value: "0.95",
    means: "share of the yield strength at 20 °C permitted at the test",
    cautious: "low",
    basis: fromMemory("EN 13445-3", undefined, "test conditions"),
  },
} satisfies Parameters;

/** How a pressure test is held and read. */
const pressureTest = {
  holdMinutes: {
    value: "30 min",
    means: "least time at the test pressure",
    cautious: "high",
    basis: commonPractice("at least 30 min at test pressure"),
  },
  maxReadingGap: {
    value: "5 min",
    means: "longest time between two readings of the hold",
    cautious: "low",
    basis: ownChoice("readings by hand every five minutes at the longest"),
  },
  minWaterTemperature: {
    value: "10 °C",
    means: "lowest water temperature at the test",
    cautious: "high",
    basis: commonPractice("water not colder than 10 °C, against brittle fracture and dew"),
  },
  testGaugeRangeLeast: {
    value: "1.5",
    means: "least range of a test gauge as a multiple of the test pressure",
    cautious: "high",
    basis: commonPractice("range of a test gauge between 1.5 and 4 times the test pressure"),
  },
  testGaugeRangeMost: {
    value: "4",
    means: "greatest range of a test gauge as a multiple of the test pressure",
    cautious: "low",
    basis: commonPractice("range of a test gauge between 1.5 and 4 times the test pressure"),
  },
  chartAsSecondGauge: {
    value: "no",
    means: "whether a recorder with its chart may stand for the second gauge at the test",
    cautious: "low",
    basis: commonPractice("two gauges that can be read against each other"),
  },
  complianceFactor: {
    value: "1.25",
    means: "factor k of the elastic enlargement k·D/(E·e) of the filled shell",
    cautious: "high",
    basis: ownChoice(
      "upper bound 5/4 of a thin closed cylinder; its exact value is 5/4 − ν, and a stiffer shell would explain a greater drop",
    ),
  },
} satisfies Parameters;

/** Safety valves. */
const relief = {
  capacityTolerance: {
    value: "2 %",
    means: "how far a certified capacity may lie from the recomputed one",
    cautious: "low",
    basis: ownChoice("rounding of a certified figure"),
  },
  highestPressureWhileBlowing: {
    value: "1.1",
    means: "highest pressure while a safety valve blows, as a share of the maximum allowable pressure",
    cautious: "low",
    basis: fromMemory(directive, undefined, "Annex I, 7.3: momentary surge of at most 10 %"),
  },
} satisfies Parameters;

/** Materials and welding. */
const welding = {
  carbonEquivalentTolerance: {
    value: "0.01 %",
    means: "how far a printed carbon equivalent may lie from the sum of the printed analysis",
    cautious: "low",
    basis: ownChoice("rounding of the contents and of the sum to two decimals"),
  },
  heatInputTolerance: {
    value: "0.05 kJ/mm",
    means: "how far a logged heat input may lie from the recomputed one",
    cautious: "low",
    basis: ownChoice("rounding of the logged figure to one decimal"),
  },
  welderConfirmationMonths: {
    value: "6",
    means: "months within which an employer or examiner confirms that a welder has worked in the range",
    cautious: "low",
    basis: fromMemory("EN ISO 9606-1", "2017", "confirmation of validity every six months"),
  },
  welderRevalidationMonths: {
    value: "24",
    means:
      "months after which a welder qualification is extended or repeated, unless the certificate states its own end",
    cautious: "low",
    basis: fromMemory("EN ISO 9606-1", "2017", "revalidation after two years"),
  },
  welderRetestMonths: {
    value: "24",
    means: "the same where the route is a new test",
    cautious: "low",
    basis: fromMemory("EN ISO 9606-1", "2017", "two years, or three by a new test: the shorter"),
  },
  certificateRounding: {
    value: "unrounded",
    means:
      "whether results of tensile tests are compared with their limits as printed, or rounded to the limit's digits",
    cautious: "none",
    basis: ownChoice("as printed: nothing is rounded away"),
  },
  repairCyclesMost: {
    value: "2",
    means: "how often one place of a weld may be repaired without a decision of its own",
    cautious: "low",
    basis: commonPractice("two repairs of one place"),
  },
} satisfies Parameters;

/** Extent of testing that a weld joint coefficient owes. */
const extent = {
  volumetricExtentFull: {
    value: "100 %",
    means: "radiographic or ultrasonic extent owed by a weld joint coefficient above 0.85",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.2: destructive and non-destructive tests on the whole series"),
  },
  volumetricExtentPartial: {
    value: "10 %",
    means: "radiographic or ultrasonic extent owed by a weld joint coefficient above 0.7, up to 0.85",
    cautious: "high",
    basis: fromMemory(directive, undefined, "Annex I, 7.2: random testing; at least a tenth of the length"),
  },
  volumetricExtentVisual: {
    value: "0 %",
    means: "radiographic or ultrasonic extent owed by a weld joint coefficient of at most 0.7",
    cautious: "high",
    basis: excerptSeen(directive, "Annex I, 7.2: visual examination"),
  },
} satisfies Parameters;

/** Intervals in months; the last day counts as valid. */
const months = (value: string, means: string, basis: Parameter["basis"]): Parameter => ({
  value,
  means,
  cautious: "low",
  basis,
});
const usual = commonPractice("usual interval of calibration");
const intervals = {
  calibrationMonthsPressureGauge: months("6", "months between calibrations of a test pressure gauge", usual),
  calibrationMonthsRecorder: months("12", "months between calibrations of a pressure transmitter or recorder", usual),
  calibrationMonthsThermometer: months("12", "months between calibrations of a thermometer", usual),
  calibrationMonthsOther: months("12", "months between calibrations of any other instrument", usual),
  ndtCertificateMonths: months(
    "60",
    "months for which a certificate of testing personnel holds",
    fromMemory("ISO 9712", undefined, "period of validity"),
  ),
  nearVisionMonths: months(
    "12",
    "months for which a near-vision test holds",
    fromMemory("ISO 9712", undefined, "annual near-vision test"),
  ),
} satisfies Parameters;

/** The shipped default: where codes differ, the cautious side. */
export const cautious = {
  id: "cautious",
  title: "Cautious default",
  parameters: joined(
    strength,
    pressureTest,
    relief,
    boiler,
    welding,
    extent,
    intervals,
    externalPressure,
    plates,
    breathing,
    fittings,
    quality,
    standards,
  ),
} satisfies Profile;

/** Every parameter there is: a profile of a family states those in which it differs. */
export type ParameterName = keyof typeof cautious.parameters;
