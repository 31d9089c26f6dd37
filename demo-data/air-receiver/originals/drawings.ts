import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { paragraph } from "../../paper/blocks.ts";
import { left, newSheet, type Paper } from "../../paper/paper.ts";
import { drawingOriginal } from "../../sheets/design-originals.ts";
import { drawPlate } from "../../sheets/nameplate.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { drawArrangement } from "./arrangement.ts";
import { drawNozzles } from "./nozzle-drawing.ts";
import { drawWeldMap } from "./weld-map.ts";

export type Draw = (paper: Paper, facts: Facts, drawing: Drawing) => void;

/** The drawing of the nameplate; `fixing` says how it is held. */
export const plateDrawing =
  (fixing: string): Draw =>
  (paper, facts, drawing) => {
    const sheet = newSheet(paper);
    paragraph(sheet, `Stainless steel 148 × 105 × 1, letters 4 mm and 6 mm, filled black. ${fixing}`);
    for (const nameplate of facts.all("nameplate"))
      drawPlate(sheet, facts, nameplate, [left + 40, sheet.y + 20], false);
    titleBlock(sheet, facts, drawing);
  };

const ofReceiver: readonly Draw[] = [
  drawArrangement,
  drawWeldMap,
  drawNozzles,
  plateDrawing("Fixed with four rivets to the plate holder under two studs of N6."),
];

export const drawingOriginals = (facts: Facts, draws = ofReceiver): readonly OriginalSheet[] =>
  facts.all("drawing").map((drawing, index) => ({
    ...drawingOriginal(facts, drawing, (paper) => draws[index]?.(paper, facts, drawing)),
    compared: "2026-05-15",
  }));
