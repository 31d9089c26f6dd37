import type { LoadedBook } from "./book.ts";
import type { Finding } from "./finding.ts";
import { addressOf } from "./record.ts";

type Loaded = Pick<LoadedBook, "records" | "findings" | "unreadable">;

/** Findings of files and shelves that could not be read: what seems absent may stand in them. */
export function notRead({ records, findings, unreadable }: Loaded): readonly Finding[] {
  const book = records.find(({ kind }) => kind === "book");
  const shelves = book === undefined ? undefined : addressOf(book, "/shelves");
  return findings
    .filter(({ severity }) => severity !== "note")
    .filter(
      ({ place, accuses }) =>
        unreadable.includes(place.file) || (shelves !== undefined && accuses.some((one) => one.startsWith(shelves))),
    );
}

/** What could not be read, a clause for each: `the shelf "shop" is not there: …`. Empty where all was. */
export function notReadWords(loaded: Loaded): readonly string[] {
  const found = notRead(loaded);
  const said = new Set(found.map(({ place }) => place.file));
  const files = loaded.unreadable.filter((file) => !said.has(file));
  return [
    ...new Set([
      ...found.map(({ place, message }) =>
        loaded.unreadable.includes(place.file) ? `${place.file} cannot be read: ${message}` : message,
      ),
      ...files.map((file) => `${file} cannot be read`),
    ]),
  ];
}
