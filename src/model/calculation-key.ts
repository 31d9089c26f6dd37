import type { Branded } from "./branded.ts";
import { addressOf, type BookRecord } from "./record.ts";

/** Name of one result: no name of a finding. */
export type CalculationKey = Branded<"calculation">;

/** One calculation on one record or row, `calculation|kind:id/pointer`: names its result, and the sheet of it. */
export const calculationKey = (
  calculation: string,
  record: Pick<BookRecord, "kind" | "id">,
  pointer: string,
): CalculationKey => `${calculation}|${addressOf(record, pointer)}` as CalculationKey;
