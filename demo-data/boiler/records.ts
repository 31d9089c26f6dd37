import { file, type RecordFile } from "../book/records.ts";
import { book, equipment } from "./facts/boiler.ts";
import { fittings } from "./facts/fittings.ts";
import { tubeEndGroups } from "./facts/tube-ends.ts";
import { joints } from "./facts/joints.ts";
import { parts } from "./facts/parts.ts";
import { supplyFiles } from "./facts/supply-files.ts";
import { weldingFiles } from "./facts/welding-files.ts";

/** Every record file of the book but `original` records, without sources. */
export const recordFiles: readonly RecordFile[] = [
  file("book.json", "book", [book]),
  file("design/equipment.json", "equipment", [equipment]),
  file("design/parts.json", "part", parts),
  file("design/joints.json", "joint", joints),
  ...supplyFiles,
  ...weldingFiles,
  file("welding/tube-ends.json", "tube-end-group", tubeEndGroups),
  file("completion/fittings.json", "fitting", fittings),
];
