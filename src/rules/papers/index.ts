// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { comparedByAnother } from "./comparison.ts";
import { dateOrders, afterOrder } from "./dates.ts";
import { declarationLast, declarationStandard, certificateValid } from "./declaration.ts";
import { drawingInForce, testProcedureInForce, repairProcedureInForce, checkedByAnother } from "./documents.ts";
import { firmsRegistered } from "./firms.ts";
import { nameplateMark, nameplateValve } from "./nameplate.ts";
import { closedBeforeTest, nonconformityState, closedByAnother, concessionHeld } from "./nonconformities.ts";
import { certificatePages } from "./pages.ts";
import { postsHeld, stepSignatories } from "./people.ts";
import { signaturesAuthorised } from "./signatures.ts";
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
  repairProcedureInForce,
  ...checkedByAnother,
  ...firmsRegistered,
  nameplateMark,
  nameplateValve,
  closedBeforeTest,
  nonconformityState,
  closedByAnother,
  concessionHeld,
  certificatePages,
  ...postsHeld,
  stepSignatories,
  ...signaturesAuthorised,
  stepOrder,
  stepTimes,
  stepSigned,
  holdReleased,
];
