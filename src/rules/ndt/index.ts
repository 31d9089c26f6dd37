// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { acceptanceLevel } from "./acceptance.ts";
import { indicationsAdjacent } from "./adjacent.ts";
import { testerAuthorised } from "./authorisation.ts";
import { surfaceConditions } from "./conditions.ts";
import { crossingsPlaced, radiographedCrossings, ultrasonicCrossings } from "./crossings.ts";
import { rejectionExtended } from "./extension.ts";
import { extentFloor } from "./extent-floor.ts";
import { visualExtent, magneticExtent, penetrantExtent, radiographicExtent, ultrasonicExtent } from "./extent.ts";
import { filmArtefact } from "./film-artefact.ts";
import { filmClass } from "./film-class.ts";
import { filmDensity } from "./film-density.ts";
import { filmLength, sourceInside, doubleImage } from "./film-geometry.ts";
import { filmNumbers } from "./film-numbers.ts";
import { imageNoise } from "./image-noise.ts";
import { wireSeen } from "./image-quality.ts";
import { testerIndependent } from "./independence.ts";
import { indicationPermitted } from "./indications.ts";
import { figureRead, instrumentRead } from "./instrument-read.ts";
import { jointCoefficient } from "./joint-coefficient.ts";
import { jointClosesPart, jointGoesRound } from "./joint-course.ts";
import { reportPeople } from "./laboratory.ts";
import { magnetised, yokeLifts } from "./magnetised.ts";
import { methodForWeld } from "./method.ts";
import { instrumentsNamed } from "./named-instruments.ts";
import { testAfterWelding, testDelay, rowLength } from "./order.ts";
import { testedWithinWeld } from "./place.ts";
import { procedureApproved, visualProcedureApproved } from "./procedure-approved.ts";
import { procedureUses } from "./procedures.ts";
import { qualityLevelFloor } from "./quality-level.ts";
import { rejectedFor } from "./rejected-for.ts";
import { repairTakesOut, excavationTestedWhole } from "./repair-place.ts";
import { reviewerCertified } from "./reviewers.ts";
import { rowRepair } from "./row-repair.ts";
import { testerSector } from "./sector.ts";
import { sourceNamed } from "./source-named.ts";
import { sourceRange } from "./source-range.ts";
import { testLevel, radiographicClass } from "./test-level.ts";
import { testerCertifiedByOthers } from "./tester-certificates.ts";
import { testerPeriod } from "./tester-period.ts";
import { testerCertified, visualTesterCertified, testerApproved } from "./testers.ts";
import { ultrasonicTechnique } from "./ultrasonic.ts";
import { testerSees } from "./vision.ts";
import { visualFirst } from "./visual-first.ts";

/** What rules/ has of ndt. */
export const ndtRules: readonly Rule[] = [
  acceptanceLevel,
  indicationsAdjacent,
  testerAuthorised,
  ...surfaceConditions,
  crossingsPlaced,
  radiographedCrossings,
  ultrasonicCrossings,
  rejectionExtended,
  extentFloor,
  visualExtent,
  magneticExtent,
  penetrantExtent,
  radiographicExtent,
  ultrasonicExtent,
  filmArtefact,
  filmClass,
  filmDensity,
  filmLength,
  sourceInside,
  doubleImage,
  filmNumbers,
  imageNoise,
  wireSeen,
  testerIndependent,
  indicationPermitted,
  ...figureRead,
  instrumentRead,
  jointCoefficient,
  jointClosesPart,
  jointGoesRound,
  ...reportPeople,
  magnetised,
  yokeLifts,
  methodForWeld,
  ...instrumentsNamed,
  testAfterWelding,
  testDelay,
  rowLength,
  testedWithinWeld,
  procedureApproved,
  visualProcedureApproved,
  ...procedureUses,
  qualityLevelFloor,
  rejectedFor,
  repairTakesOut,
  excavationTestedWhole,
  reviewerCertified,
  rowRepair,
  testerSector,
  sourceNamed,
  sourceRange,
  testLevel,
  radiographicClass,
  testerCertifiedByOthers,
  testerPeriod,
  testerCertified,
  visualTesterCertified,
  testerApproved,
  ...ultrasonicTechnique,
  testerSees,
  visualFirst,
];
