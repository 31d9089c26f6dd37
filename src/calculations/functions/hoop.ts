import { derivedFrom, ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { optional, quantity, text } from "../../model/input.ts";
import { numbers, quantityOf, rowsThenNumbers, textIn, type Row } from "./arguments.ts";

/** What a part that is welded to a furnace section gives to the length between supports. */
export const neighbourOfFurnace = {
  role: text("role"),
  thickness: optional(quantity("nominalThickness", "mm")),
  width: optional(quantity("hoop.width", "mm")),
} as const;

const plates: readonly string[] = ["tube-plate", "flat-plate"];
/** How far a furnace may reach into and through a plate: its thickness, and a lip of as much again. */
const throughPlate = 2;

/**
 * Named function `leastSpan(neighbours, l)` in mm: the least length between effective supports that a section of plain
 * furnace of length `l` can have, by what is welded to it: half of each hoop belongs to it, and what of the section lies in
 * and beyond a plate does not.
 */
export const leastSpan: ListFunction = {
  name: "leastSpan",
  means:
    "least length between supports of a section: its own, half the width of each hoop joined to it, less twice the thickness of each plate it passes through",
  basis: derivedFrom(
    "a section is supported at the middle of a hoop and at the face of a plate; a furnace passes at most through a plate and a lip of its thickness",
  ),
  parameters: [
    { name: "neighbours", unit: "rows" },
    { name: "l", unit: "mm" },
  ],
  unit: "mm",
  compute: rowsThenNumbers((rows, [l = Number.NaN]) => {
    // Two seams of one part are one neighbour.
    const joined = [...new Map(rows.map((row) => [row.$.address, row])).values()];
    const hoops = joined.filter((row) => textIn(row, "role") === "furnace-hoop");
    const ends = joined.filter((row) => plates.includes(textIn(row, "role")));
    const sum = (list: readonly Row[], name: string) =>
      list.reduce((total, row) => total + (quantityOf(row, name)?.high ?? 0), 0);
    const value = l + sum(hoops, "width") / 2 - throughPlate * sum(ends, "thickness");
    const named = (list: readonly Row[]) => list.map((row) => row.$.id).join(", ") || "none";
    return Number.isFinite(value)
      ? { value: Math.max(0, value), lines: [`hoops joined to it: ${named(hoops)}; plates: ${named(ends)}`] }
      : { refused: "the length of a section or of what is joined to it is a bound, not a value" };
  }),
};

/** What a furnace section gives to the hoop that is welded to it. */
export const sectionAtHoop = {
  role: text("role"),
  span: optional(quantity("unsupportedLength", "mm")),
} as const;

/** Named function `meanOfSpans(parts)` in mm: the mean of the lengths between supports of the furnace sections at a hoop. */
export const meanOfSpans: ListFunction = {
  name: "meanOfSpans",
  means: "mean of the lengths between supports of the furnace sections that are welded to the hoop",
  basis: derivedFrom("a hoop carries half of the length on each side of it"),
  parameters: [{ name: "parts", unit: "rows" }],
  unit: "mm",
  compute: rowsThenNumbers((rows) => {
    const sections = [...new Map(rows.map((row) => [row.$.address, row])).values()].filter(
      (row) => textIn(row, "role") === "furnace",
    );
    const spans = sections.flatMap((row) => quantityOf(row, "span")?.high ?? []);
    const value = spans.reduce((sum, one) => sum + one, 0) / spans.length;
    return Number.isFinite(value)
      ? { value, lines: sections.map((row) => `${row.$.id}: ${quantityOf(row, "span")?.text ?? "no length"}`) }
      : { refused: "no joint ties the hoop to a section of furnace with a stated length between supports" };
  }),
};

interface Piece {
  readonly area: number;
  /** Distance of its centre from the middle of the furnace wall, outwards. */
  readonly z: number;
  /** Second moment about its own centre. */
  readonly own: number;
}

const rectangle = (width: number, height: number, z: number): Piece => ({
  area: width * height,
  z,
  own: (width * height ** 3) / 12,
});

/** Neutral axis and second moment of area of pieces side by side, by the theorem of parallel axes. */
function together(pieces: readonly Piece[]) {
  const area = pieces.reduce((sum, piece) => sum + piece.area, 0);
  const axis = pieces.reduce((sum, { area: one, z }) => sum + one * z, 0) / area;
  return { axis, moment: pieces.reduce((sum, { area: one, z, own }) => sum + own + one * (z - axis) ** 2, 0) };
}

/** Share of the crown that counts: the rest makes up for its rounded corners, whose radius no record states. */
const crownShare = 1 / 4;

/**
 * Named function `hoopSecondMoment(h, b, en, t, eF, d)` in mm⁴: second moment of area of a formed hoop together with the
 * furnace beside it, about their common neutral axis. `h` depth and `b` width over all, `en` nominal and `t` corroded wall
 * of the hoop, `eF` corroded wall and `d` mean diameter of the furnace, all in mm. Refused where the sizes make no hoop.
 */
export const hoopSecondMoment: ListFunction = {
  name: "hoopSecondMoment",
  means:
    "second moment of area about the common neutral axis: two radial legs over the depth between mid-walls, a quarter of the crown, and 0.55·√(d·e) of furnace on each side",
  basis: ownChoice(
    "a quarter of the crown: no more than a hoop bent with any radius has; strips of furnace after the Indian Boiler Regulations 1950, regulation 592 (excerpt seen)",
  ),
  parameters: [
    { name: "h", unit: "mm" },
    { name: "b", unit: "mm" },
    { name: "en", unit: "mm" },
    { name: "t", unit: "mm" },
    { name: "eF", unit: "mm" },
    { name: "d", unit: "mm" },
  ],
  unit: "mm⁴",
  compute: numbers(
    ([h = Number.NaN, b = Number.NaN, en = Number.NaN, t = Number.NaN, eF = Number.NaN, d = Number.NaN]): ReturnType<
      ListFunction["compute"]
    > => {
      if (!(t > 0 && eF > 0 && d > 0)) return { refused: "allowances leave no wall of the hoop or of the furnace" };
      if (!(h >= 2 * en && b >= 2 * en))
        return { refused: `a hoop ${printed(h)} mm deep and ${printed(b)} mm wide has no room for two walls` };
      const [depth, width, strip] = [h - en, b - en, 0.55 * Math.sqrt(d * eF)];
      const { axis, moment } = together([
        rectangle(2 * strip, eF, 0),
        rectangle(2 * t, depth, depth / 2),
        rectangle(crownShare * width, t, depth),
      ]);
      return {
        value: moment,
        lines: [
          `furnace: 2 × ${printed(strip)} mm × ${printed(eF)} mm`,
          `legs: 2 × ${printed(depth)} mm × ${printed(t)} mm; crown: ${printed(crownShare * width)} mm × ${printed(t)} mm`,
          `neutral axis ${printed(axis)} mm outside the middle of the furnace wall`,
        ],
      };
    },
  ),
};

const printed = (value: number) => String(Number(value.toPrecision(5)));
