import { filesOf } from "../book/book-files.ts";
import { factsOf } from "../book/facts.ts";
import type { Sheeted } from "../book/calculation-sheets.ts";
import type { Edition } from "../book/records.ts";
import { withSheets } from "../book/with-sheets.ts";
import { procedures } from "./facts/shop-procedures.ts";
import { originalsOf } from "./originals/index.ts";
import { recordFiles } from "./records.ts";

export const boilerEdition: Edition = { revision: "0", cutOff: "2026-05-22" };

/** Sheets of what was measured follow it; all others were there before anything was made. */
const job: Sheeted = {
  job: "TQ417",
  dayOf: ({ calculation, subject }) =>
    ["pressure-test", "safety-valve"].includes(subject.kind) || calculation.id === "steam-relief"
      ? "2026-05-13"
      : "2026-02-02",
};

/** The words of a procedure of the shop. */
const paragraphsOf = (id: string) => procedures.find(({ record }) => record.id === id)?.paragraphs;

/** Every file of the boiler's book folder by its path. */
export function bookFiles({ cutOff }: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const files = withSheets(recordFiles, job);
  const facts = factsOf(files);
  return filesOf({ facts, files, originals: originalsOf(facts, paragraphsOf), cutOff });
}
