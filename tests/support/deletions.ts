import { expect } from "vitest";
import type { JudgedBook } from "../../src/model/book.ts";
import type { Change } from "./changes.ts";
import { judgeChanged, newRoots, recordsOf } from "./demo-book.ts";

/** A record of a book, found again by its kind and id. */
export interface Taken {
  readonly kind: string;
  readonly id: string;
}

/** Records that can be taken out of a book or its shelves: all but its two files that say what it is and which issue. */
export const takeable = (book: string): readonly Taken[] =>
  recordsOf(book).filter(({ kind }) => kind !== "book" && kind !== "issue");

export const kindsOf = (records: readonly Taken[]): readonly string[] =>
  [...new Set(records.map(({ kind }) => kind))].sort();

function rootsWithout(book: string, sound: JudgedBook, taken: readonly Taken[]) {
  const changes = taken.map(({ kind, id }): Change => ({ remove: `${kind}:${id}` }));
  const { judged, fatal } = judgeChanged(book, changes);
  expect(fatal).toEqual([]);
  return judged === null ? [] : newRoots(judged, sound);
}

/**
 * A record that is taken out is missed by one finding that blocks, which names the record or the need it met; by none
 * where there is a reason that it may go unnoticed.
 */
export function expectMissed(book: string, sound: JudgedBook, { kind, id }: Taken, reason: string | undefined): void {
  const roots = rootsWithout(book, sound, [{ kind, id }]);
  if (reason !== undefined) {
    expect(roots).toEqual([]);
    return;
  }
  expect(roots.map(({ message }) => message)).toHaveLength(1);
  const [root] = roots;
  const named = `${root?.key ?? ""} ${root?.message ?? ""} ${root?.why ?? ""}`;
  const met = sound.owed
    .filter((one) => one.evidence.some((record) => record.kind === kind && record.id === id))
    .map(({ requirement }) => requirement.title);
  expect(named.includes(id) || met.some((title) => named.includes(title))).toBe(true);
}

/**
 * A kind that is taken out whole is missed by one finding that blocks; of papers that the book itself owes one by one,
 * each by one.
 */
export function expectKindMissed(book: string, sound: JudgedBook, kind: string, papers = 1): void {
  const roots = rootsWithout(
    book,
    sound,
    takeable(book).filter((record) => record.kind === kind),
  );
  expect(roots.map(({ message }) => message)).toHaveLength(papers);
}
