import type { OriginalText, TextsByPath, Told } from "../model/page-text.ts";
import { keptText, keepText } from "./text/kept.ts";
import { startWaiter, type OriginalFile } from "./waiting.ts";

/** The text of a file follows from its bytes: what was read once in a run stands. */
const known = new Map<string, OriginalText>();

let folder: string | undefined;

/** Names the folder in which texts are kept from run to run, by the hash of their file; it lies outside every book. */
export function keepTextsIn(dir: string | undefined): void {
  folder = dir;
}

/**
 * The texts of PDF originals by their path: those kept from an earlier run, and the others, which are begun to be read in
 * threads of their own; what is given back waits for them. Throws ForeignWorkEnded when a thread had to be ended.
 */
export function startTexts(originals: readonly OriginalFile[]): (told?: Told) => TextsByPath {
  const fresh = new Map<string, OriginalFile>();
  for (const one of originals) {
    if (known.has(one.sha256)) continue;
    const kept = folder === undefined ? undefined : keptText(folder, one.sha256);
    if (kept === undefined) fresh.set(one.sha256, one);
    else known.set(one.sha256, kept);
  }
  const files = [...fresh.values()];
  const wait = files.length === 0 ? undefined : startWaiter("text", files);
  return (told) => {
    wait?.(told).forEach((text, index) => {
      const { sha256 = "" } = files[index] ?? {};
      known.set(sha256, text);
      if (folder !== undefined) keepText(folder, sha256, text);
    });
    return new Map(
      originals.flatMap(({ path, sha256 }) => {
        const text = known.get(sha256);
        return text === undefined ? [] : [[path, text]];
      }),
    );
  };
}
