import type { Rule } from "../model/rule.ts";
import { approvalInForce, roleHeld } from "./approvals.ts";
import { calibrationInForce } from "./calibrations.ts";
import { testerInForce, visionInForce } from "./testers.ts";
import { welderInForce } from "./welders.ts";

/**
 * What a job takes from the last one must still hold on the day of its order. No book is judged by these: a book asks whether
 * it held when it was used. They are asked of a book that has just been begun, by the engine and with the periods of its profile.
 */
export const expiries: readonly Rule[] = [
  welderInForce,
  testerInForce,
  visionInForce,
  calibrationInForce,
  approvalInForce,
  roleHeld,
];
