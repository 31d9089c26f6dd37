import type { RecordTypes } from "../../src/generated/records.ts";

type Kind = keyof RecordTypes;

/** The records of one kind that stand in one file, in the order of the book. */
export interface RecordFile {
  readonly path: string;
  readonly kind: Kind;
  readonly records: readonly object[];
}

export const file = <K extends Kind>(path: string, kind: K, records: readonly RecordTypes[K][]): RecordFile => ({
  path,
  kind,
  records,
});
