import type { Calculation, CalculationInput, ListArgument } from "../model/calculation.ts";
import { readQuantity, readRows, type Plain, type PlainRow, type Read } from "../model/plain-value.ts";
import { safeSide } from "./inputs.ts";
import { run as runBound, type Run } from "./run.ts";

/** Plain values by symbol: numbers in the declared unit, texts as records write them, rows as objects of either. */
export type PlainValues = Readonly<Record<string, number | string | readonly PlainRow[] | undefined>>;

/**
 * Does a calculation with plain values. What a value cannot be read for, and what is required and not given, is said in
 * `refused`, and then nothing is computed. Never throws on data; throws `ProgramError` for a faulty definition.
 */
export function run(calculation: Calculation, values: PlainValues): Run {
  const bound = bindPlain(calculation, values);
  return bound.ok ? runBound(calculation, bound.value) : refused(bound.problem);
}

/** Plain values as `run` of bound values takes them; the first that does not fit is the problem. */
export function bindPlain(calculation: Calculation, values: PlainValues): Read<ReadonlyMap<string, ListArgument>> {
  const { inputs } = calculation;
  const given = new Map<string, ListArgument>();
  for (const [symbol, value] of Object.entries(values)) {
    const input = Object.hasOwn(inputs, symbol) ? inputs[symbol] : undefined;
    if (input === undefined)
      return { ok: false, problem: `"${symbol}" is not read; what is read is ${Object.keys(inputs).join(", ")}` };
    // What is stated as undefined is not stated.
    if (value === undefined) continue;
    const bound = bindOne(input, value);
    if (!bound.ok) return { ok: false, problem: `${symbol}, ${input.means}: ${bound.problem}` };
    // Without rows, steps that need them are left out, as they are for a record without any.
    if (typeof bound.value !== "number" && bound.value.length === 0 && input.need === "optional") continue;
    given.set(symbol, bound.value);
  }
  const missing = Object.entries(inputs).find(
    ([symbol, { need }]) => (need ?? "required") === "required" && !given.has(symbol),
  );
  return missing === undefined
    ? { ok: true, value: given }
    : { ok: false, problem: `${missing[0]}, ${missing[1].means}: nothing is given` };
}

function bindOne(input: CalculationInput, value: Plain): Read<ListArgument> {
  if (input.rows !== undefined) {
    const rows = readRows(input.rows, value);
    if (!rows.ok) return rows;
    return rows.value.length === 0 && (input.need ?? "required") === "required"
      ? { ok: false, problem: "no row is given" }
      : rows;
  }
  if (input.options !== undefined) {
    const at = typeof value === "number" ? value : input.options.findIndex((one) => one === value);
    return input.options[at] === undefined
      ? { ok: false, problem: `expected one of ${input.options.join(", ")}` }
      : { ok: true, value: at };
  }
  const one = readQuantity(input.unit, value);
  if (!one.ok) return one;
  const side = safeSide(one.value, input.unsafe ?? "any").value;
  return side === undefined
    ? { ok: false, problem: "a bound leaves the unsafe side open; expected a value" }
    : { ok: true, value: side };
}

const refused = (problem: string): Run => ({
  values: new Map(),
  steps: [],
  limits: [],
  accept: [],
  decisive: new Map(),
  refused: problem,
});
