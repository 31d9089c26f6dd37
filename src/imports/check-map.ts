import { nearestName } from "../model/nearest.ts";
import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { unitHint, unitOf } from "../model/units.ts";
import { fieldPath, isPathFault, type FieldPath } from "./field-path.ts";
import type { ColumnMap, DateOrder, MapFault, SetValue, SheetMap } from "./map.ts";
import { initialsOf, templateOf, type Template } from "./template.ts";
import { sheetFields } from "./view.ts";

/** A map that has the form of one, checked against the kinds: where it leads nowhere is said at its place. */
export function checkMap(
  value: JsonObject,
  pointer: string,
  kinds: ReadonlyMap<string, Kind>,
): { readonly map?: SheetMap; readonly faults: readonly MapFault[] } {
  const faults: MapFault[] = [];
  const say = (at: string, message: string, hint: string) => void faults.push({ pointer: pointer + at, message, hint });
  const name = text(value, "kind") ?? "";
  const kind = kinds.get(name);
  if (kind === undefined || kind.derived) {
    const known = [...kinds.values()].filter(({ derived }) => !derived).map((one) => one.name);
    const near = nearestName(name, known);
    say(
      "/kind",
      `there is no kind "${name}" to import`,
      near === undefined ? "`explain` lists the kinds" : `nearest: "${near}"`,
    );
    return { faults };
  }
  const fields = sheetFields(kind);
  const pathAt = (at: string, to: string): FieldPath | undefined => {
    const path = fieldPath(to, fields, name);
    if (!isPathFault(path)) return path;
    say(at, path.message, path.hint);
    return undefined;
  };
  const templateAt = (at: string, given: string): Template | undefined => {
    const template = templateOf(given);
    if (!("fault" in template)) return template;
    say(at, `"${given}" has ${template.fault}`, "write text, and headings in braces, such as CRT-{Certificate}");
    return undefined;
  };
  const columns = new Map<string, ColumnMap>();
  for (const [heading, one] of Object.entries(object(value, "columns"))) {
    if (!isObject(one)) continue;
    const at = `/columns${pointerStep(heading)}`;
    const to = text(one, "to") ?? "";
    const path = to === "" ? undefined : pathAt(`${at}/to`, to);
    const unit = text(one, "unit");
    if (unit !== undefined && unitOf(unit) === undefined)
      say(`${at}/unit`, `there is no unit "${unit}"`, unitHint(unit) ?? "`explain` lists the units");
    if (unit !== undefined && path !== undefined && path.field.type !== "quantity")
      say(`${at}/unit`, `"${path.text}" is no value with a unit`, "leave the unit out");
    const given = text(one, "form");
    const form = given === undefined ? undefined : templateAt(`${at}/form`, given);
    const split = text(one, "split");
    if (split !== undefined && path !== undefined && path.ending !== "item")
      say(`${at}/split`, `"${path.text}" takes one value`, "a cell with several values goes to a list of values");
    columns.set(heading, {
      ...(path !== undefined && { to: path }),
      ...(unit !== undefined && { unit }),
      ...(form !== undefined && { form }),
      ...(split !== undefined && { split }),
      words: wordsOf(one),
      asShown: one["digits"] === "as shown",
    });
  }
  const set = Object.entries(object(value, "set")).flatMap(([to, given]): SetValue[] => {
    const at = `/set${pointerStep(to)}`;
    const [path, template] = [pathAt(at, to), templateAt(at, typeof given === "string" ? given : "")];
    return path === undefined || template === undefined ? [] : [{ to: path, value: template }];
  });
  const group = texts(value, "group");
  for (const [index, list] of group.entries()) {
    const path = fieldPath(`${list}[]`, fields, name);
    if (isPathFault(path)) say(`/group/${index}`, path.message, `name a list of ${name}: ${path.hint}`);
    else if (path.steps.some(({ type }) => type === "row"))
      say(`/group/${index}`, `"${list}" names one row`, "name the list itself");
  }
  const given = text(value, "id");
  const [firstHeading = "Number"] = columns.keys();
  const id = given === undefined ? undefined : templateAt("/id", given);
  if (given === undefined && ![...columns.values()].some(({ to }) => to?.text === "id"))
    say("", "it does not say how an id is made", `add "id", such as "${initialsOf(name)}-{${firstHeading}}"`);
  const [decimal, grouping] = [text(value, "decimal"), text(value, "grouping")];
  if (decimal !== undefined && decimal === grouping)
    say("/grouping", `"${grouping}" is the decimal sign already`, "name the sign between thousands, or leave it out");
  const [sheet, dates, offset] = [text(value, "sheet"), text(value, "dates"), text(value, "offset")];
  const map: SheetMap = {
    kind,
    fields,
    ...(sheet !== undefined && { sheet }),
    head: typeof value["head"] === "number" ? value["head"] : 1,
    ...(id !== undefined && { id }),
    group: new Set(group),
    reading: {
      ...(decimal !== undefined && { decimal }),
      ...(grouping !== undefined && { grouping }),
      ...(isOrder(dates) && { dates }),
      ...(offset !== undefined && { offset }),
      words: wordsOf(value),
    },
    columns,
    set,
    ignore: new Set(texts(value, "ignore")),
    skip: new Map(Object.entries(object(value, "skip")).map(([heading, one]) => [heading, new Set(textsOf(one))])),
  };
  return faults.length > 0 ? { faults } : { map, faults };
}

const isOrder = (text: string | undefined): text is DateOrder =>
  text === "day-month-year" || text === "month-day-year" || text === "year-month-day";

const text = (value: JsonObject, name: string): string | undefined => {
  const one = value[name];
  return typeof one === "string" ? one : undefined;
};

const object = (value: JsonObject, name: string): JsonObject => {
  const one = value[name];
  return isObject(one) ? one : {};
};

const textsOf = (value: Json | undefined): readonly string[] =>
  isList(value) ? value.filter((one) => typeof one === "string") : [];
const texts = (value: JsonObject, name: string) => textsOf(value[name]);

const wordsOf = (value: JsonObject): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(object(value, "words")).flatMap(([word, meaning]) =>
      typeof meaning === "string" ? [[word.trim(), meaning] as const] : [],
    ),
  );
