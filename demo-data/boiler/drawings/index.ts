import type { Drawing } from "../../generated/records.ts";
import { newSheet } from "../../paper/paper.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { drawArrangement } from "./arrangement.ts";
import { drawAccess, drawBarStays, drawCutting, drawSupports, drawTubeEnds } from "./details.ts";
import type { Draw } from "./drawing.ts";
import { drawFurnace } from "./furnace.ts";
import { geometryOf } from "./geometry.ts";
import { drawLevels } from "./levels.ts";
import { drawNozzles } from "./nozzle-drawing.ts";
import { partsList } from "./parts-list.ts";
import { drawPlateDrawing } from "./plate-drawing.ts";
import { drawPlates } from "./plates.ts";
import { drawWeldMap } from "./weld-map.ts";

const draws: Readonly<Record<string, Draw>> = {
  "DRG-01": drawArrangement,
  "DRG-02": drawWeldMap,
  "DRG-03": drawFurnace,
  "DRG-04": drawPlates,
  "DRG-05": drawNozzles,
  "DRG-06": drawCutting,
  "DRG-07": drawTubeEnds,
  "DRG-08": drawBarStays,
  "DRG-09": drawSupports,
  "DRG-10": drawLevels,
  "DRG-11": drawAccess,
  "DRG-12": drawPlateDrawing,
};

/** A drawing that has no figure of its own: the list of its parts. */
const drawParts: Draw = (paper, facts, drawing) => {
  const sheet = newSheet(paper);
  const { part } = geometryOf(facts);
  titleBlock(partsList(sheet, (drawing.parts ?? []).map(part)), facts, drawing);
};

/** How a drawing of the boiler is drawn. */
export const drawOf = ({ id }: Drawing): Draw => draws[id] ?? drawParts;
