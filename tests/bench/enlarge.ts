import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import type { BookRecord } from "../../src/model/record.ts";

/** What grows with the parts of the equipment, and the kind that states it first. */
const sizes = [
  ["equipment", "volume"],
  ["equipment", "emptyMass"],
  ["equipment", "heatingSurface"],
  ["pressure-test", "pumpedVolume"],
] as const;

/** The records that state such a size of the equipment, each as `valueOf` gives it with sizes so many times as large. */
export function enlarged(
  records: readonly BookRecord[],
  valueOf: (record: BookRecord) => JsonObject,
  times: number,
): readonly (readonly [record: BookRecord, value: JsonObject])[] {
  const larger = new Map(
    sizes.flatMap(([of, size]) => {
      const stated = records.find(({ kind }) => kind === of)?.value[size];
      if (typeof stated !== "string") return [];
      const [, number = "", unit = ""] = /^([0-9.]+) (.+)$/.exec(stated) ?? [];
      if (number === "")
        throw new Error(`${size} of the ${of} is ${JSON.stringify(stated)}; expected a number and a unit`);
      return [[stated, `${Number(number) * times} ${unit}`] as const];
    }),
  );
  return records.flatMap((record) => {
    const text = JSON.stringify(record.value);
    if (record.file === "" || ![...larger.keys()].some((one) => text.includes(JSON.stringify(one)))) return [];
    const value = withTexts(valueOf(record), larger);
    return isObject(value) ? [[record, value] as const] : [];
  });
}

/** A value with other texts in place of some, wherever they stand whole. */
function withTexts(value: Json, others: ReadonlyMap<string, string>): Json {
  if (isList(value)) return value.map((one) => withTexts(one, others));
  if (isObject(value))
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, withTexts(one, others)]));
  return typeof value === "string" ? (others.get(value) ?? value) : value;
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
