import { filesOf } from "../book/book-files.ts";
import { upTo } from "../book/edition.ts";
import { factsOf } from "../book/facts.ts";
import type { Edition } from "../book/records.ts";
import { originalsOf } from "./originals/index.ts";
import { recordFiles } from "./records.ts";

/** The final book, and the same book in mid-manufacture. */
export const finalEdition: Edition = { revision: "0", cutOff: "2026-07-17" };
export const interimEdition: Edition = { revision: "P3", cutOff: "2026-06-05" };

/** Every file of the book folder of an edition by its path. */
export function bookFiles(edition: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const whole = recordFiles(edition);
  const facts = factsOf(whole);
  const files = upTo(edition, whole, edition.revision === finalEdition.revision);
  return filesOf({ facts, files, originals: originalsOf(facts), cutOff: edition.cutOff });
}
