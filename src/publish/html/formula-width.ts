import type { Display } from "../../model/formula/typeset.ts";

/** Rough width in digits, to tell what cannot stand on a phone. */
export function widthOf(items: readonly Display[]): number {
  return items.reduce((sum, item) => sum + width(item), 0);
}

function width(display: Display): number {
  switch (display.type) {
    case "number":
    case "words":
      return display.text.length;
    case "operator":
      return 2;
    case "symbol":
      return display.base.length + 0.7 * Math.max(display.sub?.length ?? 0, display.sup?.length ?? 0);
    case "fraction":
      return Math.max(width(display.numerator), width(display.denominator));
    case "root":
      return 1.5 + width(display.body);
    case "power":
      return width(display.base) + 0.7 * width(display.exponent);
    case "group":
      return 1 + width(display.body);
    case "call":
      return display.name.length + 1 + widthOf(display.args);
    case "row":
      return widthOf(display.items);
  }
}
