import type { Joint, WeldingProcedure } from "../generated/records.ts";
import { label, outline, type Frame } from "./figures.ts";
import { left, type Sheet } from "./paper.ts";

/** A preparation: outlines of the pieces, lines of the runs, words beside them; in mm, "x y, x y". */
interface Preparation {
  readonly plates: readonly string[];
  readonly runs: readonly string[];
  readonly numbers?: readonly (readonly [text: string, y: number])[];
  readonly words: readonly string[];
  readonly wordsAt: readonly [number, number];
}

const oneSide: Preparation = {
  plates: ["0 6, 24 6, 28.4 13, 28.4 14, 0 14", "35.2 6, 60 6, 60 14, 30.8 14, 30.8 13"],
  runs: ["22.8 6, 27 4.8, 32.6 4.8, 36.4 6", "26.4 9.8, 29.6 9.2, 33 9.8", "28 14, 29.6 15.4, 31.2 14"],
  numbers: [
    ["3", 7.4],
    ["2", 10.8],
    ["1", 13.4],
  ],
  words: ["60°, land 1 mm", "1 root, 2 fill, 3 cap"],
  wordsAt: [66, 9],
};

const bothSides: Preparation = {
  plates: ["0 3, 25 3, 29.4 8, 29.4 14, 0 14", "34 3, 60 3, 60 14, 29.8 14, 29.8 8"],
  runs: ["24 3, 27 1.8, 32 1.8, 35 3", "26.4 14, 28 15.2, 31.4 15.2, 33 14", "27.4 14, 28.4 8.6, 30.8 8.6, 31.8 14"],
  numbers: [
    ["2", 4.6],
    ["1", 12.4],
  ],
  words: ["60°, land 6 mm", "1 first side, 2 second side", "root of the second side ground clean"],
  wordsAt: [66, 6],
};

const branch: Preparation = {
  plates: ["0 6, 24 6, 28.4 14, 0 14", "30.4 0, 36 0, 36 18, 30.4 18"],
  runs: ["22.5 6, 26 3.4, 30.4 1.6"],
  words: ["nozzle set in,", "bevel 30° in the shell"],
  wordsAt: [46, 7],
};

const corner: Preparation = {
  plates: ["0 4, 26 4, 30 9.4, 30 10, 0 10", "31.6 -1, 40 -1, 40 19, 31.6 19"],
  runs: ["24.6 4, 28.4 1.4, 31.6 0.6", "26.6 10, 29.4 13, 31.6 14"],
  numbers: [
    ["1", 5.4],
    ["2", 12],
  ],
  words: ["plate set in, 50°", "1 water side, 2 outside, capped"],
  wordsAt: [48, 7],
};

const fillet: Preparation = {
  plates: ["0 10, 52 10, 52 16, 0 16", "22 -2, 32 -2, 32 9.8, 22 9.8"],
  runs: ["14.6 10, 18 5, 22 2.6", "32 2.6, 36 5, 39.4 10", "18.6 10, 20.2 7.6, 22 6.6", "32 6.6, 33.8 7.6, 35.4 10"],
  words: ["fillet all round, several runs"],
  wordsAt: [60, 7],
};

const tubeInPlate: Preparation = {
  plates: [
    "0 4, 17 4, 17 18, 0 18",
    "33 4, 50 4, 50 18, 33 18",
    "17.6 1, 20 1, 20 20, 17.6 20",
    "30 1, 32.4 1, 32.4 20, 30 20",
  ],
  runs: ["15.4 4, 16 2.6, 17.6 2", "14 4, 15 1.8, 17.6 1", "32.4 2, 34 2.6, 34.6 4", "32.4 1, 35 1.8, 36 4"],
  words: ["tube stands proud of the plate,", "expanded lightly, welded all round"],
  wordsAt: [55, 7],
};

type Weld = NonNullable<NonNullable<WeldingProcedure["revisions"]>[number]["jointTypes"]>[number];

function preparationOf(type: Weld | undefined, detail: Joint["detail"]): Preparation {
  if (type === "branch") return branch;
  if (type === "tube-to-tube-plate") return tubeInPlate;
  if (type === "corner" || type === "t-butt") return corner;
  if (type === "fillet" || type === "attachment") return fillet;
  return detail === "bs" ? bothSides : oneSide;
}

/** A weld preparation with its runs. */
export function bevel(sheet: Sheet, type: Weld | undefined, detail: Joint["detail"], gap?: string): void {
  const frame: Frame = { sheet, x: left + 60, y: sheet.y + 12, scale: 5 };
  const { plates, runs, numbers = [], words, wordsAt } = preparationOf(type, detail);
  const [x, y] = wordsAt;
  for (const plate of plates) outline(frame, `${plate}, ${plate.split(", ")[0] ?? ""}`, 0.9);
  for (const run of runs) outline(frame, run, 0.5);
  for (const [text, at] of numbers) label(frame, text, [29.6, at], 7);
  const lines = gap === undefined ? words : [...words, `root gap ${gap}`];
  lines.forEach((line, index) => label(frame, line, [x, y + 3 * index], 8, false));
  sheet.y += 112;
}
