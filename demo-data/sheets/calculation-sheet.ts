import type { CalculationSheet } from "../generated/records.ts";
import { objectOf, sizeOf, type Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { height, newSheet, note, withRoom, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { printed } from "./original.ts";

/** What the maker prints on a calculation sheet beside the figures. */
export interface CalculationWords {
  readonly title: string;
  readonly symbols: Readonly<Record<string, string>>;
  readonly lines: readonly string[];
}

/** Sizes of type: smaller ones where a sheet would not hold what belongs on it. */
function sizesFor(record: CalculationSheet, lines: number): { readonly cells: number; readonly text: number } {
  const rows = (record.inputs ?? []).length + (record.results ?? []).length + 2;
  const tall = 370 + rows * 16.5 + lines * 17.5;
  return tall > height ? { cells: 7, text: 7.8 } : { cells: 9, text: 10 };
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
  const { cells, text } = sizesFor(record, words?.lines.length ?? 0);
  heading(sheet, "Given");
  sheet = table(sheet, columns, values(record.inputs), cells);
  sheet = withRoom(sheet, 60);
  if (words === undefined || words.lines.length > 0) heading(sheet, "Calculation");
  for (const line of words?.lines ?? []) {
    sheet = withRoom(sheet, 30);
    paragraph(sheet, line, text);
  }
  sheet = withRoom(sheet, 90);
  heading(sheet, "Result");
  sheet = table(sheet, columns, values(record.results), cells);
  sheet = withRoom(sheet, record.adopted === undefined ? 74 : 92);
  if (record.adopted !== undefined) paragraph(sheet, `Adopted: ${record.adopted}`, 11);
  paragraph(sheet, "Required values are rounded up, permitted values down.", 8);
  const [prepared, checked] = record.signatures ?? [];
  signatures(sheet, [
    { role: "prepared", name: facts.name(record.preparedBy), date: printed(prepared?.date) },
    { role: "checked", name: facts.name(record.checkedBy), date: printed(checked?.date) },
  ]);
}
