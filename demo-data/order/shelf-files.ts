import { factsIn, finalEdition } from "../air-receiver/book-files.ts";
import { filesOf } from "../book/book-files.ts";
import { shelvedOriginals } from "./originals/index.ts";
import { shelvedFiles } from "./records.ts";

/** Every file of a shelf by its path. Papers that name an equipment were asked for with the receiver, the first of the order. */
export function shelfFiles(shelf: "shop" | "order"): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const facts = factsIn(finalEdition);
  return filesOf({
    facts,
    files: shelvedFiles[shelf],
    originals: shelvedOriginals(facts)[shelf],
    cutOff: finalEdition.cutOff,
  });
}
