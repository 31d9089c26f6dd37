import type { CalculationSheet } from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { calculationSheets } from "../facts/calculations.ts";
import { nameOf } from "../facts/people.ts";
import { calculationWords } from "./calculation-words.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";

function drawSheet(paper: Paper, record: CalculationSheet): void {
  const words = calculationWords[record.calculation];
  const sheet = newSheet(paper, words?.title ?? record.calculation);
  fields(sheet, [
    ["Sheet", printed(record.number)],
    ["Revision", printed(record.revision)],
    ["Subject", record.subject.replace(":", " ")],
    ["Date", printed(record.date)],
    ["Basis", printed(record.basis)],
    ["Equipment", "air receiver 3000 l, serial TQ423-01"],
  ]);
  const meaning = (symbol: string) => words?.symbols[symbol] ?? "";
  const columns = [
    { title: "Symbol", share: 12 },
    { title: "Meaning", share: 62 },
    { title: "Value", share: 22, align: "right" as const },
  ];
  heading(sheet, "Given");
  table(
    sheet,
    columns,
    (record.inputs ?? []).map(({ symbol, value }) => [symbol, meaning(symbol), printed(value)]),
    9,
  );
  heading(sheet, "Calculation");
  for (const line of words?.lines ?? []) paragraph(sheet, line, 10);
  heading(sheet, "Result");
  table(
    sheet,
    columns,
    (record.results ?? []).map(({ symbol, value }) => [symbol, meaning(symbol), printed(value)]),
    9,
  );
  if (record.adopted !== undefined) paragraph(sheet, `Adopted: ${record.adopted}`, 11);
  paragraph(sheet, "Required values are rounded up, permitted values down.", 8);
  signatures(sheet, [
    { role: "prepared", name: nameOf(printed(record.preparedBy)), date: printed(record.signatures?.[0]?.date) },
    { role: "checked", name: nameOf(printed(record.checkedBy)), date: printed(record.signatures?.[1]?.date) },
  ]);
}

const groups: readonly (readonly [path: string, title: string, calculations: readonly string[]])[] = [
  ["design-stress", "Design stresses of shell and ends", ["design-stress"]],
  ["shell", "Shell under internal pressure", ["cylindrical-shell"]],
  ["ends", "Ends under internal pressure", ["torispherical-end"]],
  ["test", "Test pressure and stress at the test", ["test-pressure", "test-stress"]],
  ["category", "Category", ["equipment-category"]],
  ["safety-valve", "Capacity of the safety valve", ["gas-safety-valve", "relief-capacity"]],
  ["hold", "Evaluation of the hydrostatic test", ["pressure-hold"]],
];

export const calculationOriginals: readonly OriginalSheet[] = groups.map(
  ([path, title, calculations]): OriginalSheet => {
    const sheets = calculationSheets.filter(({ calculation }) => calculations.includes(calculation));
    const day = printed(sheets[0]?.signatures?.[1]?.date);
    return {
      id: `ORG-CAL-${path.toUpperCase()}`,
      path: `calculations/${path}.pdf`,
      title,
      number: `${printed(sheets[0]?.number)}${sheets.length > 1 ? " ff." : ""}`,
      by: "TARNEQUILL",
      day,
      compared: daysLater(day, 3),
      shows: sheets.map(({ id }, index) => ["calculation-sheet", id, index + 1]),
      draw: (paper) => {
        for (const sheet of sheets) drawSheet(paper, sheet);
      },
    };
  },
);
