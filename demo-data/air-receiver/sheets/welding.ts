import { qualifications } from "../facts/qualifications.ts";
import { welding } from "../facts/welding-procedures.ts";
import { welderQualifications } from "../facts/welders.ts";
import { weldLogs } from "../facts/welding.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";
import { drawLogs } from "./weld-log.ts";
import { drawProcedure, drawQualification, drawWelder } from "./welding-papers.ts";
import { drawProductionTest, drawRepair } from "./repair.ts";

const sheetOf = (
  id: string,
  path: string,
  title: string,
  number: string,
  by: string,
  day: string,
): Omit<OriginalSheet, "shows" | "draw"> => ({
  id,
  path: `welding/${path}.pdf`,
  title,
  number,
  by,
  day,
  compared: daysLater(day, 2),
});

function logSheet(number: number, day: string, chosen: RegExp): OriginalSheet {
  const logs = weldLogs.filter(({ joint }) => chosen.test(joint));
  return {
    ...sheetOf(
      `ORG-WELD-LOG-${number}`,
      `weld-log-${number}`,
      `Weld log, sheet ${number}`,
      `TQ423-07-WL-${number}`,
      "TARNEQUILL",
      day,
    ),
    shows: logs.map(({ id }) => ["weld-log", id]),
    draw: (paper) => {
      drawLogs(paper, logs);
    },
  };
}

const welderSheet = (person: string, day: string): OriginalSheet => {
  const held = welderQualifications.filter((one) => one.person === person);
  return {
    ...sheetOf(
      `ORG-WELDER-${person}`,
      `welder-${person.toLowerCase()}`,
      `Certificates of welder ${person}`,
      `${printed(held[0]?.certificate)} ff.`,
      "PENQUILLITH",
      day,
    ),
    compared: "2026-05-22",
    shows: held.map(({ id }, index) => ["welder-qualification", id, index + 1]),
    draw: (paper) => {
      for (const one of held) drawWelder(paper, one);
    },
  };
};

export const weldingSheets: readonly OriginalSheet[] = [
  ...welding.map((procedure): OriginalSheet => ({
    ...sheetOf(
      `ORG-${procedure.id}`,
      procedure.id.toLowerCase(),
      `Welding procedure ${procedure.id}`,
      procedure.id,
      "TARNEQUILL",
      "2026-05-19",
    ),
    shows: [["welding-procedure", procedure.id]],
    draw: (paper) => {
      drawProcedure(paper, procedure);
    },
  })),
  ...qualifications.map((record): OriginalSheet => ({
    ...sheetOf(
      `ORG-${record.id}`,
      record.id.toLowerCase(),
      `Procedure qualification ${record.id}`,
      printed(record.certificate),
      "PENQUILLITH",
      printed(record.approved),
    ),
    compared: "2026-05-20",
    shows: [["procedure-qualification", record.id]],
    draw: (paper) => {
      drawQualification(paper, record);
    },
  })),
  welderSheet("W03", "2026-05-20"),
  welderSheet("W07", "2026-04-22"),
  logSheet(1, "2026-06-03", /^(L1|L2|C1)$/),
  logSheet(2, "2026-06-10", /^(C2|C3)$/),
  logSheet(3, "2026-06-12", /^N/),
  {
    ...sheetOf("ORG-C2R1", "repair-c2r1", "Repair C2R1", "TQ423-07-R-01", "TARNEQUILL", "2026-06-12"),
    shows: [["repair", "C2R1"]],
    draw: drawRepair,
  },
  {
    ...sheetOf(
      "ORG-TP-01",
      "production-test",
      "Production test plate 423 TP1",
      "LK-26-0881",
      "LARKMETRIC",
      "2026-06-15",
    ),
    shows: [["production-test", "TP-01"]],
    draw: drawProductionTest,
  },
];
