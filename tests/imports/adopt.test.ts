import { expect, test } from "vitest";
import { linkChoices } from "../../src/imports/choices.ts";
import { owedRows } from "../../src/imports/owed-rows.ts";
import { planImport } from "../../src/imports/plan.ts";
import { propose } from "../../src/imports/propose.ts";
import { mapSchema, readMaps } from "../../src/imports/read-maps.ts";
import { toSheets } from "../../src/imports/to-sheets.ts";
import { adoptedIn } from "../../src/model/adopted.ts";
import { figuresOf } from "../../src/model/figures.ts";
import type { BookRecord } from "../../src/model/record.ts";
import type { SheetToWrite } from "../../src/sheets/cells.ts";
import { asWritten } from "./tables.ts";
import { demoBook, judgedWith, readOnce } from "../support/demo-book.ts";

const read = readOnce(demoBook);
const kinds = read.kinds;
const kind = kinds.get("calculation-sheet");
if (kind === undefined) throw new Error("no kind of sheets");
const others = read.records.filter((record) => record.kind !== kind.name);
/** The receiver's book as its maker would have it who calculates nothing himself. */
const bare = judgedWith(demoBook, others);
const rows = owedRows(kind, bare.missing, others, kinds).missing.filter(({ value }) => value["adopts"] !== undefined);
const sheets = toSheets(kind, rows, linkChoices(others, kinds));

const planOf = (written: readonly SheetToWrite[]) => {
  const workbook = asWritten(written);
  const { maps } = readMaps(
    "imports/x.json",
    JSON.stringify(propose(workbook, kinds, { bySheet: new Map() }).maps),
    kinds,
    mapSchema("schemas"),
  );
  return planImport({ workbook, file: "x.xlsx", sha256: "0".repeat(64), maps, mapName: "x", records: others, kinds });
};

/** What a person types: the same name and day down two columns. */
function signed(all: readonly SheetToWrite[], person: string, date: string): readonly SheetToWrite[] {
  return all.map((one) => {
    if (one.name !== "signatures") return one;
    const at = (heading: string) => one.columns.findIndex((column) => column.heading === heading);
    return {
      ...one,
      rows: one.rows.map((row) => row.with(at("Person"), person).with(at("Date"), date)),
    };
  });
}

test("one row for each calculation that the register asks a sheet for, with the digest to sign for", () => {
  expect(rows).toHaveLength(11);
  for (const { value } of rows) {
    const asked = bare.computed.find(
      ({ calculation, subject }) =>
        calculation.id === value["calculation"] && `${subject.kind}:${subject.id}` === value["subject"],
    );
    expect(asked?.state === "done" ? figuresOf(bare.definitions.kinds, asked) : undefined).toBe(value["adopts"]);
    expect(value["signatures"]).toEqual([{ role: "design" }]);
  }
});

test("nothing is adopted by itself: without a name the workbook is not written", () => {
  const faults = planOf(sheets).faults.map(({ message }) => message);
  expect(faults).toHaveLength(11);
  expect(faults[0]).toBe('"signatures[design]" has no "person"');
});

test("a name and a day, filled down, adopt them all", () => {
  const plan = planOf(signed(sheets, "R1", "2026-03-02"));
  expect(plan.faults).toEqual([]);
  const made = plan.records.map(({ id, value }): BookRecord => ({
    kind: kind.name,
    id,
    file: "sheets/x/calculation-sheet.json",
    pointer: `/records/${id}`,
    value,
    faulty: false,
  }));
  const adopted = judgedWith(demoBook, [...others, ...made]);
  expect(adoptedIn(adopted)).toEqual({ calculations: 11, unsigned: 0 });
  // What is left are links of the plan to the sheets that are gone, and their papers, which nobody names.
  const left = adopted.findings.filter(({ message }) => !/CAL-\d\d is named by inspection step/.test(message));
  expect(left.map(({ key }) => key)).toEqual(["record-used|book|originals"]);
});
