import type { SheetBudget } from "../limits.ts";
import { newTextList, type PackedSheet, type PackedWorkbook } from "../pack.ts";
import { cellReader } from "./content.ts";
import { readSheet } from "./sheet.ts";
import { sharedStrings } from "./strings.ts";
import { cellStyles } from "./styles.ts";
import { noWorkbook, readWorkbookPart } from "./workbook.ts";
import { openArchive } from "./zip.ts";

/** Parts that are left unread, by what they are to a person. */
const unread: readonly (readonly [part: RegExp, words: string])[] = [
  [/^xl\/externalLinks\//i, "links to other workbooks"],
  [/^xl\/(?:connections\.xml|queryTables\/)/i, "connections to data elsewhere"],
  [/^xl\/(?:media|charts|diagrams)\//i, "pictures and charts"],
  [/^xl\/embeddings\//i, "embedded files"],
  [/^xl\/(?:threadedComments\/|comments)/i, "notes on cells"],
];

/**
 * Reads a workbook (ECMA-376, transitional or strict). Links to other workbooks and to data elsewhere are not followed;
 * nothing is calculated and nothing is run. Throws Unreadable for what cannot be read whole.
 */
export async function readXlsx(bytes: Uint8Array, budget: SheetBudget): Promise<PackedWorkbook> {
  const archive = await openArchive(bytes, budget);
  if (archive.has("xl/workbook.bin")) throw noWorkbook("it is a binary workbook (.xlsb)");
  if (archive.has("mimetype")) throw noWorkbook("it is a document of the OpenDocument form");
  const { tabs, charts, ...workbook } = await readWorkbookPart(archive, budget);
  const strings = workbook.strings === undefined ? [] : await sharedStrings(archive, workbook.strings, budget);
  const styles = workbook.styles === undefined ? [] : await cellStyles(archive, workbook.styles, budget);
  const texts = newTextList();
  const read = cellReader({ strings, epoch1904: workbook.epoch1904, recalculated: workbook.recalculated });
  const sheets: PackedSheet[] = [];
  for (const tab of tabs) sheets.push(await readSheet(tab.part, tab, { archive, budget, texts, styles, read }));
  const leftOut = unread.filter(([part]) => archive.names.some((name) => part.test(name))).map(([, words]) => words);
  return {
    form: "xlsx",
    sheets,
    leftOut: charts ? [...leftOut, "sheets that are charts"] : leftOut,
    texts: texts.texts,
  };
}
