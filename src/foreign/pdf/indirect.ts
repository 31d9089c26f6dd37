import type { Budget } from "../budget.ts";
import { damaged } from "../refused.ts";
import { readValue, skipSpace, takeCount, takeWord, type Cursor } from "./parse.ts";
import { isDict, type PdfDict, type PdfStream, type PdfValue } from "./values.ts";

export interface Indirect {
  readonly number: number;
  readonly value: PdfValue;
}

/**
 * Reads `12 0 obj … endobj` at the cursor. `lengthOf` looks up a length that is written elsewhere; a length that does not
 * lead to the end of the stream is passed over in favour of the end that is there.
 */
export function readIndirect(cursor: Cursor, budget: Budget, lengthOf: (value: PdfValue) => PdfValue): Indirect {
  const number = takeCount(cursor);
  const generation = takeCount(cursor);
  if (number === undefined || generation === undefined || !takeWord(cursor, "obj"))
    throw damaged("an object of it is not where its table says");
  const value = readValue(cursor, budget);
  if (!isDict(value) || !takeWord(cursor, "stream")) return { number, value };
  return { number, value: readStream(cursor, value, budget, lengthOf) };
}

function readStream(
  cursor: Cursor,
  { entries }: PdfDict,
  budget: Budget,
  lengthOf: (value: PdfValue) => PdfValue,
): PdfStream {
  const { bytes } = cursor;
  if (bytes[cursor.at] === 13) cursor.at++;
  if (bytes[cursor.at] === 10) cursor.at++;
  const start = cursor.at;
  const stated = entries.get("Length");
  const length = stated === undefined ? null : lengthOf(stated);
  if (typeof length === "number" && Number.isInteger(length) && length >= 0 && start + length <= bytes.length) {
    const after = { bytes, at: start + length };
    skipSpace(after);
    if (takeWord(after, "endstream")) {
      cursor.at = after.at;
      return { type: "stream", entries, raw: bytes.subarray(start, start + length) };
    }
  }
  const found = bytes.indexOf("endstream", start, "latin1");
  if (found < 0) throw damaged("it ends too early");
  budget.searched(found - start);
  cursor.at = found + "endstream".length;
  let end = found;
  if (bytes[end - 1] === 10 && end > start) end--;
  if (bytes[end - 1] === 13 && end > start) end--;
  return { type: "stream", entries, raw: bytes.subarray(start, end) };
}
