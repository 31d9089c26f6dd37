import type { ReadOptions } from "../cells.ts";
import type { SheetBudget } from "../limits.ts";
import { mangled } from "../mangled.ts";
import { newTextList, plainContent, type PackedWorkbook } from "../pack.ts";
import { newSheetPacker } from "../packer.ts";
import { decoded } from "./decode.ts";
import { delimiterOf } from "./delimiter.ts";
import { eachRecord } from "./records.ts";

/**
 * Reads a CSV file (RFC 4180, with comma, semicolon or tab) as one sheet of texts. An empty field is a blank cell. Throws
 * Unreadable for what cannot be read whole.
 */
export function readCsv(bytes: Uint8Array, name: string, options: ReadOptions, budget: SheetBudget): PackedWorkbook {
  const text = decoded(bytes);
  const { delimiter, skipped } = delimiterOf(text, options.delimiter);
  const texts = newTextList();
  const sheet = newSheetPacker(texts, budget);
  let row = 0;
  eachRecord(text.slice(skipped), delimiter, ({ fields, line }) => {
    budget.spend("rows");
    const begins = line + (skipped > 0 ? 1 : 0);
    sheet.row(++row, false, begins);
    for (const [index, field] of fields.entries()) {
      if (field === "") continue;
      budget.text(field.length, `line ${begins}`);
      const fault = mangled(field, true);
      sheet.cell(index + 1, { ...plainContent, shown: field, raw: field, format: "@", fault });
    }
  });
  const packed = sheet.done({
    name: name.replace(/^.*[/\\]/, "").replace(/\.[^.]*$/, ""),
    hidden: false,
    merges: [],
    hiddenColumns: [],
  });
  return { form: "csv", sheets: [packed], leftOut: [], texts: texts.texts };
}
