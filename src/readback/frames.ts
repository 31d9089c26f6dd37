import type { Placed } from "./values.ts";
import { addressOf } from "../model/record.ts";
import { listAround } from "../model/json.ts";

/** A value seen as a field of a row among rows like it. */
export interface Frame {
  /** Rows of one group are printed alike: the lines of a table, the forms of one page. */
  readonly group: string;
  readonly row: string;
  readonly field: string;
}

/**
 * The rows a value belongs to: its record among the records of that kind, and each row of a list it stands in among those of
 * the same list, and among those of all such lists.
 */
export function framesOf(kind: string, id: string, { pointer, rows }: Placed): readonly Frame[] {
  const record = addressOf({ kind, id });
  const frames: Frame[] = [];
  for (let level = rows.length; level >= 0; level--) {
    const own = rows[level - 1]?.pointer ?? "";
    const field = fieldBelow(pointer, rows, level);
    const list = listAround(own);
    frames.push({ group: `${kind} ${starred(list)}`, row: record + own, field });
    if (level > 0) frames.push({ group: `${record} ${list}`, row: own, field });
  }
  return frames;
}

const starred = (list: string) => list.replaceAll(/\/\d+(?=\/|$)/g, "/*");

/** The way from a row to the value, with the rows below named by what tells them apart. */
function fieldBelow(pointer: string, rows: Placed["rows"], level: number): string {
  let from = rows[level - 1]?.pointer.length ?? 0;
  let way = "";
  for (const row of rows.slice(level)) {
    way += row.pointer.slice(from).replace(/\/\d+$/, `[${row.key}]`);
    from = row.pointer.length;
  }
  return way + pointer.slice(from);
}
