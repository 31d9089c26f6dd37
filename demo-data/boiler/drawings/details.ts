import type { Part } from "../../generated/records.ts";
import { label, polyline, type Frame } from "../../paper/figures.ts";
import { left, newSheet, write, type Sheet } from "../../paper/paper.ts";
import { across, box, centreLine, circle, leader, shade, upright } from "../../paper/shapes.ts";
import { columns, table } from "../../paper/tables.ts";
import { figure, printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import type { Draw } from "./drawing.ts";
import { geometryOf, type Geometry } from "./geometry.ts";
import { partsList } from "./parts-list.ts";

/** A sheet of a detail drawing: its figure, its parts list, a note. */
const detail =
  (figureOf: (sheet: Sheet, g: Geometry) => void, listAt: number, note: string): Draw =>
  (paper, facts, drawing) => {
    const sheet = newSheet(paper);
    const g = geometryOf(facts);
    figureOf(sheet, g);
    sheet.y = listAt;
    partsList(
      sheet,
      (drawing.parts ?? []).map((id) => g.part(id)),
    );
    write(sheet, note, left, sheet.y + 4, { size: 8 });
    titleBlock(sheet, facts, drawing);
  };

/** Length of the plate a cylinder is rolled from: round its mean diameter. */
export function developed({ outsideDiameter, nominalThickness }: Part): number {
  return Math.round(Math.PI * (figure(outsideDiameter) - figure(nominalThickness)));
}

/** Plates laid out flat, one below the other, with the length of each. */
export const drawCutting: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const g = geometryOf(facts);
  const rolled = (drawing.parts ?? [])
    .map((id) => g.part(id))
    .filter(({ outsideDiameter }) => outsideDiameter !== undefined);
  let down = 0;
  const frame: Frame = { sheet, x: left + 60, y: 118, scale: 0.046 };
  for (const part of rolled) {
    const [long, high] = [developed(part), figure(part.length)];
    box(frame, [0, down], [long, down + high], 0.8);
    centreLine(frame, [-150, down + high / 2], [long + 150, down + high / 2]);
    label(
      frame,
      `${part.id}, ${printed(part.name)}, ${printed(part.nominalThickness)}`,
      [long + 260, down + high / 2 - 90],
      8,
      false,
    );
    across(frame, String(long), 0, long, down + high + 190);
    upright(frame, String(high), down, down + high, -500);
    down += high + 480;
  }
  table(
    { ...sheet, y: 590 },
    columns(["Part", "Mean diameter", "Developed length", "Width", "Seam"], [10, 20, 20, 20, 30]),
    rolled.map((part) => [
      part.id,
      `${figure(part.outsideDiameter) - figure(part.nominalThickness)} mm`,
      `${developed(part)} mm`,
      printed(part.length),
      facts
        .all("joint")
        .filter(
          ({ role, parts: [only, other] = [] }) => role === "longitudinal" && only === part.id && other === undefined,
        )
        .map(({ id }) => id)
        .join(", "),
    ]),
    7.2,
  );
  const others = (drawing.parts ?? []).map((id) => g.part(id)).filter((part) => !rolled.includes(part));
  if (others.length > 0)
    write(
      sheet,
      `Pressed from a blank: ${others.map(({ id, name }) => `${id}, ${printed(name)}`).join("; ")}.`,
      left,
      690,
      { size: 8 },
    );
  titleBlock(sheet, facts, drawing);
};

/** A tube end in its plate: expanded and beaded, or welded where the tube is a stay. */
function tubeEnds(sheet: Sheet, g: Geometry): void {
  const plain = g.part("P12");
  const stay = g.part("P13");
  const hole = figure(g.part("P03").tubeFields?.[0]?.holeDiameter);
  const expanded = printed(g.part("P03").tubeFields?.[0]?.expandedLength);
  for (const [index, part] of [plain, stay].entries()) {
    const frame: Frame = { sheet, x: left + 110 + index * 245, y: 210, scale: 1.9 };
    const wall = figure(part.nominalThickness);
    const half = hole / 2;
    for (const side of [-1, 1]) {
      box(frame, [0, side * half], [g.plate, side * (half + 24)], 0.8, shade);
      box(frame, [-7, side * (g.tube / 2)], [78, side * (g.tube / 2 - wall)], 0.8);
      const corner = side * (g.tube / 2);
      if (index === 1)
        polyline(
          frame,
          [
            [-6, corner],
            [0, side * (half + 6)],
            [0, corner],
          ],
          0.8,
        );
    }
    centreLine(frame, [-20, 0], [92, 0]);
    upright(frame, `Ø ${hole}`, -half, half, 46);
    across(frame, String(g.plate), 0, g.plate, half + 38);
    label(frame, `${part.name ?? part.id}, Ø ${g.tube} × ${wall}`, [36, half + 58], 8);
    const text = index === 0 ? `expanded over ${expanded}` : "expanded, then welded, fillet 6 mm";
    leader(frame, text, [34, -half - 12], [g.plate - 2, -half + 1]);
  }
}

export const drawTubeEnds = detail(
  tubeEnds,
  400,
  "Holes bored ± 0.2 mm, edges broken 1 mm. Wall thinned by 5 % to 8 %, of stay tubes by 2 % to 4 %. Tubes stand out 7 mm; no bead where flue gas enters.",
);

function barStays(sheet: Sheet, g: Geometry): void {
  for (const [index, id] of ["P16", "P17"].entries()) {
    const stay = g.part(id);
    const long = figure(stay.length);
    const radius = figure(stay.outsideDiameter) / 2;
    const frame: Frame = { sheet, x: left + 60, y: 170 + index * 170, scale: 0.9 };
    const cut = id === "P16" ? 380 : long;
    for (const at of [0, cut - g.plate]) {
      box(frame, [at, -radius], [at + g.plate, -radius - 40], 0.8, shade);
      box(frame, [at, radius], [at + g.plate, radius + 40], 0.8, shade);
      const inner = at === 0 ? g.plate : at;
      const way = at === 0 ? 1 : -1;
      for (const side of [-1, 1])
        polyline(
          frame,
          [
            [inner, side * (radius + 14)],
            [inner + way * 14, side * radius],
          ],
          0.8,
        );
    }
    box(frame, [0, -radius], [cut, radius], 0.9);
    centreLine(frame, [-20, 0], [cut + 20, 0]);
    across(frame, String(long), 0, cut, radius + 66);
    label(
      frame,
      `${id}, ${printed(stay.name)}, Ø ${2 * radius}, ${printed(stay.quantity)} off`,
      [190, -radius - 56],
      8,
    );
  }
}

export const drawBarStays = detail(
  barStays,
  470,
  "Fillet welds, throat 10 mm, all round at both plates, to WPS-17. Ends flush with the plates' outside, tell-tale holes none.",
);

function supports(sheet: Sheet): void {
  const lug: Frame = { sheet, x: left + 70, y: 150, scale: 0.8 };
  polyline(
    lug,
    [
      [0, 120],
      [0, 40],
      [30, 0],
      [110, 0],
      [140, 40],
      [140, 120],
      [0, 120],
    ],
    0.9,
  );
  circle(lug, [70, 48], 26, 0.9);
  across(lug, "140", 0, 140, 156);
  label(lug, "lifting lug P45, 25 thick, hole Ø 52", [70, 186], 8);
  const saddle: Frame = { sheet, x: left + 260, y: 150, scale: 0.2 };
  const arc = Array.from({ length: 21 }, (_, index): readonly [number, number] => {
    const angle = Math.PI * (0.25 + (0.5 * index) / 20);
    return [470 - 962 * Math.cos(angle) * 0.48, -430 + 962 * Math.sin(angle) * 0.8];
  });
  polyline(saddle, arc, 0.9);
  polyline(saddle, [arc[0] ?? [0, 0], [0, 640], [940, 640], arc.at(-1) ?? [0, 0]], 0.9);
  box(saddle, [-60, 640], [1000, 670], 0.9, shade);
  for (const x of [300, 620]) box(saddle, [x, 345], [x + 20, 640], 0.6);
  label(saddle, "saddle P46, 15 thick, wrapped to the shell; one is fixed, one slides", [470, 760], 8);
}

export const drawSupports = detail(
  supports,
  370,
  "Fillet welds to WPS-18, throat 8 mm. Lugs for the empty boiler only, lifted with a spreader beam.",
);

function accessTube(sheet: Sheet, g: Geometry): void {
  const { outside, wall } = g.access;
  const long = figure(g.part("P11").length);
  const frame: Frame = { sheet, x: left + 150, y: 150, scale: 0.5 };
  const total = long + 2 * g.plate - g.plate;
  for (const x of [0, total]) {
    box(frame, [x, -70], [x + g.plate, 0], 0.8, shade);
    box(frame, [x, outside], [x + g.plate, outside + 70], 0.8, shade);
  }
  for (const y of [0, outside - wall]) box(frame, [g.plate, y], [total + g.plate, y + wall], 0.8, shade);
  centreLine(frame, [-60, outside / 2], [total + 90, outside / 2]);
  leader(frame, "K5, to the back plate P10", [-40, -50], [g.plate, 2]);
  leader(frame, "K6, to the rear tube plate P04", [total + 70, -50], [total + 6, 2]);
  upright(frame, `Ø ${outside}`, 0, outside, total / 2 + 30);
  across(frame, String(long), g.plate, g.plate + long, outside + 110);
  label(frame, `wall ${wall}; closed outside by a bolted, insulated door`, [total / 2, outside + 160], 8);
}

export const drawAccess = detail(
  accessTube,
  480,
  "Openings cut and ground to the tube, gap at most 1.5 mm. The tube carries no load from the door.",
);
