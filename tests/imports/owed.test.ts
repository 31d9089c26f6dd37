import { expect, test } from "vitest";
import { owedRows } from "../../src/imports/owed-rows.ts";
import { linkChoices } from "../../src/imports/choices.ts";
import { toSheets } from "../../src/imports/to-sheets.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";

const read = readBook("demo-data/air-receiver-interim/book");
const judged = judgeBook(read);
const kindOf = (name: string) => {
  const kind = read.kinds.get(name);
  if (kind === undefined) throw new Error(name);
  return kind;
};
const owed = (name: string) => owedRows(kindOf(name), judged.missing, read.records, read.kinds);

test("each joint without a log is a row that names it", () => {
  const logged = new Set(read.records.filter(({ kind }) => kind === "weld-log").map(({ value }) => value["joint"]));
  const without = read.records.filter(({ kind, id }) => kind === "joint" && !logged.has(id)).map(({ id }) => id);
  expect(without.length).toBeGreaterThan(3);
  const rows = owed("weld-log").filter(({ value }) => value["joint"] !== undefined && value["fitUp"] === undefined);
  expect(rows.map(({ value }) => value["joint"])).toEqual(without);
  expect(rows[0]?.value).toEqual({ id: `WL-${without[0]}`, joint: without[0] });
});

test("what a thing is asked for by stands in the row too, in the list it belongs to", () => {
  const rows = owed("ndt-report").filter(({ proposesId }) => proposesId);
  expect(rows.map(({ value }) => value)).toContainEqual({ id: "NR-C2-RT", method: "RT", rows: [{ joint: "C2" }] });
});

test("a record that links name is a row with its id; one that misses a field stands with all it states", () => {
  expect(owed("nameplate").map(({ value }) => value["id"])).toContain("NP-01");
  const steps = owed("inspection-step").map(({ value }) => value);
  expect(steps).toContainEqual(
    Object.fromEntries(
      Object.entries(read.records.find(({ id }) => id === "ITP-160")?.value ?? {}).filter(([name]) => name !== "kind"),
    ),
  );
});

test("what is known is marked, proposed ids are not, and links can be chosen", () => {
  const [records, runs] = toSheets(kindOf("weld-log"), owed("weld-log"), linkChoices(read.records, read.kinds));
  const joint = records?.columns.findIndex(({ heading }) => heading === "Joint") ?? -1;
  expect(records?.rows[0]?.[0]).toBe("WL-C2");
  expect(records?.rows[0]?.[joint]).toEqual({ text: "C2", known: true });
  expect(records?.columns[joint]?.choices).toContain("C2");
  expect(records?.columns[joint]?.note).not.toBe("");
  expect(runs?.columns.find(({ heading }) => heading === "Layer")?.choices).toContain("root");
  expect(runs?.columns.some(({ heading }) => heading === "Current [A]")).toBe(true);
});
