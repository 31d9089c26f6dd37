import type { Subject } from "./finding.ts";
import { addressOf, type Address } from "./record.ts";

/**
 * Id of a subject: that of its record, "CRT-012", of a row followed by `#` and the row's name, "CRT-012#84613".
 * Such a name may hold any sign; ids of records hold no `#`.
 */
export const subjectId = (record: string, row: string | undefined): string =>
  row === undefined ? record : `${record}#${row}`;

/** The id of the record a subject is or stands in. */
export function recordId(id: string): string {
  const cut = id.indexOf("#");
  return cut < 0 ? id : id.slice(0, cut);
}

/** The name of the row a subject is; undefined of a whole record. */
export function rowOfSubject(id: string): string | undefined {
  const cut = id.indexOf("#");
  return cut < 0 ? undefined : id.slice(cut + 1);
}

/** "WL-L1, cap" of `WL-L1#cap`. */
export const spokenId = (id: string): string => id.replace("#", ", ");

/** The record a subject is or stands in, as `kind:id`; no subject is the book itself, and has none. */
export const recordOfSubject = ({ kind, id }: Subject): Address => addressOf({ kind, id: recordId(id) });
