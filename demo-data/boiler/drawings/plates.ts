import type { Part } from "../../generated/records.ts";
import { label, type Frame } from "../../paper/figures.ts";
import { left, newSheet, type Sheet } from "../../paper/paper.ts";
import { circle, shade } from "../../paper/shapes.ts";
import { columns, table } from "../../paper/tables.ts";
import { figure, listed, printed } from "../../sheets/original.ts";
import { partsList } from "./parts-list.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import type { Draw } from "./drawing.ts";
import { backStays, geometryOf, secondPass, type Geometry } from "./geometry.ts";
import { heightIn, plateView, staysIn } from "./section.ts";

/** The four plates with their tube fields and stays, and the tables of fields, stayed regions and breathing spaces. */
export const drawPlates: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const g = geometryOf(facts);
  const frame = (column: number, row: number): Frame => ({
    sheet,
    x: left + 118 + column * 250,
    y: 102 + row * 158,
    scale: 0.078,
  });
  plateView(frame(0, 0), g, { furnace: true, second: true, third: true });
  plateView(frame(1, 0), g, { access: true, third: true });
  backStays(g).forEach(([x, height]) => circle(frame(1, 0), [x, heightIn(g)(height)], 22, 0.9, shade));
  chamberPlate(frame(0, 1), g, true);
  chamberPlate(frame(1, 1), g, false);
  for (const [id, column, row] of [
    ["P03", 0, 0],
    ["P04", 1, 0],
    ["P09", 0, 1],
    ["P10", 1, 1],
  ] as const) {
    const part = g.part(id);
    const text = `${id}, ${printed(part.name)}, Ø ${printed(part.outsideDiameter)} × ${printed(part.nominalThickness)}`;
    label(frame(column, row), text, [0, row === 0 ? 2010 : 1960], 7.5);
  }
  sheet.y = 428;
  const plates = ["P03", "P04", "P09", "P10"].map((id) => g.part(id));
  fieldTable(sheet, plates);
  regionTable(sheet, plates);
  spaceTable(sheet, plates);
  partsList(sheet, [...plates, g.part("P16"), g.part("P17")], 6);
  titleBlock(sheet, facts, drawing);
};

/** A plate of the chamber: the tube plate with the furnace's opening, or the back plate with stays and access opening. */
function chamberPlate(frame: Frame, g: Geometry, tubes: boolean): void {
  const y = heightIn(g);
  const { chamber, furnace, access } = g;
  circle(frame, [0, y(chamber.centre)], chamber.outside / 2 - chamber.wall, 0.9);
  if (!tubes) {
    circle(frame, [0, y(chamber.centre)], access.outside / 2, 0.8);
    for (const [x, height] of backStays(g)) circle(frame, [x, y(height)], 22, 0.9, shade);
    return;
  }
  circle(frame, [0, y(furnace.centre)], furnace.outside / 2, 0.8);
  const stays = staysIn(g, "P03", 0);
  secondPass(g).forEach(([x, height], index) => {
    const stay = stays[index] === true;
    circle(frame, [x, y(height)], g.tube / 2, stay ? 1.1 : 0.4, stay ? shade : undefined);
  });
}

function fieldTable(sheet: Sheet, plates: readonly Part[]): void {
  table(
    sheet,
    columns(
      ["Plate", "Tube field", "Pattern, pitch", "Hole", "Plain tubes", "Stay tubes", "Ligament"],
      [8, 24, 22, 12, 12, 12, 12],
    ),
    plates.flatMap(({ id, tubeFields = [] }) =>
      tubeFields.map((one) => [
        id,
        one.field,
        `${printed(one.pattern)}, ${printed(one.pitch)}`,
        printed(one.holeDiameter),
        printed(one.tubes),
        printed(one.stayTubes),
        `${(figure(one.pitch) - figure(one.holeDiameter)).toFixed(1)} mm`,
      ]),
    ),
    7.2,
  );
}

function regionTable(sheet: Sheet, plates: readonly Part[]): void {
  table(
    sheet,
    columns(["Plate", "Stayed region", "Largest circle", "Through"], [8, 34, 16, 42]),
    plates.flatMap(({ id, regions = [] }) =>
      regions.map((one) => [id, one.region, printed(one.circleDiameter), listed(one.supports).replaceAll("-", " ")]),
    ),
    7.2,
  );
}

function spaceTable(sheet: Sheet, plates: readonly Part[]): void {
  table(
    sheet,
    columns(["Plate", "Breathing spaces, at least"], [8, 92]),
    plates.flatMap(({ id, breathingSpaces = [] }) =>
      breathingSpaces.length === 0
        ? []
        : [[id, breathingSpaces.map((one) => `${one.space} ${printed(one.width)}`).join("; ")]],
    ),
    7.2,
  );
}
