import { article, fields, heading } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import type { ProcedureText } from "../facts/procedure.ts";
import { procedures } from "../facts/procedures.ts";
import { printed, type OriginalSheet } from "./original.ts";

function drawProcedure(paper: Paper, { record, paragraphs }: ProcedureText): void {
  const last = record.revisions?.at(-1);
  const sheet = newSheet(paper, printed(record.title));
  fields(
    sheet,
    [
      ["Number", printed(record.number)],
      ["Revision", printed(last?.revision)],
      ["Date", printed(last?.date)],
    ],
    3,
  );
  heading(sheet, "Summary sheet");
  for (const [title, text] of paragraphs) article(sheet, title, text);
  sheet.y += 14;
  signatures(sheet, [
    { role: "prepared", name: nameOf(printed(last?.preparedBy)), date: printed(last?.date) },
    ...(last?.checkedBy === undefined
      ? []
      : [{ role: "checked", name: nameOf(last.checkedBy), date: printed(last.date) }]),
    { role: "approved", name: nameOf(printed(last?.approvedBy)), date: printed(last?.approved) },
  ]);
}

const sheetOf = (id: string, title: string, by: string, ids: RegExp): OriginalSheet => {
  const chosen = procedures.filter(({ record }) => ids.test(record.id));
  const last = chosen
    .map(({ record }) => printed(record.revisions?.at(-1)?.approved))
    .sort()
    .at(-1);
  return {
    id: `ORG-PROC-${id}`,
    path: `procedures/${id.toLowerCase()}.pdf`,
    title,
    number: printed(chosen[0]?.record.number),
    by,
    day: printed(last),
    compared: "2026-05-12",
    shows: chosen.map(({ record }, index) => ["procedure", record.id, index + 1]),
    draw: (paper) => {
      for (const one of chosen) drawProcedure(paper, one);
    },
  };
};

export const procedureSheets: readonly OriginalSheet[] = [
  sheetOf("SHOP", "Procedures of the maker", "TARNEQUILL", /-(MARK|DIM|HYD|CLEAN|COAT|FIN)$/),
  sheetOf("TESTING", "Procedures of the testers", "GLIMMERFIELD", /-(VT|RT|MT|PT)$/),
  sheetOf("FORMING", "Procedure for forming ends", "BOWLTHORNE", /-FORM$/),
  sheetOf("VALVE", "Procedure for setting safety valves", "HOLLYVANE", /-SV$/),
];
