import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { heading, paragraph } from "../../paper/blocks.ts";
import { balloon, label, outline, polyline, type Frame } from "../../paper/figures.ts";
import { left, newSheet, type Paper } from "../../paper/paper.ts";
import { table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";

/** The nozzles: a section of the inspection opening, and the parts list. */
export function drawNozzles(paper: Paper, facts: Facts, drawing: Drawing): void {
  const sheet = newSheet(paper);
  const frame: Frame = { sheet, x: left + 150, y: sheet.y + 30, scale: 0.62 };
  outline(frame, "-150 190, 0 190", 1);
  outline(frame, "-150 198, 0 198", 1);
  outline(frame, "324 190, 470 190", 1);
  outline(frame, "324 198, 470 198", 1);
  outline(frame, "0 215, 0 40, -68 40, -68 12, 392 12, 392 40, 324 40, 324 215", 1);
  outline(frame, "12 215, 12 12", 0.7);
  outline(frame, "312 215, 312 12", 0.7);
  outline(frame, "0 215, 12 215", 1);
  outline(frame, "312 215, 324 215", 1);
  outline(frame, "-68 10, 392 10, 392 -18, -68 -18, -68 10", 1);
  outline(frame, "-14 190, 0 176", 0.7);
  outline(frame, "338 190, 324 176", 0.7);
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
      { title: "Name", share: 42 },
      { title: "Qty", share: 6, align: "right" },
      { title: "Material", share: 34 },
      { title: "Size", share: 32 },
      { title: "Cert.", share: 8 },
    ],
    facts
      .all("part")
      .slice(4)
      .map((part) => [
        part.id,
        printed(part.name),
        printed(part.quantity),
        `${printed(part.material?.grade)}, ${printed(part.material?.standard)}`,
        [part.outsideDiameter, part.nominalThickness, part.length].filter((value) => value !== undefined).join(" × "),
        printed(part.requiredCertificateType),
      ]),
    8,
  );
  paragraph(
    sheet,
    "N1, N2, N3 and N6: long welding necks forged in one piece with their flanges, PN 16; no weld between flange and neck. N4 and N5: pipe with outside thread R 1. All nozzles are set in and welded through to WPS-04 or WPS-05.",
  );
  titleBlock(sheet, facts, drawing);
}
