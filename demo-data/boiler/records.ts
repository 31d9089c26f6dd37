import { book, equipment } from "./facts/boiler.ts";
import { joints } from "./facts/joints.ts";
import { parts } from "./facts/parts.ts";
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

/** Every record file of the book but `original` records, without sources. */
export const recordFiles: readonly RecordFile[] = [
  file("book.json", "book", [book]),
  file("design/equipment.json", "equipment", [equipment]),
  file("design/parts.json", "part", parts),
  file("design/joints.json", "joint", joints),
];
