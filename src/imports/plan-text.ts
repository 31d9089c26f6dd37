import { isList, type Json } from "../model/json.ts";
import { grouped } from "../model/grouped.ts";
import { rowWords, sheetWords } from "../model/imported.ts";
import type { Kind } from "../model/kind.ts";
import { placeWords } from "../model/words.ts";
import { stablePath } from "../model/stable.ts";
import type { ImportFault } from "./faults.ts";
import type { Change } from "./overlay.ts";
import type { ImportPlan, PlannedRecord } from "./import-plan.ts";
import { said } from "./said.ts";

/** A fault of a sheet at its place: "weld-log.xlsx, Shell, row 14, column C “Thickness”: …". */
export function faultText(file: string, { sheet, row, column, heading, message, hint }: ImportFault): string {
  const place = [
    file,
    ...(sheet === "" || sheet === file.replace(/\.csv$/i, "") ? [] : [sheet]),
    ...(row === undefined ? [] : [`row ${row}`]),
    ...(column === undefined && heading === undefined
      ? []
      : [
          [
            ...(column === undefined ? [] : [`column ${column}`]),
            ...(heading === undefined ? [] : [`"${heading}"`]),
          ].join(" "),
        ]),
  ];
  return `${place.join(", ")}: ${message}${hint === "" ? "" : `\n  hint   ${hint}`}`;
}

/** What would become of the rows, one line for each record, and below it what changes. */
export function planText(plan: ImportPlan, file: string, kinds: ReadonlyMap<string, Kind>): string {
  const lines: string[] = [];
  const groups = [
    ["new", "new"],
    ["changed", "changed"],
    ["conflict", "conflict"],
  ] as const;
  for (const [state, word] of groups)
    for (const record of plan.records.filter((one) => one.state === state)) {
      lines.push(`${word.padEnd(10)} ${placeOf(record)}  ${recordName(record)}`);
      if (state !== "new")
        for (const change of record.changes) lines.push(`             ${changeText(record, change, kinds)}`);
      for (const reason of record.conflicts) lines.push(`             ${reason}`);
      lines.push(...leftLines(record));
    }
  const same = plan.records.filter(({ state }) => state === "unchanged");
  for (const [sheet, rows] of bySheet(same)) lines.push(`unchanged  ${sheet}${rowWords(rows)}`);
  for (const record of same)
    if (record.left.length > 0) lines.push(`             ${recordName(record)}`, ...leftLines(record));
  for (const record of plan.gone)
    lines.push(
      `gone       ${record.kind} ${record.id}, read before from ${sheetWords(record.value["imported"]) ?? file}: no row is about it any more; it stays in the book`,
    );
  if (plan.nameless.length > 0)
    lines.push(
      `not known  what is gone from the sheet: ${plan.nameless.map(({ sheet, rows }) => (rows.length === 0 ? `${sheet} is not read` : `the id of ${sheet}, ${rowWords(rows)}, cannot be read`)).join("; ")}`,
    );
  for (const { sheet, rows, why } of plan.skipped) lines.push(`left out   ${sheet}, ${rowWords(rows)}: ${why}`);
  for (const { sheet, row, column, message } of plan.notes)
    lines.push(
      `note       ${[sheet, ...(row === undefined ? [] : [`row ${row}`]), ...(column === undefined ? [] : [`column ${column}`])].join(", ")}: ${message}`,
    );
  return lines.map((line) => `${line}\n`).join("");
}

const recordName = ({ kind, id }: PlannedRecord) => `${kind.name} ${id}`;
const placeOf = ({ sheet, rows }: PlannedRecord) => `${sheet}, ${rowWords(rows)}`;

const leftLines = ({ left }: PlannedRecord) =>
  left.length === 0
    ? []
    : [
        `             no longer in the sheet, stays in the record: ${left.slice(0, 12).join(", ")}${left.length > 12 ? ` and ${left.length - 12} more` : ""}`,
      ];

function bySheet(records: readonly PlannedRecord[]): readonly (readonly [string, readonly number[]])[] {
  const found = grouped(records, ({ sheet }) => `${sheet}, `);
  return [...found].map(([sheet, own]) => [sheet, own.flatMap(({ rows }) => rows)]);
}

/** "current of run root: 150 A becomes 155 A". */
function changeText(
  record: PlannedRecord,
  { pointer, before, after }: Change,
  kinds: ReadonlyMap<string, Kind>,
): string {
  const { kind, id, value } = record;
  const words = placeWords(kinds, { kind: kind.name, id, value }, pointer);
  const inside = words.short.slice(id.length).replace(/^, /, "");
  const name = [words.field, inside].filter((one) => one !== "").join(" of ") || stablePath(kind, value, pointer);
  return before === undefined
    ? `${name}: ${shown(after)}, where nothing stood`
    : `${name}: ${shown(before)} becomes ${shown(after)}`;
}

const shown = (value: Json): string => (isList(value) ? value.map(said).join("; ") : said(value));

/** What became of conflicts: nothing is written yet, they were left as they are, or they were written over. */
export type Conflicts = "shown" | "left" | "written over";

const conflictWords: Readonly<Record<Conflicts, string>> = {
  shown: "",
  left: ", not written",
  "written over": ", written over",
};

/** What was found, in one sentence. */
export function planSentence(plan: ImportPlan, conflicts: Conflicts): string {
  const count = (state: PlannedRecord["state"]) => plan.records.filter((record) => record.state === state).length;
  // A row or a value that went out of a record is as easily lost as a record, and stays just so.
  const partly = plan.records.filter(({ left }) => left.length > 0).length;
  return [
    `${plan.rows} ${plan.rows === 1 ? "row" : "rows"} read`,
    `${count("new")} new`,
    `${count("changed")} changed`,
    `${count("unchanged")} unchanged`,
    `${count("conflict")} ${count("conflict") === 1 ? "conflict" : "conflicts"}${count("conflict") === 0 ? "" : conflictWords[conflicts]}`,
    plan.nameless.length > 0
      ? "what is no longer in the sheet cannot be told"
      : `${plan.gone.length} no longer in the sheet`,
    ...(partly === 0 ? [] : [`${partly} with values that are no longer in the sheet`]),
    `${plan.faults.length} that cannot be read`,
  ].join(", ");
}

/** What was written to a file: "1 new, 2 changed; of 3 unchanged only where they stand in the sheet is remembered". */
export function writtenWords(records: readonly PlannedRecord[]): string {
  const count = (state: PlannedRecord["state"]) => records.filter((record) => record.state === state).length;
  const [added, changed, over, same] = [count("new"), count("changed"), count("conflict"), count("unchanged")];
  const values = [
    ...(added > 0 ? [`${added} new`] : []),
    ...(changed > 0 ? [`${changed} changed`] : []),
    ...(over > 0 ? [`${over} written over`] : []),
  ].join(", ");
  const remembered =
    same === 0
      ? ""
      : `of ${same} unchanged ${same === 1 ? "record" : "records"} only the file and row it was read from`;
  return [values, remembered].filter((one) => one !== "").join("; ");
}

/** The plan for programs. */
export function planJson(plan: ImportPlan) {
  return {
    rows: plan.rows,
    records: plan.records.map(({ kind, id, sheet, rows, state, changes, conflicts, left, value }) => ({
      kind: kind.name,
      id,
      sheet,
      rows,
      state,
      changes: changes.map(({ pointer, before, after, at }) => ({
        pointer,
        before: before ?? null,
        after,
        row: at.row,
        column: at.column ?? null,
        heading: at.heading ?? null,
      })),
      conflicts,
      left,
      ...(state === "new" && { value }),
    })),
    gone: plan.gone.map(({ kind, id, file }) => ({ kind, id, file })),
    nameless: plan.nameless,
    skipped: plan.skipped,
    faults: plan.faults,
    notes: plan.notes,
  };
}
