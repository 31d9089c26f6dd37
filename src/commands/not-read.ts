import type { LoadedBook } from "../model/book.ts";
import { notReadWords } from "../model/not-read.ts";
import { plain } from "../report/plain.ts";

type Loaded = Pick<LoadedBook, "records" | "findings" | "unreadable">;

const shown = 5;

/**
 * What of a book could not be read, in one clause, for whoever says that something is not there; undefined where all of it
 * was read.
 */
export function notReadClause(loaded: Loaded): string | undefined {
  const words = notReadWords(loaded).map(plain);
  if (words.length === 0) return undefined;
  return `${words.slice(0, shown).join("; ")}${words.length > shown ? `; and ${words.length - shown} more` : ""}`;
}

/** The clause behind a refusal because something is not there: "…; it may stand where nothing was read: …". "" where all of it was. */
export function unlessNotRead(loaded: Loaded): string {
  const clause = notReadClause(loaded);
  return clause === undefined ? "" : `; it may stand where nothing was read: ${clause}`;
}

/** A line of its own below an answer that rests on what was read; "" where all of it was. */
export function notReadLine(loaded: Loaded): string {
  const clause = notReadClause(loaded);
  return clause === undefined ? "" : `not read: ${clause}; what stands there is not known here\n`;
}
