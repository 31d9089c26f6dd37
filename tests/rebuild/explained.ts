import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Difference } from "./compare.ts";

/** Why outcomes of some things differ. Listed by hand in differences.json; what is not listed fails the test. */
export interface Explanation {
  readonly why: string;
  readonly kind: string;
  /** Verdicts there and here; "none": there is no such record. */
  readonly receiver: string;
  readonly rebuilt: string;
  /** Definitions, where the thing stands in both books; else all that ask about it. */
  readonly definitions?: readonly string[];
  /** Records, or rows of records. */
  readonly of: readonly string[];
}

export const explanations = (): readonly Explanation[] =>
  JSON.parse(readFileSync(join(import.meta.dirname, "differences.json"), "utf8")) as readonly Explanation[];

const covers = (one: Explanation, { definition, kind, receiver, rebuilt }: Difference, id: string): boolean =>
  one.kind === kind &&
  (one.receiver === receiver || (one.receiver === "any" && receiver !== "none")) &&
  (one.rebuilt === rebuilt || (one.rebuilt === "any" && rebuilt !== "none")) &&
  (one.definitions?.includes(definition) ?? true) &&
  (one.of.includes(id) || one.of.includes(id.split("#")[0] ?? ""));

/** Differences that no explanation covers, and things explained that do not differ. */
export function unexplained(
  found: readonly Difference[],
  list: readonly Explanation[],
): { readonly differs: readonly string[]; readonly idle: readonly string[] } {
  const used = new Set<string>();
  const differs = found.flatMap((difference) =>
    difference.of.flatMap((id) => {
      const own = list.filter((one) => covers(one, difference, id));
      for (const { kind, of } of own)
        for (const named of of) if (named === id || named === id.split("#")[0]) used.add(`${kind} ${named}`);
      const { definition, kind, receiver, rebuilt } = difference;
      return own.length > 0 ? [] : [`${definition} of ${kind} ${id}: ${receiver} there, ${rebuilt} here`];
    }),
  );
  const idle = list.flatMap(({ kind, of }) => of.flatMap((id) => (used.has(`${kind} ${id}`) ? [] : [`${kind} ${id}`])));
  return { differs, idle };
}
