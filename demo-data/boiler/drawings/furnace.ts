import { balloon, label, polyline, type Frame } from "../../paper/figures.ts";
import { left, newSheet, type Sheet } from "../../paper/paper.ts";
import { across, box, centreLine, leader, onWhite, shade, upright } from "../../paper/shapes.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import type { Draw } from "./drawing.ts";
import { geometryOf, type Geometry } from "./geometry.ts";
import { partsList } from "./parts-list.ts";

/** Furnace, hoop, reversal chamber and tubes: their section, the hoop larger, the parts. */
export const drawFurnace: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const g = geometryOf(facts);
  assembly(sheet, g);
  hoopDetail(sheet, g);
  sheet.y = 510;
  partsList(
    sheet,
    (drawing.parts ?? []).map((id) => g.part(id)),
    7.6,
  );
  titleBlock(sheet, facts, drawing);
};

function assembly(sheet: Sheet, g: Geometry): void {
  const { furnace, chamber, access, plate, shell, hoop } = g;
  const frame: Frame = { sheet, x: left + 40, y: 130, scale: 0.112 };
  const top = chamber.centre + chamber.outside / 2;
  const y = (height: number) => top - height;
  const wallsOf = (from: number, to: number, axis: number, outside: number, wall: number) => {
    for (const side of [-1, 1]) {
      const outer = y(axis + (side * outside) / 2);
      box(frame, [from, outer], [to, outer + side * wall], 0.6, shade);
    }
  };
  wallsOf(0, hoop.from, furnace.centre, furnace.outside, furnace.wall);
  wallsOf(hoop.to, furnace.end, furnace.centre, furnace.outside, furnace.wall);
  for (const side of [-1, 1]) {
    const edge = furnace.centre + (side * furnace.outside) / 2;
    const mid = (hoop.from + hoop.to) / 2;
    const out = y(edge + side * hoop.depth);
    polyline(
      frame,
      [
        [hoop.from, y(edge)],
        [mid - 45, out],
        [mid + 45, out],
        [hoop.to, y(edge)],
      ],
      0.9,
    );
  }
  wallsOf(chamber.from, chamber.to, chamber.centre, chamber.outside, chamber.wall);
  const inside = chamber.outside / 2 - chamber.wall;
  for (const x of [chamber.from - plate, chamber.to])
    box(frame, [x, y(chamber.centre + inside)], [x + plate, y(chamber.centre - inside)], 0.6, shade);
  wallsOf(chamber.to + plate, shell.length + plate, chamber.centre, access.outside, access.wall);
  centreLine(frame, [-120, y(furnace.centre)], [furnace.end + 80, y(furnace.centre)]);
  centreLine(frame, [furnace.end, y(chamber.centre)], [shell.length + 120, y(chamber.centre)]);
  for (const [mark, at, to] of [
    ["5", [500, y(furnace.centre) - 110], [560, y(furnace.centre + furnace.outside / 2) + 10]],
    ["6", [2300, y(furnace.centre) - 110], [2360, y(furnace.centre + furnace.outside / 2) + 10]],
    ["7", [1550, y(furnace.centre) - 60], [1550, y(furnace.centre + furnace.outside / 2 + hoop.depth) + 6]],
    ["8", [3420, y(chamber.centre) - 330], [3440, y(top) + 8]],
    ["11", [3860, y(chamber.centre) - 430], [3860, y(chamber.centre + access.outside / 2) + 6]],
  ] as const)
    balloon(frame, mark, at, to);
  const below = y(furnace.centre - furnace.outside / 2) + 160;
  across(frame, String(hoop.from), 0, hoop.from, below);
  across(frame, String(hoop.to - hoop.from), hoop.from, hoop.to, below);
  across(frame, String(furnace.end - hoop.to), hoop.to, furnace.end, below);
  across(frame, String(chamber.to - chamber.from), chamber.from, chamber.to, y(chamber.centre - inside) + 190);
  upright(
    frame,
    `Ø ${furnace.outside}`,
    y(furnace.centre + furnace.outside / 2),
    y(furnace.centre - furnace.outside / 2),
    -170,
  );
  upright(frame, `Ø ${chamber.outside}`, y(top), y(chamber.centre - chamber.outside / 2), 3220);
  onWhite(frame, "fire side", [800, y(furnace.centre) + 170], 7);
}

function hoopDetail(sheet: Sheet, g: Geometry): void {
  const { hoop, furnace } = g;
  const frame: Frame = { sheet, x: left + 150, y: 410, scale: 0.55 };
  const wide = hoop.to - hoop.from;
  const out = -hoop.depth;
  const line = (off: number): (readonly [number, number])[] => [
    [0, off],
    [wide / 2 - 45 + off / 2, out + off],
    [wide / 2 + 45 - off / 2, out + off],
    [wide, off],
  ];
  polyline(frame, line(0), 0.9);
  polyline(frame, line(hoop.wall), 0.9);
  for (const [from, to] of [
    [-150, 0],
    [wide, wide + 150],
  ] as const)
    box(frame, [from, 0], [to, furnace.wall], 0.7, shade);
  leader(frame, "FC1", [-40, -50], [0, 2]);
  leader(frame, "FC2", [wide + 40, -50], [wide, 2]);
  across(frame, String(wide), 0, wide, 70);
  upright(frame, String(hoop.depth), out, 0, wide + 130);
  label(frame, `hoop, ${hoop.wall} thick, pressed cold; edges prepared as the furnace's`, [wide / 2, 105], 8);
  label(frame, "water side", [wide / 2, out - 22], 8);
}
