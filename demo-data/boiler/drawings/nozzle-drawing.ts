import { balloon, label, polyline, type Frame } from "../../paper/figures.ts";
import { left, newSheet, write, type Sheet } from "../../paper/paper.ts";
import { across, box, centreLine, shade, upright } from "../../paper/shapes.ts";
import { figure } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { nozzles } from "../facts/nozzles.ts";
import type { Draw } from "./drawing.ts";
import { geometryOf, type Geometry } from "./geometry.ts";
import { partsList } from "./parts-list.ts";

/** Nozzles and manhole: a section of each kind, and the parts list. */
export const drawNozzles: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const g = geometryOf(facts);
  nozzleSection(sheet, g);
  manholeSection(sheet, g);
  sheet.y = 272;
  const last = partsList(
    sheet,
    (drawing.parts ?? []).map((id) => g.part(id)),
    6.4,
  );
  write(last, "Necks of pipe set in and welded through; flanges EN 1092-1 PN 40, type 11.", left, last.y + 3, {
    size: 7.5,
  });
  titleBlock(last, facts, drawing);
};

function nozzleSection(sheet: Sheet, g: Geometry): void {
  const [first] = nozzles;
  if (first === undefined) return;
  const outside = figure(first.diameter);
  const wall = figure(first.wall);
  const frame: Frame = { sheet, x: left + 110, y: 118, scale: 0.62 };
  const shell = figure(first.projection);
  const wide = outside + 42;
  for (const x of [0, outside - wall]) box(frame, [x, 40], [x + wall, shell + 26], 0.7, shade);
  for (const [from, to] of [
    [-110, 0],
    [outside, outside + 110],
  ] as const)
    box(frame, [from, shell], [to, shell + g.shell.wall], 0.7, shade);
  for (const side of [0, 1]) {
    const x = side === 0 ? 0 : outside;
    const out = side === 0 ? -1 : 1;
    polyline(
      frame,
      [
        [x, 40],
        [x + out * 4, 30],
        [x + out * 21, 20],
        [x + out * 21, 0],
        [x - out * wall, 0],
        [x - out * wall, 40],
      ],
      0.8,
    );
    polyline(
      frame,
      [
        [x + out * 14, shell],
        [x, shell - 14],
      ],
      0.7,
    );
  }
  centreLine(frame, [outside / 2, -20], [outside / 2, shell + 50]);
  balloon(frame, "18", [outside / 2 - 4, 90], [wall / 2, 96]);
  balloon(frame, "31", [-64, 10], [-18, 12]);
  balloon(frame, "N01", [outside + 74, shell - 52], [outside + 8, shell - 4]);
  balloon(frame, "F01", [outside + 74, 42], [outside, 41]);
  across(frame, `Ø ${outside} × ${wall}`, 0, outside, shell + 62);
  upright(frame, String(shell), 0, shell, -wide * 0.62);
}

function manholeSection(sheet: Sheet, g: Geometry): void {
  const frame: Frame = { sheet, x: left + 310, y: 150, scale: 0.3 };
  const frameWidth = figure(g.part("P44").outsideDiameter);
  const wall = figure(g.part("P44").nominalThickness);
  const deep = figure(g.part("P44").length);
  for (const x of [0, frameWidth - wall]) box(frame, [x, 0], [x + wall, deep], 0.7, shade);
  for (const [from, to] of [
    [-150, 0],
    [frameWidth, frameWidth + 150],
  ] as const)
    box(frame, [from, 60], [to, 60 + g.shell.wall], 0.7, shade);
  box(frame, [-20, deep + 10], [frameWidth + 20, deep + 36], 0.7);
  centreLine(frame, [frameWidth / 2, -60], [frameWidth / 2, deep + 90]);
  balloon(frame, "44", [wall + 70, -50], [wall / 2, 10]);
  balloon(frame, "M01", [frameWidth + 110, -50], [frameWidth + 6, 58]);
  across(frame, String(frameWidth), 0, frameWidth, deep + 130);
  label(frame, "manhole M1, 320 × 420, cover inside, bridge and bolt not drawn", [frameWidth / 2, deep + 190], 7.5);
}
