import type { Joint } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { balloon, label, type Frame } from "../../paper/figures.ts";
import { left, newSheet, note, write, type Sheet } from "../../paper/paper.ts";
import { columns, table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { manholeAlong, nozzles } from "../facts/nozzles.ts";
import type { Draw } from "./drawing.ts";
import { geometryOf, heightOf, steamStays, type Geometry, type Point } from "./geometry.ts";
import { heightIn, section } from "./section.ts";

/** How many joints of the table stand below the figure; the others fill the second sheet. */
const onFirst = 16;

/** The weld map on two sheets: the section with the numbers of the joints, and their table. */
export const drawWeldMap: Draw = (paper, facts, drawing) => {
  const joints = facts.all("joint");
  const first = newSheet(paper);
  figureOf(first, facts);
  first.y = 450;
  tableOf(first, joints.slice(0, onFirst));
  titleBlock(first, facts, drawing, "sheet 1 of 2");
  const second = newSheet(paper);
  tableOf(second, joints.slice(onFirst));
  notes(second, facts);
  titleBlock(second, facts, drawing, "sheet 2 of 2");
};

function figureOf(sheet: Sheet, facts: Facts): void {
  const g = geometryOf(facts);
  const frame: Frame = { sheet, x: left + 40, y: 170, scale: 0.112 };
  section(frame, g, false);
  for (const { id, at, to } of [...seams(g), ...branches(g), ...staysAndAttachments(g)]) balloon(frame, id, at, to);
  label(
    frame,
    "N joins a nozzle to the shell, F its flange to the neck; both bear the nozzle's number.",
    [1950, 2330],
    8,
  );
}

interface Mark {
  readonly id: string;
  readonly at: Point;
  readonly to: Point;
}

/** The seams of shell, furnace and chamber, and the corner joints of their plates. */
function seams(g: Geometry): readonly Mark[] {
  const y = heightIn(g);
  const { furnace, chamber, access, hoop, shell, plate } = g;
  const crown = y(furnace.centre + furnace.outside / 2);
  const side = y(furnace.centre) + 120;
  const mark = (id: string, at: Point, to: Point): Mark => ({ id, at, to });
  const ceiling = chamber.centre + chamber.outside / 2;
  return [
    mark("L1", [560, 130], [620, 0]),
    mark("L2", [2450, 130], [2510, 0]),
    mark("C1", [g.seam, -260], [g.seam, -12]),
    mark("E1", [-180, 120], [-10, 6]),
    mark("E2", [shell.length + 180, 120], [shell.length + 10, 6]),
    mark("FS1", [620, side], [700, crown + 8]),
    mark("FS2", [2640, side], [2460, crown + 8]),
    mark("FC1", [hoop.from - 60, side - 60], [hoop.from, crown + 8]),
    mark("FC2", [hoop.to + 60, side - 60], [hoop.to, crown + 8]),
    mark("K1", [-180, crown + 150], [-10, crown + 6]),
    mark("K2", [furnace.end - 190, crown + 330], [furnace.end + 4, crown + 10]),
    mark("K3", [chamber.from - 190, y(ceiling) - 120], [chamber.from - 6, y(ceiling) + 10]),
    mark("K4", [chamber.to + 120, y(ceiling) - 120], [chamber.to + 6, y(ceiling) + 10]),
    mark("WL1", [3400, y(ceiling) + 210], [3440, y(ceiling) + 8]),
    mark(
      "K5",
      [chamber.to - 150, y(chamber.centre) - 60],
      [chamber.to + plate, y(chamber.centre + access.outside / 2)],
    ),
    mark(
      "K6",
      [shell.length + 180, y(chamber.centre) + 20],
      [shell.length + 6, y(chamber.centre + access.outside / 2)],
    ),
  ];
}

function branches(g: Geometry): readonly Mark[] {
  const y = heightIn(g);
  const pipes = nozzles.map((nozzle): Mark => {
    const { along } = nozzle;
    const at = heightOf(nozzle);
    const id = `N${nozzle.mark.slice(1).padStart(2, "0")}`;
    if (at === "top") return { id, at: [along + 70, -310], to: [along, -14] };
    if (at === "bottom") return { id, at: [along + 150, g.shell.inside + 220], to: [along + 20, g.shell.inside + 14] };
    return { id, at: [along + 90, y(at) + 150], to: [along + 15, y(at) + 25] };
  });
  return [...pipes, { id: "M01", at: [manholeAlong + 40, -310], to: [manholeAlong + 60, -14] }];
}

/** Joints of the bar stays, a number for each row of two, and of what is welded to the shell. */
function staysAndAttachments(g: Geometry): readonly Mark[] {
  const y = heightIn(g);
  const rows = [...new Set(steamStays.map(([, height]) => height))];
  const ends = rows.flatMap((height, row): Mark[] => [
    { id: `S1${row + 1}`, at: [230 + 230 * row, y(height) + 90], to: [0, y(height)] },
    { id: `S2${row + 1}`, at: [g.shell.length - 330 - 240 * row, y(height) + 90], to: [g.shell.length, y(height)] },
  ]);
  const low = y(g.chamber.centre - 390);
  const bottom = g.shell.inside;
  return [
    ...ends,
    { id: "S31", at: [3420, low - 60], to: [g.chamber.to + g.plate, low] },
    { id: "S32", at: [g.shell.length + 180, low + 60], to: [g.shell.length + 4, low] },
    { id: "A1", at: [g.shell.length * 0.14 - 200, -250], to: [g.shell.length * 0.14 - 40, -14] },
    { id: "A2", at: [g.shell.length * 0.56 + 90, -250], to: [g.shell.length * 0.56 + 40, -14] },
    { id: "A3", at: [g.shell.length * 0.17 + 250, bottom + 190], to: [g.shell.length * 0.17 + 100, bottom + 14] },
    { id: "A4", at: [g.shell.length * 0.8 - 250, bottom + 190], to: [g.shell.length * 0.8 - 100, bottom + 14] },
    { id: "A5", at: [1350, y(1020)], to: [1180, y(1010)] },
  ];
}

function tableOf(sheet: Sheet, joints: readonly Joint[]): void {
  table(
    sheet,
    columns(
      ["Joint", "Parts", "Type", "Thickness", "Length", "Process", "Procedure", "Tests"],
      [7, 11, 17, 18, 10, 8, 12, 24],
    ),
    joints.map((joint) => [
      joint.id,
      (joint.parts ?? []).map((id) => String(Number(id.slice(1)))).join(" + "),
      [joint.type, joint.role].filter((one, index, all) => all.indexOf(one) === index).join(", "),
      (joint.thicknesses ?? []).map((one) => one.replace(" mm", "")).join(" + "),
      printed(joint.length),
      (joint.processes ?? []).join(", "),
      printed(joint.weldingProcedure).replace("@", " r. "),
      (joint.requiredTests ?? [])
        .map(({ method, extent }) => `${method} ${printed(extent).replace(" %", "")}`)
        .join(", "),
    ]),
    6.6,
    (index) => note(sheet.paper, "joint", joints[index]?.id ?? ""),
  );
}

function notes(sheet: Sheet, facts: Facts): void {
  const [first] = facts.all("joint");
  const lines = [
    `Thickness in mm, tests in per cent of the length. Quality level ${printed(first?.qualityLevel)}; marks ${printed(first?.mark)} and so on beside the weld.`,
    "Lengths of circumferential joints run from the zero mark at the top, clockwise seen from the burner.",
    "A rejected length: two further lengths of the same welder. Repairs bear the joint's mark and R1, R2.",
  ];
  lines.forEach((line, index) => write(sheet, line, left, sheet.y + 6 + index * 11, { size: 7.5 }));
}
