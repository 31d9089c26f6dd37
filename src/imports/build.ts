import { fieldSteps, stepName } from "../model/field-steps.ts";
import { isDeepStrictEqual } from "node:util";
import type { Json } from "../model/json.ts";
import { atWords, emptyObject, type Built, type BuiltObject, type BuiltRow, type RowMark } from "./built.ts";
import type { CellAt, ImportFault } from "./faults.ts";
import type { FieldPath, PathStep } from "./field-path.ts";
import type { SheetMap } from "./map.ts";
import type { RowRead, Write } from "./read-rows.ts";
import { said } from "./said.ts";

/** What sheets say of one record, and where. */
export interface BuiltRecord {
  readonly id: string;
  readonly map: SheetMap;
  readonly sheet: string;
  readonly rows: number[];
  readonly object: BuiltObject;
  /** Row it was first met in, for messages. */
  readonly at: CellAt;
  /** Whether any of its rows says more than its id. */
  says: boolean;
}

/**
 * Adds what one row of a sheet says to the record it belongs to. What two rows say differently, and a second row where the
 * map groups none, is a fault.
 */
export function addRow(record: BuiltRecord, read: RowRead, map: SheetMap, sheet: string): readonly ImportFault[] {
  const faults: ImportFault[] = [];
  const row: CellAt = { sheet, row: read.row };
  const writes = read.writes.filter((write) => isFounded(write, read.writes));
  const marks = marksOf(writes, map, row, record.object, faults);
  if (faults.length > 0) return faults;
  const entered = new Set<string>();
  for (const write of writes) {
    if (write.to.text === "id" || write.to.ending === "row") continue;
    const fault = put(record.object, write, marks, map, entered, `${sheet} ${read.row}`);
    if (fault !== undefined) faults.push(fault);
  }
  return faults;
}

/** What the map sets in a row of a list is written where a cell says anything of that row. */
function isFounded({ to, at }: Write, all: readonly Write[]): boolean {
  const row = /^.*\](?=\.)/.exec(to.text)?.[0];
  if (at.column !== undefined || row === undefined) return true;
  return all.some((other) => other.at.column !== undefined && other.to.text.startsWith(row));
}

interface Mark {
  readonly by: RowMark;
  readonly key: string;
}

/** Which row of each list this row of the sheet is about, outer lists first. */
function marksOf(
  writes: readonly Write[],
  map: SheetMap,
  row: CellAt,
  object: BuiltObject,
  faults: ImportFault[],
): ReadonlyMap<string, Mark> {
  const marks = new Map<string, Mark>();
  const each = writes.flatMap(({ to }) => to.steps.flatMap((step) => (step.type === "each" ? [step] : [])));
  const lists = [...new Map(each.map((step) => [step.path, step])).values()];
  lists.sort((a, b) => a.path.length - b.path.length);
  for (const { path, field } of lists) {
    if (marks.has(path)) continue;
    const given = (name: string) => writes.find(({ to }) => to.text === `${path}[]${name}`);
    const named = given("");
    const [ownName] = named?.values ?? [];
    if (ownName !== undefined) {
      const position = /^#([1-9]\d{0,5})$/.exec(said(ownName))?.[1];
      marks.set(
        path,
        position === undefined
          ? { by: { type: "name", name: said(ownName) }, key: `name ${said(ownName)}` }
          : { by: { type: "position", index: Number(position) - 1 }, key: `position ${Number(position) - 1}` },
      );
      continue;
    }
    const [value] =
      given(".row")?.values ?? (field.rowKey === undefined ? undefined : given(`.${field.rowKey}`)?.values) ?? [];
    if (value !== undefined) marks.set(path, { by: { type: "name", name: said(value) }, key: `name ${said(value)}` });
    else if (field.rowKey === undefined) {
      const index = countAt(object, path, marks);
      marks.set(path, { by: { type: "position", index }, key: `position ${index}` });
    } else if (!goesTo(map, `${path}[].${field.rowKey}`, `${path}[].row`))
      // No row of the sheet can say it: it is said once, of the map.
      faults.push({
        sheet: row.sheet,
        message: `no heading goes to "${path}[].${field.rowKey}", which tells one row of ${field.title.toLowerCase()} from another`,
        hint: `say in the map which heading does; where all have one, set it there: "set": {"${path}[].${field.rowKey}": "…"}`,
      });
    else
      faults.push({
        ...row,
        message: `the row has values for ${field.title.toLowerCase()}, but none for "${field.rowKey}", which tells one row of it from another`,
        hint:
          map.columns.size === 0
            ? ""
            : `fill the cell in, or say in the map which heading goes to "${path}[].${field.rowKey}"`,
      });
  }
  return marks;
}

/** Whether a map writes to any of these paths: from a column, or as what it sets. */
const goesTo = ({ columns, set }: SheetMap, ...paths: readonly string[]): boolean =>
  columns.size === 0 ||
  [...columns.values()].some(({ to }) => to !== undefined && paths.includes(to.text)) ||
  set.some(({ to }) => paths.includes(to.text));

/** How many rows a list without names has so far. */
function countAt(object: BuiltObject, path: string, marks: ReadonlyMap<string, Mark>): number {
  let here: Built | undefined = object;
  let walked = "";
  for (const step of fieldSteps(path)) {
    const bare = stepName(step);
    walked = walked === "" ? bare : `${walked}.${bare}`;
    here = here?.type === "object" ? here.members.get(bare) : undefined;
    if (here?.type === "rows") {
      if (walked === path) return here.rows.size;
      here = here.rows.get(marks.get(walked)?.key ?? "")?.object;
      walked += "[]";
    }
  }
  return 0;
}

function put(
  object: BuiltObject,
  { to, values, at }: Write,
  marks: ReadonlyMap<string, Mark>,
  map: SheetMap,
  entered: Set<string>,
  rowKey: string,
): ImportFault | undefined {
  let here = object;
  let trail = "";
  for (const step of to.steps.slice(0, -1)) {
    trail += `/${step.field.name}`;
    if (step.type === "field") {
      const next = member(here, step.field.name, emptyObject);
      if (next.type !== "object") return undefined;
      here = next;
      continue;
    }
    const mark = markOf(step, marks);
    if (mark === undefined) return undefined;
    const list = member(here, step.field.name, () => ({ type: "rows", field: step.field, rows: new Map() }));
    if (list.type !== "rows") return undefined;
    trail += `[${mark.key}]`;
    const known = list.rows.get(mark.key);
    if (step.type === "each" && known?.at.sheet === at.sheet && !entered.has(trail) && !mayMeet(step, map))
      return {
        ...at,
        message: `${rowSaid(known)} of ${step.field.title.toLowerCase()} stands in two rows: ${atWords(known.at)} has it too`,
        hint: `where rows differ only further in, name that list under "group" of the map; else map a heading to "${step.path}[].row" that tells them apart`,
      };
    entered.add(trail);
    const row: BuiltRow = known ?? { by: mark.by, object: emptyObject(), at };
    if (known === undefined) list.rows.set(mark.key, row);
    here = row.object;
  }
  return putLeaf(here, to, values, at, map, rowKey);
}

const rowSaid = ({ by }: BuiltRow) =>
  by.type === "name"
    ? `"${by.name}"`
    : by.type === "position"
      ? `row ${by.index + 1}`
      : by.equals.map(([, value]) => `"${value}"`).join(", ");

/** Whether a row of this list may come from several rows of the sheet: a list in it, or beside it, takes them. */
const mayMeet = ({ path }: Extract<PathStep, { type: "each" }>, { group }: SheetMap) =>
  [...group].some((list) => list !== path && (list.startsWith(`${path}[]`) || !path.startsWith(list)));

function markOf(step: PathStep, marks: ReadonlyMap<string, Mark>): Mark | undefined {
  if (step.type === "each") return marks.get(step.path);
  if (step.type !== "row") return undefined;
  return { by: { type: "fields", equals: step.equals }, key: `fields ${JSON.stringify(step.equals)}` };
}

function member(object: BuiltObject, name: string, make: () => Built): Built {
  const known = object.members.get(name);
  if (known !== undefined) return known;
  const made = make();
  object.members.set(name, made);
  return made;
}

function putLeaf(
  object: BuiltObject,
  to: FieldPath,
  values: readonly Json[],
  at: CellAt,
  map: SheetMap,
  rowKey: string,
): ImportFault | undefined {
  const name = to.steps.at(-1)?.field.name ?? "";
  if (to.ending === "item") {
    const grows = map.group.has(to.text.replace(/\[\]$/, ""));
    const items = member(object, name, () => ({ type: "items", byRow: new Map(), grows }));
    if (items.type !== "items") return undefined;
    const own = items.byRow.get(rowKey) ?? [];
    items.byRow.set(rowKey, [...own, ...values.map((value) => ({ value, at }))]);
    return undefined;
  }
  const [value] = values;
  if (value === undefined) return undefined;
  const known = object.members.get(name);
  if (known?.type === "value" && !isDeepStrictEqual(known.value, value))
    return {
      ...at,
      message: `it says ${JSON.stringify(value)}, where ${atWords(known.at)} says ${JSON.stringify(known.value)} of the same record`,
      hint: "correct one of the two, or map the heading to a field of the list that takes the rows",
    };
  if (known === undefined) object.members.set(name, { type: "value", value, at });
  return undefined;
}

/** The items of a list of plain values; rows of the sheet that say different lists are a fault. */
export function itemsOf(built: Extract<Built, { type: "items" }>): {
  readonly items: readonly { readonly value: Json; readonly at: CellAt }[];
  readonly fault?: ImportFault;
} {
  const lists = [...built.byRow.values()];
  const [first = [], ...others] = lists;
  if (built.grows) return { items: lists.flat() };
  const valuesOf = (list: readonly { readonly value: Json }[]) => list.map(({ value }) => value);
  const odd = others.find((list) => !isDeepStrictEqual(valuesOf(list), valuesOf(first)));
  const [at] = odd ?? [];
  const [known] = first;
  if (odd === undefined || at === undefined || known === undefined) return { items: first };
  return {
    items: first,
    fault: {
      ...at.at,
      message: `it says ${valuesOf(odd).map(said).join("; ")}, where ${atWords(known.at)} says ${valuesOf(first).map(said).join("; ")} of the same record`,
      hint: 'correct one of the two, or name the list under "group" of the map if each row adds to it',
    },
  };
}
