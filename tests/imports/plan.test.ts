import { describe, expect, test } from "vitest";
import { faultText, planSentence, planText } from "../../src/imports/plan-text.ts";
import { uncomparedBy } from "../../src/imports/uncompared.ts";
import type { ImportPlan } from "../../src/imports/import-plan.ts";
import { planImport } from "../../src/imports/plan.ts";
import { mapSchema, readMaps } from "../../src/imports/read-maps.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { linesByOriginal } from "../../src/model/comparison.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import type { Json, JsonObject } from "../../src/model/json.ts";
import { isObject } from "../../src/model/json.ts";
import type { BookRecord } from "../../src/model/record.ts";
import type { Workbook } from "../../src/sheets/cells.ts";
import { csv, day, number, sheet, workbook, type Given } from "./tables.ts";

const kinds = loadKinds(["schemas"]);
const schema = mapSchema("schemas");

function plan(book: Workbook, map: Json, records: readonly BookRecord[] = []): ImportPlan {
  const read = readMaps("imports/shop.json", JSON.stringify(map), kinds, schema);
  expect(read.faults).toEqual([]);
  return planImport({
    workbook: book,
    file: "shop.xlsx",
    sha256: "a".repeat(64),
    maps: read.maps,
    mapName: "shop",
    records,
    kinds,
  });
}

const faults = (made: ImportPlan) => made.faults.map((fault) => faultText("shop.xlsx", fault));

/** The records of a plan, as a book would hold them. */
const asBook = (made: ImportPlan, change: (value: JsonObject) => JsonObject = (value) => value): BookRecord[] =>
  made.records.map(({ kind, id, value }) => ({
    kind: kind.name,
    id,
    file: `sheets/shop/${kind.name}.json`,
    pointer: "/records/0",
    value: change(value),
    faulty: false,
  }));

const certificates = {
  kind: "material-certificate",
  head: 2,
  id: "CRT-{Zeugnis:3}",
  group: ["rows"],
  decimal: ",",
  dates: "day-month-year",
  columns: {
    Zeugnis: { to: "number", digits: "as shown" },
    Art: { to: "type" },
    vom: { to: "issued" },
    Schmelze: { to: "rows[].heat" },
    Dicke: { to: "rows[].thickness" },
    C: { to: 'rows[].chemistry[element="C"].value' },
    KV: { to: 'rows[].impact[test="KV"].values[]' },
    "KV (2)": { to: 'rows[].impact[test="KV"].values[]' },
  },
  set: { 'rows[].impact[test="KV"].temperature': "-20 °C", mill: "MILL-A" },
  ignore: ["Lager"],
  skip: { Zeugnis: ["Summe"] },
};
const heads = ["Zeugnis", "Art", "vom", "Schmelze", "Dicke [mm]", "C (%)", "KV [J]", "KV [J]", "Lager"];
const row = (...cells: readonly Given[]) => cells;
const shop = (...rows: readonly (readonly Given[])[]) =>
  workbook(sheet("Werkstoffe", [["Auftrag 300"], heads, ...rows]));
const twoRows = shop(
  row(number("12"), "3.1", day("2026-01-12", "12.01.2026"), "A84613", "8,0", number("0.140", "0.000"), "45", "48", "x"),
  row(number("12"), "3.1", "12.01.2026", "A84614", "10,0", "0,15", "", "", ""),
  row("Summe", "", "", "", "18,0", "", "", "", ""),
);

describe("a shop's own sheet of certificates", () => {
  test("a row with nothing beside what its id is made of is no record, and is said", () => {
    const { skip: _, ...map } = certificates;
    const made = plan(shop(row("12", "3.1"), row("Summe")), map);
    expect(faults(made)).toEqual([]);
    expect(made.records.map(({ id }) => id)).toEqual(["CRT-012"]);
    expect(made.skipped).toEqual([
      { sheet: "Werkstoffe", rows: [4], why: "nothing stands there beside what its id is made of" },
    ]);
    // Of a record the book has, such a row is a row about it.
    expect(plan(shop(row("12")), map, asBook(plan(shop(row("12", "3.1")), map))).skipped).toEqual([]);
  });

  test("two rows are one record, digits as they stand, decimal commas and dates as declared", () => {
    const made = plan(twoRows, certificates);
    expect(faults(made)).toEqual([]);
    expect(made.skipped).toEqual([{ sheet: "Werkstoffe", rows: [5], why: "as the map says" }]);
    const [record] = made.records;
    expect(record).toMatchObject({ id: "CRT-012", state: "new", rows: [3, 4] });
    expect(record?.value).toEqual({
      id: "CRT-012",
      number: "12",
      type: "3.1",
      mill: "MILL-A",
      issued: "2026-01-12",
      rows: [
        {
          heat: "A84613",
          thickness: "8.0 mm",
          chemistry: [{ element: "C", value: "0.140 %" }],
          impact: [{ test: "KV", temperature: "-20 °C", values: ["45 J", "48 J"] }],
        },
        { heat: "A84614", thickness: "10.0 mm", chemistry: [{ element: "C", value: "0.15 %" }] },
      ],
      imported: {
        file: "shop.xlsx",
        sha256: "a".repeat(64),
        sheet: "Werkstoffe",
        row: 3,
        rows: [3, 4],
        map: "shop",
        fields: expect.stringMatching(/^[0-9a-f]{16}$/) as unknown,
      },
    });
  });

  test("a changed file in which a row says the same leaves its values, and where it stands now is remembered", () => {
    const book = asBook(plan(twoRows, certificates));
    const moved: Workbook = {
      ...twoRows,
      sheets: twoRows.sheets.map((one) => ({
        ...one,
        rows: one.rows.map((row) => ({ ...row, row: row.row > 2 ? row.row + 4 : row.row })),
      })),
    };
    const [again] = plan(moved, certificates, book).records;
    expect([again?.state, again?.changes]).toEqual(["unchanged", []]);
    const { imported: before, ...values } = book[0]?.value ?? {};
    const { imported: after, ...same } = again?.value ?? {};
    expect(same).toEqual(values);
    expect(isObject(after) && after).toEqual({ ...(isObject(before) ? before : {}), row: 7, rows: [7, 8] });
  });

  test("again it is unchanged; a changed cell is shown with both values; a row that is gone is listed", () => {
    const book = asBook(plan(twoRows, certificates));
    expect(plan(twoRows, certificates, book).records.map(({ state }) => state)).toEqual(["unchanged"]);
    const changed = plan(
      shop(row(number("12"), "3.1", "12.01.2026", "A84613", "8,5", "0,140", "45", "48", "")),
      certificates,
      book,
    );
    const text = planText(changed, "shop.xlsx", kinds);
    expect(text).toContain("thickness of row A84613: 8.0 mm becomes 8.5 mm");
    expect(text).toContain("no longer in the sheet, stays in the record: Rows A84614");
    expect(changed.records[0]?.value["rows"]).toHaveLength(2);
    expect(planSentence(changed, "shown")).toContain(
      "0 no longer in the sheet, 1 with values that are no longer in the sheet, 0 that cannot be read",
    );
    const gone = plan(shop(row(number("13"), "3.1", "", "B1", "", "", "", "", "")), certificates, book);
    expect(gone.gone.map(({ id }) => id)).toEqual(["CRT-012"]);
  });

  test("a list whose rows nothing tells apart is the map's fault, said once for all rows and columns; the map may set their name", () => {
    const heats = csv("shop", [
      ["Zeugnis", "Schmelze", "ReH [MPa]", "Rm [MPa]"],
      ["1", "A1", "290", "450"],
      ["2", "A2", "291", "451"],
    ]);
    const map = {
      kind: "material-certificate",
      id: "CRT-{Zeugnis}",
      group: ["rows", "rows[].tensile"],
      columns: {
        Zeugnis: { to: "number" },
        Schmelze: { to: "rows[].heat" },
        ReH: { to: "rows[].tensile[].yieldStrength" },
        Rm: { to: "rows[].tensile[].tensileStrength" },
      },
    };
    expect(faults(plan(heats, map))).toEqual([
      'shop.xlsx, shop: no heading goes to "rows[].tensile[].test", which tells one row of tensile from another\n' +
        '  hint   say in the map which heading does; where all have one, set it there: "set": {"rows[].tensile[].test": "…"}',
    ]);
    const [shop] = heats.sheets;
    const both = workbook(...["ONE", "TWO"].map((name) => ({ ...(shop ?? sheet(name, [])), name })));
    const maps = ["ONE", "TWO"].map((name) => ({ ...map, sheet: name, id: `CRT-${name}-{Zeugnis}` }));
    expect(plan(both, maps).faults.map(({ sheet: of, row }) => [of, row])).toEqual([
      ["ONE", undefined],
      ["TWO", undefined],
    ]);
    const named = plan(heats, { ...map, set: { "rows[].tensile[].test": "1" } });
    expect(faults(named)).toEqual([]);
    expect(named.records.map(({ value }) => JSON.stringify(value["rows"]))).toEqual([
      expect.stringContaining('"tensile":[{"test":"1","yieldStrength":"290 MPa","tensileStrength":"450 MPa"}]'),
      expect.stringContaining('"tensile":[{"test":"1","yieldStrength":"291 MPa","tensileStrength":"451 MPa"}]'),
    ]);
  });

  test("a record whose row cannot be read whole is not gone; a row without an id leaves unknown what is", () => {
    const book = asBook(plan(twoRows, certificates));
    const faulty = plan(shop(row(number("12"), "3.1", "", "A84613", "thick", "", "", "", "")), certificates, book);
    expect([faulty.gone, faulty.nameless, faulty.faults.length]).toEqual([[], [], 1]);
    const unnamed = plan(shop(row("", "3.1", "", "B1", "8,0", "", "", "", "")), certificates, book);
    expect([unnamed.gone, unnamed.nameless]).toEqual([[], [{ sheet: "Werkstoffe", rows: [3] }]]);
    expect(planText(unnamed, "shop.xlsx", kinds)).toContain(
      "not known  what is gone from the sheet: the id of Werkstoffe, row 3, cannot be read",
    );
    expect(planSentence(unnamed, "shown")).toContain("what is no longer in the sheet cannot be told");
  });

  test("values that somebody answered for since are a conflict, and say why", () => {
    const made = plan(twoRows, certificates);
    const other = shop(row(number("12"), "3.2", "12.01.2026", "A84613", "8,0", "0,140", "45", "48", ""));
    const reasons = (change: (value: JsonObject) => JsonObject, ...more: readonly BookRecord[]) =>
      plan(other, certificates, [...asBook(made, change), ...more]).records.map(({ state, conflicts }) => [
        state,
        ...conflicts,
      ]);
    expect(reasons((value) => value)).toEqual([["changed"]]);
    expect(reasons((value) => ({ ...value, remarks: "seen" }))).toEqual([["changed"]]);
    expect(reasons((value) => ({ ...value, issued: "2026-01-13" }))).toEqual([
      ["conflict", "its values were changed by hand since they were imported"],
    ]);
    const scan: BookRecord = { kind: "original", id: "ORG-012", file: "o.json", pointer: "", value: {}, faulty: false };
    const hash = "a".repeat(64);
    const sourced = (value: JsonObject) => ({ ...value, source: { original: "ORG-012" } });
    const lines = linesByOriginal(asBook(made, sourced), kinds, originalsAmong([scan])).get("ORG-012") ?? [];
    const comparison = { enteredBy: ["P-01"], comparedBy: "P-02", date: "2026-02-01", sha256: hash, records: lines };
    const paper = { ...scan, value: { id: "ORG-012", sha256: hash, transcription: comparison } };
    expect(reasons(sourced, paper)).toEqual([
      ["conflict", "it was compared with original ORG-012 by P-02 on 2026-02-01"],
    ]);
    // What was compared once and changed since protects nothing.
    expect(reasons((value) => ({ ...sourced(value), pages: 3 }), paper)).toEqual([["changed"]]);
    expect(reasons((value) => ({ ...value, signatures: [{ role: "supplier", person: "P-03" }] }))).toEqual([
      ["conflict", "it was signed by P-03"],
    ]);
    const waiver: BookRecord = {
      kind: "waiver",
      id: "WV-01",
      file: "w.json",
      pointer: "",
      value: { id: "WV-01", answers: [{ finding: "missing|material-certificate:CRT-012|pages", digest: "0" }] },
      faulty: false,
    };
    expect(reasons((value) => value, waiver)).toEqual([["conflict", "an exception rests on it: waiver WV-01"]]);
    const book = [...asBook(made, sourced), paper];
    const gone = uncomparedBy(plan(other, certificates, book).records, book);
    expect(gone.map(({ original, value }) => [original.id, value?.["transcription"]])).toEqual([
      ["ORG-012", { enteredBy: ["P-01"] }],
    ]);
    const shelved = [...asBook(made, sourced), { ...paper, file: "shelves/shop/original/r-ORG-012.json" }];
    expect(uncomparedBy(plan(other, certificates, shelved).records, shelved).map(({ value }) => value)).toEqual([
      undefined,
    ]);
  });

  test("a typed record is filled up, and never changed without being told to", () => {
    const typed = (value: JsonObject): BookRecord[] => [
      {
        kind: "material-certificate",
        id: "CRT-012",
        file: "c.json",
        pointer: "",
        value: { id: "CRT-012", ...value },
        faulty: false,
      },
    ];
    expect(plan(twoRows, certificates, typed({ pages: 2 })).records[0]).toMatchObject({
      state: "changed",
      value: { pages: 2, type: "3.1" },
    });
    expect(plan(twoRows, certificates, typed({ type: "3.2" })).records[0]).toMatchObject({
      state: "conflict",
      conflicts: ["its values were typed, not imported"],
    });
  });

  test("a further column of the map is no change by hand", () => {
    const book = asBook(
      plan(twoRows, { ...certificates, columns: { ...certificates.columns, Dicke: { to: "rows[].width" } } }),
    );
    const again = plan(twoRows, certificates, book);
    expect(again.records.map(({ state }) => state)).toEqual(["conflict"]);
    const { Dicke: _thickness, ...without } = certificates.columns;
    const less = asBook(plan(twoRows, { ...certificates, columns: without, ignore: ["Lager", "Dicke [mm]"] }));
    expect(plan(twoRows, certificates, less).records.map(({ state }) => state)).toEqual(["changed"]);
  });
});

describe("what is wrong with a sheet is said at its cell", () => {
  test("each cell that cannot be read, in the order a person goes through them", () => {
    const made = plan(
      shop(
        row(number("12"), "3.1", "12.01.2026", number("771"), "8,0", "0,14", "", "", ""),
        row(number("13"), "3.1", number("46034"), "B2", "1.234", "0,14", "", "", ""),
        row("", "", "", "", "9,0", "", "", "", ""),
      ),
      certificates,
    );
    expect(faults(made).map((fault) => fault.split("\n")[0])).toEqual([
      'shop.xlsx, Werkstoffe, row 3, column D "Schmelze": the cell holds the number 771, where a text is expected: zeros before it and signs behind it would be lost',
      'shop.xlsx, Werkstoffe, row 4, column C "vom": the cell holds the number 46034, where a date is expected',
      'shop.xlsx, Werkstoffe, row 4, column E "Dicke [mm]": "1.234" is no number with "," as decimal sign, and none is declared to stand between thousands',
      'shop.xlsx, Werkstoffe, row 5: the row has values, but nothing stands under "Zeugnis", of which the id is made',
    ]);
  });
  test("unknown headings with the nearest field, missing ones with the nearest heading, columns without any", () => {
    const made = plan(
      workbook(sheet("W", [[], ["Zeugnis", "Grade", "", "Schmelse"], ["12", "P265GH", "lost", "A1"]])),
      { kind: "material-certificate", head: 2, id: "{Zeugnis}", columns: { Schmelze: { to: "rows[].heat" } } },
    );
    expect(faults(made)).toEqual([
      'shop.xlsx, W, row 2, "Schmelze": the heading "Schmelze" of the map is not in the sheet\n  hint   nearest heading: "Schmelse"',
      'shop.xlsx, W, row 2, column B "Grade": the heading "Grade" is not known\n  hint   nearest field: "rows[].grade"; say in the map where it goes ("to"), or name it under "ignore"',
      'shop.xlsx, W, row 2, column D "Schmelse": the heading "Schmelse" is not known\n  hint   say in the map where it goes ("to"), or name it under "ignore"',
      'shop.xlsx, W, row 3, column C: "lost" stands in a column without a heading\n  hint   give the column a heading, or remove what stands there',
    ]);
  });
  test("two rows of one id, texts that fold to one id, and rows that disagree", () => {
    const parts = { kind: "part", id: "{Pos}", columns: { Name: { to: "name" } } };
    const twice = plan(
      workbook(
        sheet("P", [
          ["Pos", "Name"],
          ["P 1", "Shell"],
          ["P/1", "End"],
          ["P 2", "A"],
          ["P 2", "B"],
        ]),
      ),
      parts,
    );
    expect(faults(twice).map((fault) => fault.split("\n")[0])).toEqual([
      'shop.xlsx, P, row 3: "P/1" and "P 1" of row 2 make one id, P-1',
      "shop.xlsx, P, row 5: row 4 is about P-2 too",
    ]);
    const disagree = plan(
      shop(
        row(number("12"), "3.1", "", "A1", "", "", "", "", ""),
        row(number("12"), "3.2", "", "A2", "", "", "", "", ""),
        row(number("12"), "", "", "A2", "", "", "", "", ""),
      ),
      certificates,
    );
    expect(faults(disagree).map((fault) => fault.split("\n")[0])).toEqual([
      'shop.xlsx, Werkstoffe, row 4, column B "Art": it says "3.2", where row 3, "Art" says "3.1" of the same record',
      'shop.xlsx, Werkstoffe, row 5, column D "Schmelze": "A2" of rows stands in two rows: row 4, "Schmelze" has it too',
    ]);
  });
  test("a sheet the file does not have, and a file of several", () => {
    const map = { kind: "part", sheet: "Teile", id: "{Pos}", columns: { Name: { to: "name" } } };
    expect(faults(plan(workbook(sheet("Teil", [["Pos"]])), map))).toEqual([
      'shop.xlsx, Teile: the file has no sheet of that name\n  hint   nearest: "Teil"',
    ]);
    const { sheet: _sheet, ...unnamed } = map;
    expect(faults(plan(workbook(sheet("A", [["Pos"]]), sheet("B", [["Pos"]])), unnamed))[0]).toMatch(
      /^shop.xlsx: the file has 2 sheets that hold anything/,
    );
  });
  test("texts of a CSV file that a spreadsheet made something else of", () => {
    const made = plan(
      csv("heats", [
        ["No", "Heat"],
        ["1", "1E5"],
        ["2", "3-Jan"],
        ["3", "00771"],
      ]),
      {
        kind: "material-certificate",
        id: "CRT-{No}",
        columns: { Heat: { to: "rows[].heat" } },
      },
    );
    expect(faults(made)).toHaveLength(2);
    expect(made.records.map(({ id, value }) => [id, isObject(value) ? value["rows"] : null])).toEqual([
      ["CRT-3", [{ heat: "00771" }]],
    ]);
  });
});

describe("a map that does not fit is refused at its place", () => {
  const said = (text: string) =>
    readMaps("imports/shop.json", text, kinds, schema).faults.map(
      ({ line, column, message, hint }) => `${line}:${column} ${message}; ${hint}`,
    );
  test.each([
    [
      '{"kind": "weld-logs", "id": "{A}", "columns": {}}',
      '1:10 there is no kind "weld-logs" to import; nearest: "weld-log"',
    ],
    ['{"kind": "heat", "id": "{A}", "columns": {}}', '1:10 there is no kind "heat" to import'],
    [
      '{"kind": "part", "id": "{A}",\n "columns": {"B": {"to": "nominalThicknes"}}}',
      '2:26 part has no field "nominalThicknes"; nearest: "nominalThickness"',
    ],
    [
      '{"kind": "weld-log", "id": "{A}", "columns": {"B": {"to": "runs.date"}}}',
      '"runs" of weld-log is a list; write "runs[].date"',
    ],
    [
      '{"kind": "weld-log", "id": "{A}", "columns": {"B": {"to": "runs[layer=\\"rot\\"].date"}}}',
      '"rot" is no value of layer; write "root"',
    ],
    ['{"kind": "part", "id": "{A}", "columns": {"B": {"to": "joint.mark[]"}}}', 'part has no field "joint"'],
    [
      '{"kind": "part", "id": "{A}", "columns": {"B": {"to": "material"}}}',
      '"material" of part has fields of its own; write "material.standard"',
    ],
    ['{"kind": "part", "id": "{A}", "columns": {"B": {"to": "name", "unit": "mn"}}}', 'there is no unit "mn"'],
    ['{"kind": "part", "columns": {"B": {"to": "name"}}}', "1:1 it does not say how an id is made"],
    ['{"kind": "part", "id": "{A", "columns": {}}', '"{A" has a "{" without "}"'],
    ['{"kind": "part", "id": "{A}", "columns": {}, "ignores": []}', '"ignores"'],
    ['{"kind": "part", "id": "{A}", "columns": {"B": {"to": "name"}, "B": {"to": "role"}}}', '"B" stands twice'],
    ['{"kind": "part", "id": "{A}", "columns": {"B": "name"}}', "columns"],
    ['{"kind": "part", "dates": "dmy", "id": "{A}", "columns": {}}', "day-month-year"],
    ['{"kind": "part",', "1:"],
    ["[]", "the list holds no map"],
  ])("%s", (text, message) => {
    expect(said(text).join("\n")).toContain(message);
  });
});

describe("a link of many kinds is written by the id alone", () => {
  const steps = {
    kind: "inspection-step",
    sheet: "Plan",
    id: "ITP-{Step}",
    columns: { Step: { to: "step" }, Papers: { to: "records", split: "," } },
  };
  const logs = { kind: "weld-log", sheet: "Log", id: "WL-{Seam}", columns: { Seam: { to: "joint" } } };
  const plans = workbook(
    sheet("Plan", [
      ["Step", "Papers"],
      [number("10"), "WL-C2, VT-01"],
    ]),
    sheet("Log", [["Seam"], ["C2"]]),
  );
  const one = (kind: string, id: string): BookRecord => ({
    kind,
    id,
    file: `${kind}.json`,
    pointer: "",
    value: { id },
    faulty: false,
  });

  test("found in the book and in other sheets of the workbook; a scan of the same name is not meant", () => {
    const made = plan(plans, [steps, logs], [one("ndt-report", "VT-01"), one("original", "VT-01")]);
    expect(faults(made)).toEqual([]);
    expect(made.records[0]?.value["records"]).toEqual(["weld-log:WL-C2", "ndt-report:VT-01"]);
  });

  test("what nobody has, and what several have, is a finding of the cell", () => {
    expect(faults(plan(plans, [steps, logs])).join("\n")).toContain(
      'Plan, row 2, column B "Papers": "VT-01" is no link of this field: neither the book nor this workbook has a record of that id',
    );
    const several = plan(plans, [steps, logs], [one("ndt-report", "VT-01"), one("document", "VT-01")]);
    expect(faults(several).join("\n")).toContain('"VT-01" may be "document:VT-01" or "ndt-report:VT-01"');
  });
});

describe("two tables side by side", () => {
  const map = { kind: "part", id: "{Pos}", columns: { Name: { to: "name" } } };
  const beside = workbook(
    sheet("Parts", [
      ["Pos", "Name", "", "Welder", "Since"],
      ["P01", "shell", "", "W07", "2019"],
    ]),
  );

  test("are said at every import, until the map settles the second", () => {
    expect(faults(plan(beside, map))).toEqual([
      'shop.xlsx, Parts, row 1, column D "Welder": a second table seems to begin here: the column before it has no heading\n' +
        '  hint   give each table a sheet of its own, or name the headings of the other table under "ignore" of the map',
    ]);
    expect(faults(plan(beside, { ...map, ignore: ["Welder", "Since"] }))).toEqual([]);
  });

  test("a gap before a heading that the map knows is no second table", () => {
    const gap = { ...map, columns: { Name: { to: "name" }, Since: { to: "remarks" } } };
    expect(faults(plan(beside, gap))).toEqual([
      expect.stringContaining('column D "Welder": the heading "Welder" is not known'),
    ]);
  });
});

test("a sheet of the workbook that no map is about is said, and not passed over", () => {
  const map = { kind: "part", sheet: "Parts", id: "{Pos}", columns: { Name: { to: "name" } } };
  const parts = sheet("Parts", [
    ["Pos", "Name"],
    ["P01", "shell"],
  ]);
  const made = plan(
    workbook(parts, sheet("Scrap", [["Heat"], ["4711"]]), { ...sheet("Old", [["x"]]), hidden: true }),
    map,
  );
  expect(made.notes.map((note) => [note.sheet, note.message])).toEqual([
    ["Scrap", "no map is about this sheet: it is not read"],
  ]);
  expect(planText(made, "shop.xlsx", kinds)).toContain(
    "note       Scrap: no map is about this sheet: it is not read\n",
  );
});
