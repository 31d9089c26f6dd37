import type { Document } from "../../generated/records.ts";
import { orderOf, type Facts } from "../../book/facts.ts";
import type { Paper, Sheet } from "../../paper/paper.ts";
import { calculations, completedPlan, specimens } from "../../sheets/binders.ts";
import { documentOriginal, drawingOriginal } from "../../sheets/design-originals.ts";
import { drawDesignData, drawMaterialList } from "../../sheets/design-papers.ts";
import { drawPlan } from "../../sheets/inspection-plan.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { drawText } from "../../sheets/text-document.ts";
import { drawOf } from "../drawings/index.ts";
import { textOf } from "../texts/index.ts";
import { calculationWords } from "../../sheets/calculation-words.ts";
import { lastOf, workingDaysLater } from "./working-days.ts";

export const drawingOriginals = (facts: Facts): readonly OriginalSheet[] =>
  facts
    .all("drawing")
    .map((drawing) => drawingOriginal(facts, drawing, (paper) => drawOf(drawing)(paper, facts, drawing)));

function draw(facts: Facts, document: Document): (paper: Paper) => Sheet {
  switch (document.type) {
    case "design-data": {
      const main = facts.all("part").filter(({ pressureBearing, insideDiameter, regions, unsupportedLength }) => {
        return pressureBearing === true && (insideDiameter ?? regions ?? unsupportedLength) !== undefined;
      });
      return (paper) =>
        drawDesignData(
          paper,
          facts,
          main,
          "Wind and earthquake need not be considered: the boiler stands indoors on two saddles. Fewer than 1000 cold starts are expected in its life. Loads of pipework are taken by the client's supports.",
        );
    }
    case "inspection-plan":
      return (paper) => drawPlan(paper, facts);
    case "material-list":
      return (paper) =>
        drawMaterialList(paper, facts, "Parts that carry no pressure and are welded on: lugs, saddles, plate bracket.");
    default:
      return (paper) => drawText(paper, textOf(facts, document));
  }
}

/** The maker's documents, the plan as it was signed, and the specimen signatures. */
export function documentOriginals(facts: Facts): readonly OriginalSheet[] {
  const documents = facts.all("document");
  const done = lastOf(facts.all("inspection-step").map((step) => step.done));
  return [
    ...documents.map((document) => documentOriginal(facts, document, draw(facts, document))),
    ...documents
      .filter(({ type }) => type === "inspection-plan" && done !== "")
      .map((plan) => completedPlan(facts, plan, done)),
    specimens(facts, `${orderOf(facts)}-18-SIG-01`, workingDaysLater(facts.book.orderDate ?? "", 2)),
  ];
}

/** A binder for each calculation that the maker did, with a sheet for each subject. */
export function calculationOriginals(facts: Facts): readonly OriginalSheet[] {
  const sheets = facts.all("calculation-sheet");
  return [...new Set(sheets.map(({ calculation }) => calculation))].map((id) => {
    const chosen = sheets.filter(({ calculation }) => calculation === id);
    return calculations(facts, chosen, id, calculationWords(id)?.title ?? id, calculationWords);
  });
}
