import type { Facts } from "../../book/facts.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { calculationOriginals } from "./calculations.ts";
import { completionOriginals } from "./completion.ts";
import { documentOriginals } from "./documents.ts";
import { drawingOriginals } from "./drawings.ts";
import { materialOriginals } from "./materials.ts";
import { testingOriginals } from "./testing.ts";
import { weldingOriginals } from "./welding.ts";

/** Every original of the book itself. */
export const originalsOf = (facts: Facts): readonly OriginalSheet[] =>
  [
    drawingOriginals,
    documentOriginals,
    calculationOriginals,
    materialOriginals,
    weldingOriginals,
    testingOriginals,
    completionOriginals,
  ].flatMap((of) => of(facts));
