import type { Basis } from "../../model/basis.ts";
import type { Condition } from "../../model/input.ts";
import type { Requirement } from "../../model/requirement.ts";
import type { Milestone, Owner } from "../../model/vocabulary.ts";

/** Fields that calculations read of records whose schema leaves them open. */
export interface OwedGroup {
  readonly name: string;
  readonly kind: string;
  readonly when: readonly Condition[];
  readonly due: Milestone;
  readonly owner: Owner;
  /** Path and what it is called. */
  readonly needs: readonly (readonly [string, string])[];
}

export const bearing: Condition = { path: "pressureBearing", equals: true };

/** What is taken off a nominal wall. */
export const allowed: OwedGroup["needs"] = [
  ["corrosionAllowance", "corrosion allowance"],
  ["thicknessUndertolerance", "undertolerance of the thickness"],
];

/** A row of the register for each field of each group. */
export function requirementsOf(groups: readonly OwedGroup[], basis: Basis): readonly Requirement[] {
  return groups.flatMap(({ name, kind, when, due, owner, needs }) =>
    needs.map(([path, called]) => ({
      id: `${name}-${path.replaceAll(/[^A-Za-z]+/g, "-").replace(/-$/, "")}`.toLowerCase(),
      title: `The ${called} of each ${name.replaceAll("-", " ")} is recorded`,
      each: { kind, when },
      needs: path,
      due,
      basis,
      owner,
    })),
  );
}
