import { citedKey } from "../../src/model/finding-key.ts";
import { describe, expect, test } from "vitest";
import { owedRows } from "../../src/imports/owed-rows.ts";
import { linkChoices } from "../../src/imports/choices.ts";
import { toSheets } from "../../src/imports/to-sheets.ts";
import { ownChoice } from "../../src/model/basis.ts";
import type { Missing, MissingPart } from "../../src/model/missing.ts";
import { addressOf } from "../../src/model/record.ts";
import { interimBook, judgedOnce, readOnce } from "../support/demo-book.ts";

const read = readOnce(interimBook);
const judged = judgedOnce(interimBook);
const kindOf = (name: string) => {
  const kind = read.kinds.get(name);
  if (kind === undefined) throw new Error(name);
  return kind;
};
const rowsFor = (name: string) => owedRows(kindOf(name), judged.missing, read.records, read.kinds);
const owed = (name: string) => {
  const { missing, incomplete } = rowsFor(name);
  return [...missing, ...incomplete];
};

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
  expect(rowsFor("inspection-step")).toMatchObject({ missing: [], lacks: ['date "done"'], named: [] });
  const steps = owed("inspection-step").map(({ value }) => value);
  expect(steps).toContainEqual(
    Object.fromEntries(
      Object.entries(read.records.find(({ id }) => id === "ITP-160")?.value ?? {}).filter(([name]) => name !== "kind"),
    ),
  );
});

test("what is known is marked, proposed ids are not, and links can be chosen", () => {
  const [records, ...lists] = toSheets(kindOf("weld-log"), owed("weld-log"), linkChoices(read.records, read.kinds));
  const runs = lists.find(({ columns }) => columns.some(({ heading }) => heading === "Layer"));
  const joint = records?.columns.findIndex(({ heading }) => heading === "Joint") ?? -1;
  expect(records?.rows[0]?.[0]).toEqual({ text: "WL-C2", known: true });
  const [reports] = toSheets(kindOf("ndt-report"), rowsFor("ndt-report").missing, () => []);
  expect(reports?.rows.map(([id]) => id)).toContain("NR-C2-RT");
  expect(records?.rows[0]?.[joint]).toEqual({ text: "C2", known: true });
  expect(records?.columns[joint]?.choices).toContain("C2");
  expect(records?.columns[joint]?.note).not.toBe("");
  expect(runs?.columns.find(({ heading }) => heading === "Layer")?.choices).toContain("root");
  expect(runs?.columns.some(({ heading }) => heading === "Current [A]")).toBe(true);
});

describe("sheets that links name", () => {
  const sheets = kindOf("calculation-sheet");
  const part = read.records.find(({ kind, id }) => kind === "part" && id === "P01") ?? null;
  const base: Omit<Missing, "kind" | "target" | "step" | "key" | "at"> = {
    absences: [],
    what: "calculation sheet",
    field: null,
    message: "",
    owner: "design",
    due: "design-approved",
    basis: ownChoice("of this test"),
    register: [],
    readers: [],
    became: { finding: citedKey("one") },
  };
  const named = (id: string, parts?: readonly MissingPart[]): Missing => {
    const target = addressOf({ kind: "calculation-sheet", id });
    const one = { ...base, key: citedKey(id), at: null, kind: sheets.name, target, step: "" };
    return parts === undefined ? one : { ...one, parts: [one, ...parts] };
  };
  const asked = (calculation: string): Missing => {
    const step = `<calculation-sheet:subject>[calculation="${calculation}"]`;
    return {
      ...base,
      key: citedKey(step),
      at: part && { record: part, pointer: "" },
      kind: sheets.name,
      target: null,
      step,
    };
  };
  const made = (...missing: readonly Missing[]) => owedRows(sheets, missing, [], read.kinds);
  const shell = { calculation: "cylindrical-shell", subject: "part:P01" };
  const stress = { calculation: "design-stress", subject: "part:P01" };

  test("the only one named is the only one that is asked for", () => {
    expect(made(named("CAL-05", [asked("cylindrical-shell")])).missing).toEqual([
      { value: { id: "CAL-05", ...shell }, known: true, proposesId: false },
    ]);
  });

  test("of several nobody says which is which: ids are proposed, and those that are named are told", () => {
    const rows = made(named("CAL-01"), named("CAL-05"), asked("cylindrical-shell"), asked("design-stress"));
    expect(rows.missing.map(({ value }) => value)).toEqual([
      { id: "CS-P01-CYLINDRICAL-SHELL", ...shell },
      { id: "CS-P01-DESIGN-STRESS", ...stress },
    ]);
    expect(rows.named).toEqual(["CAL-01", "CAL-05"]);
  });

  test("one that only a link asks for has a row with its id", () => {
    expect(made(named("CAL-01"), named("CAL-05"), asked("design-stress"))).toMatchObject({
      missing: [{ value: { id: "CAL-01" } }, { value: { id: "CAL-05" } }, { value: stress }],
      named: [],
    });
  });
});
