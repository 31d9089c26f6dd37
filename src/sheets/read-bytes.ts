import { Buffer } from "node:buffer";
import type { ReadOptions, SheetFault } from "./cells.ts";
import { readCsv } from "./csv/read.ts";
import { newSheetBudget, tooLarge, usualSheetLimits, type SheetLimits } from "./limits.ts";
import type { PackedWorkbook } from "./pack.ts";
import { refuse, Unreadable } from "./unreadable.ts";
import { noWorkbook } from "./xlsx/workbook.ts";
import { readXlsx } from "./xlsx/read.ts";
import { locked } from "./xlsx/zip.ts";

/**
 * Reads a file by its bytes; its name only tells what it should be. The same bytes under the same name give the same, on
 * every machine; what is wrong with the file is in the answer, never thrown.
 */
export async function readBytes(
  bytes: Uint8Array,
  name: string,
  options: ReadOptions = {},
  limits: SheetLimits = usualSheetLimits,
): Promise<PackedWorkbook | SheetFault> {
  try {
    const budget = newSheetBudget(limits);
    if (bytes.length > limits.bytes) throw tooLarge(limits.bytes);
    return formOf(bytes, name) === "xlsx" ? await readXlsx(bytes, budget) : readCsv(bytes, name, options, budget);
  } catch (error) {
    if (error instanceof Unreadable) return error.fault;
    throw error;
  }
}

/** What the file is. Throws Unreadable for any other form, and for one that its name denies. */
function formOf(bytes: Uint8Array, name: string): "xlsx" | "csv" {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 1024)).toString("latin1");
  if (bytes.length === 0) throw refuse("the file is empty", "it has no bytes", "export or save it again");
  if (head.startsWith("\u00d0\u00cf\u0011\u00e0")) throw ofOldForm(bytes);
  const isArchive = head.startsWith("PK\u0003\u0004") || head.startsWith("PK\u0005\u0006");
  const [byContent, other] = isArchive ? (["xlsx", "a text"] as const) : (["csv", "a workbook"] as const);
  if (!isArchive && /^\s*<(?:!doctype|html|\?xml|table)/i.test(head.replace(/^\u00ef\u00bb\u00bf/, "")))
    throw noWorkbook("it is a page of the web or another text with markup, whatever its name says");
  const byName = /\.(?:xlsx|xlsm|xltx)$/i.test(name) ? "xlsx" : /\.(?:csv|tsv|txt)$/i.test(name) ? "csv" : undefined;
  if (byName === undefined) throw noWorkbook(`its name ends neither in .xlsx nor in .csv`);
  if (byName !== byContent)
    throw refuse(
      `the file is not ${other}, as its name says`,
      byContent === "xlsx" ? "it is an archive, as workbooks are" : "it is no archive, as workbooks are",
      "save it anew under the form that is wanted; renaming does not change a form",
    );
  return byContent;
}

/** Excel's form before 2007; workbooks under a password come in the same wrapping. */
function ofOldForm(bytes: Uint8Array): Unreadable {
  const isLocked = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes(
    Buffer.from("EncryptedPackage", "utf16le"),
  );
  return isLocked ? locked() : noWorkbook("it is of the old form .xls, or another old Office file");
}
