// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { qualificationApprovedByBody } from "./approved-by.ts";
import { jointsInProcedure, runsInProcedure } from "./in-procedure.ts";
import { jointQualified } from "./joint-qualified.ts";
import { qualificationRanges } from "./printed-range.ts";
import { proceduresQualified } from "./procedure-qualified.ts";
import { proceduresState } from "./procedure-states.ts";
import { qualificationCold, polarityOfProcess } from "./qualification-cold.ts";
import { qualificationLevel } from "./qualification-level.ts";
import { qualificationTests } from "./qualification-tests.ts";
import { qualificationStrength, qualificationImpact, qualificationHardness } from "./qualification-values.ts";
import { repairQualified } from "./repair-qualified.ts";
import { rootGap } from "./root-gap.ts";
import { runFillerSize } from "./run-filler-size.ts";
import { runLayers } from "./run-layers.ts";
import { runsInWindow } from "./run-window.ts";
import { runTransfer, runTransferSaid, transferFigures } from "./transfer.ts";
import { windowWidth, windowProcess } from "./window-width.ts";

/** What rules/ has of welding range. */
export const weldingRangeRules: readonly Rule[] = [
  qualificationApprovedByBody,
  ...jointsInProcedure,
  ...runsInProcedure,
  jointQualified,
  ...qualificationRanges,
  ...proceduresQualified,
  ...proceduresState,
  qualificationCold,
  polarityOfProcess,
  qualificationLevel,
  qualificationTests,
  qualificationStrength,
  qualificationImpact,
  qualificationHardness,
  repairQualified,
  rootGap,
  runFillerSize,
  runLayers,
  ...runsInWindow,
  runTransfer,
  runTransferSaid,
  transferFigures,
  windowWidth,
  windowProcess,
];
