import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Basis } from "../model/basis.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Table, TableColumn, TableRow } from "../model/table.ts";
import { unitOf } from "../model/units.ts";
import { objectOf, textOf } from "./inline.ts";
import { nearestName } from "../model/nearest.ts";
import { parseJson } from "./parse-json.ts";
import { linesOf, placesOf } from "./places.ts";
import { pseudoKind } from "./pseudo-kind.ts";
import { syntaxFault } from "./syntax.ts";
import { keysText, meet, member, rowsOf, type Coordinate, type Say, type TableHead } from "./table-rows.ts";
import { validate } from "./validate.ts";

/** A file of tables with its text: where its faults stand is said of it. */
interface TableFile {
  readonly file: string;
  readonly value: JsonObject;
  readonly say: Say;
}

/** More faults than this in one file are those of its first lines. */
const mostFaults = 20;

/**
 * The tables of all files of a folder, in the order of the files' names. `schema` is their schema. Throws `ProgramError` that
 * names file, line and column of everything that is wrong: a broken table is refused, never read in part.
 */
export function loadTables(dir: string, schema: JsonObject): readonly Table[] {
  const faults: string[] = [];
  const files = readdirSync(dir)
    .filter((name) => name.endsWith(".json"))
    .sort(byCodePoint)
    .flatMap((name) => readTableFile(join(dir, name), schema, faults));
  const heads = new Map<string, TableHead>();
  for (const { value, say } of files)
    for (const [id, head] of Object.entries(objectOf(value, "tables")))
      if (heads.has(id)) say(member("/tables", id), `table "${id}" is described twice`, "keep one of them");
      else if (isObject(head)) heads.set(id, headOf(id, head, say));
  const rows = new Map<string, TableRow[]>([...heads.keys()].map((id) => [id, []]));
  for (const file of files) addRows(file, heads, rows);
  for (const { value, say } of files)
    for (const id of Object.keys(objectOf(value, "tables")))
      if (rows.get(id)?.length === 0)
        say(member("/tables", id), `table "${id}" has no rows`, "add some, or take it out");
  if (faults.length > 0) throw new ProgramError(`tables of standards:\n${faults.join("\n")}`);
  return [...heads.values()].map(({ table }) => complete(table, rows.get(table.id) ?? []));
}

/** The schema of these files as shipped. `schemas` is the folder of schemas. */
export function tableSchema(schemas: string): JsonObject {
  const schema = parseJson(readFileSync(join(schemas, "tables", "table.json"), "utf8"));
  if (!isObject(schema)) throw new ProgramError("the schema of tables is no object");
  // Under a name of its own it could be compiled once only.
  const { $id: _id, $schema: _dialect, ...rest } = schema;
  return rest;
}

/** A file that keeps to the schema, or nothing and its faults. */
function readTableFile(file: string, schema: JsonObject, faults: string[]): readonly TableFile[] {
  const text = readFileSync(file, "utf8");
  const lines = linesOf(text);
  const note = (start: number, end: number, message: string, hint: string): void => {
    const { line, column } = lines.position({ start, end });
    faults.push(`${file}:${line}:${column}: ${message}; ${hint}`);
  };
  const root = parseJson(text);
  if (root === undefined) {
    const fault = syntaxFault(text);
    note(
      fault?.offset ?? 0,
      fault?.offset ?? 0,
      fault?.message ?? "the file is not JSON",
      fault?.hint ?? "write it anew",
    );
    return [];
  }
  const places = placesOf(text);
  const say: Say = (pointer, message, hint) => {
    const { start, end } = places.value(pointer);
    note(start, end, message, hint);
  };
  if (!isObject(root)) {
    say("", "it is no file of tables", 'write {"tables": …, "rows": …}');
    return [];
  }
  const written = (pointer: string) => {
    const { start, end } = places.value(pointer);
    return text.slice(start, end);
  };
  const { said } = validate(pseudoKind("tables", "File of tables", schema), "row", root, written, mostFaults);
  for (const { pointer, message, hint } of said) say(pointer, message, hint);
  return said.length > 0 ? [] : [{ file, value: root, say }];
}

function headOf(id: string, head: JsonObject, say: Say): TableHead {
  const pointer = member("/tables", id);
  const unitIn = (at: JsonObject, where: string): { readonly unit?: string } => {
    const unit = textOf(at, "unit");
    if (unit === undefined) return {};
    if (unitOf(unit) === undefined)
      say(where, `there is no unit "${unit}"`, "write one of those that explain units lists");
    return { unit };
  };
  const coordinates = new Map<string, readonly Coordinate[]>();
  const columns = Object.entries(objectOf(head, "columns")).map(([name, one]): readonly [string, TableColumn] => {
    const column = isObject(one) ? one : {};
    const points = Object.entries(objectOf(column, "points")).map(([coordinate, form]): Coordinate => {
      const other = isObject(form) ? textOf(form, "else") : undefined;
      return {
        name: coordinate,
        ...(isObject(form) && unitIn(form, member(`${pointer}/columns`, name))),
        ...(other !== undefined && { else: other }),
      };
    });
    if (points.length > 0) coordinates.set(name, points);
    return [
      name,
      {
        ...unitIn(column, member(`${pointer}/columns`, name)),
        means: textOf(column, "means") ?? "",
        ...(column["optional"] === true && { optional: true }),
        ...(column["list"] === true && { list: true }),
        ...(points.length > 0 && { points: points.map((point) => point.name) }),
      },
    ];
  });
  const keys = Object.entries(objectOf(head, "keys")).map(([name, one]) => {
    const unit = unitIn(isObject(one) ? one : {}, member(`${pointer}/keys`, name));
    return { name, match: unit.unit === undefined ? ("equal" as const) : ("interval" as const), ...unit };
  });
  const [standard, edition] = [textOf(head, "standard") ?? "", textOf(head, "edition")];
  const title = textOf(head, "title") ?? id;
  const table = {
    id,
    title,
    standard,
    ...(edition !== undefined && { edition }),
    keys,
    columns: Object.fromEntries(columns),
  };
  return { table, coordinates };
}

/** The rows of a file, each to the table it names. */
function addRows(
  { value, say }: TableFile,
  heads: ReadonlyMap<string, TableHead>,
  rows: Map<string, TableRow[]>,
): void {
  const bases = objectOf(value, "bases");
  const blocks: readonly Json[] = isList(value["rows"]) ? value["rows"] : [];
  for (const [index, block] of blocks.entries()) {
    if (!isObject(block)) continue;
    const pointer = `/rows/${index}`;
    const id = textOf(block, "of") ?? "";
    const head = heads.get(id);
    const name = textOf(block, "basis") ?? "";
    const basis = basisOf(bases[name]);
    if (head === undefined) say(`${pointer}/of`, `there is no table "${id}"`, nearest(id, heads.keys()));
    if (!Object.hasOwn(bases, name))
      say(`${pointer}/basis`, `there is no basis "${name}"`, nearest(name, Object.keys(bases)));
    else if (basis === undefined)
      say(member("/bases", name), `the basis "${name}" lacks what its class states`, basisForms);
    if (head === undefined || basis === undefined) continue;
    const common = { ...objectOf(value, "with"), ...objectOf(block, "with") };
    const cells = isList(block["cells"]) ? block["cells"] : [];
    const known = rows.get(id) ?? [];
    for (const row of rowsOf({ head, basis, common, cells, pointer }, say)) {
      const other = known.find((one) => meet(one, row));
      if (other !== undefined)
        say(
          pointer,
          `table "${id}" has two rows for ${keysText(row)}`,
          `keep one of them: the other is for ${keysText(other)}`,
        );
      known.push(row);
    }
  }
}

const nearest = (name: string, known: Iterable<string>): string => {
  const all = [...known];
  const near = nearestName(name, all);
  return near === undefined ? `there are ${all.join(", ")}` : `write "${near}"`;
};

const basisForms =
  "write document (and clause) of published, document and part of excerpt seen, what of common practice, document (and topic) of from memory, from of derived, reason of own choice";

/** A basis as the schema has it, if it states what its class needs. */
function basisOf(value: Json | undefined): Basis | undefined {
  if (!isObject(value)) return undefined;
  const text = (name: string) => textOf(value, name) ?? "";
  const optional = (name: string) => (textOf(value, name) === undefined ? {} : { [name]: text(name) });
  const document = text("document");
  switch (value["class"]) {
    case "published":
      return document === ""
        ? undefined
        : { class: "published", document, ...optional("edition"), ...optional("clause") };
    case "excerpt seen":
      return document === "" || text("part") === ""
        ? undefined
        : { class: "excerpt seen", document, part: text("part"), ...optional("edition") };
    case "common practice":
      return text("what") === "" ? undefined : { class: "common practice", what: text("what") };
    case "from memory":
      return document === ""
        ? undefined
        : { class: "from memory", document, ...optional("edition"), ...optional("topic") };
    case "derived":
      return text("from") === "" ? undefined : { class: "derived", from: text("from") };
    case "own choice":
      return text("reason") === "" ? undefined : { class: "own choice", reason: text("reason") };
    default:
      return undefined;
  }
}

/** The table with its rows. Where it names no standard, its rows do. */
function complete(table: Omit<Table, "rows">, rows: readonly TableRow[]): Table {
  const named = ({ keys }: TableRow) =>
    ["standard", "edition"].flatMap((key) => (typeof keys[key] === "string" ? [keys[key]] : [])).join(":");
  const standard = table.standard === "" ? [...new Set(rows.map(named))].join(", ") : table.standard;
  return { ...table, standard, rows };
}
