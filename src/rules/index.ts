// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../model/rule.ts";
import {
  calculationPressureCovers,
  calculationTemperatureCovers,
  allowanceOfPart,
} from "./design/calculation-figures.ts";
import { moduleFitsCategory, declarationBodyNumber, declarationCertificates } from "./design/conformity-assessment.ts";
import { designStandardServed, sheetStandardDeclared } from "./design/design-standards.ts";
import { dimensionWithin } from "./design/dimensions.ts";
import { measuredAlike } from "./design/measured-thickness.ts";
import { dimensionRows } from "./design/nominals.ts";
import { openingJudged } from "./design/openings.ts";
import { weldCoefficientExtent } from "./design/weld-coefficient.ts";
import { heatTreatmentChart } from "./heat-treatment/chart.ts";
import { heatTreatmentPlanned, heatTreatmentAfterWelding, heatTreatmentTimes } from "./heat-treatment/cycles.ts";
import { heatTreatmentHeld } from "./heat-treatment/held.ts";
import { heatTreatmentLoad } from "./heat-treatment/load.ts";
import { heatTreatmentRates } from "./heat-treatment/rates.ts";
import { heatTreatmentSpan } from "./heat-treatment/span.ts";
import { developedAreas } from "./materials/areas.ts";
import { chemistryLimits } from "./materials/chemistry.ts";
import { materialDates } from "./materials/dates.ts";
import { deliveryCondition } from "./materials/delivery.ts";
import { documentsOfMaterial } from "./materials/documents.ts";
import { certificateFigures } from "./materials/figures.ts";
import { markMaterial, certificateType, certificateThickness, millApproved } from "./materials/identity.ts";
import { printedMean, impactEnergy } from "./materials/impact.ts";
import { millApprovals } from "./materials/mills.ts";
import { plateCut, lengthCut } from "./materials/pieces-cut.ts";
import { piecesOfPart, piecesDelivered, lengthsOfParts, lengthOfPart } from "./materials/pieces.ts";
import { rowMass } from "./materials/row-mass.ts";
import { certifiedSizes } from "./materials/sizes.ts";
import { tensileLimits } from "./materials/strength.ts";
import { impactTested } from "./materials/tests-owed.ts";
import { acceptanceLevel, citedEditions } from "./ndt/acceptance.ts";
import { testerAuthorised } from "./ndt/authorisation.ts";
import { surfaceConditions } from "./ndt/conditions.ts";
import { rejectionExtended } from "./ndt/extension.ts";
import { extentFloor } from "./ndt/extent-floor.ts";
import { visualExtent, magneticExtent, penetrantExtent, radiographicExtent, ultrasonicExtent } from "./ndt/extent.ts";
import { filmClass } from "./ndt/film-class.ts";
import { filmDensity } from "./ndt/film-density.ts";
import { filmLength, doubleImage } from "./ndt/film-geometry.ts";
import { filmNumbers } from "./ndt/film-numbers.ts";
import { wireSeen } from "./ndt/image-quality.ts";
import { testerIndependent } from "./ndt/independence.ts";
import { indicationPermitted } from "./ndt/indications.ts";
import { jointCoefficient } from "./ndt/joint-coefficient.ts";
import { jointClosesPart, jointGoesRound } from "./ndt/joint-course.ts";
import { reportPeople } from "./ndt/laboratory.ts";
import { methodForWeld } from "./ndt/method.ts";
import { testAfterWelding, testDelay, rowLength } from "./ndt/order.ts";
import { testedWithinWeld } from "./ndt/place.ts";
import { procedureUses } from "./ndt/procedures.ts";
import { rejectedFor } from "./ndt/rejected-for.ts";
import { repairTakesOut } from "./ndt/repair-place.ts";
import { testerSector } from "./ndt/sector.ts";
import { sourceNamed } from "./ndt/source-named.ts";
import { sourceRange } from "./ndt/source-range.ts";
import { testLevel, radiographicClass } from "./ndt/test-level.ts";
import { testerPeriod } from "./ndt/tester-period.ts";
import { testerCertified, visualTesterCertified, testerApproved } from "./ndt/testers.ts";
import { ultrasonicTechnique } from "./ndt/ultrasonic.ts";
import { visualFirst } from "./ndt/visual-first.ts";
import { comparedByAnother } from "./papers/comparison.ts";
import { dateOrders, afterOrder } from "./papers/dates.ts";
import { declarationLast, declarationStandard, certificateValid } from "./papers/declaration.ts";
import { drawingInForce, testProcedureInForce, repairProcedureInForce, checkedByAnother } from "./papers/documents.ts";
import { roleOfFirm } from "./papers/employers.ts";
import { firmsRegistered } from "./papers/firms.ts";
import { milestonesInOrder, orderReached, finalReached, historyDays } from "./papers/issue-days.ts";
import { nameplateMark, nameplateValve } from "./papers/nameplate.ts";
import { closedBeforeTest, nonconformityState, closedByAnother, concessionHeld } from "./papers/nonconformities.ts";
import {
  cancelledWithout,
  agreedBeforeClosed,
  bodyAgreed,
  correctorNamed,
  repairDecided,
  pressureConcerned,
  raisedAfterFound,
  deviationReported,
} from "./papers/nonconformity-course.ts";
import { certificatePages } from "./papers/pages.ts";
import { postsHeld, stepSignatories } from "./papers/people.ts";
import { pointOutcome, planInOrder, noticeGiven, bodyHolds, afterSteps } from "./papers/plan-points.ts";
import { soleResponsibility, standardParts, typeYears, signedByNamed, plateAfterTest } from "./papers/release.ts";
import { approvedAfterDated, revisionsInOrder, approvedByAnother, sheetsScanned } from "./papers/revision-course.ts";
import { signaturesAuthorised } from "./papers/signatures.ts";
import { stepOrder, stepTimes, stepSigned, holdReleased } from "./papers/steps.ts";
import { feedPumpDuty } from "./safety/feed-pump.ts";
import {
  fittingPressure,
  fittingTemperature,
  limiterLocks,
  limiterFailsSafe,
  burnerHeatInput,
} from "./safety/fittings.ts";
import { lowLimiterLevel, highLimiterLevel } from "./safety/level-fittings.ts";
import { indicatorRange } from "./safety/level-indicator.ts";
import { lowLimitersIndependent, limitersApartFromControl } from "./safety/limiter-independence.ts";
import { gaugeRange, gaugeRedMark } from "./safety/pressure-gauge.ts";
import { controllerPressure, limiterPressure } from "./safety/pressure-settings.ts";
import { valveBench, valveReseat, valveReseatStated, valveReadings } from "./safety/safety-valve-bench.ts";
import { valvePapers } from "./safety/safety-valve-papers.ts";
import { valveSetPressure, valvePlate, valveArea, valveCategory } from "./safety/safety-valve.ts";
import { waterLevels } from "./safety/water-levels.ts";
import { calibrationInterval } from "./testing/calibration-interval.ts";
import { instrumentFigures } from "./testing/instrument-figures.ts";
import { instrumentSort } from "./testing/instrument-sorts.ts";
import { instrumentUses } from "./testing/instrument-uses.ts";
import { calibrated, gaugeAsRegistered } from "./testing/instruments.ts";
import { calibrationSigned } from "./testing/laboratory.ts";
import { examinationPressure, mediumOfTest } from "./testing/pressure-test-judged.ts";
import { testAfterWork, testBeforeCoating, testWitnessed } from "./testing/pressure-test.ts";
import { recordedHold } from "./testing/recorded-hold.ts";
import { pressureTestFigures } from "./testing/test-figures.ts";
import { testGauges } from "./testing/test-gauges.ts";
import { tubeEndInProcedure, tubeEndProcedureQualified } from "./tubes/procedures.ts";
import { tubeEndsCounted, stayTubesWelded } from "./tubes/tube-ends.ts";
import { tubeEndWelderQualified } from "./tubes/welders.ts";
import { consumablesComplete, batchCertificate, batchDried } from "./welding/consumables.ts";
import { depositedFits, depositedStated } from "./welding/deposited-thickness.ts";
import { repairExcavationNamed, repairExcavated, repairNonconformity } from "./welding/excavations.ts";
import { jointInProcedure, partThickness } from "./welding/joint-thickness.ts";
import { signedByWelder } from "./welding/log-signed.ts";
import { fitUpOffset, fitUpBy, jointOnDrawing } from "./welding/making.ts";
import { markBeforeCut, fitUpAfterCut, weldAfterFitUp, batchUsable } from "./welding/manufacture-order.ts";
import {
  productionTestStrength,
  productionTestImpact,
  productionTestHardness,
} from "./welding/production-test-values.ts";
import { productionTestMade } from "./welding/production-tests.ts";
import { repairCycle } from "./welding/repairs.ts";
import { runTemperatures } from "./welding/run-temperatures.ts";
import { seamOrder } from "./welding/seam-order.ts";
import { weldLogComplete, weldLogProcedure, fillerCertified } from "./welding/weld-log.ts";
import { welderApproved, welderRoute } from "./welding/welder-approval.ts";
import { confirmationBy, printedEnd } from "./welding/welder-papers.ts";
import { welderQualified, repairWelderQualified } from "./welding/welders.ts";
import { procedureInForce, procedureQualified } from "./welding/welding-procedures.ts";
import { jointsInProcedure, runsInProcedure } from "./welding-range/in-procedure.ts";
import { jointQualified } from "./welding-range/joint-qualified.ts";
import { qualificationRanges } from "./welding-range/printed-range.ts";
import { proceduresQualified } from "./welding-range/procedure-qualified.ts";
import { proceduresState } from "./welding-range/procedure-states.ts";
import { qualificationLevel } from "./welding-range/qualification-level.ts";
import { qualificationTests } from "./welding-range/qualification-tests.ts";
import {
  qualificationStrength,
  qualificationImpact,
  qualificationHardness,
} from "./welding-range/qualification-values.ts";
import { runFillerSize } from "./welding-range/run-filler-size.ts";
import { runLayers } from "./welding-range/run-layers.ts";
import { runsInWindow } from "./welding-range/run-window.ts";

/** Every shipped rule, by trade. */
export const rules: readonly Rule[] = [
  calculationPressureCovers,
  calculationTemperatureCovers,
  allowanceOfPart,
  moduleFitsCategory,
  declarationBodyNumber,
  declarationCertificates,
  designStandardServed,
  sheetStandardDeclared,
  dimensionWithin,
  measuredAlike,
  ...dimensionRows,
  openingJudged,
  weldCoefficientExtent,
  heatTreatmentChart,
  heatTreatmentPlanned,
  heatTreatmentAfterWelding,
  heatTreatmentTimes,
  heatTreatmentHeld,
  heatTreatmentLoad,
  heatTreatmentRates,
  heatTreatmentSpan,
  ...developedAreas,
  chemistryLimits,
  ...materialDates,
  deliveryCondition,
  ...documentsOfMaterial,
  ...certificateFigures,
  markMaterial,
  certificateType,
  certificateThickness,
  millApproved,
  printedMean,
  impactEnergy,
  ...millApprovals,
  plateCut,
  lengthCut,
  piecesOfPart,
  piecesDelivered,
  lengthsOfParts,
  lengthOfPart,
  ...rowMass,
  ...certifiedSizes,
  tensileLimits,
  impactTested,
  acceptanceLevel,
  ...citedEditions,
  testerAuthorised,
  ...surfaceConditions,
  rejectionExtended,
  extentFloor,
  visualExtent,
  magneticExtent,
  penetrantExtent,
  radiographicExtent,
  ultrasonicExtent,
  filmClass,
  filmDensity,
  filmLength,
  doubleImage,
  filmNumbers,
  wireSeen,
  testerIndependent,
  indicationPermitted,
  jointCoefficient,
  jointClosesPart,
  jointGoesRound,
  ...reportPeople,
  methodForWeld,
  testAfterWelding,
  testDelay,
  rowLength,
  testedWithinWeld,
  ...procedureUses,
  rejectedFor,
  repairTakesOut,
  testerSector,
  sourceNamed,
  sourceRange,
  testLevel,
  radiographicClass,
  testerPeriod,
  testerCertified,
  visualTesterCertified,
  testerApproved,
  ultrasonicTechnique,
  visualFirst,
  comparedByAnother,
  ...dateOrders,
  ...afterOrder,
  declarationLast,
  declarationStandard,
  certificateValid,
  drawingInForce,
  testProcedureInForce,
  repairProcedureInForce,
  ...checkedByAnother,
  roleOfFirm,
  ...firmsRegistered,
  milestonesInOrder,
  orderReached,
  finalReached,
  historyDays,
  nameplateMark,
  nameplateValve,
  closedBeforeTest,
  nonconformityState,
  closedByAnother,
  concessionHeld,
  cancelledWithout,
  agreedBeforeClosed,
  bodyAgreed,
  correctorNamed,
  repairDecided,
  ...pressureConcerned,
  ...raisedAfterFound,
  deviationReported,
  certificatePages,
  ...postsHeld,
  stepSignatories,
  pointOutcome,
  planInOrder,
  noticeGiven,
  ...bodyHolds,
  ...afterSteps,
  soleResponsibility,
  standardParts,
  typeYears,
  ...signedByNamed,
  plateAfterTest,
  ...approvedAfterDated,
  ...revisionsInOrder,
  ...approvedByAnother,
  ...sheetsScanned,
  ...signaturesAuthorised,
  stepOrder,
  stepTimes,
  stepSigned,
  holdReleased,
  feedPumpDuty,
  fittingPressure,
  fittingTemperature,
  limiterLocks,
  limiterFailsSafe,
  burnerHeatInput,
  lowLimiterLevel,
  highLimiterLevel,
  indicatorRange,
  lowLimitersIndependent,
  limitersApartFromControl,
  gaugeRange,
  gaugeRedMark,
  controllerPressure,
  limiterPressure,
  valveBench,
  valveReseat,
  valveReseatStated,
  valveReadings,
  ...valvePapers,
  valveSetPressure,
  valvePlate,
  valveArea,
  valveCategory,
  waterLevels,
  calibrationInterval,
  ...instrumentFigures,
  instrumentSort,
  ...instrumentUses,
  calibrated,
  gaugeAsRegistered,
  calibrationSigned,
  examinationPressure,
  mediumOfTest,
  testAfterWork,
  testBeforeCoating,
  testWitnessed,
  recordedHold,
  ...pressureTestFigures,
  testGauges,
  tubeEndInProcedure,
  tubeEndProcedureQualified,
  tubeEndsCounted,
  stayTubesWelded,
  tubeEndWelderQualified,
  consumablesComplete,
  batchCertificate,
  batchDried,
  depositedFits,
  depositedStated,
  repairExcavationNamed,
  repairExcavated,
  repairNonconformity,
  jointInProcedure,
  partThickness,
  ...signedByWelder,
  fitUpOffset,
  fitUpBy,
  jointOnDrawing,
  markBeforeCut,
  fitUpAfterCut,
  weldAfterFitUp,
  batchUsable,
  productionTestStrength,
  productionTestImpact,
  productionTestHardness,
  productionTestMade,
  repairCycle,
  runTemperatures,
  seamOrder,
  weldLogComplete,
  weldLogProcedure,
  fillerCertified,
  welderApproved,
  welderRoute,
  confirmationBy,
  printedEnd,
  welderQualified,
  repairWelderQualified,
  procedureInForce,
  procedureQualified,
  ...jointsInProcedure,
  ...runsInProcedure,
  jointQualified,
  ...qualificationRanges,
  ...proceduresQualified,
  ...proceduresState,
  qualificationLevel,
  qualificationTests,
  qualificationStrength,
  qualificationImpact,
  qualificationHardness,
  runFillerSize,
  runLayers,
  ...runsInWindow,
];
