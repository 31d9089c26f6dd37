import type { BoundInput } from "../model/book.ts";
import type { Calculation, CalculationInput, ListArgument } from "../model/calculation.ts";
import type { Inputs, Thing } from "../model/input.ts";
import { isSingle, type Measure } from "../model/quantity.ts";
import { bindInputs, pathOf, readAllOf, type Places } from "../reading/bind.ts";
import { follow } from "../reading/follow.ts";
import { readText, type Hit } from "../reading/hit.ts";
import { notUsable } from "../reading/reasons.ts";
import { onlyOne } from "../reading/single.ts";
import { clear, newTrail, type Trail } from "../reading/trail.ts";
import { measureOf, Waiting } from "../reading/value.ts";
import type { World } from "../reading/world.ts";

export interface BoundCalculation {
  /** Values of the inputs nothing stands in the way of. */
  readonly given: ReadonlyMap<string, ListArgument>;
  readonly inputs: ReadonlyMap<string, BoundInput>;
  readonly hits: ReadonlyMap<string, Hit>;
  /** What each input was read from, and what stands in its way. */
  readonly trails: ReadonlyMap<string, Trail>;
  /** Where a row that a named function got stands. */
  placeOf(row: object): Hit | undefined;
}

/** Binds every input, each with a trail of its own: one that is absent, doubted or of no use keeps no other from being read. */
export function bindAll(world: World, calculation: Calculation, start: Hit): BoundCalculation {
  const given = new Map<string, ListArgument>();
  const inputs = new Map<string, BoundInput>();
  const hits = new Map<string, Hit>();
  const trails = new Map<string, Trail>();
  const places: Places[] = [];
  for (const [symbol, input] of Object.entries(calculation.inputs)) {
    const trail = newTrail();
    trails.set(symbol, trail);
    if (input.rows !== undefined) {
      const rows = bindRows(world, input, input.rows, start, trail);
      // Without any, steps that need them are left out.
      if (rows === null || (rows.things.length === 0 && input.need === "optional")) continue;
      places.push(rows.places);
      if (clear(trail)) given.set(symbol, rows.things);
      inputs.set(symbol, { symbol, rows: rows.things.length });
      continue;
    }
    const found = follow(world, pathOf(input.path), start, trail, (input.need ?? "required") === "required");
    const hit = onlyOne(world, found, trail, start, input.path);
    if (hit === undefined) {
      const { otherwise } = input;
      if (otherwise !== undefined)
        inputs.set(symbol, { symbol, value: otherwise, origin: { type: "default", value: otherwise } });
      continue;
    }
    hits.set(symbol, hit);
    const bound = bindOne(world, symbol, input, hit, trail);
    if (bound === null) continue;
    inputs.set(symbol, bound);
    if (bound.value !== undefined && clear(trail)) given.set(symbol, bound.value);
  }
  const placeOf = (row: object) => places.map((one) => one.thing(row)?.hit).find((hit) => hit !== undefined);
  return { given, inputs, hits, trails, placeOf };
}

/** One input on its own, as far as nothing has to be computed for it; null when it has no single value. */
export function bindAlone(
  world: World,
  symbol: string,
  input: CalculationInput,
  start: Hit,
  trail: Trail,
): BoundInput | null {
  if (input.rows !== undefined) return null;
  const hit = onlyOne(world, follow(world, pathOf(input.path), start, trail, false), trail, start, input.path);
  return hit === undefined ? null : bindOne(world, symbol, input, hit, trail);
}

function bindOne(world: World, symbol: string, input: CalculationInput, hit: Hit, trail: Trail): BoundInput | null {
  const written = readText(world, hit, trail) ?? "";
  const origin = hit.origin === null ? {} : { origin: hit.origin };
  const refuse = (sort: string, words: string): null => {
    // An unreadable value was accused when it was first read; any other one is said here.
    if (trail.doubts.length === 0) notUsable(world, trail, hit, written, { sort, words });
    return null;
  };
  if (input.options !== undefined) {
    const value = input.options.indexOf(written);
    return value < 0 ? refuse("option", `one of ${input.options.join(", ")}`) : { symbol, value, written, ...origin };
  }
  const measure = measureOf(hit, written, input.unit);
  if (measure === undefined)
    return refuse(input.unit, input.unit === "1" ? "a pure number" : `a quantity in ${input.unit}`);
  const { value, bound } = safeSide(measure, input.unsafe ?? "any");
  if (value === undefined) return refuse("bound", "a value, not a bound that leaves the unsafe side open,");
  if (hit.origin?.type === "calculation") return { symbol, value, written: plain(value, input.unit), ...origin };
  return { symbol, value, measured: true, written, ...(bound !== undefined && { bound }), ...origin };
}

/** Of "<0.003 %" or ">5 mm" the bound on the unsafe side: the high end of what must not be understated, and so on. */
export function safeSide(
  measure: Measure,
  unsafe: "low" | "high" | "any",
): { readonly value?: number; readonly bound?: "low" | "high" } {
  if (isSingle(measure)) return { value: measure.value };
  if (unsafe === "any") return {};
  const [value, bound] = unsafe === "low" ? ([measure.high, "high"] as const) : ([measure.low, "low"] as const);
  return Number.isFinite(value) ? { value, bound } : {};
}

/** Full precision without exponent: what one calculation hands to another is never rounded. */
function plain(value: number, unit: string): string {
  const digits = value.toFixed(12).replace(/\.?0+$/, "");
  return unit === "1" ? digits : `${digits} ${unit}`;
}

function bindRows(
  world: World,
  input: CalculationInput,
  rows: Inputs,
  hit: Hit,
  trail: Trail,
): { readonly things: readonly Thing<Inputs>[]; readonly places: Places } | null {
  const need = input.need === undefined || input.need === "required" ? "required" : "any";
  const reading = { type: "thing", inputs: rows } as const;
  const bound = bindInputs(world, { rows: { path: input.path, need, many: true, reading } }, hit, trail);
  if (!bound.complete) return null;
  try {
    const things = bound.values["rows"];
    if (!areThings(things)) return null;
    // Named functions must not wait in the middle: everything they may read is read now.
    readAllOf(things);
    return { things, places: bound.places };
  } catch (reason) {
    if (reason instanceof Waiting) return null;
    throw reason;
  }
}

function areThings(value: unknown): value is readonly Thing<Inputs>[] {
  return Array.isArray(value);
}
