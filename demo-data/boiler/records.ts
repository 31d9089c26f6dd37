import { file, type RecordFile } from "../book/records.ts";
import { book, equipment } from "./facts/boiler.ts";
import { joints } from "./facts/joints.ts";
import { parts } from "./facts/parts.ts";

export { file, type RecordFile } from "../book/records.ts";

/** Every record file of the book but `original` records, without sources. */
export const recordFiles: readonly RecordFile[] = [
  file("book.json", "book", [book]),
  file("design/equipment.json", "equipment", [equipment]),
  file("design/parts.json", "part", parts),
  file("design/joints.json", "joint", joints),
];
