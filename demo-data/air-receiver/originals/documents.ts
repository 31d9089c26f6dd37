import type { Document } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import type { Paper, Sheet } from "../../paper/paper.ts";
import { completedPlan } from "../../sheets/binders.ts";
import { documentOriginal } from "../../sheets/design-originals.ts";
import { drawDesignData, drawMaterialList } from "../../sheets/design-papers.ts";
import { drawPlan } from "../../sheets/inspection-plan.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { drawText, type TextPart } from "../../sheets/text-document.ts";
import { documentTexts } from "./document-texts.ts";
import { drawOpenings } from "./openings.ts";

type Draw = (paper: Paper, facts: Facts) => Sheet;

const draws: Readonly<Record<string, Draw>> = {
  "DOC-01": (paper, facts) =>
    drawDesignData(
      paper,
      facts,
      facts.all("part").slice(0, 4),
      "Wind, earthquake, external loads and fatigue need not be considered: the vessel stands indoors on two saddles, fewer than 1000 full pressure cycles are expected in its life.",
    ),
  "DOC-03": (paper, facts) => drawPlan(paper, facts),
  "DOC-04": (paper, facts) =>
    drawMaterialList(paper, facts, "Non-pressure parts: none are welded on; the saddles are the client's."),
  "DOC-09": (paper) => drawOpenings(paper),
};

/** What a vessel's documents say, by id: words, or what draws them. */
export interface DocumentWords {
  readonly draws: Readonly<Record<string, Draw>>;
  readonly texts: Readonly<Record<string, readonly TextPart[]>>;
}

const receiver: DocumentWords = { draws, texts: documentTexts };

function draw({ id }: Document, facts: Facts, { draws, texts }: DocumentWords): (paper: Paper) => Sheet {
  const own = draws[id];
  return (paper) => (own === undefined ? drawText(paper, texts[id] ?? []) : own(paper, facts));
}

export const documentOriginals = (facts: Facts, words = receiver): readonly OriginalSheet[] => [
  ...facts.all("document").map((document) => documentOriginal(facts, document, draw(document, facts, words))),
  ...facts
    .all("document")
    .filter(({ type }) => type === "inspection-plan")
    .map((plan) => completedPlan(facts, plan, "2026-07-15")),
];
