import type { Drawing } from "../../../src/generated/records.ts";
import { paragraph } from "../../paper/blocks.ts";
import { left, newSheet, type Paper } from "../../paper/paper.ts";
import { drawings } from "../facts/papers.ts";
import { drawPlate } from "./nameplate.ts";
import { printed, type OriginalSheet } from "./original.ts";
import { titleBlock } from "./title-block.ts";
import { drawArrangement } from "./arrangement.ts";
import { drawNozzles } from "./nozzle-drawing.ts";
import { drawWeldMap } from "./weld-map.ts";

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
