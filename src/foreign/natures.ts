import type { OriginalNature } from "../model/original.ts";
import { startWaiter, type OriginalFile } from "./waiting.ts";

/** The nature of a file follows from its bytes and the end of its name: what was found once in a run stands. */
const known = new Map<string, OriginalNature>();
const keyOf = ({ path, sha256 }: OriginalFile) => `${sha256} ${/\.[^./]*$/.exec(path)?.[0].toLowerCase() ?? ""}`;

/**
 * Begins to look at originals in threads of their own; the answer waits for them. Throws ForeignWorkEnded when a thread
 * had to be ended.
 */
export function startNatures(originals: readonly OriginalFile[]): () => ReadonlyMap<string, OriginalNature> {
  const fresh = [
    ...new Map(originals.filter((one) => !known.has(keyOf(one))).map((one) => [keyOf(one), one])).values(),
  ];
  const wait = fresh.length === 0 ? undefined : startWaiter("nature", fresh);
  return () => {
    wait?.().forEach((nature, index) => {
      const one = fresh[index];
      if (one !== undefined) known.set(keyOf(one), nature);
    });
    return new Map(
      originals.flatMap((one) => {
        const nature = known.get(keyOf(one));
        return nature === undefined ? [] : [[one.path, nature]];
      }),
    );
  };
}
