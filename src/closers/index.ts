import type { Closer } from "../model/closer.ts";
import { byItsRow, byItsRows } from "./carried.ts";
import { conceded, decided } from "./decided.ts";
import { repaired } from "./repair.ts";
import { measuredAgain, testedAgain, treatedAgain, triedAgain } from "./repeated.ts";
import { partWeldedAgain, weldedAgain } from "./welded-again.ts";

/** What may close a rejected result; the `x-closed-by` of a schema names them. */
export const closers: readonly Closer[] = [
  repaired,
  byItsRow,
  byItsRows,
  conceded,
  decided,
  measuredAgain,
  treatedAgain,
  testedAgain,
  triedAgain,
  weldedAgain,
  partWeldedAgain,
];
