// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../model/rule.ts";
import { approvalInForce, roleHeld } from "./approvals.ts";
import { calibrationInForce } from "./calibrations.ts";
import { testerInForce, visionInForce } from "./testers.ts";
import { welderInForce } from "./welders.ts";

/**
 * What a job takes from the last one must still hold on the day of its order: asked of a book that has just been begun,
 * by the engine and with the periods of its profile. No book is judged by these: it asks whether each held when it was
 * used.
 */
export const expiries: readonly Rule[] = [
  approvalInForce,
  roleHeld,
  calibrationInForce,
  testerInForce,
  visionInForce,
  welderInForce,
];
