import { CsvError, parse } from "csv-parse/sync";
import type { Delimiter } from "../cells.ts";
import { refuse, type Unreadable } from "../unreadable.ts";

export interface CsvRecord {
  readonly fields: readonly string[];
  /** Where the record begins, counted from 1. */
  readonly line: number;
}

/** Signs of one record, at most. */
const longest = 4 << 20;

/**
 * Gives the records of a text to `take`, as RFC 4180 forms them; an end of line is CR LF, LF or CR. A blank line is a
 * record of one empty field. Throws Unreadable, with the line, where quotes do not hold.
 */
export function eachRecord(text: string, delimiter: Delimiter, take: (record: CsvRecord) => void): void {
  // The parser tells where a record ends, and counts CR LF within quotes twice.
  let begins = 1;
  try {
    parse(text, {
      delimiter,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      max_record_size: longest,
      raw: true,
      on_record: (record: unknown) => {
        const { fields, raw } = asRead(record);
        take({ fields, line: begins });
        begins += raw.match(ends)?.length ?? 0;
        return null;
      },
    });
  } catch (error) {
    if (error instanceof CsvError) throw unreadable(error.code, begins);
    throw error;
  }
}

const ends = /\r\n|\n|\r/g;

/** With `raw`, the parser gives each record beside its text, which its types do not say. */
const asRead = (given: unknown) => {
  const { record, raw } = given as { readonly record: readonly string[]; readonly raw: string };
  return { fields: record, raw };
};

function unreadable(code: string, line: number): Unreadable {
  const at = `line ${line}`;
  if (code === "CSV_QUOTE_NOT_CLOSED")
    return refuse("a quote is opened and never closed", `it is in the record that begins there`, closeIt, at);
  if (code === "CSV_MAX_RECORD_SIZE")
    return refuse("a record is longer than any is read", "a quote may be opened there and never closed", closeIt, at);
  return refuse(
    "a quote stands within a field",
    "only a field that is in quotes as a whole holds quotes, each written twice",
    `${closeIt}; or declare the delimiter, if fields are divided by another sign`,
    at,
  );
}

const closeIt = "write quotes within a field twice, and the field in quotes; or export the sheet anew";
