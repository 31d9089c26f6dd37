import { canPrecede, parseDate } from "../model/dates.ts";
import { atPointer, holderOf, pointerStep } from "../model/json.ts";
import type { Leaf } from "../model/leaves.ts";
import { holds, measure, parseQuantity } from "../model/quantity.ts";

/** The lower end of a range whose upper end lies below it. */
export interface LowerEnd {
  readonly pointer: string;
  readonly text: string;
}

/** Of an upper end the lower one, where they are surely swapped; what cannot be read is said elsewhere. */
export function swappedWith({ record, pointer, field, value }: Leaf): LowerEnd | undefined {
  if (field.notBelow === undefined || typeof value !== "string") return undefined;
  const at = holderOf(pointer) + pointerStep(field.notBelow);
  const text = atPointer(record.value, at);
  if (typeof text !== "string") return undefined;
  const crossed = field.type === "date" ? laterThan(text, value) : moreThan(text, value, field.unit ?? "any");
  return crossed ? { pointer: at, text } : undefined;
}

function laterThan(lower: string, upper: string): boolean {
  const [from, to] = [parseDate(lower), parseDate(upper)];
  return from.ok && to.ok && canPrecede(from.date, to.date) === "no";
}

/** Where a field takes any unit, the ends are compared in that of the lower one. */
function moreThan(lower: string, upper: string, unit: string): boolean {
  const least = parseQuantity(lower, { unit });
  if (!least.ok) return false;
  const common = unit === "any" ? least.quantity.unit : unit;
  const most = parseQuantity(upper, { unit: common });
  return most.ok && holds(measure(most.quantity, common), ">=", measure(least.quantity, common)) === "no";
}
