import type { CalculationSheet } from "../../src/generated/records.ts";
import { objectOf, sizeOf, type Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, withRoom, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { printed } from "./original.ts";

/** What the maker prints on a calculation sheet beside the figures. */
export interface CalculationWords {
  readonly title: string;
  readonly symbols: Readonly<Record<string, string>>;
  readonly lines: readonly string[];
}

/** A calculation sheet of the maker: what was given, the working, the result. */
export function drawCalculation(paper: Paper, facts: Facts, record: CalculationSheet, words?: CalculationWords): void {
  let sheet = newSheet(paper, words?.title ?? record.calculation);
  note(paper, "calculation-sheet", record.id);
  fields(sheet, [
    ["Sheet", printed(record.number)],
    ["Revision", printed(record.revision)],
    ["Subject", record.subject.replace(":", " ")],
    ["Date", printed(record.date)],
    ["Basis", printed(record.basis)],
    ["Equipment", `${objectOf(facts)} ${sizeOf(facts)}, serial ${facts.equipment.serial}`],
  ]);
  const values = (rows: CalculationSheet["inputs"]) =>
    (rows ?? []).map(({ symbol, value }) => [symbol, words?.symbols[symbol] ?? "", printed(value)]);
  const columns = [
    { title: "Symbol", share: 12 },
    { title: "Meaning", share: 62 },
    { title: "Value", share: 22, align: "right" as const },
  ];
  heading(sheet, "Given");
  sheet = table(sheet, columns, values(record.inputs), 9);
  sheet = withRoom(sheet, 60);
  heading(sheet, "Calculation");
  for (const line of words?.lines ?? []) {
    sheet = withRoom(sheet, 30);
    paragraph(sheet, line, 10);
  }
  sheet = withRoom(sheet, 90);
  heading(sheet, "Result");
  sheet = table(sheet, columns, values(record.results), 9);
  sheet = withRoom(sheet, 92);
  if (record.adopted !== undefined) paragraph(sheet, `Adopted: ${record.adopted}`, 11);
  paragraph(sheet, "Required values are rounded up, permitted values down.", 8);
  const [prepared, checked] = record.signatures ?? [];
  signatures(sheet, [
    { role: "prepared", name: facts.name(record.preparedBy), date: printed(prepared?.date) },
    { role: "checked", name: facts.name(record.checkedBy), date: printed(checked?.date) },
  ]);
}
