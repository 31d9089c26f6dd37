import { label, type Frame } from "../../paper/figures.ts";
import { left, newSheet } from "../../paper/paper.ts";
import { axes, box, circle, dashed, leader, shade } from "../../paper/shapes.ts";
import { columns, table } from "../../paper/tables.ts";
import { figure, printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import type { Draw } from "./drawing.ts";
import { geometryOf } from "./geometry.ts";
import { partsList } from "./parts-list.ts";
import { heightIn } from "./section.ts";

/** Water levels in the shell, with the level indicator beside it. */
export const drawLevels: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const g = geometryOf(facts);
  const y = heightIn(g);
  const frame: Frame = { sheet, x: left + 150, y: 118, scale: 0.145 };
  const radius = g.shell.inside / 2;
  circle(frame, [0, radius], g.shell.outside / 2, 0.9);
  circle(frame, [0, radius], radius, 0.5);
  circle(frame, [0, y(g.chamber.centre)], g.chamber.outside / 2, 0.7);
  axes(frame, [0, radius], radius);
  const { levels } = facts.equipment;
  const rows: readonly (readonly [string, string, string | undefined, string])[] = [
    ["ST", "steam taken off", levels?.steamTakeOff, "dry steam pipe inside N1"],
    ["HW", "highest water level", levels?.highest, "alarm, feed pump off"],
    ["NW", "normal water level", levels?.normal, "feed control keeps it"],
    ["LL", "limiters", levels?.limiter, "two independent limiters cut the firing off and lock"],
    ["LW", "lowest permissible water level", levels?.lowestPermissible, "plate beside both indicators"],
    ["HS", "highest heated surface", levels?.highestHeatedSurface, "top of the reversal chamber"],
  ];
  rows.forEach(([name, , level], index) => {
    const at = y(figure(level));
    dashed(frame, [-radius, at], [1150, at], 0.5);
    leader(frame, `${name} ${printed(level)}`, [1420, y(1860 - index * 105)], [1150, at], 8);
  });
  box(frame, [1020, y(1640)], [1090, y(1390)], 0.8, shade);
  box(frame, [1042, y(1630)], [1068, y(1400)], 0.5);
  label(frame, "level indicator", [1055, y(1700)], 7);
  sheet.y = 430;
  table(
    sheet,
    columns(["Mark", "Level", "Above the inside bottom", "What it does"], [8, 32, 22, 38]),
    rows.map(([name, what, level, does]) => [name, what, printed(level), does]),
    8.5,
  );
  partsList(
    sheet,
    (drawing.parts ?? []).map((id) => g.part(id)),
  );
  titleBlock(sheet, facts, drawing);
};
