import type { Facts } from "../../book/facts.ts";
import { consumables, millApprovals } from "../../sheets/binders.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { materialCertificate } from "../../sheets/papers.ts";

const delivered = "2026-05-12";

export const boughtOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...facts
    .all("material-certificate")
    .map((record) => ({ ...materialCertificate(facts, record), compared: delivered })),
  consumables(facts, facts.all("consumable-batch"), {
    id: "ORG-CONSUMABLES",
    path: "materials/consumables.pdf",
    title: "Documents of the welding consumables",
    number: "SA-77120 ff.",
    by: "SORRELARC",
    day: "2026-05-18",
  }),
];

export const millOriginals = (facts: Facts): readonly OriginalSheet[] => [
  { ...millApprovals(facts, facts.all("mill-approval"), "2026-03-20"), compared: delivered },
];
