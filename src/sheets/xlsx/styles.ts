import * as numfmt from "numfmt";
import type { SheetBudget } from "../limits.ts";
import { damaged } from "../unreadable.ts";
import { isOn, readPart } from "./xml.ts";
import type { Archive } from "./zip.ts";

/** How the cells of one style show what they hold. */
export interface Style {
  /** The code of the number format. */
  readonly format: string;
  /** Of a format that the program knows by number alone. */
  readonly builtIn?: number;
  readonly struckOut: boolean;
}

/** Numbers below are formats that every program knows; a file lists the codes of the others. */
const firstOwn = 164;

const plain: Style = { format: "General", builtIn: 0, struckOut: false };

/** The styles of a workbook's cells, in their order. */
export async function cellStyles(archive: Archive, part: string, budget: SheetBudget): Promise<readonly Style[]> {
  const codes = new Map<number, string>();
  const fonts: boolean[] = [];
  const found: { format: number; font: number }[] = [];
  let within = "";
  await readPart(archive, part, budget, {
    open(name, attributes) {
      if (name === "cellXfs" || name === "fonts") within = name;
      else if (name === "numFmt") {
        budget.spend("styles");
        const code = attributes["formatCode"] ?? "";
        if (code.length > budget.limits.format) throw damaged("a number format is longer than any program writes");
        codes.set(Number(attributes["numFmtId"]), code);
      } else if (name === "font" && within === "fonts") {
        budget.spend("styles");
        fonts.push(false);
      } else if (name === "strike" && within === "fonts")
        fonts[fonts.length - 1] = attributes["val"] === undefined || isOn(attributes["val"]);
      else if (name === "xf" && within === "cellXfs") {
        budget.spend("styles");
        found.push({ format: Number(attributes["numFmtId"] ?? 0), font: Number(attributes["fontId"] ?? 0) });
      }
    },
    close(name) {
      if (name === within) within = "";
    },
  });
  return found.map(({ format, font }): Style => {
    const struckOut = fonts[font] ?? false;
    const own = codes.get(format);
    if (own !== undefined) return { format: own, struckOut };
    if (format < firstOwn) return { format: numfmt.getFormatFromId(format), builtIn: format, struckOut };
    throw damaged(`a cell style names the number format ${format}, which is not in the file`);
  });
}

/** The style of a cell; without a list of styles, or without a number, the plain one. */
export function styleAt(styles: readonly Style[], index: string | undefined, place: string): Style {
  const at = Number(index ?? 0);
  const style = styles[at] ?? (at === 0 ? plain : undefined);
  if (style === undefined) throw damaged(`a cell names the style ${index ?? ""}, which is not in the file`, place);
  return style;
}
