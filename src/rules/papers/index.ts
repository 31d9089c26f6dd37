// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { comparedByAnother } from "./comparison.ts";
import { dateOrders, afterOrder } from "./dates.ts";
import { declarationLast, declarationStandard, certificateValid } from "./declaration.ts";
import {
  drawingInForce,
  testProcedureInForce,
  documentInForce,
  repairProcedureInForce,
  checkedByAnother,
} from "./documents.ts";
import { partDrawn } from "./drawn-parts.ts";
import { citedEditions } from "./editions.ts";
import { roleOfFirm } from "./employers.ts";
import { firmsRegistered } from "./firms.ts";
import { milestonesInOrder, orderReached, finalReached, historyDays } from "./issue-days.ts";
import { nameplateMark, nameplateValve } from "./nameplate.ts";
import { closedBeforeTest, nonconformityState, closedByAnother, concessionHeld } from "./nonconformities.ts";
import { cancelledWithout, agreedBeforeClosed, bodyAgreed, correctorNamed } from "./nonconformity-course.ts";
import { repairDecided, pressureConcerned, raisedAfterFound, deviationReported } from "./nonconformity-subject.ts";
import { verifiedByTest } from "./nonconformity-verified.ts";
import { numbersTell } from "./numbers.ts";
import { certificatePages } from "./pages.ts";
import { postsHeld, stepSignatories } from "./people.ts";
import { bodyHolds, afterSteps } from "./plan-evidence.ts";
import { pointOutcome, stepPerformed, planInOrder, noticeGiven } from "./plan-points.ts";
import { soleResponsibility, standardParts, typeYears, signedByNamed, plateAfterTest } from "./release.ts";
import { approvedAfterDated, revisionsInOrder, approvedByAnother, sheetsScanned } from "./revision-course.ts";
import { signaturesAuthorised } from "./signatures.ts";
import { signedAs, signedByDoer, signedByAttending } from "./signed-as.ts";
import { stepRejected } from "./step-rejected.ts";
import { stepOrder, stepTimes, stepSigned, holdReleased } from "./steps.ts";

/** What rules/ has of papers. */
export const papersRules: readonly Rule[] = [
  comparedByAnother,
  ...dateOrders,
  ...afterOrder,
  declarationLast,
  declarationStandard,
  certificateValid,
  drawingInForce,
  testProcedureInForce,
  documentInForce,
  repairProcedureInForce,
  ...checkedByAnother,
  partDrawn,
  ...citedEditions,
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
  verifiedByTest,
  ...numbersTell,
  certificatePages,
  ...postsHeld,
  stepSignatories,
  ...bodyHolds,
  ...afterSteps,
  pointOutcome,
  stepPerformed,
  planInOrder,
  noticeGiven,
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
  ...signedAs,
  ...signedByDoer,
  signedByAttending,
  stepRejected,
  stepOrder,
  stepTimes,
  stepSigned,
  holdReleased,
];
