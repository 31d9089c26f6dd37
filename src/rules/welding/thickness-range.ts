import { atLeast, atMost, type Measure } from "../../model/quantity.ts";

/** Thicknesses a procedure or its qualification is good for. */
interface Range {
  readonly from: Measure | undefined;
  readonly to: Measure | undefined;
}

/** "3.0 mm to 16.0 mm"; an end that is not stated is open. */
export function span(from: Measure | undefined, to: Measure | undefined): string {
  if (from === undefined) return to === undefined ? "any thickness" : `up to ${to.text}`;
  return to === undefined ? `from ${from.text}` : `${from.text} to ${to.text}`;
}

/** A wider range covers a narrower one; an end that the narrower leaves open must be open in the wider too. */
export function covers(wide: Range, narrow: Range): boolean {
  const low = wide.from === undefined || (narrow.from !== undefined && atLeast(narrow.from, wide.from) === "yes");
  const high = wide.to === undefined || (narrow.to !== undefined && atMost(narrow.to, wide.to) === "yes");
  return low && high;
}
