import { orderOf, type Facts } from "../../book/facts.ts";
import { consumables, millApprovals } from "../../sheets/binders.ts";
import { drawMarks } from "../../sheets/materials.ts";
import { daysLater, type OriginalSheet } from "../../sheets/original.ts";
import { materialCertificate } from "../../sheets/papers.ts";

const delivered = "2026-05-12";
const cut = "2026-05-19";

export const materialOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...facts
    .all("material-certificate")
    .map((record) => ({ ...materialCertificate(facts, record), compared: delivered })),
  { ...millApprovals(facts, facts.all("mill-approval"), "2026-03-20"), compared: delivered },
  {
    id: "ORG-MARKS",
    path: "materials/marking-list.pdf",
    title: "Marking list and cutting list",
    number: `${orderOf(facts)}-06-ML-01`,
    by: facts.maker,
    day: cut,
    compared: daysLater(cut, 2),
    shows: facts.all("piece-mark").map(({ id }) => ["piece-mark", id]),
    draw: (paper) =>
      drawMarks(paper, facts, facts.all("piece-mark"), cut, " Pipe for N4 and N5: both pieces stamped on the bar."),
  },
  consumables(facts, facts.all("consumable-batch"), {
    id: "ORG-CONSUMABLES",
    path: "materials/consumables.pdf",
    title: "Documents of the welding consumables",
    number: "SA-77120 ff.",
    by: "SORRELARC",
    day: "2026-05-18",
  }),
];
