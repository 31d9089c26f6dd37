import { commonPractice, excerptSeen, fromMemory } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const valves = fromMemory("EN ISO 4126-1", undefined, "tolerances of the set pressure and limits of the blowdown");

/** Parameters of the rules about testing and safety devices. */
export const quality = {
  testingDelay: {
    value: "16 h",
    means: "least time between the end of welding and the test of a weld for cracks, for thick welds",
    cautious: "high",
    basis: excerptSeen("EN 1011-2", "delay before testing: 16 h as the usual minimum"),
  },
  testingDelayThickness: {
    value: "12 mm",
    means: "thickness above which a weld waits before it is tested for cracks",
    cautious: "low",
    basis: commonPractice("thin welds of mild steel are tested as soon as they are cold"),
  },
  visualTesterCertificate: {
    value: "required",
    means: "whether a visual tester needs a certificate of testing personnel",
    cautious: "high",
    basis: commonPractice("some codes leave visual testers outside the certification of personnel"),
  },
  comparisonByReading: {
    value: "not allowed",
    means:
      "whether values read back from a paper's own text stand in place of the second person who compares: allowed, or not allowed",
    cautious: "high",
    basis: commonPractice(
      "two people, two looks: a program reads no choices and no sentences, and trusts the file's own text",
    ),
  },
  testingDelayExempt: {
    value: "none",
    means: "material groups whose welds need no rest before they are tested for cracks, or none",
    cautious: "low",
    basis: commonPractice("where the steel is not considered, every thick weld rests"),
  },
  surfaceTesterLevelSupervised: {
    value: "2",
    means:
      "least level of who makes a magnetic or penetrant test under the eyes of a supervisor, where somebody else judges it",
    cautious: "high",
    basis: fromMemory("ISO 9712", undefined, "level 1 works under supervision; some codes do not allow it"),
  },
  testerLevelSupervised: {
    value: "2",
    means: "least level of who makes any other test under the eyes of a supervisor, where somebody else judges it",
    cautious: "high",
    basis: fromMemory("ISO 9712", undefined, "level 1 works under supervision; some codes do not allow it"),
  },
  radiographicClass: {
    value: "B",
    means: "class of EN ISO 17636 by which radiographs are made: A, basic, or B, improved",
    cautious: "high",
    basis: fromMemory("EN ISO 17635", undefined, "quality levels B and C ask for class B"),
  },
  testerLevelLeast: {
    value: "2",
    means: "least level of who signs a test report",
    cautious: "high",
    basis: fromMemory("ISO 9712", undefined, "level 2: judges results and signs reports"),
  },
  setPressureTolerance: {
    value: "3 %",
    means: "how far a bench reading may lie from the set pressure of a safety valve",
    cautious: "low",
    basis: valves,
  },
  setPressureToleranceLeast: {
    value: "0.1 bar",
    means: "the same for low set pressures, where it is the greater",
    cautious: "low",
    basis: valves,
  },
  blowdownLeast: {
    value: "2 %",
    means: "least blowdown of a safety valve for gas or steam, as a share of its set pressure",
    cautious: "high",
    basis: valves,
  },
  blowdownMost: {
    value: "15 %",
    means: "greatest blowdown of a safety valve for gas or steam, as a share of its set pressure",
    cautious: "low",
    basis: valves,
  },
  blowdownMostPressure: {
    value: "0.3 bar",
    means: "the same for low set pressures, where it is the greater",
    cautious: "low",
    basis: valves,
  },
} satisfies Parameters;
