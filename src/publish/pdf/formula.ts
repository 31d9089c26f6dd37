import type { Display } from "../../model/formula/typeset.ts";
import type { Fonts } from "./fonts.ts";
import {
  fenced,
  fractionBox,
  glyphs,
  indexSize,
  padded,
  raised,
  rootBox,
  side,
  spaced,
  symbolBox,
  type Box,
  type Setting,
} from "./formula-boxes.ts";

/** A formula as a box: fractions, roots, indices and powers drawn, symbols slanted, figures and words upright. */
export function displayBox(fonts: Fonts, display: Display, size: number, family: "serif" | "sans" = "serif"): Box {
  return set({ fonts, size, plain: family }, display);
}

/** Longest stretches between signs of a formula too wide for its column: each is set on a line of its own. */
export function displayLines(fonts: Fonts, display: Display, size: number, width: number): readonly Box[] {
  const setting: Setting = { fonts, size, plain: "serif" };
  const whole = set(setting, display);
  if (whole.width <= width || display.type !== "row") return fit(setting, display, whole, width);
  const lines: Box[] = [];
  let items: Display[] = [];
  for (const part of stretches(display.items)) {
    const longer = set(setting, { type: "row", items: [...items, ...part] });
    if (items.length > 0 && longer.width > width) {
      lines.push(...fit(setting, { type: "row", items }, set(setting, { type: "row", items }), width));
      items = [...part];
    } else items = [...items, ...part];
  }
  return [...lines, ...fit(setting, { type: "row", items }, set(setting, { type: "row", items }), width)];
}

/** What cannot be divided is set smaller until it fits. */
function fit(setting: Setting, display: Display, box: Box, width: number): readonly Box[] {
  const size = box.width <= width ? setting.size : Math.max(setting.size * (width / box.width) * 0.99, 4);
  return [size === setting.size ? box : set({ ...setting, size }, display)];
}

/** The items cut before each sign that joins. */
function stretches(items: readonly Display[]): readonly (readonly Display[])[] {
  const cut: Display[][] = [];
  items.forEach((item, index) => {
    const opens =
      index > 0 && item.type === "operator" && index < items.length - 1 && items[index - 1]?.type !== "operator";
    const last = cut.at(-1);
    if (opens || last === undefined) cut.push([item]);
    else last.push(item);
  });
  return cut;
}

function set(setting: Setting, display: Display): Box {
  const { size, plain } = setting;
  switch (display.type) {
    case "number":
      return glyphs(setting, plain, display.text);
    case "words":
      return glyphs(setting, plain, display.text);
    case "operator":
      return spaced(glyphs(setting, plain, display.text), size * (/[·×/]/.test(display.text) ? 0.1 : 0.24));
    case "symbol":
      return symbolBox(setting, display);
    case "fraction":
      return fractionBox(setting, set(setting, display.numerator), set(setting, display.denominator));
    case "root":
      return rootBox(setting, set(setting, display.body));
    case "power": {
      const base = set(setting, display.base);
      const exponent = set({ ...setting, size: size * indexSize }, display.exponent);
      return raised(base, exponent, Math.max(base.ascent - size * 0.22, size * 0.36));
    }
    case "group":
      return fenced(setting, set(setting, display.body), display.fence);
    case "call": {
      const args = display.args.flatMap((arg, index) => [
        ...(index === 0 ? [] : [glyphs(setting, plain, ", ")]),
        set(setting, arg),
      ]);
      return side([glyphs(setting, plain, display.name), fenced(setting, side(args), "round")]);
    }
    case "row":
      return rowBox(setting, display.items);
  }
}

function rowBox(setting: Setting, items: readonly Display[]): Box {
  const gap = setting.size * 0.3;
  return side(
    items.map((item, index) => {
      if (item.type === "words") {
        const text = glyphs(setting, setting.plain, item.text);
        const beside = (other: Display | undefined) => other === undefined || other.type === "operator";
        return padded(text, beside(items[index - 1]) ? 0 : gap, beside(items[index + 1]) ? 0 : gap);
      }
      // A minus that opens a row is a sign of its operand.
      if (item.type === "operator" && index === 0)
        return padded(glyphs(setting, setting.plain, item.text), 0, setting.size * 0.06);
      if (item.type === "operator" && item.text === "·") return timesBox(setting, items[index - 1], items[index + 1]);
      return set(setting, item);
    }),
  );
}

/** Factors of one letter stand side by side; figures are kept apart by a cross, everything else by a point. */
function timesBox(setting: Setting, left: Display | undefined, right: Display | undefined): Box {
  if (right?.type === "number" || (left?.type === "number" && right?.type !== "symbol" && right?.type !== "power"))
    return set(setting, { type: "operator", text: left?.type === "number" ? "×" : "·" });
  if (isLetter(right) && (left?.type === "number" || isLetter(left)))
    return { width: setting.size * 0.12, ascent: 0, descent: 0, draw: () => undefined };
  return set(setting, { type: "operator", text: "·" });
}

const isLetter = (display: Display | undefined): boolean =>
  (display?.type === "symbol" && display.base.length === 1) || (display?.type === "power" && isLetter(display.base));
