import { mangled } from "../mangled.ts";
import type { Content } from "../pack.ts";
import { damaged } from "../unreadable.ts";
import { numberFormat, showsTextAsIs, type NumberFormat } from "./formats.ts";
import { shownNumber, type ShownNumber } from "./number.ts";
import { plainText } from "./strings.ts";
import type { Style } from "./styles.ts";

/** What the file stores of a cell. */
export interface Stored {
  /** `n`, `s`, `str`, `inlineStr`, `b`, `e` or `d`; a number where the file says nothing. */
  readonly type: string;
  /** The value as it stands; null where there is none. */
  readonly value: string | null;
  /** The text of a cell that holds its own. */
  readonly inline: string | null;
  readonly formula: string | undefined;
  readonly style: Style;
}

/** What of a workbook decides how its cells show. */
export interface Setting {
  readonly strings: readonly string[];
  readonly epoch1904: boolean;
  /** The file tells programs to calculate its formulas anew: what is stored with them is nobody's result. */
  readonly recalculated: boolean;
}

/** Reads what a cell shows; undefined for a blank one. `place` names it should the file be damaged there. */
export type CellReader = (stored: Stored, place: string) => Content | undefined;

export function cellReader(setting: Setting): CellReader {
  const formats = new Map<Style, NumberFormat>();
  const formatOf = (style: Style) => {
    const format = formats.get(style) ?? numberFormat(style);
    formats.set(style, format);
    return format;
  };
  // Figures and days stand in a sheet again and again.
  const known = new Map<Style, Map<string, ShownNumber>>();
  const numberIn = (style: Style, raw: string): ShownNumber => {
    const ofStyle = known.get(style) ?? new Map<string, ShownNumber>();
    known.set(style, ofStyle);
    const shown = ofStyle.get(raw) ?? shownNumber(raw, formatOf(style), style.format, setting.epoch1904);
    if (ofStyle.size < mostKnown) ofStyle.set(raw, shown);
    return shown;
  };
  return (stored, place) => {
    const { type, formula, style } = stored;
    const raw = rawOf(stored, setting.strings, place);
    const content = ({ type, shown, figure, day, fault, note }: ShownNumber): Content => ({
      type,
      shown,
      raw,
      format: style.format,
      figure,
      day,
      formula,
      fault,
      note,
    });
    if (raw === null || (raw === "" && type !== "str")) {
      if (formula === undefined) return undefined;
      return content({ type: "text", shown: null, fault: withoutValue });
    }
    if (raw === "" && formula === undefined) return undefined;
    const shown =
      type === "n"
        ? numberIn(style, raw)
        : type === "d"
          ? isoDay(raw, formatOf(style), style.format)
          : shownOther(type, raw, style.format, place);
    if (formula === undefined) return content(struck(shown, style));
    if (setting.recalculated) return content({ type: shown.type, shown: null, fault: uncertain });
    return content(struck(ofFormula(shown, formula), style));
  };
}

/** Numbers of one style that are kept as they show. */
const mostKnown = 10_000;

const withoutValue =
  "holds a formula without its result: open the sheet in a spreadsheet program, save it there, and import that";
const uncertain =
  "holds a formula, and the file says that its formulas are still to be calculated: " +
  "open the sheet in a spreadsheet program, save it there, and import that";

function rawOf({ type, value, inline }: Stored, strings: readonly string[], place: string): string | null {
  if (type === "inlineStr") return inline;
  if (value === null) return null;
  if (type === "str") return plainText(value);
  if (type !== "s") return value;
  const text = /^\d{1,9}$/.test(value) ? strings[Number(value)] : undefined;
  if (text === undefined)
    throw damaged(`a cell names the shared text ${value.slice(0, 20)}, which is not in the file`, place);
  return text;
}

function shownOther(type: string, raw: string, code: string, place: string): ShownNumber {
  if (type === "b") return { type: "boolean", shown: raw === "1" || raw === "true" ? "TRUE" : "FALSE" };
  if (type === "e")
    return { type: "error", shown: raw, fault: `shows the error ${raw.slice(0, 40)}: correct it in the sheet` };
  if (type !== "s" && type !== "str" && type !== "inlineStr")
    throw damaged(`a cell is of the type ${type.slice(0, 20)}, which there is not`, place);
  return shownText(raw, code);
}

function shownText(text: string, code: string): ShownNumber {
  if (!showsTextAsIs(code)) {
    const fault = `shows more or less than its text, by the number format ${code}: give the column the format General or text`;
    return { type: "text", shown: null, fault };
  }
  const fault = mangled(text, false);
  return { type: "text", shown: text, ...(fault !== undefined && { fault }) };
}

/** A day as ISO 8601 writes it, which strict workbooks hold; its number format says how it is shown, not which day it is. */
function isoDay(raw: string, format: NumberFormat, code: string): ShownNumber {
  const day = /^(\d{4}-\d{2}-\d{2})(?:T00:00(?::00(?:\.0+)?)?Z?)?$/.exec(raw)?.[1];
  const serial = day === undefined ? undefined : Date.parse(day) / 86_400_000 + 25_569;
  if (serial === undefined || !Number.isFinite(serial) || format.sort !== "day")
    return {
      type: "date",
      shown: null,
      fault: `holds ${raw.slice(0, 40)}, which is shown as no plain day: give the column the format of a date, or write the day as text`,
    };
  return shownNumber(String(serial), format, code, false);
}

function ofFormula(shown: ShownNumber, formula: string): ShownNumber {
  if (shown.fault !== undefined) return shown;
  const elsewhere = /\[\d+\]/.test(formula) ? ", which reads another workbook," : "";
  const note = `is the result that is stored with a formula${elsewhere} and is not calculated anew`;
  return { ...shown, note: shown.note === undefined ? note : `${note}; ${shown.note}` };
}

/** Whoever strikes a value out says that it does not hold. */
function struck(shown: ShownNumber, { struckOut }: Style): ShownNumber {
  if (!struckOut || shown.fault !== undefined) return shown;
  return { type: shown.type, shown: null, fault: "is struck out: delete what does not hold, or take the line off" };
}
