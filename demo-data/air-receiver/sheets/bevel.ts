import { left, type Sheet } from "../../paper/paper.ts";
import { label, outline, polyline, type Frame } from "./figures.ts";

/** A weld preparation with its runs. */
export function bevel(sheet: Sheet, branch: boolean): void {
  const frame: Frame = { sheet, x: left + 60, y: sheet.y + 12, scale: 5 };
  const plate = (points: readonly (readonly [number, number])[]) => {
    polyline(frame, [...points, points[0] ?? [0, 0]], 0.9);
  };
  if (branch) {
    plate([
      [0, 6],
      [24, 6],
      [28.4, 14],
      [0, 14],
    ]);
    plate([
      [30.4, 0],
      [36, 0],
      [36, 18],
      [30.4, 18],
    ]);
    outline(frame, "22.5 6, 26 3.4, 30.4 1.6", 0.5);
    label(frame, "nozzle set in, root gap 2 mm,", [46, 7], 8, false);
    label(frame, "bevel 30° in the shell", [46, 10], 8, false);
  } else {
    plate([
      [0, 6],
      [24, 6],
      [28.4, 13],
      [28.4, 14],
      [0, 14],
    ]);
    plate([
      [35.2, 6],
      [60, 6],
      [60, 14],
      [30.8, 14],
      [30.8, 13],
    ]);
    outline(frame, "22.8 6, 27 4.8, 32.6 4.8, 36.4 6", 0.5);
    outline(frame, "26.4 9.8, 29.6 9.2, 33 9.8", 0.5);
    outline(frame, "28 14, 29.6 15.4, 31.2 14", 0.5);
    for (const [text, y] of [
      ["3", 7.4],
      ["2", 10.8],
      ["1", 13.4],
    ] as const)
      label(frame, text, [29.6, y], 7);
    label(frame, "60°, gap 2.5 mm, land 1 mm", [66, 9], 8, false);
    label(frame, "1 root, 2 fill, 3 cap", [66, 12], 8, false);
  }
  sheet.y += 112;
}
