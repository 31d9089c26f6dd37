import type { Inputs, Thing } from "../../src/model/input.ts";
import type { ListArgument, ListFunction } from "../../src/model/calculation.ts";
import { readRows, type PlainRow } from "../../src/model/plain-value.ts";

/** Value of a named function, or the words of its refusal. */
export function valueOf(named: ListFunction, ...values: readonly ListArgument[]): number | string {
  const result = named.compute(...values);
  return "refused" in result ? result.refused : result.value;
}

/** Lines with which a named function explains itself; fails when it refuses. */
export function linesOf(named: ListFunction, ...values: readonly ListArgument[]): readonly string[] {
  const result = named.compute(...values);
  if ("refused" in result) throw new Error(result.refused);
  return result.lines;
}

/** Rows of one input each, as they would stand in records; fails when one cannot be read. */
export function rows(inputs: Inputs, given: readonly PlainRow[]): readonly Thing<Inputs>[] {
  const read = readRows(inputs, given);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}
