import { rgb } from "pdf-lib";
import type { Drawing } from "../../../src/generated/records.ts";
import { heading, paragraph, table } from "../../paper/blocks.ts";
import { height, left, newSheet, right, rule, write, type Paper, type Sheet } from "../../paper/paper.ts";
import { drawings } from "../facts/papers.ts";
import { nameOf } from "../facts/people.ts";
import { joints, parts } from "../facts/vessel.ts";
import { balloon, dimension, label, polyline, type Frame } from "./figures.ts";
import { drawPlate } from "./nameplate.ts";
import { printed, type OriginalSheet } from "./original.ts";

const course = 1125;
const flange = 40;
const dish = 308;
/** Middle of each joint along the axis, from the left tangent line. */
const c1 = flange;
const c2 = flange + course;
const c3 = flange + 2 * course;
const tangent = c3 + flange;

/** Half of a dished end as points: bulging to the left (-1) or the right (+1) of a tangent line. */
function endLine(from: number, side: -1 | 1): (readonly [number, number])[] {
  const count = 40;
  return Array.from({ length: count + 1 }, (_, index) => {
    const angle = (Math.PI * index) / count - Math.PI / 2;
    const bulge = Math.abs(Math.cos(angle)) ** 0.72;
    return [from + side * dish * bulge, 600 + 600 * Math.sin(angle)] as const;
  });
}

function titleBlock(sheet: Sheet, drawing: Drawing): void {
  const top = height - 150;
  const revisions = drawing.revisions ?? [];
  sheet.page.drawRectangle({
    x: left,
    y: 44,
    width: right - left,
    height: 106,
    borderWidth: 0.9,
    borderColor: rgb(0.1, 0.1, 0.1),
  });
  const middle = left + 250;
  rule(sheet, middle, top, middle, top + 106, 0.6);
  for (const [text, across] of [
    ["Rev.", 6],
    ["Date", 30],
    ["Reason", 84],
    ["Approved", 200],
  ] as const)
    write(sheet, text, left + across, top + 12, { size: 7 });
  revisions.forEach((revision, index) => {
    const y = top + 26 + index * 13;
    write(sheet, revision.revision, left + 6, y, { size: 8, bold: true });
    write(sheet, printed(revision.date), left + 30, y, { size: 8 });
    write(sheet, printed(revision.reason), left + 84, y, { size: 8 });
    write(sheet, printed(revision.approved), left + 200, y, { size: 8 });
  });
  write(sheet, printed(drawing.title), middle + 8, top + 20, { size: 14, bold: true });
  write(sheet, "Compressed-air receiver 3000 l, serial TQ423-01", middle + 8, top + 36, { size: 9 });
  write(sheet, "Client: Pebblewright Glass, order PW-1187", middle + 8, top + 49, { size: 8 });
  write(sheet, `Drawn ${nameOf("R1")}   checked ${nameOf("R2")}   approved ${nameOf("K1")}`, middle + 8, top + 64, {
    size: 7.5,
  });
  write(
    sheet,
    `${printed(drawing.number)}   revision ${printed(revisions.at(-1)?.revision)}   sheet 1 of 1`,
    middle + 8,
    top + 92,
    { size: 10, bold: true },
  );
}

function shellOf(frame: Frame): void {
  polyline(
    frame,
    [
      [0, 0],
      [tangent, 0],
    ],
    1.1,
  );
  polyline(
    frame,
    [
      [0, 1200],
      [tangent, 1200],
    ],
    1.1,
  );
  polyline(frame, endLine(0, -1), 1.1);
  polyline(frame, endLine(tangent, 1), 1.1);
  for (const x of [c1, c2, c3])
    polyline(
      frame,
      [
        [x, 0],
        [x, 1200],
      ],
      0.7,
    );
  for (let x = -380; x < tangent + 380; x += 90)
    polyline(
      frame,
      [
        [x, 600],
        [x + 60, 600],
      ],
      0.3,
    );
}

function drawArrangement(paper: Paper, drawing: Drawing): void {
  const sheet = newSheet(paper);
  const frame: Frame = { sheet, x: left + 84, y: 200, scale: 0.142 };
  shellOf(frame);
  const stub = (x: number, half: number, up: number, disc: number, name: string) => {
    polyline(
      frame,
      [
        [x - half, 0],
        [x - half, -up],
      ],
      0.7,
    );
    polyline(
      frame,
      [
        [x + half, 0],
        [x + half, -up],
      ],
      0.7,
    );
    polyline(
      frame,
      [
        [x - disc, -up],
        [x + disc, -up],
        [x + disc, -up - 20],
        [x - disc, -up - 20],
        [x - disc, -up],
      ],
      0.7,
    );
    balloon(frame, name, [x, -up - 130], [x, -up - 20]);
  };
  stub(400, 44, 150, 100, "N1");
  stub(1400, 30, 140, 82, "N3");
  stub(1950, 44, 150, 100, "N2");
  polyline(
    frame,
    [
      [186, 1200],
      [186, 1310],
      [214, 1310],
      [214, 1200],
    ],
    0.7,
  );
  balloon(frame, "N4", [200, 1430], [200, 1310]);
  const circle = (x: number, y: number, radius: number) => {
    sheet.page.drawCircle({
      x: frame.x + x * frame.scale,
      y: height - frame.y - y * frame.scale,
      size: radius * frame.scale,
      borderWidth: 0.8,
      color: rgb(1, 1, 1),
      borderColor: rgb(0.1, 0.1, 0.1),
    });
  };
  circle(800, 600, 230);
  circle(800, 600, 162);
  for (let index = 0; index < 12; index++)
    circle(800 + 205 * Math.cos((index * Math.PI) / 6), 600 + 205 * Math.sin((index * Math.PI) / 6), 12);
  balloon(frame, "N6", [800, 990], [800, 830]);
  circle(2150, 600, 17);
  balloon(frame, "N5", [2150, 800], [2150, 620]);
  balloon(frame, "1", [640, 220], [700, 0]);
  balloon(frame, "2", [1640, 220], [1700, 0]);
  balloon(frame, "3", [-400, 180], [-214, 280]);
  balloon(frame, "4", [tangent + 400, 180], [tangent + 214, 280]);
  for (const x of [520, 1810])
    polyline(
      frame,
      [
        [x - 90, 1190],
        [x - 130, 1420],
        [x + 130, 1420],
        [x + 90, 1190],
      ],
      0.6,
    );
  dimension(frame, "2947 over ends", -dish, tangent + dish, 1600);
  dimension(frame, "1125", c1, c2, 1490);
  dimension(frame, "1125", c2, c3, 1490);
  label(frame, "Ø 1200 outside, 8 nominal", [tangent / 2, 1130], 7);
  label(frame, "two loose saddles, not welded to the shell", [tangent / 2, 1395], 7);
  const section: Frame = { sheet, x: left + 76, y: 470, scale: 0.1 };
  drawSection(section);
  sheet.y = 448;
  const data = drawing.designData;
  const x = left + 250;
  const lines = [
    ["Maximum allowable pressure PS", data?.maximumAllowablePressure],
    [
      "Allowable temperature TS",
      `${printed(data?.minimumAllowableTemperature)} to ${printed(data?.maximumAllowableTemperature)}`,
    ],
    ["Volume", data?.volume],
    ["Test pressure", data?.testPressure],
    ["Contents", "air, gas of fluid group 2"],
    ["Category", data?.category],
    ["Shell and ends", "P265GH, EN 10028-2:2017"],
    ["Corrosion allowance", "1.0 mm"],
    ["Weld joint coefficient", "shell 0.85, ends 1.00"],
    ["Ends", "R 960, r 185, at least 7.0"],
    ["Empty mass", "838 kg"],
  ] as const;
  lines.forEach(([what, value], index) => {
    const y = 478 + index * 17;
    write(sheet, what, x, y, { size: 8.5 });
    write(sheet, printed(value), x + 125, y, { size: 8.5, bold: true });
    rule(sheet, x, y + 5, right, y + 5, 0.25);
  });
  titleBlock(sheet, drawing);
}

function drawSection(frame: Frame): void {
  const { sheet } = frame;
  const circle = (x: number, y: number, radius: number, thickness: number) => {
    sheet.page.drawCircle({
      x: frame.x + x * frame.scale,
      y: height - frame.y - y * frame.scale,
      size: radius * frame.scale,
      borderWidth: thickness,
      borderColor: rgb(0.1, 0.1, 0.1),
    });
  };
  circle(600, 800, 600, 1);
  circle(600, 800, 592, 0.4);
  polyline(
    frame,
    [
      [556, 200],
      [556, 60],
      [500, 60],
      [500, 30],
      [700, 30],
      [700, 60],
      [644, 60],
      [644, 200],
    ],
    0.7,
  );
  polyline(
    frame,
    [
      [0, 640],
      [-110, 640],
      [-110, 570],
      [-140, 570],
      [-140, 1030],
      [-110, 1030],
      [-110, 960],
      [0, 960],
    ],
    0.7,
  );
  polyline(
    frame,
    [
      [170, 1290],
      [110, 1560],
      [1090, 1560],
      [1030, 1290],
    ],
    0.7,
  );
  label(frame, "N1, N2, N3", [600, -30], 7);
  label(frame, "N6", [-190, 1110], 7);
  label(frame, "seen from end 1", [600, 1660], 7);
}

const notes = [
  "RT: at least 10 % of each seam, films at",
  "the crossings L1/C1 and L2/C3 and at the",
  "zero mark of C1, C2 and C3.",
  "",
  "A rejected film: two further lengths of",
  "the same welder.",
  "",
  "MT: nozzle welds, at least 25 %, with",
  "20 mm of shell and neck; N04 and N05",
  "by PT: no room for the yoke.",
  "",
  "VT: every weld over its whole length.",
  "",
  "Repairs bear the joint's mark and R1, R2.",
];

/** Place of a joint's centre on the unrolled shell: along the axis, and mm of circumference from the top. */
const places: Readonly<Record<string, readonly [number, number, number]>> = {
  N01: [400, 0, 44],
  N02: [1950, 0, 44],
  N03: [1400, 0, 30],
  N04: [200, 1872, 24],
  N05: [2150, 936, 24],
  N06: [800, 2808, 162],
};

function drawWeldMap(paper: Paper, drawing: Drawing): void {
  const sheet = newSheet(paper);
  paragraph(
    sheet,
    "Shell unrolled, seen from outside. Lengths of circumferential joints run from the zero mark at the top, clockwise seen from end 1.",
  );
  const frame: Frame = { sheet, x: left + 70, y: sheet.y + 28, scale: 0.082 };
  const around = 3745;
  polyline(
    frame,
    [
      [-130, 0],
      [tangent + 130, 0],
    ],
    0.4,
  );
  polyline(
    frame,
    [
      [-130, around],
      [tangent + 130, around],
    ],
    0.4,
  );
  for (const [x, name] of [
    [c1, "C1"],
    [c2, "C2"],
    [c3, "C3"],
  ] as const) {
    polyline(
      frame,
      [
        [x, 0],
        [x, around],
      ],
      1.8,
    );
    balloon(frame, name, [x, -190], [x, 0]);
  }
  polyline(
    frame,
    [
      [c1, 560],
      [c2, 560],
    ],
    1.8,
  );
  polyline(
    frame,
    [
      [c2, 1310],
      [c3, 1310],
    ],
    1.8,
  );
  balloon(frame, "L1", [300, 720], [300, 560]);
  balloon(frame, "L2", [1700, 1470], [1700, 1310]);
  for (const [name, [x, y, radius]] of Object.entries(places)) {
    for (const down of y === 0 ? [0, around] : [y])
      sheet.page.drawCircle({
        x: frame.x + x * frame.scale,
        y: height - frame.y - down * frame.scale,
        size: Math.max(2.4, radius * frame.scale),
        borderWidth: 1.3,
        borderColor: rgb(0.1, 0.1, 0.1),
      });
    balloon(frame, name, [x + 190, y + 240], [x + radius * 0.7, y + radius * 0.7]);
  }
  for (const [text, y] of [
    ["0", 0],
    ["936", 936],
    ["1872", 1872],
    ["2808", 2808],
    ["3745", around],
  ] as const)
    label(frame, text, [-290, y], 7);
  label(frame, "end 1", [-150, 2340], 8);
  label(frame, "end 2", [tangent + 150, 2340], 8);
  label(frame, "course 1", [c1 + 380, 1500], 8);
  label(frame, "course 2", [c2 + 420, 2300], 8);
  notes.forEach((line, index) => {
    write(sheet, line, left + 318, frame.y + 30 + index * 15, { size: 8.5 });
  });
  sheet.y = frame.y + around * frame.scale + 40;
  const from = sheet.y;
  table(
    sheet,
    ["Joint", "Parts", "Type", "Thickness", "Length", "Procedure", "Tests"].map((title, index) => ({
      title,
      share: [6, 10, 12, 16, 10, 11, 18][index] ?? 10,
    })),
    joints.map((joint) => [
      joint.id,
      (joint.parts ?? []).map((id) => String(Number(id.slice(1)))).join(" + "),
      printed(joint.role),
      (joint.thicknesses ?? []).join(", "),
      printed(joint.length),
      printed(joint.weldingProcedure).replace("@", " r. "),
      (joint.requiredTests ?? []).map(({ method, extent }) => `${method} ${printed(extent)}`).join(", "),
    ]),
    6.6,
  );
  write(
    sheet,
    "Quality level C for all joints. Joint marks are stamped 423 L1 … 423 N06 beside the weld.",
    left,
    Math.max(from, sheet.y) + 2,
    { size: 7.5 },
  );
  titleBlock(sheet, drawing);
}

function drawNozzles(paper: Paper, drawing: Drawing): void {
  const sheet = newSheet(paper);
  const frame: Frame = { sheet, x: left + 150, y: sheet.y + 30, scale: 0.62 };
  polyline(
    frame,
    [
      [-150, 190],
      [0, 190],
    ],
    1,
  );
  polyline(
    frame,
    [
      [-150, 198],
      [0, 198],
    ],
    1,
  );
  polyline(
    frame,
    [
      [324, 190],
      [470, 190],
    ],
    1,
  );
  polyline(
    frame,
    [
      [324, 198],
      [470, 198],
    ],
    1,
  );
  polyline(
    frame,
    [
      [0, 215],
      [0, 40],
      [-68, 40],
      [-68, 12],
      [392, 12],
      [392, 40],
      [324, 40],
      [324, 215],
    ],
    1,
  );
  polyline(
    frame,
    [
      [12, 215],
      [12, 12],
    ],
    0.7,
  );
  polyline(
    frame,
    [
      [312, 215],
      [312, 12],
    ],
    0.7,
  );
  polyline(
    frame,
    [
      [0, 215],
      [12, 215],
    ],
    1,
  );
  polyline(
    frame,
    [
      [312, 215],
      [324, 215],
    ],
    1,
  );
  polyline(
    frame,
    [
      [-68, 10],
      [392, 10],
      [392, -18],
      [-68, -18],
      [-68, 10],
    ],
    1,
  );
  polyline(
    frame,
    [
      [-14, 190],
      [0, 176],
    ],
    0.7,
  );
  polyline(
    frame,
    [
      [338, 190],
      [324, 176],
    ],
    0.7,
  );
  for (const x of [-43, 367])
    polyline(
      frame,
      [
        [x - 9, -34],
        [x + 9, -34],
        [x + 9, 56],
        [x - 9, 56],
        [x - 9, -34],
      ],
      0.7,
    );
  balloon(frame, "10", [162, 90], [312, 110]);
  balloon(frame, "11", [162, -62], [140, -18]);
  balloon(frame, "12", [436, -50], [376, -34]);
  balloon(frame, "13", [440, 78], [376, 54]);
  balloon(frame, "N06", [-110, 130], [-10, 184]);
  label(frame, "Ø 323.9 × 12.5", [162, 160], 8);
  label(frame, "inspection opening N6, DN 300 PN 16", [162, 240], 8);
  sheet.y = frame.y + 175;
  heading(sheet, "Parts list");
  table(
    sheet,
    [
      { title: "Part", share: 7 },
      { title: "Name", share: 46 },
      { title: "Qty", share: 6, align: "right" },
      { title: "Material", share: 34 },
      { title: "Size", share: 24 },
      { title: "Cert.", share: 8 },
    ],
    parts
      .slice(4)
      .map((part) => [
        part.id,
        printed(part.name),
        printed(part.quantity),
        `${printed(part.material?.grade)}, ${printed(part.material?.standard)}`,
        [part.outsideDiameter, part.nominalThickness].filter((value) => value !== undefined).join(" × "),
        printed(part.requiredCertificateType),
      ]),
    8,
  );
  paragraph(
    sheet,
    "N1, N2, N3 and N6: long welding necks forged in one piece with their flanges, PN 16; no weld between flange and neck. N4 and N5: pipe with outside thread R 1. All nozzles are set in and welded through to WPS-04 or WPS-05.",
  );
  titleBlock(sheet, drawing);
}

function drawPlateDrawing(paper: Paper, drawing: Drawing): void {
  const sheet = newSheet(paper);
  paragraph(
    sheet,
    "Stainless steel 148 × 105 × 1, letters 4 mm and 6 mm, filled black. Fixed with four rivets to the plate holder under two studs of N6.",
  );
  drawPlate(sheet, left + 40, sheet.y + 20, false);
  titleBlock(sheet, drawing);
}

const draws: readonly ((paper: Paper, drawing: Drawing) => void)[] = [
  drawArrangement,
  drawWeldMap,
  drawNozzles,
  drawPlateDrawing,
];

export const drawingSheets: readonly OriginalSheet[] = drawings.map((drawing, index): OriginalSheet => {
  const last = drawing.revisions?.at(-1);
  return {
    id: `ORG-${drawing.id}${printed(last?.revision)}`,
    path: `drawings/${drawing.id.toLowerCase()}-${printed(last?.revision).toLowerCase()}.pdf`,
    title: printed(drawing.title),
    number: printed(drawing.number),
    by: "TARNEQUILL",
    day: printed(last?.approved),
    compared: "2026-05-15",
    shows: [
      ["drawing", drawing.id],
      ...(drawing.parts ?? []).map((id) => ["part", id] as const),
      ...(drawing.joints ?? []).map((id) => ["joint", id] as const),
    ],
    draw: (paper) => {
      draws[index]?.(paper, drawing);
    },
  };
});
