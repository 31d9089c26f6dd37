import type { Claim } from "./calculation.ts";
import { formulaOf } from "./formula/formula-of.ts";

/** What a comparison that fails says of its left side. */
const wrong = { "<=": "too high", "<": "too high", ">=": "too low", ">": "too low", "=": "differs" } as const;

/** Stable name of a comparison that fails, for keys: neither its formula nor its wording. */
export function nameOfClaim({ name, left, relation }: Claim): string {
  return name ?? `${left} ${wrong[relation]}`;
}

/** What keeps comparisons from being named in keys: a formula on the left without a name, or one name for two. */
export function nameProblems(claims: readonly Claim[]): readonly string[] {
  const names = claims.map(nameOfClaim);
  return [
    ...claims.flatMap(({ name, left, means }) =>
      name === undefined && formulaOf(left).type !== "symbol"
        ? [`"${means}" needs a name: "${left}" is a formula`]
        : [],
    ),
    ...names.flatMap((name, index) => (names.indexOf(name) < index ? [`two comparisons are named "${name}"`] : [])),
  ];
}
