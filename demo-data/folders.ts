import { bookFiles, finalEdition, interimEdition } from "./air-receiver/book-files.ts";
import { bookFiles as boilerFiles, boilerEdition } from "./boiler/book-files.ts";
import { bookFiles as vesselFiles, vesselEdition } from "./control-air/book-files.ts";
import { shelfFiles } from "./order/shelf-files.ts";

/** A folder that is made, below demo-data/: a book, or a shelf that books name. */
export interface MadeFolder {
  readonly folder: string;
  readonly make: () => Promise<ReadonlyMap<string, string | Uint8Array>>;
}

export const folders: readonly MadeFolder[] = [
  { folder: "boiler/book", make: () => boilerFiles(boilerEdition) },
  { folder: "shop/shelf", make: () => shelfFiles("shop") },
  { folder: "order/shelf", make: () => shelfFiles("order") },
  { folder: "air-receiver/book", make: () => bookFiles(finalEdition) },
  { folder: "air-receiver-interim/book", make: () => bookFiles(interimEdition) },
  { folder: "control-air/book", make: () => vesselFiles(vesselEdition) },
];
