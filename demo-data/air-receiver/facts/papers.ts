import type { Document, Drawing } from "../../generated/records.ts";
import { design, documentOf, drawn, quality, twice } from "../../order/making/papers.ts";

const shownOnPlate: NonNullable<Drawing["designData"]> = {
  serial: "TQ423-01",
  year: 2026,
  maximumAllowablePressure: "11 bar",
  maximumAllowableTemperature: "60 °C",
  minimumAllowableTemperature: "-10 °C",
  volume: "3000 l",
  testPressure: "15.8 bar",
  fluidGroup: "2",
  category: "IV",
};

const document = documentOf("TQ423");

export const drawings: readonly Drawing[] = [
  {
    id: "DRG-01",
    number: "TQ423-04-DRG-001",
    title: "General arrangement",
    type: "arrangement",
    revisions: twice("nozzle N5 moved to course 2"),
    parts: ["P01", "P02", "P03", "P04"],
    designData: shownOnPlate,
  },
  {
    id: "DRG-02",
    number: "TQ423-04-DRG-002",
    title: "Weld map",
    type: "weld-map",
    revisions: twice("joint N05 moved to course 2"),
    joints: ["L1", "L2", "C1", "C2", "C3", "N01", "N02", "N03", "N04", "N05", "N06"],
  },
  {
    id: "DRG-03",
    number: "TQ423-04-DRG-003",
    title: "Nozzles and inspection opening",
    type: "detail",
    revisions: twice("length of N6 shortened to 190 mm"),
    parts: ["P05", "P06", "P07", "P08", "P09", "P10", "P11", "P12", "P13"],
  },
  {
    id: "DRG-04",
    number: "TQ423-04-DRG-004",
    title: "Nameplate",
    type: "nameplate",
    revisions: [drawn("A", "2026-03-10", "2026-03-16", "as-built", "first issue")],
    designData: { ...shownOnPlate, module: "B+F", bodyNumber: "0000" },
  },
];

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
  document("DOC-05", "operating-instructions", "Operating instructions", ["0", "2026-06-29", "2026-07-03"], design, 2),
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
  document("DOC-09", "other", "Reinforcement of the openings N1 to N6", ["0", "2026-03-02", "2026-03-16"], design),
];
