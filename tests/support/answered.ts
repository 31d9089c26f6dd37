import type { Change } from "./changes.ts";
import { judgeChanged } from "./demo-book.ts";

/** Written in a fault in place of a digest, where an exception answers a finding with the digest the check prints. */
const asPrinted = "as printed";

/** The changes with every such digest entered, as a person would copy it: from a check of the book without the exception. */
export function answered(book: string, changes: readonly Change[]): readonly Change[] {
  const done: Change[] = [];
  for (const change of changes) {
    if ("add" in change && JSON.stringify(change.add).includes(`"${asPrinted}"`)) {
      const { judged } = judgeChanged(book, done);
      const digests = new Map(judged?.findings.map(({ key, digest }) => [key, digest]));
      done.push({ ...change, add: enter(change.add, digests) });
    } else done.push(change);
  }
  return done;
}

function enter(value: unknown, digests: ReadonlyMap<string, string>): unknown {
  if (Array.isArray(value)) return value.map((one) => enter(one, digests));
  if (typeof value !== "object" || value === null) return value;
  const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
  const about = entries.find(([name]) => name === "finding")?.[1];
  return Object.fromEntries(
    entries.map(([name, one]) => {
      if (name !== "digest" || one !== asPrinted) return [name, enter(one, digests)];
      const digest = digests.get(String(about));
      if (digest === undefined) throw new Error(`there is no finding ${String(about)} to answer`);
      return [name, digest];
    }),
  );
}
