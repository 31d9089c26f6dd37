import type { ListArgument, ListFunction, ListResult } from "../../model/calculation.ts";
import type { DateValue } from "../../model/dates.ts";
import type { Inputs, Thing } from "../../model/input.ts";
import { ProgramError } from "../../model/program-error.ts";
import type { Measure } from "../../model/quantity.ts";

export type Row = Thing<Inputs>;

/** Makes a named function of plain numbers. */
export function numbers(compute: (values: readonly number[]) => ListResult): ListFunction["compute"] {
  return (...values) => {
    const plain = values.filter((value) => typeof value === "number");
    if (plain.length !== values.length) throw new ProgramError("a function of numbers was given rows");
    return compute(plain);
  };
}

/** Makes a named function whose first argument is a list of rows, the rest numbers. */
export function rowsThenNumbers(
  compute: (rows: readonly Row[], values: readonly number[]) => ListResult,
): ListFunction["compute"] {
  return (...values) => {
    const [rows, ...rest] = values;
    const plain = rest.filter((value) => typeof value === "number");
    if (rows === undefined || typeof rows === "number" || plain.length !== rest.length)
      throw new ProgramError("a function of rows was given other arguments");
    return compute(rows, plain);
  };
}

/** All rows of all arguments, in order: for functions that take several lists of one sort. */
export function allRows(values: readonly ListArgument[]): readonly Row[] {
  return values.flatMap((value) => {
    if (typeof value === "number") throw new ProgramError("a function of rows was given a number");
    return value;
  });
}

/** A quantity of a row in the unit its input declares. Throws when the definition declared none of that name. */
export function quantityIn(row: Row, name: string): Measure {
  const value = row[name];
  if (!isMeasure(value)) throw new ProgramError(`the row has no quantity "${name}"`);
  return value;
}

/** As `quantityIn`, of an optional input: undefined where the row states none. */
export function quantityOf(row: Row, name: string): Measure | undefined {
  return row[name] === undefined ? undefined : quantityIn(row, name);
}

/** A text of a row. Throws when the definition declared none of that name. */
export function textIn(row: Row, name: string): string {
  const value = row[name];
  if (typeof value !== "string") throw new ProgramError(`the row has no text "${name}"`);
  return value;
}

/** A date of a row. Throws when the definition declared none of that name. */
export function dateIn(row: Row, name: string): DateValue {
  const value = row[name];
  if (!isDate(value)) throw new ProgramError(`the row has no date "${name}"`);
  return value;
}

const isMeasure = (value: unknown): value is Measure =>
  typeof value === "object" && value !== null && "low" in value && "high" in value;
const isDate = (value: unknown): value is DateValue =>
  typeof value === "object" && value !== null && "precision" in value && "from" in value;
