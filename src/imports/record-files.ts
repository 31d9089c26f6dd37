import { parseJson } from "../load/parse-json.ts";
import { placesOf } from "../load/places.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { grouped } from "../model/grouped.ts";
import { byCodePoint } from "../model/order.ts";
import { shelfOf } from "../model/shelf.ts";
import type { ImportPlan, PlannedRecord } from "./import-plan.ts";
import type { Rewritten } from "./uncompared.ts";

/** File of the records that a map made new. */
export const fileOfNew = (mapName: string, kind: string): string => `sheets/${mapName}/${kind}.json`;

/** Records of a plan that are written: all but those that stay as they are, and conflicts unless they are overwritten. */
export function written({ records }: ImportPlan, overwrites: boolean): readonly PlannedRecord[] {
  return records.filter(
    ({ state, before, value }) =>
      (state !== "conflict" || overwrites) &&
      !(before !== undefined && shelfOf(before.file) !== undefined) &&
      (before === undefined || JSON.stringify(before.value) !== JSON.stringify(withHead(before.value, value))),
  );
}

const heads: ReadonlySet<string> = new Set(["$schema", "kind"]);

/** A record alone in its file says its kind and its schema too. */
function withHead(before: JsonObject, value: JsonObject): JsonObject {
  return Object.fromEntries([
    ...Object.entries(before).filter(([name]) => heads.has(name)),
    ...Object.entries(value).filter(([name]) => !heads.has(name)),
  ]);
}

/**
 * The texts of the files that a plan changes. New records of a map and kind stand in one file, by id; a record that stands
 * elsewhere is changed where it stands, and nothing else of that file. `textOf` gives a file of the book as it is.
 */
export function changedFiles(
  records: readonly Rewritten[],
  mapName: string,
  textOf: (file: string) => string | undefined,
): ReadonlyMap<string, string> {
  const homes = grouped(records, ({ before, kind }) => before?.file ?? fileOfNew(mapName, kind.name));
  return new Map(
    [...homes].flatMap(([file, inside]) => {
      const [first] = inside;
      if (first === undefined) return [];
      const text = textOf(file);
      const isOwn = file === fileOfNew(mapName, first.kind.name);
      return [[file, isOwn ? ownFile(text, first.kind.name, inside) : spliced(text ?? "", inside)] as const];
    }),
  );
}

function ownFile(text: string | undefined, kind: string, records: readonly Rewritten[]): string {
  const root = text === undefined ? undefined : parseJson(text);
  const known: readonly Json[] = isObject(root) && isList(root["records"]) ? root["records"] : [];
  const byId = new Map<string, Json>();
  for (const one of known) if (isObject(one)) byId.set(JSON.stringify(one["id"]), one);
  for (const { id, value } of records) byId.set(JSON.stringify(id), value);
  const sorted = [...byId].sort(([a], [b]) => byCodePoint(a, b)).map(([, value]) => value);
  const head = isObject(root)
    ? Object.fromEntries(Object.entries(root).filter(([name]) => name !== "records"))
    : { kind };
  return `${JSON.stringify({ ...head, records: sorted }, null, 2)}\n`;
}

/** A text with records exchanged where they stand, in the indentation of their line. */
function spliced(text: string, records: readonly Rewritten[]): string {
  const places = placesOf(text);
  const cuts = records
    .flatMap(({ before, value }) => {
      if (before === undefined) return [];
      const { start, end } = places.value(before.pointer);
      return [{ start, end, value: withHead(before.value, value) }];
    })
    .sort((a, b) => a.start - b.start);
  let out = "";
  let from = 0;
  for (const { start, end, value } of cuts) {
    const line = text.lastIndexOf("\n", start - 1) + 1;
    const indent = /^[ \t]*/.exec(text.slice(line, start))?.[0] ?? "";
    out += text.slice(from, start) + JSON.stringify(value, null, 2).replaceAll("\n", `\n${indent}`);
    from = end;
  }
  return out + text.slice(from);
}
