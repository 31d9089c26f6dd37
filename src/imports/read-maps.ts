import { readFileSync } from "node:fs";
import { join } from "node:path";
import { duplicateFindings } from "../load/duplicates.ts";
import { parseJson } from "../load/parse-json.ts";
import { linesOf, placesOf } from "../load/places.ts";
import { pseudoKind } from "../load/pseudo-kind.ts";
import { scanJson } from "../load/scan.ts";
import { syntaxFault } from "../load/syntax.ts";
import { validate } from "../load/validate.ts";
import { isList, isObject, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { checkMap } from "./check-map.ts";
import type { MapFault, SheetMap } from "./map.ts";

/** What a file of maps says, or what is wrong with it: `imports/weld-log.json:12:7`. */
export interface ReadMaps {
  readonly maps: readonly SheetMap[];
  readonly faults: readonly PlacedFault[];
}

export interface PlacedFault {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
  readonly hint: string;
}

/** Reads the maps of a file: one, or a list of them. `schema` is the schema of maps as shipped. */
export function readMaps(file: string, text: string, kinds: ReadonlyMap<string, Kind>, schema: JsonObject): ReadMaps {
  const lines = linesOf(text);
  const at = (start: number, end: number) => lines.position({ start, end });
  const refuse = (line: number, column: number, message: string, hint: string): ReadMaps => ({
    maps: [],
    faults: [{ file, line, column, message, hint }],
  });
  const scan = scanJson(text);
  const root = scan.tooDeep === undefined ? parseJson(text) : undefined;
  if (root === undefined) {
    const fault = syntaxFault(text);
    const { line, column } = at(fault?.offset ?? 0, fault?.offset ?? 0);
    return refuse(line, column, fault?.message ?? "the file is not JSON", fault?.hint ?? "write it anew");
  }
  const places = placesOf(text);
  const doubled = duplicateFindings({
    file,
    text,
    places: () => places,
    duplicates: scan.duplicates,
    root,
    kind: undefined,
  }).findings.map(({ place, message }) => ({
    file,
    line: place.position?.line ?? 1,
    column: place.position?.column ?? 1,
    message,
    hint: "keep the right one and remove the other",
  }));
  if (doubled.length > 0) return { maps: [], faults: doubled };
  const several = isList(root);
  const found = several ? root : [root];
  const maps: SheetMap[] = [];
  const faults: MapFault[] = [];
  for (const [index, value] of found.entries()) {
    const pointer = several ? `/${index}` : "";
    if (!isObject(value)) {
      faults.push({ pointer, message: "it is no map", hint: 'write {"kind": …, "columns": {…}}, or a list of such' });
      continue;
    }
    const form = formFaults(value, pointer, schema, (inner) => {
      const { start, end } = places.value(pointer + inner);
      return text.slice(start, end);
    });
    faults.push(...form);
    if (form.length > 0) continue;
    const checked = checkMap(value, pointer, kinds);
    faults.push(...checked.faults);
    if (checked.map !== undefined) maps.push(checked.map);
  }
  if (found.length === 0) faults.push({ pointer: "", message: "the list holds no map", hint: "write one" });
  return {
    maps: faults.length === 0 ? maps : [],
    faults: faults.map(({ pointer, message, hint }) => {
      const { start, end } = places.value(pointer);
      const { line, column } = at(start, end);
      return { file, line, column, message, hint };
    }),
  };
}

function formFaults(
  value: JsonObject,
  pointer: string,
  schema: JsonObject,
  written: (inner: string) => string,
): readonly MapFault[] {
  return validate(pseudoKind("map", "Map", schema), "row", value, written, 20).said.map((fault) => ({
    pointer: pointer + fault.pointer,
    message: fault.message,
    hint: fault.hint,
  }));
}

/** The schema of maps as shipped. `schemas` is the folder of schemas. */
export function mapSchema(schemas: string): JsonObject {
  const schema = parseJson(readFileSync(join(schemas, "imports", "map.json"), "utf8"));
  if (!isObject(schema)) throw new Error("the schema of maps is no object");
  // Under a name of its own it could be compiled once only.
  const { $id: _id, $schema: _dialect, ...rest } = schema;
  return rest;
}
