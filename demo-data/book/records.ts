import type { RecordTypes } from "../generated/records.ts";

export type Kind = keyof RecordTypes;

/** Which issue of a book: its revision, and the last day whose evidence is in it. */
export interface Edition {
  readonly revision: string;
  readonly cutOff: string;
}

/** The records of one kind that stand in one file, in the order of the book. */
export interface RecordFile {
  readonly path: string;
  readonly kind: Kind;
  readonly records: readonly object[];
}

/** The records of a kind in all files; `file` pairs every kind with records of its type, so the one cast is safe. */
export function recordsOf<K extends Kind>(files: readonly RecordFile[], kind: K): readonly RecordTypes[K][] {
  const found: unknown = files.filter((one) => one.kind === kind).flatMap(({ records }) => records);
  return found as readonly RecordTypes[K][];
}

export const file = <K extends Kind>(path: string, kind: K, records: readonly RecordTypes[K][]): RecordFile => ({
  path,
  kind,
  records,
});
