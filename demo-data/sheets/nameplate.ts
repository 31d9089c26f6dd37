import { rgb } from "pdf-lib";
import type { Nameplate } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { height, left, newSheet, rule, widthOf, write, type Paper, type Sheet } from "../paper/paper.ts";
import { inspected, printed } from "./original.ts";

type Row = readonly [string, string, string, string];

function rowsOf({ equipment }: Facts, nameplate: Nameplate, stamped: boolean): readonly Row[] {
  const { duty, heatingSurface, fluid } = equipment;
  return [
    ["Type", printed(nameplate.type), "Serial no.", printed(nameplate.serial)],
    ["Year", printed(nameplate.year), "Volume V", printed(nameplate.volume)],
    [
      "PS",
      printed(nameplate.maximumAllowablePressure),
      "TS",
      `${printed(nameplate.minimumAllowableTemperature)} / ${printed(nameplate.maximumAllowableTemperature)}`,
    ],
    ["PT", printed(nameplate.testPressure), "Test date", stamped ? printed(nameplate.testDate) : "…"],
    [
      "Fluid",
      `${(fluid?.name ?? "–").replace("compressed ", "")}, group ${printed(nameplate.fluidGroup)}`,
      "Category",
      `${printed(nameplate.category)}, module ${printed(nameplate.module)}`,
    ],
    ...(duty === undefined ? [] : [["Output", printed(duty.steamOutput), "Surface", printed(heatingSurface)] as const]),
    ["Set press.", printed(nameplate.setPressure), "Empty mass", printed(equipment.emptyMass)],
  ];
}

/** Draws the nameplate; `x` and `y` of its upper left corner. On the drawing the day of the test is still open. */
export function drawPlate(
  sheet: Sheet,
  facts: Facts,
  nameplate: Nameplate,
  [x, y]: readonly [number, number],
  stamped: boolean,
): void {
  const { page, paper } = sheet;
  const wide = 420;
  const tall = 298;
  page.drawRectangle({
    x,
    y: height - y - tall,
    width: wide,
    height: tall,
    color: rgb(0.86, 0.87, 0.88),
    borderColor: rgb(0.35, 0.35, 0.37),
    borderWidth: 1.5,
  });
  page.drawRectangle({
    x: x + 6,
    y: height - y - tall + 6,
    width: wide - 12,
    height: tall - 12,
    borderColor: rgb(0.55, 0.55, 0.57),
    borderWidth: 0.5,
  });
  for (const [cx, cy] of [
    [14, 14],
    [wide - 14, 14],
    [14, tall - 14],
    [wide - 14, tall - 14],
  ] as const) {
    page.drawCircle({
      x: x + cx,
      y: height - y - cy,
      size: 5,
      color: rgb(0.72, 0.73, 0.74),
      borderColor: rgb(0.4, 0.4, 0.42),
      borderWidth: 0.7,
    });
  }
  const at = (text: string, px: number, py: number, size: number, bold = false) => {
    write(sheet, text, x + px, y + py, { size: size, bold });
  };
  const name = nameplate.makerName ?? "";
  at(name, 210 - widthOf(paper.bold, name, 17) / 2, 36, 17, true);
  at(nameplate.makerAddress ?? "", 210 - widthOf(paper.regular, nameplate.makerAddress ?? "", 9) / 2, 50, 9);
  const rows = rowsOf(facts, nameplate, stamped);
  const step = rows.length > 6 ? 25 : 29;
  const fitting = (text: string) => Math.min(13, (13 * 124) / widthOf(paper.bold, text, 13));
  rows.forEach(([one, first, two, second], index) => {
    const line = 76 + index * step;
    at(one, 24, line, 8);
    at(first, 84, line + 2, fitting(first), true);
    at(two, 214, line, 8);
    at(second, 276, line + 2, fitting(second), true);
    rule(sheet, x + 22, y + (line + 9), x + wide - 22, y + (line + 9), 0.4);
  });
  at("CE", 28, 270, 26, true);
  at(printed(nameplate.bodyNumber), 74, 268, 18, true);
  at("Demonstration plate: invented data, no real marking", 140, 268, 8.5);
}

/** A facsimile of the plate, with a rubbing's signatures; `place` says where it is fixed. */
export function drawFacsimile(paper: Paper, facts: Facts, nameplate: Nameplate, place: string): void {
  const fixed = printed(nameplate.fixed);
  const sheet = newSheet(paper, "Facsimile of the nameplate");
  drawPlate(sheet, facts, nameplate, [left + 40, sheet.y + 14], true);
  sheet.y += 340;
  paragraph(sheet, `Rubbing taken after stamping, ${fixed}. Plate fixed with four rivets to ${place}.`);
  signatures(sheet, [{ role: "shop", name: facts.first("shop"), date: fixed }, inspected(facts, fixed)]);
}
