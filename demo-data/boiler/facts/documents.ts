import type { Document } from "../../generated/records.ts";
import { book } from "./boiler.ts";

type Issued = readonly [revision: string, date: string, approved: string];
type Hands = readonly [preparedBy: string, checkedBy: string, approvedBy: string];

const document = (
  id: string,
  type: NonNullable<Document["type"]>,
  title: string,
  [revision, date, approved]: Issued,
  [preparedBy, checkedBy, approvedBy]: Hands,
  sheets = 1,
): Document => ({
  id,
  number: `TQ417-${id}`,
  title,
  type,
  language: "en",
  revisions: [
    {
      revision,
      date,
      status: "for-record",
      reason: revision === "0" ? "first issue" : "comments of the inspection body",
      preparedBy,
      checkedBy,
      approvedBy,
      approved,
      sheets,
    },
  ],
});

const design = ["R1", "R2", "K1"] as const;
const quality = ["D2", "B4", "K1"] as const;
const plan = ["D2", "M1", "K1"] as const;

const order = book.contractNumber ?? "order";

export const documents: readonly Document[] = [
  document("DOC-01", "design-data", "Design data and limits", ["1", "2026-01-26", "2026-01-30"], design),
  document("DOC-02", "risk-analysis", "Analysis of hazards and risks", ["0", "2026-01-28", "2026-02-04"], design, 2),
  document("DOC-03", "inspection-plan", "Inspection and test plan", ["1", "2026-01-22", "2026-01-26"], plan, 2),
  document("DOC-04", "material-list", "Material list", ["0", "2026-01-28", "2026-01-30"], design, 2),
  document("DOC-05", "operating-instructions", "Operating instructions", ["0", "2026-05-06", "2026-05-11"], design, 3),
  document(
    "DOC-07",
    "final-inspection-report",
    "Report of the final inspection",
    ["0", "2026-05-15", "2026-05-15"],
    quality,
    2,
  ),
  document(
    "DOC-08",
    "compliance-statement",
    "Essential safety requirements and how they are met",
    ["0", "2026-01-28", "2026-02-04"],
    design,
    2,
  ),
  document(
    "DOC-09",
    "correspondence",
    `Order ${order}, commercial and technical part, reviewed`,
    ["0", "2026-01-12", "2026-01-16"],
    ["B4", "R1", "K1"],
    2,
  ),
  document(
    "DOC-10",
    "other",
    "Report of the functional test of boiler, burner and limiters",
    ["0", "2026-05-12", "2026-05-13"],
    quality,
  ),
  document(
    "DOC-11",
    "supplier-declaration",
    "Declaration of the supplier: forced-draught gas burner EQ 3000",
    ["0", "2026-04-09", "2026-04-20"],
    ["G1", "R2", "R1"],
  ),
  document(
    "DOC-12",
    "supplier-declaration",
    "Declaration of the supplier: feed pumps RW 6-140",
    ["0", "2026-04-13", "2026-04-20"],
    ["H1", "R2", "R1"],
  ),
  document(
    "DOC-14",
    "supplier-declaration",
    "Declaration of the supplier: control panel with safety circuits",
    ["0", "2026-04-10", "2026-04-20"],
    ["Q1", "R2", "R1"],
  ),
  document("DOC-13", "other", "Requirements of feedwater and boiler water", ["0", "2026-04-27", "2026-05-05"], design),
];
