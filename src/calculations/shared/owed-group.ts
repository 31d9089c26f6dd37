import type { Condition } from "../../model/input.ts";

/** Fields that calculations read of records whose schema leaves them open. */
export interface OwedGroup {
  readonly name: string;
  readonly kind: string;
  readonly when: readonly Condition[];
  readonly due: string;
  readonly owner: string;
  /** Path and what it is called. */
  readonly needs: readonly (readonly [string, string])[];
}

export const bearing: Condition = { path: "pressureBearing", equals: true };

/** What is taken off a nominal wall. */
export const allowed: OwedGroup["needs"] = [
  ["corrosionAllowance", "corrosion allowance"],
  ["thicknessUndertolerance", "undertolerance of the thickness"],
];
