import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import type { BookRecord } from "../../src/model/record.ts";

/** The records that state the volume of the equipment, each as `valueOf` gives it with a volume so many times as large. */
export function enlarged(
  records: readonly BookRecord[],
  valueOf: (record: BookRecord) => JsonObject,
  times: number,
): readonly (readonly [record: BookRecord, value: JsonObject])[] {
  const volume = records.find(({ kind }) => kind === "equipment")?.value["volume"];
  const [, number = "", unit = ""] = /^([0-9.]+) (.+)$/.exec(typeof volume === "string" ? volume : "") ?? [];
  if (number === "")
    throw new Error(`volume of the equipment is ${JSON.stringify(volume)}; expected a number and a unit`);
  const larger = `${Number(number) * times} ${unit}`;
  return records.flatMap((record) => {
    if (record.file === "" || !JSON.stringify(record.value).includes(JSON.stringify(volume))) return [];
    const value = withText(valueOf(record), volume, larger);
    return isObject(value) ? [[record, value] as const] : [];
  });
}

/** A value with one text in place of another, wherever it stands whole. */
function withText(value: Json, before: Json | undefined, after: string): Json {
  if (isList(value)) return value.map((one) => withText(one, before, after));
  if (isObject(value))
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, withText(one, before, after)]));
  return value === before ? after : value;
}

/** Puts another value in place of a record of the book in `dir`, in the file and at the place it stands. */
export function rewriteRecord(dir: string, { file, pointer }: BookRecord, value: JsonObject): void {
  const path = join(dir, file);
  const whole: unknown = JSON.parse(readFileSync(path, "utf8"));
  const [list = "", index = ""] = pointer.split("/").slice(1);
  const rows: unknown =
    typeof whole === "object" && whole !== null
      ? Object.entries(whole).find(([name]) => name === list)?.[1]
      : undefined;
  if (!Array.isArray(rows)) throw new Error(`no list of records at ${pointer} of ${path}`);
  rows[Number(index)] = value;
  writeFileSync(path, `${JSON.stringify(whole, null, 2)}\n`);
}
