import type { Document, Drawing } from "../../generated/records.ts";
import { drawings as receiverDrawings } from "../../air-receiver/facts/papers.ts";
import { design, documentOf, drawn, quality, twice } from "../../order/making/papers.ts";
import { joints, parts, serial } from "./vessel.ts";

const [arrangement, , , plate] = receiverDrawings;
/** What the receiver's drawings say of both vessels, and what this one's say of itself. */
const ownOn = (drawing: Drawing | undefined) => ({
  ...drawing?.designData,
  serial,
  volume: "37 l",
  category: "II" as const,
});

export const drawings: readonly Drawing[] = [
  {
    id: "DRG-01",
    number: `${serial}-04-DRG-001`,
    title: "General arrangement and nozzles",
    type: "arrangement",
    revisions: twice("nozzles in the middle of the shell"),
    parts: parts.map(({ id }) => id),
    designData: ownOn(arrangement),
  },
  {
    id: "DRG-02",
    number: `${serial}-04-DRG-002`,
    title: "Weld map",
    type: "weld-map",
    revisions: twice("L1 turned away from the drain"),
    joints: joints.map(({ id }) => id),
  },
  {
    id: "DRG-03",
    number: `${serial}-04-DRG-003`,
    title: "Nameplate",
    type: "nameplate",
    revisions: [drawn("A", "2026-03-10", "2026-03-16", "as-built", "first issue")],
    designData: ownOn(plate),
  },
];

const document = documentOf(serial);

export const documents: readonly Document[] = [
  document("DOC-01", "design-data", "Design data and limits", ["1", "2026-02-16", "2026-03-02"], design),
  document("DOC-02", "risk-analysis", "Analysis of hazards and risks", ["0", "2026-02-23", "2026-03-09"], design),
  document(
    "DOC-03",
    "inspection-plan",
    "Inspection and test plan",
    ["1", "2026-02-02", "2026-02-06"],
    ["D2", "M1", "K1"],
    2,
  ),
  document("DOC-04", "material-list", "Material list", ["1", "2026-03-10", "2026-03-16"], design),
  document("DOC-05", "operating-instructions", "Operating instructions", ["0", "2026-06-29", "2026-07-03"], design),
  document(
    "DOC-07",
    "final-inspection-report",
    "Report of the final inspection",
    ["0", "2026-07-10", "2026-07-10"],
    quality,
  ),
  document(
    "DOC-08",
    "compliance-statement",
    "Essential safety requirements and how they are met",
    ["0", "2026-02-23", "2026-03-09"],
    design,
  ),
  document("DOC-09", "other", "Reinforcement of the openings N1 to N4", ["0", "2026-03-02", "2026-03-16"], design),
];
