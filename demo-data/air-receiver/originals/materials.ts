import { orderOf, type Facts } from "../../book/facts.ts";
import { drawMarks } from "../../sheets/materials.ts";
import { weekdayLater, type OriginalSheet } from "../../sheets/original.ts";

const cut = "2026-05-19";

export const materialOriginals = (
  facts: Facts,
  remark = " Pipe for N4 and N5: both pieces stamped on the bar.",
): readonly OriginalSheet[] => [
  {
    id: "ORG-MARKS",
    path: "materials/marking-list.pdf",
    title: "Marking list and cutting list",
    number: `${orderOf(facts)}-06-ML-01`,
    by: facts.maker,
    day: cut,
    compared: weekdayLater(cut, 2),
    shows: facts.all("piece-mark").map(({ id }) => ["piece-mark", id]),
    draw: (paper) => drawMarks(paper, facts, facts.all("piece-mark"), cut, remark),
  },
];
