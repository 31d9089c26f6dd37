import type { Rule } from "../model/rule.ts";
import { calibrationInterval } from "./calibration-interval.ts";
import { declarationBodyNumber, declarationCertificates, moduleFitsCategory } from "./conformity-assessment.ts";
import { afterOrder, dateOrders } from "./dates.ts";
import { certificateValid, declarationLast, declarationStandard } from "./declaration.ts";
import { dimensionWithin } from "./dimensions.ts";
import { comparedByAnother } from "./comparison.ts";
import { checkedByAnother, drawingInForce, repairProcedureInForce, testProcedureInForce } from "./documents.ts";
import { feedPumpDuty } from "./feed-pump.ts";
import { burnerHeatInput, fittingPressure, fittingTemperature, limiterFailsSafe, limiterLocks } from "./fittings.ts";
import { heatTreatmentAfterWelding, heatTreatmentPlanned, heatTreatmentTimes } from "./heat-treatment.ts";
import { calibrated, gaugeAsRegistered } from "./instruments.ts";
import { jointInProcedure, partThickness } from "./joint-thickness.ts";
import { highLimiterLevel, lowLimiterLevel } from "./level-fittings.ts";
import { limitersApartFromControl, lowLimitersIndependent } from "./limiter-independence.ts";
import { indicatorRange } from "./level-indicator.ts";
import { batchUsable, fitUpAfterCut, markBeforeCut, weldAfterFitUp } from "./manufacture-order.ts";
import { chemistryLimits } from "./material-chemistry.ts";
import { materialDates } from "./material-dates.ts";
import { certificateThickness, certificateType, markMaterial, millApproved } from "./material-identity.ts";
import { designStandardServed, sheetStandardDeclared } from "./design-standards.ts";
import { deliveryCondition } from "./material-delivery.ts";
import { impactEnergy, printedMean } from "./material-impact.ts";
import { tensileLimits } from "./material-strength.ts";
import { nameplateMark, nameplateValve } from "./nameplate.ts";
import { magneticExtent, penetrantExtent, radiographicExtent, ultrasonicExtent, visualExtent } from "./ndt-extent.ts";
import { rowLength, testAfterWelding, testDelay } from "./ndt-order.ts";
import { closedBeforeTest, closedByAnother, concessionHeld, nonconformityState } from "./nonconformities.ts";
import { openingJudged } from "./openings.ts";
import { certificatePages } from "./pages.ts";
import { lengthCut, plateCut } from "./pieces-cut.ts";
import { postsHeld, stepSignatories } from "./people.ts";
import { gaugeRange, gaugeRedMark } from "./pressure-gauge.ts";
import { controllerPressure, limiterPressure } from "./pressure-settings.ts";
import { testGauges } from "./test-gauges.ts";
import { depositedFits, depositedStated } from "./deposited-thickness.ts";
import { examinationPressure, mediumOfTest } from "./pressure-test-judged.ts";
import { recordedHold } from "./recorded-hold.ts";
import { testAfterWork, testBeforeCoating, testWitnessed } from "./pressure-test.ts";
import { registerFits } from "./register.ts";
import { repairCycle } from "./repairs.ts";
import { runTemperatures } from "./run-temperatures.ts";
import { valveBench, valveReadings, valveReseat, valveReseatStated } from "./safety-valve-bench.ts";
import { valveArea, valveCategory, valvePlate, valveSetPressure } from "./safety-valve.ts";
import { signaturesAuthorised } from "./signatures.ts";
import { holdReleased, stepOrder, stepSigned, stepTimes } from "./steps.ts";
import { testerApproved, testerCertified, visualTesterCertified } from "./testers.ts";
import { testerPeriod } from "./tester-period.ts";
import { wireSeen } from "./image-quality.ts";
import { radiographicClass, testLevel } from "./test-level.ts";
import { tubeEndInProcedure, tubeEndProcedureQualified } from "./tube-end-procedures.ts";
import { tubeEndWelderQualified } from "./tube-end-welders.ts";
import { stayTubesWelded, tubeEndsCounted } from "./tube-ends.ts";
import { waterLevels } from "./water-levels.ts";
import { weldCoefficientExtent } from "./weld-coefficient.ts";
import { welderApproved, welderRoute } from "./welder-approval.ts";
import { repairWelderQualified, welderQualified } from "./welders.ts";
import { fillerCertified, weldLogComplete, weldLogProcedure } from "./weld-log.ts";
import { procedureInForce, procedureQualified } from "./welding-procedures.ts";

/** Every shipped rule, in the order people read them. A test checks that no rule of this folder is left out. */
export const rules: readonly Rule[] = [
  registerFits,
  designStandardServed,
  sheetStandardDeclared,
  markMaterial,
  certificateType,
  certificateThickness,
  certificatePages,
  millApproved,
  ...materialDates,
  chemistryLimits,
  tensileLimits,
  impactEnergy,
  printedMean,
  deliveryCondition,
  markBeforeCut,
  fitUpAfterCut,
  weldAfterFitUp,
  batchUsable,
  weldLogComplete,
  weldLogProcedure,
  runTemperatures,
  procedureInForce,
  procedureQualified,
  jointInProcedure,
  fillerCertified,
  plateCut,
  lengthCut,
  partThickness,
  welderQualified,
  repairWelderQualified,
  welderApproved,
  welderRoute,
  weldCoefficientExtent,
  visualExtent,
  magneticExtent,
  penetrantExtent,
  radiographicExtent,
  ultrasonicExtent,
  testAfterWelding,
  testDelay,
  rowLength,
  testerCertified,
  visualTesterCertified,
  radiographicClass,
  wireSeen,
  testerApproved,
  testerPeriod,
  testLevel,
  repairCycle,
  heatTreatmentPlanned,
  heatTreatmentAfterWelding,
  heatTreatmentTimes,
  dimensionWithin,
  openingJudged,
  tubeEndsCounted,
  stayTubesWelded,
  tubeEndInProcedure,
  tubeEndProcedureQualified,
  tubeEndWelderQualified,
  calibrated,
  gaugeAsRegistered,
  calibrationInterval,
  testGauges,
  testAfterWork,
  testBeforeCoating,
  testWitnessed,
  recordedHold,
  examinationPressure,
  depositedFits,
  depositedStated,
  mediumOfTest,
  valveSetPressure,
  valvePlate,
  valveArea,
  valveCategory,
  valveBench,
  valveReseat,
  valveReseatStated,
  valveReadings,
  waterLevels,
  indicatorRange,
  lowLimiterLevel,
  highLimiterLevel,
  controllerPressure,
  limiterPressure,
  limiterLocks,
  limiterFailsSafe,
  lowLimitersIndependent,
  limitersApartFromControl,
  gaugeRange,
  gaugeRedMark,
  feedPumpDuty,
  burnerHeatInput,
  fittingPressure,
  fittingTemperature,
  drawingInForce,
  testProcedureInForce,
  repairProcedureInForce,
  ...checkedByAnother,
  comparedByAnother,
  stepOrder,
  stepTimes,
  stepSigned,
  holdReleased,
  ...postsHeld,
  stepSignatories,
  ...signaturesAuthorised,
  closedBeforeTest,
  nonconformityState,
  closedByAnother,
  concessionHeld,
  ...dateOrders,
  ...afterOrder,
  nameplateMark,
  nameplateValve,
  moduleFitsCategory,
  declarationBodyNumber,
  declarationCertificates,
  declarationLast,
  declarationStandard,
  certificateValid,
];
