import { rgb } from "pdf-lib";
import type { Drawing } from "../../generated/records.ts";
import { height, left, newSheet, right, rule, write, type Paper } from "../../paper/paper.ts";
import type { Facts } from "../../book/facts.ts";
import { balloon, dimension, label, outline, polyline, type Frame } from "../../paper/figures.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { c1, c2, c3, dish, endLine, tangent } from "./outline-of-vessel.ts";

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

/** The general arrangement: the vessel from the side and from the end, with its data. */
export function drawArrangement(paper: Paper, facts: Facts, drawing: Drawing): void {
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
  outline(frame, "186 1200, 186 1310, 214 1310, 214 1200", 0.7);
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
  const shell = facts.all("part").filter((part) => (drawing.parts ?? []).includes(part.id));
  shell.forEach((part, index) => {
    const size = [part.outsideDiameter, part.nominalThickness, part.length].filter((one) => one !== undefined);
    const text = `${part.id}, ${printed(part.name)}: Ø ${size.join(" × ")}; ${printed(part.requiredCertificateType)}`;
    write(sheet, text, left, 624 + index * 12, { size: 7.5 });
  });
  titleBlock(sheet, facts, drawing);
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
  outline(frame, "556 200, 556 60, 500 60, 500 30, 700 30, 700 60, 644 60, 644 200", 0.7);
  outline(frame, "0 640, -110 640, -110 570, -140 570, -140 1030, -110 1030, -110 960, 0 960", 0.7);
  outline(frame, "170 1290, 110 1560, 1090 1560, 1030 1290", 0.7);
  label(frame, "N1, N2, N3", [600, -30], 7);
  label(frame, "N6", [-190, 1110], 7);
  label(frame, "seen from end 1", [600, 1660], 7);
}
