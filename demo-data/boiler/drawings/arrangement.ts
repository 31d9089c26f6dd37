import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { balloon, label, type Frame } from "../../paper/figures.ts";
import { left, newSheet, right, rule, write, type Paper, type Sheet } from "../../paper/paper.ts";
import { across, axes, circle, dashed, leader, onWhite, upright } from "../../paper/shapes.ts";
import { columns, table } from "../../paper/tables.ts";
import { figure, printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { manholeAlong, nozzles, type Place } from "../facts/nozzles.ts";
import { partsList } from "./parts-list.ts";
import { geometryOf, secondPass, thirdPass, type Geometry } from "./geometry.ts";
import { heightIn, plateView, section } from "./section.ts";

const scale = 0.108;

/** The general arrangement on three sheets: section with data, cross sections with levels, nozzles. */
export function drawArrangement(paper: Paper, facts: Facts, drawing: Drawing): void {
  const g = geometryOf(facts);
  const first = newSheet(paper);
  lengthwise(first, g);
  data(first, facts, drawing);
  titleBlock(first, facts, drawing, "sheet 1 of 3");
  const second = newSheet(paper);
  crosswise(second, facts, g);
  titleBlock(second, facts, drawing, "sheet 2 of 3");
  const third = newSheet(paper);
  nozzleTable(third);
  third.y += 24;
  partsList(third, (drawing.parts ?? []).map(g.part), 7.5);
  titleBlock(third, facts, drawing, "sheet 3 of 3");
}

function lengthwise(sheet: Sheet, g: Geometry): void {
  const frame: Frame = { sheet, x: left + 46, y: 160, scale };
  const y = heightIn(g);
  section(frame, g, true);
  const { shell, furnace, chamber, plate } = g;
  for (const [text, at, to] of [
    ["1", [1180, 190], [1240, -6]],
    ["2", [2640, 190], [2700, -6]],
    ["5", [480, y(furnace.centre) - 90], [560, y(furnace.centre + furnace.outside / 2)]],
    ["6", [2760, y(furnace.centre) - 90], [2700, y(furnace.centre + furnace.outside / 2)]],
    ["7", [1550, y(furnace.centre) - 60], [1550, y(furnace.centre + furnace.outside / 2 + 90)]],
    ["8", [3420, y(chamber.centre) - 320], [3420, y(chamber.centre + chamber.outside / 2)]],
    ["10", [3560, y(chamber.centre) + 330], [chamber.to + 8, y(chamber.centre) + 250]],
    ["11", [3620, y(chamber.centre)], [3850, y(chamber.centre + 195)]],
    ["16", [1800, 290], [1860, y(1560)]],
  ] as const)
    balloon(frame, text, at, to);
  across(frame, `${shell.length + 2 * plate} over plates`, -plate, shell.length + plate, shell.inside + 560);
  across(frame, String(g.seam), 0, g.seam, shell.inside + 450);
  across(frame, String(shell.length - g.seam), g.seam, shell.length, shell.inside + 450);
  upright(frame, `Ø ${shell.inside}`, 0, shell.inside, -250);
  onWhite(frame, `furnace Ø ${furnace.outside} × ${furnace.wall}`, [900, y(furnace.centre) + 60], 7);
  onWhite(frame, "pass 2", [1100, y(1150)], 7);
  onWhite(frame, "pass 3", [2200, y(1300)], 7);
}

function data(sheet: Sheet, facts: Facts, drawing: Drawing): void {
  const { designData: shown } = drawing;
  const { duty, heatingSurface, emptyMass, fluid, corrosionAllowance, designStandard } = facts.equipment;
  const lines: readonly (readonly [string, string | undefined])[] = [
    ["Maximum allowable pressure PS", shown?.maximumAllowablePressure],
    [
      "Allowable temperature TS",
      `${printed(shown?.minimumAllowableTemperature)} to ${printed(shown?.maximumAllowableTemperature)}`,
    ],
    ["Volume", shown?.volume],
    ["Test pressure", shown?.testPressure],
    ["Contents, fluid group", `${printed(fluid?.name)}, ${printed(shown?.fluidGroup)}`],
    ["Category", shown?.category],
    ["Designed to", `${printed(designStandard?.standard)}:${printed(designStandard?.edition)}`],
    ["Steam output", duty?.steamOutput],
    ["From and at 100 °C", duty?.outputFromAndAt],
    ["Working pressure", duty?.workingPressure],
    ["Heat input, efficiency", `${printed(duty?.heatInput)}, ${printed(duty?.efficiency)}`],
    ["Feedwater", duty?.feedwaterTemperature],
    ["Heating surface", heatingSurface],
    ["Corrosion allowance", corrosionAllowance],
    ["Empty mass", emptyMass],
  ];
  const half = (right - left) / 2;
  lines.forEach(([what, value], index) => {
    const x = left + (index % 2) * half;
    const y = 478 + Math.floor(index / 2) * 18;
    write(sheet, what, x + 4, y, { size: 8.5 });
    write(sheet, printed(value), x + 134, y, { size: 8.5, bold: true });
    rule(sheet, x, y + 5, x + half - 8, y + 5, 0.25);
  });
  const notes = [
    "Circles with numbers name parts of the material list; marks N and M name nozzles and the manhole.",
    "Shell of two courses, longitudinal seams 180° apart. All seams and corner joints to weld map DRG-02.",
    "Burner, insulation, cladding, feed pumps and pipework are supplied and drawn apart.",
  ];
  notes.forEach((note, index) => write(sheet, note, left + 4, 620 + index * 13, { size: 8 }));
}

function crosswise(sheet: Sheet, facts: Facts, g: Geometry): void {
  const y = heightIn(g);
  const front: Frame = { sheet, x: left + 118, y: 130, scale: 0.118 };
  plateView(front, g, { furnace: true, second: true, third: true });
  label(front, "section A, front plate", [0, g.shell.inside + 120], 8);
  const rear: Frame = { ...front, x: left + 354 };
  circle(rear, [0, y(g.shell.inside / 2)], g.shell.outside / 2, 0.9);
  circle(rear, [0, y(g.shell.inside / 2)], g.shell.inside / 2, 0.5);
  circle(rear, [0, y(g.chamber.centre)], g.chamber.outside / 2, 0.9);
  circle(rear, [0, y(g.chamber.centre)], g.chamber.outside / 2 - g.chamber.wall, 0.4);
  circle(rear, [0, y(g.furnace.centre)], g.furnace.outside / 2, 0.6);
  for (const [x, height] of [...thirdPass(g), ...secondPass(g)]) circle(rear, [x, y(height)], g.tube / 2, 0.35);
  axes(rear, [0, y(g.shell.inside / 2)], g.shell.inside / 2);
  label(rear, "section B, reversal chamber", [0, g.shell.inside + 120], 8);
  const { levels } = facts.equipment;
  const marks: readonly (readonly [string, string | undefined])[] = [
    ["NW", levels?.normal],
    ["LW", levels?.lowestPermissible],
    ["HS", levels?.highestHeatedSurface],
  ];
  marks.forEach(([name, level], index) => {
    const at = y(figure(level));
    dashed(rear, [-1010, at], [1010, at], 0.6);
    leader(rear, `${name} ${figure(level)}`, [1060, at - 110 + index * 110], [1010, at]);
  });
  sheet.y = 430;
  table(
    sheet,
    columns(["Mark", "Level or size", "Above the shell's inside bottom"], [10, 60, 30]),
    [
      ["HS", "highest heated surface: top of the reversal chamber", printed(levels?.highestHeatedSurface)],
      ["LW", "lowest permissible water level, plate at the level indicators", printed(levels?.lowestPermissible)],
      ["LL", "limiters cut the firing off", printed(levels?.limiter)],
      ["NW", "normal water level", printed(levels?.normal)],
      ["HW", "highest water level, alarm", printed(levels?.highest)],
      ["ST", "steam taken off", printed(levels?.steamTakeOff)],
    ],
    8.5,
  );
}

const placed = (at: Place) => (typeof at === "string" ? at : `${at[1]}, ${at[0]} mm above the bottom`);

function nozzleTable(sheet: Sheet): void {
  table(
    sheet,
    columns(["Mark", "Use", "Size", "Neck", "Course", "From the front plate", "Place"], [7, 34, 18, 22, 9, 16, 28]),
    [
      ...nozzles.map((nozzle) => [
        nozzle.mark,
        nozzle.use,
        nozzle.size,
        `${nozzle.diameter.replace(" mm", "")} × ${nozzle.wall}`,
        nozzle.shell,
        `${nozzle.along} mm`,
        placed(nozzle.at),
      ]),
      ["M1", "manhole", "320 × 420", "frame, 25.0 mm", "P02", `${manholeAlong} mm`, "top"],
    ],
    8.5,
  );
  write(sheet, "Left and right as seen from the front. Flanges EN 1092-1, PN 40, welding neck.", left, sheet.y + 6, {
    size: 8,
  });
}
