import { Buffer } from "node:buffer";
import { strToU8, zipSync } from "fflate";

/** Parts of a workbook by their names; `sheet` is what stands in the element `worksheet`. */
export interface RawWorkbook {
  readonly sheet?: string;
  readonly strings?: string;
  readonly styles?: string;
  readonly workbook?: string;
  /** Further parts, or others in place of those made here; null leaves one out. */
  readonly parts?: Readonly<Record<string, string | null>>;
}

const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const types = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const relations = (list: string) =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list}</Relationships>`;
const relation = (id: string, type: string, target: string) =>
  `<Relationship Id="${id}" Type="${types}/${type}" Target="${target}"/>`;

/** A workbook of one sheet as ECMA-376 forms it, with whatever is wrong in it. */
export function rawXlsx(
  { sheet = "", strings, styles, workbook = "", parts = {} }: RawWorkbook,
  packed = false,
): Uint8Array {
  const usual: Record<string, string | null> = {
    "[Content_Types].xml": "<Types/>",
    "_rels/.rels": relations(relation("r1", "officeDocument", "xl/workbook.xml")),
    "xl/workbook.xml":
      `<workbook ${main} xmlns:r="${types}">${workbook}` +
      `<sheets><sheet name="Log" sheetId="1" r:id="r1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relations(
      relation("r1", "worksheet", "worksheets/sheet1.xml") +
        (strings === undefined ? "" : relation("r2", "sharedStrings", "sharedStrings.xml")) +
        (styles === undefined ? "" : relation("r3", "styles", "styles.xml")),
    ),
    "xl/worksheets/sheet1.xml": `<worksheet ${main}>${sheet}</worksheet>`,
    ...(strings !== undefined && { "xl/sharedStrings.xml": `<sst ${main}>${strings}</sst>` }),
    ...(styles !== undefined && { "xl/styles.xml": `<styleSheet ${main}>${styles}</styleSheet>` }),
    ...parts,
  };
  return rawZip(
    Object.entries(usual).flatMap(([name, text]) => (text === null ? [] : [[name, text] as const])),
    packed,
  );
}

/** An archive; not packed, so that a test finds its texts in the bytes, unless it is to be. */
export const rawZip = (parts: readonly (readonly [name: string, text: string])[], packed = false): Uint8Array =>
  zipSync(Object.fromEntries(parts.map(([name, text]) => [name, strToU8(text)])), { level: packed ? 9 : 0 });

/** Bytes with a text exchanged for another of the same length, in one place or all. */
export function exchanged(bytes: Uint8Array, from: string, to: string, all = false): Uint8Array {
  const changed = Buffer.from(bytes);
  if (from.length !== to.length) throw new Error("both texts must be as long");
  let at = changed.indexOf(from, 0, "latin1");
  if (at < 0) throw new Error(`${from} is not in the file`);
  for (; at >= 0; at = all ? changed.indexOf(from, at + 1, "latin1") : -1) changed.write(to, at, "latin1");
  return changed;
}

/** A sheet of rows of cells as they stand in the file. */
export const data = (...rows: readonly string[]): string =>
  `<sheetData>${rows.map((row) => `<row>${row}</row>`).join("")}</sheetData>`;
