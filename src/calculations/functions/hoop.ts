import { derivedFrom, ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { numbers, quantityIn, rowsThenNumbers } from "./arguments.ts";

/** What a hoop gives to the furnace it stiffens: how many there are. */
export const hoopOfFurnace = { quantity: quantity("record.quantity", "1") } as const;

/** Named function `meanSpan(hoops, l)` in mm: the length of the furnace shared by the lengths its hoops part it into. */
export const meanSpan: ListFunction = {
  name: "meanSpan",
  means: "length of the furnace by the number of lengths its hoops part it into",
  basis: derivedFrom("n hoops part a furnace into n + 1 lengths"),
  parameters: [
    { name: "hoops", unit: "rows" },
    { name: "l", unit: "mm" },
  ],
  unit: "mm",
  compute: rowsThenNumbers((hoops, [l = Number.NaN]) => {
    const parts = 1 + hoops.reduce((sum, row) => sum + quantityIn(row, "quantity").low, 0);
    return l > 0 && Number.isFinite(parts)
      ? { value: l / parts, lines: [`hoops recorded: ${parts - 1}; lengths: ${parts}`], at: hoops }
      : { refused: `a furnace of ${printed(l)} mm cannot be parted by its hoops` };
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
