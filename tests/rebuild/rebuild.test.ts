import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { isList, type JsonObject } from "../../src/model/json.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { demoBook, sound } from "../support/demo-book.ts";
import { differences, saidOf, scansOf } from "./compare.ts";
import { explanations, unexplained } from "./explained.ts";
import { lastWorkbook, newLeaves, rebuild, remove, shopMaps, workbooks, type Way } from "./way.ts";

// The workbooks were written by openpyxl, XlsxWriter and LibreOffice Calc, with a shop's own headings (shop.py, tabs.py).
let way: Way;
let rebuilt: JudgedBook;
let receiver: JudgedBook;
beforeAll(async () => {
  receiver = sound;
  way = await rebuild(scansOf(receiver), demoBook);
  rebuilt = judgeBook(readBook(way.book));
}, 240_000);
afterAll(() => {
  remove(way);
});

const outOf = (step: string) => way.steps.get(step)?.out ?? "";

describe("the receiver's book from the shop's six workbooks, its scans and the boiler's book", () => {
  test.each([...workbooks, lastWorkbook])("%s.xlsx is read whole, and written", (name) => {
    expect(outOf(`import ${name}`)).toContain(" 0 conflicts, 0 no longer in the sheet, 0 that cannot be read\n");
    expect(way.steps.get(`import ${name}`)?.exit).toBe(0);
  });

  test.each(["new", "originals", "sheet", "import calculations", "compared"])("%s ends well", (step) => {
    expect([way.steps.get(step)?.err, way.steps.get(step)?.exit]).toEqual(["", 0]);
  });

  test("nothing blocks, as in the receiver's own book", () => {
    const open = rebuilt.findings.filter(blocks);
    expect(open.map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
    expect(way.steps.get("check")?.exit).toBe(0);
    expect(rebuilt.state).toBe("final");
  });

  test("a person types fewer than 300 values, as many as README says", () => {
    const count = [...way.typed.values()].reduce((sum, one) => sum + one, 0);
    expect(count).toBeLessThan(300);
    expect(readFileSync("README.md", "utf8")).toContain(`**${count} values**`);
  });

  test("the shop's maps have as many entries as README says", () => {
    const maps = [...shopMaps().values()].flatMap((one) => (isList(one) ? one : [one]));
    const entries = maps.reduce<number>((sum, one) => sum + 1 + newLeaves(undefined, one), 0);
    expect(readFileSync("README.md", "utf8").replaceAll(/\s+/g, " ")).toContain(
      `they are ${maps.length}, with **${entries} entries**`,
    );
  });

  test("every outcome is that of the receiver's own book, but for those that are listed with their reason", () => {
    expect(unexplained(differences(receiver, rebuilt), explanations())).toEqual({ differs: [], idle: [] });
  });

  test("every record that came from a sheet or was typed says what the receiver's own says", () => {
    const own = new Map(receiver.loaded.records.map((one) => [`${one.kind}:${one.id}`, one]));
    const made = rebuilt.loaded.records.filter(
      ({ kind, value, file }) => ("imported" in value && kind !== "calculation-sheet") || way.typed.has(file),
    );
    expect(made.length).toBeGreaterThan(150);
    // The plan names calculation sheets, which are others here; the record of the book names shelves, and one that stands on a shelf its kind.
    const rest = ({ $schema: _schema, kind: _kind, records: _records, shelves: _shelves, ...others }: JsonObject) =>
      others;
    for (const { kind, id, value } of made)
      expect([kind, id, saidOf(rest(value))]).toEqual([kind, id, saidOf(rest(own.get(`${kind}:${id}`)?.value ?? {}))]);
  });
});
