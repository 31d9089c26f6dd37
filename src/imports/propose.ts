import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { columnName } from "../sheets/addresses.ts";
import type { Cell, Sheet, Workbook } from "../sheets/cells.ts";
import { textOf } from "./cell-value.ts";
import type { ImportFault } from "./faults.ts";
import { fieldOfHeading, namedFields, type NamedField } from "./field-names.ts";
import { fieldPath, isPathFault } from "./field-path.ts";
import { unknownHint } from "./matched.ts";
import { kindOfOwn, ownMaps } from "./own-maps.ts";
import { tableOf, type Table } from "./table.ts";
import { sheetFields } from "./view.ts";

/** Maps as they would be written for sheets that have none, and what a person has to settle. */
export interface Proposal {
  readonly maps: readonly JsonObject[];
  /** They are sheets of ours, which need no map of their own. */
  readonly own: boolean;
  readonly faults: readonly ImportFault[];
  /** Headings that nobody knows; where the maps can be used, comparing by them says the same. */
  readonly unknown: readonly ImportFault[];
  /** What was concluded, and from which cell. */
  readonly grounds: readonly string[];
}

/** Kinds that somebody named: one for all rows, or by sheet. */
export interface WantedKinds {
  readonly all?: Kind;
  readonly bySheet: ReadonlyMap<string, Kind>;
}

/** Rows among which the headings are looked for. */
const headRows = 30;

/** Proposes the maps of a workbook: what its headings name is matched, what its cells prove is declared, the rest is left open. */
export function propose(
  workbook: Workbook,
  kinds: ReadonlyMap<string, Kind>,
  { all: wanted, bySheet }: WantedKinds,
): Proposal {
  const own = kindOfOwn(workbook, kinds);
  if (own !== undefined && bySheet.size === 0 && (wanted === undefined || wanted === own))
    return { maps: ownMaps(own, workbook), own: true, faults: [], unknown: [], grounds: [] };
  const candidates = wanted === undefined ? [...kinds.values()].filter(({ derived }) => !derived) : [wanted];
  const sheets = workbook.sheets.filter(({ hidden, rows }) => !hidden && rows.length > 0);
  const all = sheets.map((sheet) => {
    const named = bySheet.get(sheet.name);
    return proposeSheet(sheet, workbook, named === undefined ? candidates : [named], sheets.length > 1);
  });
  const maps = all.flatMap(({ maps: one }) => one);
  const faults = all.flatMap((one) => one.faults);
  // Of several sheets those that fit no kind are passed over; of one sheet, or of none that fits, it is said.
  const said = maps.length > 0 ? faults.filter(({ message }) => !message.startsWith(noKind)) : faults;
  return {
    maps,
    own: false,
    faults: sheets.length === 0 ? [{ sheet: "", message: "the file holds no rows", hint: "" }] : said,
    unknown: all.flatMap(({ unknown }) => unknown),
    grounds: all.flatMap(({ grounds }) => grounds),
  };
}

/** Of the headings of a sheet whose kind nobody named, so many are to be known: two words in common prove nothing of a long one. */
const knownShare = 0.4;

const noKind = "which kind its rows are";

interface Scored {
  readonly kind: Kind;
  readonly table: Table;
  readonly head: number;
  readonly score: number;
}

function proposeSheet(sheet: Sheet, workbook: Workbook, kinds: readonly Kind[], named: boolean): Proposal {
  const scored = kinds.map((kind) => bestHead(sheet, kind)).sort((a, b) => b.score - a.score);
  const [best, next] = scored;
  const isClear =
    best !== undefined &&
    (kinds.length === 1 ||
      (best.score >= Math.max(2, knownShare * best.table.columns.length) && best.score > (next?.score ?? 0)));
  if (!isClear) {
    const likely = scored.filter(({ score }) => score > 0 && score === best?.score).map(({ kind }) => kind.name);
    return {
      maps: [],
      own: false,
      faults: [
        {
          sheet: sheet.name,
          message: `${noKind} cannot be told from its headings`,
          hint: `name it with --kind${likely.length > 0 && likely.length <= 6 ? `: ${likely.join(", ")}` : ", such as --kind weld-log; `explain` lists the kinds"}`,
        },
      ],
      unknown: [],
      grounds: [],
    };
  }
  const { kind, table, head } = best;
  const fields = sheetFields(kind);
  const known = namedFields(fields);
  const faults: ImportFault[] = [];
  const unknown: ImportFault[] = [];
  const columns: [string, JsonObject][] = [];
  const paths = new Map<number, string>();
  const taken = new Map<string, string>();
  let id: string | undefined;
  for (const column of table.columns) {
    const match = fieldOfHeading(column.name, known);
    const at = { sheet: sheet.name, row: head, column: columnName(column.column), heading: column.text };
    if (match !== undefined && "path" in match && match.path === "id") {
      id = `{${column.key}}`;
      continue;
    }
    if (match !== undefined && "several" in match)
      faults.push({
        ...at,
        message: `"${column.key}" may be ${match.several.join(" or ")}`,
        hint: "say in the map which is meant",
      });
    const path = match !== undefined && "path" in match ? match.path : undefined;
    const before = path === undefined || path.endsWith("[]") ? undefined : taken.get(path);
    if (path !== undefined && before !== undefined)
      faults.push({
        ...at,
        message: `"${column.key}" and "${before}" both name ${path}`,
        hint: "say in the map where each goes",
      });
    const to = before === undefined ? (path ?? "") : "";
    if (match === undefined)
      unknown.push({
        ...at,
        message: `the heading "${column.key}" is not known`,
        hint: unknownHint(column.name, fields),
      });
    if (to !== "") {
      taken.set(to, column.key);
      paths.set(column.column, to);
    }
    columns.push([column.key, { to }]);
  }
  const lists = [...new Set([...paths.values()].flatMap((path) => /^(.*)\[\]\./.exec(path)?.[1] ?? []))];
  const reading = readingOf(table, paths, kind);
  return {
    own: false,
    maps: [
      {
        kind: kind.name,
        ...(named && workbook.form === "xlsx" && { sheet: sheet.name }),
        head,
        ...(id !== undefined && { id }),
        ...(lists.length > 0 && { group: lists }),
        ...reading.declared,
        columns: Object.fromEntries(columns),
      },
    ],
    faults,
    unknown,
    grounds: reading.grounds,
  };
}

/** The row that reads most like headings of a kind; where none does, the first that is nearly as wide as the widest. */
function bestHead(sheet: Sheet, kind: Kind): Scored {
  const known = namedFields(sheetFields(kind));
  const rows = sheet.rows.slice(0, headRows);
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const first = (rows.find(({ cells }) => cells.length >= 0.7 * width) ?? rows[0])?.row ?? 1;
  let best: Scored = { kind, table: tableOf(sheet, first), head: first, score: 0 };
  for (const { row } of rows) {
    const table = tableOf(sheet, row);
    const score = table.columns.filter(({ name }) => isMatch(name, known)).length;
    if (score > best.score) best = { kind, table, head: row, score };
  }
  return best;
}

function isMatch(name: string, known: readonly NamedField[]): boolean {
  const match = fieldOfHeading(name, known);
  return match !== undefined && "path" in match;
}

const comma = /^[<>]?-?(0,\d+|\d+,\d{1,2}|\d+,\d{4,}|\d{4,},\d+)$/;
const point = /^[<>]?-?(0\.\d+|\d+\.\d{1,2}|\d+\.\d{4,}|\d{4,}\.\d+)$/;

/** What the cells themselves prove: a decimal sign that can part no thousands, a day beyond the twelfth. */
function readingOf(
  { sheet, rows }: Table,
  paths: ReadonlyMap<number, string>,
  kind: Kind,
): { readonly declared: JsonObject; readonly grounds: readonly string[] } {
  const fields = sheetFields(kind);
  const types = new Map(
    [...paths].flatMap(([column, path]) => {
      const found = fieldPath(path, fields, kind.name);
      return isPathFault(found) ? [] : [[column, found.field.type] as const];
    }),
  );
  const proofs = new Map<string, Map<string, Cell>>();
  const prove = (name: string, value: string, cell: Cell) => {
    const known = proofs.get(name) ?? new Map<string, Cell>();
    proofs.set(name, known);
    if (!known.has(value)) known.set(value, cell);
  };
  for (const { cells } of rows)
    for (const cell of cells) {
      if (cell.type !== "text") continue;
      const text = textOf(cell);
      const type = types.get(cell.column);
      if (type === "quantity") {
        const number = text.replace(/\s*[^\d.,]+$/u, "");
        if (comma.test(number)) prove("decimal", ",", cell);
        if (point.test(number)) prove("decimal", ".", cell);
      } else if (type === "date") {
        const [, a = "", b = "", c = ""] = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})\b/.exec(text) ?? [];
        if (a.length === 4) continue;
        if (c.length === 4 && Number(a) > 12 && Number(b) <= 12) prove("dates", "day-month-year", cell);
        if (c.length === 4 && Number(b) > 12 && Number(a) <= 12) prove("dates", "month-day-year", cell);
      }
    }
  const sure = [...proofs].flatMap(([name, values]) => {
    const [one, ...more] = values;
    return one === undefined || more.length > 0 ? [] : [{ name, value: one[0], cell: one[1] }];
  });
  return {
    declared: Object.fromEntries(sure.map(({ name, value }) => [name, value])),
    grounds: sure.map(
      ({ name, value, cell }) =>
        `"${name}": "${value}", because of "${textOf(cell)}" in ${sheet.name}, row ${cell.row}, column ${columnName(cell.column)}`,
    ),
  };
}
