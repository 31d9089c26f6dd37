import { rgb } from "pdf-lib";
import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { paragraph } from "../../paper/blocks.ts";
import { balloon, label, polyline, type Frame } from "../../paper/figures.ts";
import { height, left, newSheet, write, type Paper } from "../../paper/paper.ts";
import { columns, table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { around, c1, c2, middle, tangent } from "./geometry.ts";

const notes = [
  "RT: at least 10 % of each seam: L1 whole,",
  "C1 from 290 to 530, C2 from 350 to 470,",
  "across L1. L1 and C1 single wall, before",
  "C2 is closed; C2 double wall.",
  "",
  "PT: nozzle welds, at least 25 %:",
  "no room for the yoke.",
  "",
  "VT: every weld over its whole length;",
  "inside: L1 and C1 before C2 is closed,",
  "the others by endoscope.",
  "",
  "Repairs bear the joint's mark and R1, R2.",
];

/** Angle of each nozzle and of the longitudinal seam from the top, clockwise seen from end 1. */
const angles = { N03: 0, N02: 90, N04: 180, N01: 270 } as const;
const seam = 135;
const unrolled = (angle: number) => (around * angle) / 360;

/** The weld map: the shell unrolled, with a table of the joints. */
export function drawWeldMap(paper: Paper, facts: Facts, drawing: Drawing): void {
  const sheet = newSheet(paper);
  paragraph(
    sheet,
    "Shell unrolled at its mean diameter, seen from outside, 1:10. Lengths of circumferential joints run from the zero mark at the top, clockwise seen from end 1.",
  );
  const frame: Frame = { sheet, x: left + 70, y: sheet.y + 30, scale: 72 / 25.4 / 10 };
  const across = (y: number, from: number, to: number, line: number) =>
    polyline(
      frame,
      [
        [from, y],
        [to, y],
      ],
      line,
    );
  for (const y of [0, around]) across(y, 0, tangent, 0.4);
  for (const [x, name] of [
    [c1, "C1"],
    [c2, "C2"],
  ] as const) {
    polyline(
      frame,
      [
        [x, 0],
        [x, around],
      ],
      1.8,
    );
    balloon(frame, name, [x, -60], [x, 0]);
  }
  across(unrolled(seam), c1, c2, 1.8);
  balloon(frame, "L1", [c1 + 60, unrolled(seam) + 60], [c1 + 60, unrolled(seam)]);
  for (const [name, angle] of Object.entries(angles)) {
    for (const y of angle === 0 ? [0, around] : [unrolled(angle)])
      sheet.page.drawCircle({
        x: frame.x + middle * frame.scale,
        y: height - frame.y - y * frame.scale,
        size: 16.85 * frame.scale,
        borderWidth: 1.3,
        borderColor: rgb(0.1, 0.1, 0.1),
      });
    balloon(frame, name, [middle + 70, unrolled(angle) + 50], [middle + 12, unrolled(angle) + 12]);
    label(frame, String(unrolled(angle)), [-40, unrolled(angle)], 7);
  }
  label(frame, String(unrolled(seam)), [-40, unrolled(seam)], 7);
  label(frame, String(around), [-40, around], 7);
  label(frame, "end 1", [-110, around / 2], 8);
  label(frame, "end 2", [tangent + 60, around / 2], 8);
  notes.forEach((line, index) => {
    write(sheet, line, left + 270, frame.y + 20 + index * 15, { size: 8.5 });
  });
  sheet.y = frame.y + around * frame.scale + 34;
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
    "Quality level C for all joints. Joint marks are stamped 423-2 L1 … 423-2 N04 beside the weld.",
    left,
    sheet.y + 2,
    { size: 7.5 },
  );
  titleBlock(sheet, facts, drawing);
}
