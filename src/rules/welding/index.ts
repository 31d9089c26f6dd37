// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { batchEnough } from "./batch-enough.ts";
import { confirmedByWork } from "./confirmed-by-work.ts";
import { consumablesComplete, batchCertificate, batchDried } from "./consumables.ts";
import { readingsCopied, welderAtOneJoint } from "./copied-readings.ts";
import { depositedFits, depositedStated } from "./deposited-thickness.ts";
import { dressedWall, dressedTested } from "./dressing.ts";
import { repairExcavationNamed, repairExcavated, repairNonconformity } from "./excavations.ts";
import { fitUpOffsetGreatest, fitUpGapAmong } from "./fit-up-stations.ts";
import { jointInProcedure, partThickness } from "./joint-thickness.ts";
import { signedByWelder } from "./log-signed.ts";
import { fitUpOffset, fitUpBy, jointOnDrawing } from "./making.ts";
import { markBeforeCut, fitUpAfterCut, weldAfterFitUp, batchUsable } from "./manufacture-order.ts";
import { productionTestSet, productionTestRoom } from "./production-test-set.ts";
import { productionTestTreated } from "./production-test-treated.ts";
import { productionTestStrength, productionTestImpact, productionTestHardness } from "./production-test-values.ts";
import { productionTestMade, productionTestOfSeam } from "./production-tests.ts";
import { repairAfterAgreement } from "./repair-agreed.ts";
import { repairWelderQualified } from "./repair-welders.ts";
import { repairCycle, repairDepth } from "./repairs.ts";
import { runsInOrder, bothSidesWelded, runsHaveTime } from "./run-course.ts";
import { runMeasured, everyWelderSigns } from "./run-measured.ts";
import { runTemperatures } from "./run-temperatures.ts";
import { seamOrder } from "./seam-order.ts";
import { weldLogComplete, weldLogProcedure, fillerCertified } from "./weld-log.ts";
import { welderApproved, welderRoute } from "./welder-approval.ts";
import { confirmationBy, printedEnd } from "./welder-papers.ts";
import { welderPrintedRange } from "./welder-printed-range.ts";
import { welderQualified } from "./welders.ts";
import { procedureInForce, procedureQualified } from "./welding-procedures.ts";

/** What rules/ has of welding. */
export const weldingRules: readonly Rule[] = [
  batchEnough,
  confirmedByWork,
  ...consumablesComplete,
  batchCertificate,
  batchDried,
  readingsCopied,
  welderAtOneJoint,
  depositedFits,
  depositedStated,
  dressedWall,
  dressedTested,
  repairExcavationNamed,
  repairExcavated,
  repairNonconformity,
  fitUpOffsetGreatest,
  fitUpGapAmong,
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
  productionTestSet,
  productionTestRoom,
  productionTestTreated,
  productionTestStrength,
  productionTestImpact,
  productionTestHardness,
  productionTestMade,
  productionTestOfSeam,
  repairAfterAgreement,
  repairWelderQualified,
  repairCycle,
  repairDepth,
  runsInOrder,
  bothSidesWelded,
  runsHaveTime,
  runMeasured,
  everyWelderSigns,
  runTemperatures,
  seamOrder,
  weldLogComplete,
  weldLogProcedure,
  fillerCertified,
  welderApproved,
  welderRoute,
  confirmationBy,
  printedEnd,
  welderPrintedRange,
  welderQualified,
  procedureInForce,
  procedureQualified,
];
