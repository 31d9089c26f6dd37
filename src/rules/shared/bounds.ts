import type { Relation } from "../../model/compare.ts";
import { holds, type Measure } from "../../model/quantity.ts";

/** How a value must stand to another, and what that other is called. */
export type Bound<N extends string> = readonly [relation: Relation, name: N, called: string];

const broken: Readonly<Record<Relation, string>> = {
  "<": "not below",
  "<=": "above",
  ">": "not above",
  ">=": "below",
  "=": "not at",
};

/** The first bound that a value does not keep: which, in words with both figures, and whether that is sure. */
export function brokenBound<N extends string>(
  value: Measure,
  others: Readonly<Record<N, Measure>>,
  bounds: readonly Bound<N>[],
): { readonly name: N; readonly said: string; readonly unsure: boolean } | undefined {
  for (const [relation, name, called] of bounds) {
    const answer = holds(value, relation, others[name]);
    if (answer !== "yes")
      return {
        name,
        said: `${value.text}, ${broken[relation]} ${called}, ${others[name].text}`,
        unsure: answer === "unsure",
      };
  }
  return undefined;
}
