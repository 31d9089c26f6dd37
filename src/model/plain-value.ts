import { parseDate } from "./dates.ts";
import type { Handle, Input, Inputs, Reading, Thing } from "./input.ts";
import { exactly, measure, parseQuantity, type Measure } from "./quantity.ts";
import { addressOf } from "./record.ts";
import { spokenId } from "./subject.ts";

/** A value outside any record: as a record would write it, or a plain number in the unit that is read. */
export type Plain = string | number | boolean | readonly Plain[] | PlainRow;
export interface PlainRow {
  readonly [name: string]: Plain | undefined;
}

export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

const read = <T>(value: T): Read<T> => ({ ok: true, value });
const unread = (problem: string): Read<never> => ({ ok: false, problem });

/** One value as a definition reads it. Nothing is guessed: what does not fit is a problem that says what was expected. */
export function readPlain(reading: Reading, given: unknown, name = "row"): Read<unknown> {
  switch (reading.type) {
    case "quantity":
      return readQuantity(reading.unit, given);
    case "date": {
      const parsed = typeof given === "string" ? parseDate(given) : undefined;
      if (parsed?.ok === true) return read(parsed.date);
      return unread(`${shown(given)} is no date`);
    }
    case "text":
      return typeof given === "string" ? read(given) : unread(`${shown(given)} is no text`);
    case "count":
      return typeof given === "number" && Number.isFinite(given) ? read(given) : unread(`${shown(given)} is no number`);
    case "flag":
      return typeof given === "boolean" ? read(given) : unread(`${shown(given)} is neither true nor false`);
    case "exists":
      return read(given !== undefined);
    case "table":
      return unread("a table is asked, never given");
    case "thing":
      return readRow(reading.inputs, given, name);
  }
}

/** A number in `unit`, or a text as a record would write it. */
export function readQuantity(unit: string, given: unknown): Read<Measure> {
  if (typeof given === "number")
    return Number.isFinite(given) ? read(exactly(given, unit)) : unread(`${given} is no number`);
  if (typeof given !== "string") return unread(`${shown(given)} is no quantity in ${unit}`);
  const parsed = parseQuantity(given, { unit });
  return parsed.ok ? read(measure(parsed.quantity, unit)) : unread(`${shown(given)} is not ${parsed.problem.expected}`);
}

/** Plain rows as a definition reads them; the first value that cannot be read is the problem, named by its row. */
export function readRows(inputs: Inputs, given: unknown): Read<readonly Thing<Inputs>[]> {
  if (!Array.isArray(given)) return unread(`${shown(given)} is no list of rows`);
  const rows: Thing<Inputs>[] = [];
  for (const [index, row] of given.entries()) {
    const bound = readRow(inputs, row, `row ${index + 1}`);
    if (!bound.ok) return unread(bound.problem);
    rows.push(bound.value);
  }
  return read(rows);
}

function readRow(inputs: Inputs, given: unknown, name: string): Read<Thing<Inputs>> {
  if (typeof given !== "object" || given === null || Array.isArray(given)) return unread(`${name} is no object`);
  const own = new Map(Object.entries(given));
  const unknown = [...own.keys()].find((key) => key !== "$" && !Object.hasOwn(inputs, key));
  if (unknown !== undefined)
    return unread(`${name} states "${unknown}"; what is read of a row is ${Object.keys(inputs).join(", ")}`);
  const values: Record<string, unknown> = {};
  for (const [key, input] of Object.entries(inputs)) {
    const value = readInput(input, own.get(key), name);
    if (!value.ok) return unread(`${name}, ${key}: ${value.problem}`);
    values[key] = value.value;
  }
  const id: unknown = own.get("$");
  return read(Object.assign(values, { $: handleOf(typeof id === "string" ? id : name) }));
}

function readInput(input: Input<unknown>, given: unknown, name: string): Read<unknown> {
  if (input.reading.type === "exists") return read(given === true);
  if (given === undefined || (Array.isArray(given) && given.length === 0 && input.need === "required"))
    return input.need === "required" ? unread("nothing is stated") : read(input.many ? [] : undefined);
  if (!input.many) return readPlain(input.reading, given, name);
  const values: unknown[] = [];
  for (const one of Array.isArray(given) ? given : [given]) {
    const value = readPlain(input.reading, one, name);
    if (!value.ok) return value;
    values.push(value.value);
  }
  return read(values);
}

const handleOf = (id: string): Handle => ({
  address: addressOf({ kind: "given", id }),
  kind: "given",
  id,
  name: spokenId(id),
});

/** A value in a message, short whatever was given. */
function shown(value: unknown): string {
  if (typeof value === "string") return value.length > 60 ? `"${value.slice(0, 57)}…"` : `"${value}"`;
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return value === undefined ? "nothing" : `a value of type ${value === null ? "null" : typeof value}`;
}
