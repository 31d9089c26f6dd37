// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Closer } from "../model/closer.ts";
import { byItsRow, byItsRows } from "./carried.ts";
import { conceded, decided } from "./decided.ts";
import { groundDeeper } from "./excavation.ts";
import { repaired } from "./repair.ts";
import { measuredAgain, treatedAgain, testedAgain, triedAgain } from "./repeated.ts";
import { reportsRepeated } from "./reported-again.ts";
import { weldedAgain, partWeldedAgain } from "./welded-again.ts";

/** What may close a rejected result; the `x-closed-by` of a schema names them. */
export const closers: readonly Closer[] = [
  byItsRow,
  byItsRows,
  conceded,
  decided,
  groundDeeper,
  repaired,
  measuredAgain,
  treatedAgain,
  testedAgain,
  triedAgain,
  ...reportsRepeated,
  weldedAgain,
  partWeldedAgain,
];
