import { parseDate, type DateValue } from "../model/dates.ts";
import type { Reading } from "../model/input.ts";
import { exactly, measure, parseQuantity, type Measure } from "../model/quantity.ts";
import { convert } from "../model/units.ts";
import { readText, type Hit } from "./hit.ts";
import { notUsable } from "./reasons.ts";
import type { Trail } from "./trail.ts";
import type { World } from "./world.ts";

/** Thrown while a definition's code reads something that is not there: the trail says what; only the engine catches it. */
export class Waiting extends Error {}

/** A reading of a single value, as a definition asks for it. */
type ValueReading = Exclude<Reading, { readonly type: "thing" | "table" | "exists" }>;

/** The value a hit stands at, noted as read. Throws `Waiting` where it is none of that sort, and the trail says so. */
export function readValue(world: World, reading: ValueReading, hit: Hit, trail: Trail): unknown {
  const text = readText(world, hit, trail);
  const refuse = (sort: string, words: string): never => {
    // An unreadable value was accused when it was first read; any other one is said here.
    if (trail.doubts.length === 0) notUsable(world, trail, hit, text ?? "a list or an object", { sort, words });
    throw new Waiting();
  };
  switch (reading.type) {
    case "text":
      return text ?? refuse("text", "a text");
    case "flag":
      return typeof hit.value === "boolean" ? hit.value : refuse("flag", "true or false");
    case "count": {
      const count = Number(text);
      return text !== undefined && text.trim() !== "" && Number.isFinite(count) ? count : refuse("number", "a number");
    }
    case "date":
      return dateOf(text ?? "") ?? refuse("date", "a date");
    case "quantity":
      return measureOf(hit, text ?? "", reading.unit) ?? refuse(reading.unit, `a quantity in ${reading.unit}`);
  }
}

/** The measure of a value in the unit that is wanted, or undefined when it has none in that dimension. */
export function measureOf(hit: Hit, text: string, unit: string): Measure | undefined {
  const { origin } = hit;
  if (origin?.type === "calculation") {
    const done = origin.of.steps.find(({ step }) => step.symbol === origin.symbol);
    return done === undefined ? undefined : exactly(convert(done.value, done.step.unit, unit), unit);
  }
  const parsed = parseQuantity(text, { unit, ...(hit.field?.difference === true && { difference: true }) });
  return parsed.ok ? measure(parsed.quantity, unit) : undefined;
}

function dateOf(text: string): DateValue | undefined {
  const parsed = parseDate(text);
  return parsed.ok ? parsed.date : undefined;
}
