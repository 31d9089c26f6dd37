import type { Rule } from "../model/rule.ts";
import { certificateThickness, certificateType, markMaterial, millApproved, transferOrder } from "./material-identity.ts";
import { chemistryLimits, printedMean, tensileLimits } from "./material-values.ts";
import { fillerCertified, jointInProcedure, partThickness, procedureInForce, procedureQualified, weldLogComplete, weldLogProcedure } from "./welding.ts";

/** Every shipped rule, in the order people read them. A test checks that no rule of this folder is left out. */
export const rules: readonly Rule[] = [
  markMaterial,
  certificateType,
  certificateThickness,
  millApproved,
  transferOrder,
  chemistryLimits,
  tensileLimits,
  printedMean,
  weldLogComplete,
  weldLogProcedure,
  procedureInForce,
  procedureQualified,
  jointInProcedure,
  partThickness,
  fillerCertified,
];
