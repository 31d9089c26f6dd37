import type { Display } from "./typeset.ts";

/** The setting in one line of text, for spoken text and where nothing can be set: `P·R/(S·E − 0.6·P)`. */
export function plainText(display: Display): string {
  switch (display.type) {
    case "number":
    case "operator":
    case "words":
      return display.text;
    case "symbol":
      return display.base + (display.sub ?? "") + (display.sup === undefined ? "" : `^${display.sup}`);
    case "fraction":
      return `${part(display.numerator, "above")}/${part(display.denominator, "below")}`;
    case "root":
      return `√(${plainText(display.body)})`;
    case "power":
      return `${part(display.base, "below")}^${part(display.exponent, "below")}`;
    case "group":
      return display.fence === "bars" ? `|${plainText(display.body)}|` : `(${plainText(display.body)})`;
    case "call":
      return `${display.name}(${display.args.map(plainText).join(", ")})`;
    case "row":
      return rowText(display.items);
  }
}

/** Part of a fraction or power: bracketed where one line would read it otherwise. A product may stay above a stroke. */
function part(display: Display, place: "above" | "below"): string {
  const text = plainText(display);
  const products = display.type === "row" && display.items.every((item) => !isSign(item) || item.text === "·");
  const whole = display.type !== "row" && display.type !== "fraction" && display.type !== "power";
  return whole || (place === "above" && (products || display.type === "power")) ? text : `(${text})`;
}

function rowText(items: readonly Display[]): string {
  return items
    .map((item, at) => {
      const before = items[at - 1];
      // After a sign of multiplication or division a fraction would be read as more factors.
      const factor = before !== undefined && isSign(before) && (before.text === "·" || before.text === "/");
      if (item.type === "fraction" && factor) return `(${plainText(item)})`;
      if (!isSign(item)) return plainText(item);
      return at === 0 || item.text === "·" || item.text === "/" ? item.text : ` ${item.text} `;
    })
    .join("");
}

const isSign = (display: Display) => display.type === "operator";
