import { addressOf, type BookRecord, type Address } from "./record.ts";

export type CalculationKey = `${string}|${Address}`;

/** One calculation on one record or row, `calculation|kind:id/pointer`: names its result, and the sheet of it. */
export const calculationKey = (
  calculation: string,
  record: Pick<BookRecord, "kind" | "id">,
  pointer: string,
): CalculationKey => `${calculation}|${addressOf(record, pointer)}`;
