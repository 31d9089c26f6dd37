import { calculationOriginals } from "./calculations.ts";
import { completionSheets } from "./completion.ts";
import { documentSheets } from "./documents.ts";
import { drawingSheets } from "./drawings.ts";
import { materialSheets } from "./materials.ts";
import { procedureSheets } from "./procedures.ts";
import { testingSheets } from "./testing.ts";
import { weldingSheets } from "./welding.ts";
import type { OriginalSheet } from "./original.ts";

/** Every original of the book. */
export const originalSheets: readonly OriginalSheet[] = [
  ...drawingSheets,
  ...documentSheets,
  ...calculationOriginals,
  ...procedureSheets,
  ...materialSheets,
  ...weldingSheets,
  ...testingSheets,
  ...completionSheets,
];
