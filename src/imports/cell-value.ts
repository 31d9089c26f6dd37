import { nearestName } from "../model/nearest.ts";
import type { Field } from "../model/kind.ts";
import type { Cell } from "../sheets/cells.ts";
import { blank, fault, value, type CellValue, type ColumnReading } from "./read-cell.ts";
import { linkValue } from "./written-link.ts";
import { fill } from "./template.ts";
import { dateOfCell, readDate } from "./written-date.ts";
import { readNumber } from "./written-number.ts";
import { checkedQuantity, quantity } from "./written-quantity.ts";

/** The text of a cell without blanks around it. */
export const textOf = (cell: Cell): string => (cell.shown ?? "").trim();

/**
 * What a cell says in a field. Nothing is guessed: digits are taken as they are shown, and what can be read in two ways is a
 * fault of the cell. `others` gives the text under another heading of the row.
 */
export function cellValue(
  cell: Cell,
  field: Field,
  reading: ColumnReading,
  others: (heading: string) => string | undefined,
): CellValue {
  if (cell.fault !== undefined) return fault(cell.fault, "");
  const shown = textOf(cell);
  const own = reading.columnWords.get(shown);
  if (own === "") return blank;
  if (own !== undefined) return fromText(own, field, reading, others);
  const common = reading.words.get(shown);
  if (common === "") return blank;
  if (common !== undefined && (field.options !== undefined || field.type === "boolean" || field.type === "link"))
    return fromText(common, field, reading, others);
  if (shown === "") return blank;
  switch (field.type) {
    case "quantity":
      return cell.type === "date" ? mangled(cell, shown) : quantity(cell, shown, field, reading);
    case "integer":
    case "number":
      return wholeOrNumber(cell, shown, field, reading);
    case "date":
      return date(cell, shown, reading);
    case "boolean":
      return cell.type === "boolean" ? value(shown === "TRUE") : fromText(shown, field, reading, others);
    case "link":
      if (cell.type === "date") return mangled(cell, shown);
      return fromText(shown, field, reading, others);
    default:
      return text(cell, shown, field, reading, others);
  }
}

const truths: ReadonlyMap<string, boolean> = new Map([
  ["yes", true],
  ["true", true],
  ["no", false],
  ["false", false],
]);

function fromText(
  said: string,
  field: Field,
  reading: ColumnReading,
  others: (heading: string) => string | undefined,
): CellValue {
  if (field.options !== undefined) return option(said, field.options);
  switch (field.type) {
    case "boolean": {
      const truth = truths.get(said.toLowerCase());
      return truth === undefined
        ? fault(
            `"${said}" is neither yes nor no`,
            'write yes or no, or give the word its meaning under "words" of the map',
          )
        : value(truth);
    }
    case "link":
      return link(said, field, reading, others);
    case "quantity":
      return checkedQuantity(said, field);
    case "date": {
      const read = readDate(said, reading);
      return "date" in read ? value(read.date) : fault(read.fault, read.hint);
    }
    case "integer":
    case "number":
      return /^-?\d+(\.\d+)?$/.test(said) ? value(Number(said)) : fault(`"${said}" is no number`, "write digits");
    default:
      return formed(said, reading, others, false);
  }
}

function option(said: string, options: readonly string[]): CellValue {
  const same = options.includes(said) ? [said] : options.filter((one) => one.toLowerCase() === said.toLowerCase());
  const [one, ...more] = same;
  if (one !== undefined && more.length === 0) return value(one);
  const near = nearestName(said, options);
  const choice =
    near === undefined ? `one of ${options.slice(0, 12).join(", ")}${options.length > 12 ? ", …" : ""}` : `"${near}"`;
  return fault(
    `"${said}" is no value of this field`,
    `write ${choice}, or give the word its meaning under "words" of the map`,
  );
}

function link(
  said: string,
  field: Field,
  reading: ColumnReading,
  others: (heading: string) => string | undefined,
): CellValue {
  const made = formed(said, reading, others, true);
  return made.type === "value" && typeof made.value === "string" ? linkValue(made.value, field, reading.kindsOf) : made;
}

function formed(
  said: string,
  { form }: ColumnReading,
  others: (heading: string) => string | undefined,
  folds: boolean,
): CellValue {
  if (form === undefined) return value(said);
  const filled = fill(form, (heading) => (heading === "" ? said : others(heading)), folds);
  if ("fault" in filled) return fault(filled.fault, 'correct the cell, or give it a meaning under "words"');
  if ("blank" in filled)
    return fault(
      `nothing stands under ${filled.blank.map((one) => `"${one}"`).join(", ")}, of which the value is made`,
      "fill the cell in",
    );
  return value(filled.text);
}

function text(
  cell: Cell,
  shown: string,
  field: Field,
  reading: ColumnReading,
  others: (heading: string) => string | undefined,
): CellValue {
  if (field.options !== undefined) return fromText(shown, field, reading, others);
  if (reading.asShown) return cell.type === "date" ? mangled(cell, shown) : formed(shown, reading, others, false);
  if (cell.type === "date") return mangled(cell, shown);
  if (cell.type === "boolean")
    return fault(
      `the cell holds the truth value ${shown}, where a text is expected`,
      "give the cell the format of text, and type it again",
    );
  if (cell.type === "number" && !showsAsText(cell, shown))
    return fault(
      `the cell holds the number ${shown}, where a text is expected: zeros before it and signs behind it would be lost`,
      'give the column the format of text and type it from the paper, or say "digits": "as shown" for the column in the map',
    );
  if (reading.csv && looksMangled(shown))
    return fault(
      `"${shown}" looks like a text that a spreadsheet took for a number or a date`,
      'compare with the paper; if it stands there so, say "digits": "as shown" for the column in the map',
    );
  return formed(shown, reading, others, false);
}

/** The format keeps the digits as a text, or shows zeros before them on purpose. */
const showsAsText = ({ format }: Cell, shown: string) =>
  format === "@" || (/^0{2,}$/.test(format) && shown.length === format.length);

const months = "jan|feb|mar|mär|mrz|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez";
const inPowers = /^\d([.,]\d+)?E[+-]?\d+$/i;
const dayOfMonth = new RegExp(String.raw`^(\d{1,2}[-. ]+(${months})|(${months})[-. ]+\d{1,2})\.?$`, "i");
const looksMangled = (shown: string) => inPowers.test(shown) || dayOfMonth.test(shown);

const mangled = (cell: Cell, shown: string): CellValue =>
  fault(
    `the cell holds the day ${cell.day ?? shown}, where none is expected: a spreadsheet makes a day of texts such as 3-1`,
    "give the cell the format of text, and type it again from the paper",
  );

function date(cell: Cell, shown: string, reading: ColumnReading): CellValue {
  if (cell.type === "number")
    return fault(
      `the cell holds the number ${shown}, where a date is expected`,
      "give the cell the format of a date, if it is one",
    );
  const read = cell.type === "date" ? dateOfCell(cell, reading) : readDate(shown, reading);
  return "date" in read ? value(read.date) : fault(read.fault, read.hint);
}

function wholeOrNumber(cell: Cell, shown: string, field: Field, reading: ColumnReading): CellValue {
  if (cell.type === "date") return mangled(cell, shown);
  const read = cell.figure === undefined ? readNumber(shown, reading) : { figure: cell.figure };
  if ("fault" in read) return fault(read.fault, read.hint === "" ? "write digits" : read.hint);
  const good = field.type === "integer" ? /^-?\d+$/.test(read.figure) : /^-?\d+(\.\d+)?$/.test(read.figure);
  return good
    ? value(Number(read.figure))
    : fault(`"${shown}" is no ${field.type === "integer" ? "whole " : ""}number`, "write digits");
}
