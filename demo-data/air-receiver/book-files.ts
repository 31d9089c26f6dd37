import { filesOf } from "../book/book-files.ts";
import { upTo } from "../book/edition.ts";
import { factsOf, type Facts } from "../book/facts.ts";
import type { Edition } from "../book/records.ts";
import { lentFiles } from "../order/records.ts";
import { originalsOf } from "./originals/index.ts";
import { recordFiles } from "./records.ts";

/** The final book, and the same book in mid-manufacture. */
export const finalEdition: Edition = { revision: "0", cutOff: "2026-07-17" };
export const interimEdition: Edition = { revision: "P3", cutOff: "2026-06-05" };

/** What the papers of an edition know: its own records and those of the shelves. */
export const factsIn = (edition: Edition): Facts => factsOf([...recordFiles(edition), ...lentFiles]);

/** Every file of the book folder of an edition by its path. */
export function bookFiles(edition: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const facts = factsIn(edition);
  const files = upTo(edition, recordFiles(edition), edition.revision === finalEdition.revision);
  return filesOf({ facts, files, originals: originalsOf(facts), cutOff: edition.cutOff });
}
