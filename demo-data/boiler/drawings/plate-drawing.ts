import { paragraph } from "../../paper/blocks.ts";
import { left, newSheet } from "../../paper/paper.ts";
import { drawPlate } from "../../sheets/nameplate.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import type { Draw } from "./drawing.ts";

/** The drawing of the nameplate; on it the day of the test is still open. */
export const drawPlateDrawing: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  paragraph(
    sheet,
    "Stainless steel 148 × 105 × 1, letters 4 mm and 6 mm, filled black. Fixed with four rivets to its bracket P47 on course 1, free of the insulation.",
  );
  for (const nameplate of facts.all("nameplate")) drawPlate(sheet, facts, nameplate, [left + 40, sheet.y + 20], false);
  titleBlock(sheet, facts, drawing);
};
