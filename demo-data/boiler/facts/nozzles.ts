import { equipment } from "./boiler.ts";

/** A nozzle of the shell: its neck, its welding-neck flange, and the two joints that hold them. */
export interface Nozzle {
  readonly mark: string;
  readonly use: string;
  readonly size: string;
  readonly shell: "P01" | "P02";
  readonly part: string;
  readonly flange: string;
  readonly diameter: string;
  readonly wall: string;
  readonly undertolerance: string;
  readonly length: string;
  readonly projection: string;
  /** From the inside of the front plate to its centre, in mm. */
  readonly along: number;
  /** On the shell's top or bottom line, or so high above its bottom at the left or right side, seen from the front. */
  readonly at: Place;
}

export type Place = "top" | "bottom" | readonly [height: number, side: "left" | "right"];

interface Pipe {
  readonly size: string;
  readonly diameter: string;
  readonly wall: string;
  readonly undertolerance: string;
}

const dn15: Pipe = { size: "DN 15 PN 40", diameter: "21.3 mm", wall: "5.0 mm", undertolerance: "0.6 mm" };
const dn25: Pipe = { size: "DN 25 PN 40", diameter: "33.7 mm", wall: "6.3 mm", undertolerance: "0.8 mm" };
const dn40: Pipe = { size: "DN 40 PN 40", diameter: "48.3 mm", wall: "7.1 mm", undertolerance: "0.9 mm" };
const dn65: Pipe = { size: "DN 65 PN 40", diameter: "76.1 mm", wall: "8.8 mm", undertolerance: "1.1 mm" };
const dn100: Pipe = { size: "DN 100 PN 40", diameter: "114.3 mm", wall: "11.0 mm", undertolerance: "1.4 mm" };

const level = Number.parseFloat(equipment.levels?.normal ?? "");
const rows: readonly (readonly [use: string, shell: Nozzle["shell"], pipe: Pipe, along: number, at: Place])[] = [
  ["steam outlet", "P02", dn100, 2400, "top"],
  ["safety valve 1", "P01", dn65, 900, "top"],
  ["safety valve 2", "P01", dn65, 1300, "top"],
  ["feedwater", "P01", dn40, 1650, [1250, "right"]],
  ["blow-down", "P02", dn40, 3600, "bottom"],
  ["level indicator 1", "P01", dn25, 600, [level, "left"]],
  ["level indicator 2", "P01", dn25, 950, [level, "left"]],
  ["vent", "P02", dn15, 3530, "top"],
  ["sample and continuous blow-down", "P02", dn15, 3450, [1400, "right"]],
  ["head inspection opening 1", "P01", dn100, 350, [330, "left"]],
  ["head inspection opening 2", "P01", dn100, 1800, [330, "right"]],
  ["head inspection opening 3", "P02", dn100, 2300, [330, "left"]],
  ["head inspection opening 4", "P02", dn100, 3700, [330, "right"]],
];

export const nozzles: readonly Nozzle[] = rows.map(([use, shell, pipe, along, at], index) => ({
  mark: `N${index + 1}`,
  use,
  shell,
  ...pipe,
  part: `P${18 + index}`,
  flange: `P${31 + index}`,
  length: "160 mm",
  projection: "120 mm",
  along,
  at,
}));

/** Way from the top line round a shell of the given diameters to a place, clockwise seen from the front, in whole mm. */
export function wayRound(at: Place, inside: number, outside: number): number {
  const round = Math.PI * outside;
  if (at === "top") return 0;
  if (at === "bottom") return Math.round(round / 2);
  const [height, side] = at;
  const way = (outside / 2) * Math.acos((height - inside / 2) / (inside / 2));
  return Math.round(side === "right" ? way : round - way);
}

/** Where the centre of the manhole lies along the shell, on its top line, in mm. */
export const manholeAlong = 2990;
