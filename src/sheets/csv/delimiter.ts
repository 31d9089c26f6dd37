import type { Delimiter } from "../cells.ts";
import { refuse, Unreadable } from "../unreadable.ts";
import { eachRecord } from "./records.ts";

const known: readonly (readonly [sign: Delimiter, name: string])[] = [
  [",", "the comma"],
  [";", "the semicolon"],
  ["\t", "the tab"],
];

/** A first line that spreadsheet programs write and read: `sep=;`. */
const declaration = /^sep=([,;\t])(?:\r\n|\n|\r)/i;

export interface Divided {
  readonly delimiter: Delimiter;
  /** Signs at the beginning that declare the delimiter and are no record. */
  readonly skipped: number;
}

/**
 * The delimiter of a text: as declared by the caller or by its own first line; else the one that alone divides all
 * records into as many fields. Throws Unreadable where there is a doubt.
 */
export function delimiterOf(text: string, declared: Delimiter | undefined): Divided {
  const own = declaration.exec(text);
  const skipped = own?.[0].length ?? 0;
  const stated = known.find(([sign]) => sign === own?.[1]);
  if (stated !== undefined && declared !== undefined && declared !== stated[0])
    throw refuse(
      "two delimiters are declared",
      `the first line of the file declares ${stated[1]}, and its reader was told ${nameOf(declared)}`,
      "declare the delimiter that the file has",
      "line 1",
    );
  const delimiter = declared ?? stated?.[0];
  return { delimiter: delimiter ?? found(text), skipped };
}

function found(text: string): Delimiter {
  const divisions = known.map(([sign, name]) => ({ sign, name, ...division(text, sign) }));
  const faults = divisions.flatMap(({ fault }) => fault ?? []);
  // Quotes that hold by no delimiter are the file's fault, and no doubt about the delimiter.
  if (faults.length === known.length && faults[0] !== undefined) throw faults[0];
  const even = divisions.filter(({ fields }) => fields !== undefined && fields > 1);
  const [only, other] = even;
  if (only !== undefined && other === undefined) return only.sign;
  if (only === undefined && divisions.every(({ fields }) => fields === 1)) return ",";
  const why =
    even.length > 1
      ? `${even.map(({ name }) => name).join(" and ")} each divide all records into as many fields`
      : "neither comma, semicolon nor tab divides all records into as many fields";
  throw refuse(
    "the sign between the fields is in doubt",
    why,
    "declare the delimiter (comma, semicolon or tab); or import the workbook the file was exported from",
  );
}

interface Division {
  /** Fields of every record that is not blank; undefined where records differ. */
  readonly fields?: number;
  readonly fault?: Unreadable;
}

class Uneven extends Error {}

function division(text: string, sign: Delimiter): Division {
  let fields: number | undefined;
  try {
    eachRecord(text, sign, (record) => {
      if (record.fields.every((field) => field === "")) return;
      if (fields !== undefined && record.fields.length !== fields) throw new Uneven();
      fields = record.fields.length;
    });
  } catch (error) {
    if (error instanceof Uneven) return {};
    if (error instanceof Unreadable) return { fault: error };
    throw error;
  }
  return { fields: fields ?? 1 };
}

const nameOf = (delimiter: Delimiter) => known.find(([sign]) => sign === delimiter)?.[1] ?? delimiter;
