import { atPointer } from "../model/json.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import type { Graph } from "../model/graph.ts";
import type { BookRecord } from "../model/record.ts";
import { addressOf } from "../model/record.ts";
import type { Table } from "../model/table.ts";
import { ownRows, textOf as text } from "./own-rows.ts";
import { keyOf } from "../model/finding-key.ts";
import { finderOf, newFinding, spotIn } from "../model/new-finding.ts";

const basis = ownChoice("a table checked by a named person replaces the shipped table of its standard whole");

export const tableRules = [
  {
    id: "reference-table-form",
    title: "A reference table has the keys and columns of the table it replaces",
    severity: "nonconformity",
    basis,
    reads: [
      {
        kinds: ["reference-table"],
        paths: [
          "table",
          "standard",
          "edition",
          "rows[].cells[].name",
          "rows[].cells[].value",
          "rows[].cells[].points[].values[].name",
          "rows[].cells[].points[].values[].value",
        ],
      },
    ],
  },
  { id: "reference-table-single", title: "One edition of a table is entered once", severity: "nonconformity", basis },
] as const satisfies readonly BuiltIn[];

export interface Tables {
  readonly tables: ReadonlyMap<string, Table>;
  /** Records that replace a table, by the table's name. */
  readonly own: ReadonlyMap<string, readonly BookRecord[]>;
  readonly findings: readonly Finding[];
}

/** Tables in force: the shipped ones, each replaced whole by the book's own `reference-table` record, if there is one. */
export function tablesOf(graph: Graph, shipped: readonly Table[]): Tables {
  const tables = new Map(shipped.map((table) => [table.id, table]));
  const own = new Map<string, BookRecord[]>();
  const findings: Finding[] = [];
  for (const record of graph.byKind.get("reference-table")?.values() ?? []) {
    const id = text(record.value["table"]);
    const table = shipped.find((one) => one.id === id);
    if (table === undefined) {
      findings.push(
        about(
          record,
          "/table",
          "reference-table-form",
          `there is no table "${id}"`,
          `the tables are ${shipped.map((one) => `"${one.id}"`).join(", ")}`,
        ),
      );
      continue;
    }
    const before = own.get(id)?.[0];
    own.set(id, [...(own.get(id) ?? []), record]);
    if (before !== undefined) {
      const editions = `edition ${text(before.value["edition"])} and edition ${text(record.value["edition"])}`;
      findings.push(
        about(
          record,
          "/table",
          "reference-table-single",
          `table "${id}" is entered twice`,
          `${before.id} holds it too: ${editions}`,
          before.id,
          editions,
        ),
      );
      continue;
    }
    const rows = ownRows(record, table);
    if (typeof rows === "string") findings.push(about(record, "/rows", "reference-table-form", rows, wordsOf(table)));
    else
      tables.set(id, {
        ...table,
        rows,
        standard: text(record.value["standard"]),
        edition: text(record.value["edition"]),
      });
  }
  return { tables, own, findings };
}

const listed = (names: readonly string[]) => names.map((name) => `"${name}"`).join(", ");

const wordsOf = ({ id, keys, columns }: Table) =>
  `table "${id}" has the keys ${listed(keys.map(({ name }) => name))} and the columns ${listed(Object.keys(columns))}`;

function about(
  record: BookRecord,
  pointer: string,
  rule: (typeof tableRules)[number]["id"],
  message: string,
  why: string,
  ...others: readonly string[]
): Finding {
  return newFinding(finderOf(tableRules, rule), spotIn(record, pointer), {
    key: keyOf(rule, record, pointer.slice(1)),
    message,
    why,
    hint: "correct the record against the standard, and have it checked by a second person",
    owner: "design",
    about: JSON.stringify([record.value["table"] ?? null, atPointer(record.value, pointer) ?? null, ...others]),
    accuses: [addressOf(record, pointer)],
  });
}
