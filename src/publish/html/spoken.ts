import type { Display } from "../../model/formula/typeset.ts";

const signNames: ReadonlyMap<string, string> = new Map([
  ["+", "plus"],
  ["−", "minus"],
  ["·", "times"],
  ["/", "over"],
  ["=", "equals"],
  ["≤", "is at most"],
  ["<", "is less than"],
  ["≥", "is at least"],
  [">", "is more than"],
  ["≠", "is not equal to"],
]);

/** The formula as it is read aloud: `e equals P times D e over 2 times f`. */
export function spoken(display: Display): string {
  switch (display.type) {
    case "number":
    case "words":
      return display.text;
    case "operator":
      return signNames.get(display.text) ?? display.text;
    case "symbol":
      return [display.base, display.sub, display.sup === undefined ? undefined : `index ${display.sup}`]
        .filter(Boolean)
        .join(" ");
    case "fraction":
      return `${spokenPart(display.numerator)} over ${spokenPart(display.denominator)}`;
    case "root":
      return `square root of ${spokenPart(display.body)}`;
    case "power":
      return `${spokenPart(display.base)} to the power of ${spokenPart(display.exponent)}`;
    case "group":
      return display.fence === "bars" ? `absolute value of ${spokenPart(display.body)}` : `(${spoken(display.body)})`;
    case "call":
      return `${display.name} of (${display.args.map(spoken).join(", ")})`;
    case "row":
      return display.items.map(spoken).join(" ");
  }
}

/** Sums are spoken with their brackets, or the ear could not tell where they end. */
const spokenPart = (display: Display) =>
  display.type === "row" && display.items.some(({ type }, at) => type === "operator" && at > 0)
    ? `(${spoken(display)})`
    : spoken(display);
