import { isList, isObject, type Json } from "./json.ts";
import type { Place } from "./place.ts";
import type { BookRecord } from "./record.ts";

/** Row of the sheet that a place of a book came from, in words; undefined where it was not imported. */
export type SheetAt = (place: Place) => string | undefined;

/** What `imported` of a record says, as people look it up: "weld-log.xlsx, Shell, row 14". */
export function sheetWords(imported: Json | undefined): string | undefined {
  if (!isObject(imported) || typeof imported["file"] !== "string") return undefined;
  const { file, sheet } = imported;
  const rows = rowsOf(imported);
  return [file, ...(typeof sheet === "string" ? [sheet] : []), ...(rows.length === 0 ? [] : [rowWords(rows)])].join(
    ", ",
  );
}

/** Every row of the sheet that a record came from. */
export function rowsOf(imported: Json | undefined): readonly number[] {
  if (!isObject(imported)) return [];
  const all = isList(imported["rows"]) ? imported["rows"] : [imported["row"] ?? null];
  return all.filter((row) => typeof row === "number");
}

/** "row 14", "rows 14 to 16, 20". */
export function rowWords(rows: readonly number[]): string {
  const ranges: [number, number][] = [];
  for (const row of [...new Set(rows)].sort((a, b) => a - b)) {
    const last = ranges.at(-1);
    if (last?.[1] === row - 1) last[1] = row;
    else ranges.push([row, row]);
  }
  const said = ranges.map(([first, last]) =>
    first === last ? String(first) : last === first + 1 ? `${first}, ${last}` : `${first} to ${last}`,
  );
  return `${rows.length === 1 ? "row" : "rows"} ${said.join(", ")}`;
}

/** Finds the sheet's row of any place in these records. */
export function sheetPlaces(records: readonly BookRecord[]): SheetAt {
  const files = new Map<string, Map<string, string>>();
  for (const { file, pointer, value } of records) {
    const words = sheetWords(value["imported"]);
    if (words === undefined) continue;
    const known = files.get(file);
    if (known === undefined) files.set(file, new Map([[pointer, words]]));
    else known.set(pointer, words);
  }
  return ({ file, pointer }) => {
    const known = files.get(file);
    return known?.get("") ?? known?.get(/^\/records\/\d+/.exec(pointer)?.[0] ?? "");
  };
}
