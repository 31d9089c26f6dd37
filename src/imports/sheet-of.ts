import { nearestName } from "../model/nearest.ts";
import type { Sheet, Workbook } from "../sheets/cells.ts";
import type { ImportFault } from "./faults.ts";

/** The sheet a map is about: the one it names, else the only one that is not hidden. */
export function sheetOf({ sheets }: Workbook, name: string | undefined): Sheet | ImportFault {
  const names = sheets.map((sheet) => sheet.name);
  if (name !== undefined) {
    const found =
      sheets.find((sheet) => sheet.name === name) ??
      onlyOne(sheets.filter((sheet) => sheet.name.trim().toLowerCase() === name.trim().toLowerCase()));
    if (found !== undefined) return found;
    const near = nearestName(name, names);
    return {
      sheet: name,
      message: "the file has no sheet of that name",
      hint: near === undefined ? `its sheets are ${names.map((one) => `"${one}"`).join(", ")}` : `nearest: "${near}"`,
    };
  }
  const visible = sheets.filter(({ hidden, rows }) => !hidden && rows.length > 0);
  const only = onlyOne(visible) ?? (visible.length === 0 ? onlyOne(sheets) : undefined);
  if (only !== undefined) return only;
  return {
    sheet: "",
    message: `the file has ${visible.length} sheets that hold anything, and which is meant is not said`,
    hint: `name one in the map ("sheet"): ${visible.map((one) => `"${one.name}"`).join(", ")}`,
  };
}

const onlyOne = <Item>(items: readonly Item[]): Item | undefined => (items.length === 1 ? items[0] : undefined);
