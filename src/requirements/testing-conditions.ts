import type { Condition } from "../model/input.ts";

/** A joint whose tests include a method. */
export const asksFor = (method: string): Condition => ({ path: "requiredTests[].method", equals: method });

/** A repair that was welded, and not dressed alone. */
export const weldedRepair: Condition = { path: "dressing", exists: false };

/** A joint whose welding procedure ends with a heat treatment. */
export const treated: Condition = { path: "weldingProcedure.postWeldHeatTreatment", equals: true };

/** Tests whose testers are certified whatever the profile says. */
export const certifiedMethod: Condition = { path: "method", equals: ["MT", "PT", "RT", "UT"] };

/** Visual tests, where the profile asks for a certificate. */
export const visualCertified: readonly Condition[] = [
  { path: "method", equals: "VT" },
  { path: "profile.visualTesterCertificate", equals: "required" },
];

export { heldThrough } from "../calculations/shared/held-through.ts";
