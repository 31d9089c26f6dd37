import { unitOf } from "../model/units.ts";

/** A heading of a column: its name, and the unit that stands in brackets behind it. */
export interface Heading {
  /** As it is shown, on one line. */
  readonly text: string;
  readonly name: string;
  readonly unit?: string;
}

/** Takes a heading apart: `Thickness [mm]`, `Rm (N/mm²)`. What stands in brackets and is no unit belongs to the name. */
export function headingOf(shown: string): Heading {
  const text = shown.replaceAll(/\s+/gu, " ").trim();
  const [, name = "", square, round] =
    /^(.*?)\s*(?:\[([^[\]]*)\]|\(([^()]*(?:\([^()]*\))?[^()]*)\))$/u.exec(text) ?? [];
  const unit = (square ?? round ?? "").replaceAll(" ", "");
  if (name === "" || unit === "") return { text, name: text };
  // A lone number in round brackets is a remark, in square ones it is the unit of a pure number.
  if (unit === "1" && square === undefined) return { text, name: text };
  return unitOf(unit) === undefined ? { text, name: text } : { text, name, unit };
}

/** Headings of a row of cells: the second of two alike is called `KV (2)`. */
export function distinct(headings: readonly string[]): readonly string[] {
  const seen = new Map<string, number>();
  return headings.map((heading) => {
    const count = (seen.get(heading) ?? 0) + 1;
    seen.set(heading, count);
    return count === 1 ? heading : `${heading} (${count})`;
  });
}
