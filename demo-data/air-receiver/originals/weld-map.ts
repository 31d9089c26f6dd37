import { rgb } from "pdf-lib";
import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { paragraph } from "../../paper/blocks.ts";
import { balloon, label, polyline, type Frame } from "../../paper/figures.ts";
import { height, left, newSheet, write, type Paper } from "../../paper/paper.ts";
import { columns, table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { c1, c2, c3, tangent } from "./outline-of-vessel.ts";

const notes = [
  "RT: at least 10 % of each seam, films at",
  "every crossing: L1 with C1 and C2 at 240,",
  "L2 with C2 and C3 at 360.",
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

/** The weld map: the shell unrolled, with a table of the joints. */
export function drawWeldMap(paper: Paper, facts: Facts, drawing: Drawing): void {
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
      [c1, 240],
      [c2, 240],
    ],
    1.8,
  );
  polyline(
    frame,
    [
      [c2, 360],
      [c3, 360],
    ],
    1.8,
  );
  balloon(frame, "L1", [700, 480], [700, 240]);
  balloon(frame, "L2", [1700, 600], [1700, 360]);
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
    ["240", 240],
    ["360", 360],
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
    columns(["Joint", "Parts", "Type", "Thickness", "Length", "Procedure", "Tests"], [6, 10, 12, 16, 10, 11, 18]),
    facts
      .all("joint")
      .map((joint) => [
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
  titleBlock(sheet, facts, drawing);
}
