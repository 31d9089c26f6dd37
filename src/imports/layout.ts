import { grouped } from "../model/grouped.ts";
import type { Field, Kind } from "../model/kind.ts";
import { oneOf } from "../model/words.ts";
import { sheetFields } from "./view.ts";

/** The sheets a kind is written to: one of records, one more for each list of rows, keyed by id and row names. */
export interface SheetLayout {
  /** Of the tab. */
  readonly name: string;
  /** Path of the list; none of the sheet of records. */
  readonly list?: string;
  readonly columns: readonly LayoutColumn[];
}

export interface LayoutColumn {
  /** Without its unit. */
  readonly heading: string;
  /** Where it goes: the path of a map. */
  readonly path: string;
  /** The field, of a list of plain values its item; of `rows[]`, which names a row, the list. */
  readonly field: Field;
  readonly description: string;
}

/** Parts several values in one cell. */
export const splitSign = ";";

const longestName = 31;
/** Names of tabs that spreadsheet programs keep for themselves, and that of our own lists to choose from. */
const reserved = ["history", "choices"];

interface Found {
  readonly path: string;
  readonly field: Field;
  readonly title: string;
  readonly description: string;
}

/** How the records of a kind stand in sheets. Headings are titles; where two are alike, their paths. */
export function layoutOf(kind: Kind): readonly SheetLayout[] {
  const fields = sheetFields(kind);
  const own: Found[] = [];
  const lists: { readonly path: string; readonly columns: Found[] }[] = [];
  const walk = (
    inner: ReadonlyMap<string, Field>,
    prefix: string,
    into: Found[],
    keys: readonly Found[],
    of = "",
  ): void => {
    for (const field of inner.values()) {
      const path = `${prefix}${field.name}`;
      const { title, description } = field;
      if (field.type === "object") walk(field.fields ?? new Map<string, Field>(), `${path}.`, into, keys, `${title}: `);
      else if (field.type !== "list") into.push({ path, field, title: of + title, description });
      else if (field.item?.type !== "object")
        into.push({ path: `${path}[]`, field: field.item ?? field, title: of + title, description });
      else {
        const columns: Found[] = [...keys];
        lists.push({ path, columns });
        const key = {
          path: `${path}[]`,
          field,
          title: upper(oneOf(field)),
          description: `Which row of: ${description}`,
        };
        walk(field.item.fields ?? new Map<string, Field>(), `${path}[].`, columns, [...keys, key]);
      }
    }
  };
  const id = fields.get("id");
  walk(
    fields,
    "",
    own,
    id === undefined ? [] : [{ path: "id", field: id, title: id.title, description: id.description }],
  );
  const names = new Set(reserved);
  return [
    { name: tab(kind.name, names), columns: headed(own) },
    ...lists
      // Of a list of lists the rows stand in the sheet of the inner one.
      .filter(({ path, columns }) => columns.some((column) => column.path.startsWith(`${path}[].`)))
      .map(({ path, columns }) => ({
        name: tab(path.replaceAll("[]", ""), names),
        list: path,
        columns: headed(columns),
      })),
  ];
}

function headed(columns: readonly Found[]): readonly LayoutColumn[] {
  const byTitle = grouped(columns, ({ title }) => title.toLowerCase());
  return columns.map(({ path, field, title, description }) => ({
    path,
    field,
    description,
    heading: (byTitle.get(title.toLowerCase())?.length ?? 0) > 1 ? path : title,
  }));
}

/** A name of a tab: at most 31 signs, each once. */
function tab(wanted: string, taken: Set<string>): string {
  let name = wanted.slice(0, longestName);
  for (let n = 2; taken.has(name.toLowerCase()); n++) name = `${wanted.slice(0, longestName - 3)}~${n}`;
  taken.add(name.toLowerCase());
  return name;
}

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
