import type { Field } from "../model/kind.ts";
import { parseQuantity } from "../model/quantity.ts";
import { unitOf } from "../model/units.ts";
import type { Cell } from "../sheets/cells.ts";
import { fault, value, type CellValue, type ColumnReading } from "./read-cell.ts";
import { readNumber } from "./written-number.ts";

const quantityForm = /^([<>]?)\s*([-−+]?\d(?:[\d.,'’\s]*\d)?)(?:\s*([\p{L}%°µ].*))?$/u;

/** A number with a unit: its own, that of the heading or of the map. */
export function quantity(cell: Cell, shown: string, field: Field, reading: ColumnReading): CellValue {
  if (cell.figure !== undefined) {
    const [number = "", unit] = cell.figure.split(" ");
    return checkedQuantity(withUnit(number, unit ?? reading.unit), field, unit ?? reading.unit);
  }
  if (/^\d+([.,]\d+)?[eE][+-]?\d+$/.test(shown)) {
    const read = readNumber(shown, reading);
    if ("fault" in read) return fault(read.fault, read.hint);
  }
  const pure = /^(.*\d)\s*\[1\]$/.exec(shown)?.[1];
  if (pure !== undefined) return quantity({ ...cell, shown: pure }, pure, field, { ...reading, unit: "1" });
  const match = quantityForm.exec(shown);
  if (match === null) return fault(`"${shown}" is no value with a unit`, 'write one number, such as "8.0" or "8.0 mm"');
  const [, bound = "", number = "", unit] = match;
  const read = readNumber(number, reading);
  if ("fault" in read) return fault(read.fault, read.hint === "" ? "write one number" : read.hint);
  const own = unit?.trim() ?? reading.unit;
  return checkedQuantity(bound + withUnit(read.figure, own), field, own);
}

const withUnit = (number: string, unit: string | undefined) =>
  unit === undefined || unit === "1"
    ? number
    : `${number} ${unitOf(unit) === undefined ? unit : unit.replaceAll(/\s/g, "")}`;

/** A quantity in our form, if it is one of the field. */
export function checkedQuantity(said: string, field: Field, stated?: string): CellValue {
  const unit = field.unit ?? "any";
  const bare = /^[<>]?[+-]?\d+(\.\d+)?$/.test(said) && unit !== "1" && stated !== "1";
  if (bare)
    return fault(
      `"${said}" has no unit`,
      'write the unit in brackets behind the heading, or under "unit" of the column in the map',
    );
  const parsed = parseQuantity(said, { unit, ...(field.difference === true && { difference: true }) });
  if (parsed.ok) return value(said);
  const { expected, hint } = parsed.problem;
  return fault(`"${said}" is read, where ${expected} is expected`, hint);
}
