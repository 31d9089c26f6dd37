import type { Document, Drawing } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { signatures } from "../paper/marks.ts";
import { withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { printed, type OriginalSheet, type Shown } from "./original.ts";
import { approvals } from "./procedure.ts";

/** A drawing in its last revision: the source of the joints it shows, and of the parts that name it as theirs. */
export function drawingOriginal(facts: Facts, drawing: Drawing, draw: (paper: Paper) => void): OriginalSheet {
  const last = drawing.revisions?.at(-1);
  const revision = printed(last?.revision);
  const { parts = [], joints = [] } = drawing;
  const isOwn = (id: string) =>
    facts.all("part").some((part) => part.id === id && part.drawing?.split("@")[0] === drawing.id);
  return {
    id: `ORG-${drawing.id}${revision}`,
    path: `drawings/${drawing.id.toLowerCase()}-${revision.toLowerCase()}.pdf`,
    title: printed(drawing.title),
    number: printed(drawing.number),
    by: facts.maker,
    day: printed(last?.approved),
    compared: printed(last?.approved),
    shows: [
      ["drawing", drawing.id],
      ...parts.filter(isOwn).map((id): Shown => ["part", id]),
      ...joints.map((id): Shown => ["joint", id]),
    ],
    draw,
  };
}

/** A document in its last revision, on the paper of the firm that prepared it, with the signatures of who approved it. */
export function documentOriginal(facts: Facts, document: Document, draw: (paper: Paper) => Sheet): OriginalSheet {
  const last = document.revisions?.at(-1);
  const day = printed(last?.approved);
  const author = facts.all("person").find(({ id }) => id === last?.preparedBy)?.employer;
  return {
    id: `ORG-${document.id}`,
    path: `documents/${document.id.toLowerCase()}.pdf`,
    title: printed(document.title),
    number: `${printed(document.number)} r. ${printed(last?.revision)}`,
    by: author ?? facts.maker,
    day,
    compared: day,
    shows: [
      ["document", document.id],
      ...(document.type === "design-data" ? [["equipment", facts.equipment.id] as const] : []),
    ],
    ...(document.type === "inspection-plan" && {
      foresees: facts.all("inspection-step").map(({ id }): Shown => ["inspection-step", id]),
    }),
    draw: (paper) => {
      signatures(withRoom(draw(paper), 66), approvals(facts, last));
    },
  };
}
