import type { Calculation, CalculationExample, ListArgument } from "../../src/model/calculation.ts";
import { parseDate } from "../../src/model/dates.ts";
import type { Inputs, Thing } from "../../src/model/input.ts";
import { measure, parseQuantity } from "../../src/model/quantity.ts";

/** The values of an example as `run` takes them: numbers as they are, rows read as the inputs of the calculation say. */
export function valuesOf(calculation: Calculation, example: CalculationExample): ReadonlyMap<string, ListArgument> {
  return new Map(
    Object.entries(example.given).map(([symbol, value]): readonly [string, ListArgument] => {
      const input = calculation.inputs[symbol];
      if (input === undefined) throw new Error(`the example gives "${symbol}", which is no input`);
      if (typeof value === "number") return [symbol, value];
      if (input.rows === undefined) throw new Error(`the example gives rows for "${symbol}", which is a number`);
      return [symbol, rowsOf(input.rows, value)];
    }),
  );
}

/** Rows as they would stand in records, read as the inputs say. */
export function rowsOf(inputs: Inputs, rows: readonly Readonly<Record<string, unknown>>[]): readonly Thing<Inputs>[] {
  return rows.map((row, index) => {
    const handle = { address: `example:${index + 1}`, kind: "example", id: `row ${index + 1}` };
    const values = Object.entries(inputs).map(([name, input]) => [name, valueOf(row[name], input.reading)]);
    return { ...Object.fromEntries(values), $: handle } as Thing<Inputs>;
  });
}

function valueOf(value: unknown, reading: Inputs[string]["reading"]): unknown {
  if (reading.type === "quantity") {
    const parsed = parseQuantity(String(value), { unit: reading.unit });
    if (!parsed.ok) throw new Error(`${String(value)}: ${parsed.problem.expected}`);
    return measure(parsed.quantity, reading.unit);
  }
  if (reading.type === "date") {
    const parsed = parseDate(String(value));
    if (!parsed.ok) throw new Error(`${String(value)}: ${parsed.problem.expected}`);
    return parsed.date;
  }
  return value;
}
