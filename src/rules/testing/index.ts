// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { calibrationInterval } from "./calibration-interval.ts";
import { hardnessPlaces, hardnessAtStage } from "./hardness-course.ts";
import { jointHardness, parentMetalSoft } from "./hardness.ts";
import { indicationLength } from "./indication-length.ts";
import { instrumentFigures } from "./instrument-figures.ts";
import { instrumentSort } from "./instrument-sorts.ts";
import { instrumentUses } from "./instrument-uses.ts";
import { calibrated, gaugeAsRegistered } from "./instruments.ts";
import { calibrationSigned } from "./laboratory.ts";
import { lastingSet } from "./lasting-set.ts";
import { leakGaugeFits } from "./leak-gauge.ts";
import {
  leaksLeft,
  leakTestJoints,
  leakTestMedium,
  leakTestSoak,
  leakTestPressure,
  leakTestBeforeWater,
} from "./leak-test.ts";
import { examinationPressure, stoppedTest, mediumOfTest } from "./pressure-test-judged.ts";
import { testAfterWork, testBeforeCoating, testWitnessed } from "./pressure-test.ts";
import { pumpedVolume } from "./pumped-volume.ts";
import { readByTape } from "./read-by-tape.ts";
import { readingsInRange } from "./reading-in-range.ts";
import { recordedHold } from "./recorded-hold.ts";
import { pressureTestFigures } from "./test-figures.ts";
import { testGauges } from "./test-gauges.ts";

/** What rules/ has of testing. */
export const testingRules: readonly Rule[] = [
  calibrationInterval,
  hardnessPlaces,
  hardnessAtStage,
  jointHardness,
  parentMetalSoft,
  indicationLength,
  ...instrumentFigures,
  instrumentSort,
  ...instrumentUses,
  calibrated,
  gaugeAsRegistered,
  calibrationSigned,
  lastingSet,
  leakGaugeFits,
  leaksLeft,
  leakTestJoints,
  leakTestMedium,
  leakTestSoak,
  leakTestPressure,
  leakTestBeforeWater,
  examinationPressure,
  stoppedTest,
  mediumOfTest,
  testAfterWork,
  testBeforeCoating,
  testWitnessed,
  pumpedVolume,
  readByTape,
  ...readingsInRange,
  recordedHold,
  ...pressureTestFigures,
  testGauges,
];
