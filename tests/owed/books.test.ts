import { parse } from "csv-parse/sync";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { JudgedBook } from "../../src/model/book.ts";
import { milestoneDays } from "../../src/model/milestone-days.ts";
import { owedItems } from "../../src/owed/items.ts";
import { owedList } from "../../src/owed/list.ts";
import { owedSheet } from "../../src/owed/sheet.ts";
import { owedText } from "../../src/owed/text.ts";
import { bookState } from "../../src/owed/state.ts";
import { isSheetFault } from "../../src/sheets/cells.ts";
import { writeCsv } from "../../src/sheets/write/csv.ts";
import { packageRoot } from "../../src/root.ts";
import { holdMissing } from "../support/small-book.ts";
import { demoBook, interimBook, judgedOnce, judgedWith, laidOutOnce, readOnce, sound } from "../support/demo-book.ts";

const receiver = readOnce(demoBook);
const interim = judgedOnce(interimBook);

const textOf = (judged: JudgedBook) =>
  owedText(owedList(owedItems(judged), milestoneDays(judged.issue), {}), ["what is owed"]);

/** Nothing lost, nothing twice: what is absent, and gaps of evidence that is there, are the list. */
function holdList(judged: JudgedBook): void {
  holdMissing(judged);
  const items = owedItems(judged);
  const gaps = judged.findings.filter(({ severity, rule }) => severity === "gap" && rule !== "missing");
  expect(items.length).toBe(judged.missing.length + gaps.length);
  expect(items.filter(({ standing }) => standing === "due").length).toBe(judged.counts.gap);
  const { groups, accepted, all, listed } = owedList(items, milestoneDays(judged.issue), {});
  expect([all, listed]).toEqual([items.length, items.length]);
  expect(new Set([...groups.flatMap((group) => group.items), ...accepted])).toEqual(new Set(items));
  const lines = textOf(judged)
    .split("\n")
    .filter((line) => line.startsWith("    ")).length;
  expect(lines, "one line for each").toBe(items.length - accepted.length);
}

describe("the interim issue of the receiver", () => {
  test("lists all that is not due yet, once, and nothing is due", () => {
    holdList(interim);
    const items = owedItems(interim);
    expect(items.length).toBeGreaterThan(50);
    expect(new Set(items.map(({ standing }) => standing))).toEqual(new Set(["not due"]));
  });

  test("says who: the maker by name, and which original lacks its comparison", () => {
    const text = textOf(interim);
    expect(text).toContain("\nwelding coordination, Tarnequill Boiler Works: 8\n");
    expect(text).toContain("    joint C2, circumferential: NDT report with method RT\n");
    expect(text).toMatch(/original ORG-RT-02, Radiographic test, report RT-02: comparison/);
  });
});

describe("as a sheet", () => {
  test("there is one row for each thing, in the order of the text, and CSV holds the same", () => {
    const items = owedItems(interim);
    const sheet = owedSheet(owedList(items, milestoneDays(interim.issue), {}));
    expect(sheet.rows.length).toBe(items.length);
    const bytes = writeCsv(sheet);
    if (isSheetFault(bytes)) throw new Error(bytes.message);
    const read: unknown = parse(bytes, { bom: true });
    expect(read).toEqual([sheet.columns.map(({ heading }) => heading), ...sheet.rows]);
    expect(sheet.rows.find(([, , what]) => what === "pressure test HYD-01")).toEqual([
      ...["quality", "Tarnequill Boiler Works", "pressure test HYD-01", "named by inspection step ITP-230", ""],
      ...["pressure test", "2026-06-23", "planned", "not due", "2026-06-23", "", "", "", "", "", "", ""],
    ]);
  });
});

describe("the front page of an interim issue", () => {
  test("says how far it is: the register's rows and what is read and owed, the next milestone, and who holds it up", async () => {
    const { milestones, asked, there, next, heldUp } = bookState(interim);
    const rows = [...interim.owed.filter(({ state }) => state !== "not applicable"), ...interim.owing];
    expect([asked, there]).toEqual([rows.length, rows.filter(({ state }) => state === "met").length]);
    expect(milestones.reduce((sum, one) => sum + one.asked, 0)).toBe(asked);
    expect(milestones.reduce((sum, one) => sum + one.missing, 0)).toBe(owedItems(interim).length);
    expect(next).toEqual({ name: "welding", day: "2026-06-12", reached: false });
    expect(heldUp).toEqual([{ who: "welding coordination, Tarnequill Boiler Works", count: 8 }]);
    const front = (await laidOutOnce(interimBook)).pages.find(({ url }) => url === "index.html");
    const said = JSON.stringify(front?.blocks);
    expect(said).toContain(
      `${there} of ${asked} pieces of evidence and values that are asked for are there. The next milestone is welding, planned for 2026-06-12; 8 things are missing for it, from welding coordination, Tarnequill Boiler Works (8).`,
    );
    expect(said).toContain("planned 2026-06-23");
    expect(said).toContain("no day planned");
  }, 60_000);
});

describe("the receiver's book with records taken out", () => {
  test.each(["weld-log", "material-certificate", "pressure-test", "organisation"])("%s", (kind) => {
    const records = receiver.records.filter((record) => record.kind !== kind);
    holdList(judgedWith(demoBook, records));
  });
  test("nothing is owed in the whole book", () => {
    expect(textOf(sound)).toBe("what is owed\n\nno things are missing: 0 due, 0 not due yet\n");
  });
});

/** Ids of everything that is defined; those that are a word of the language say nothing by themselves. */
function namesOf({ rules, calculations, facts, registers, profiles, tables }: JudgedBook["definitions"]) {
  const rows = registers.flatMap(({ requirements }) => requirements);
  return [...rules, ...calculations, ...facts, ...registers, ...rows, ...profiles, ...tables]
    .map(({ id }) => id)
    .filter((id) => id.includes("-"));
}

describe("names of definitions", () => {
  test("stand in no list", () => {
    const said = [
      interim,
      judgedWith(
        demoBook,
        receiver.records.filter(({ kind }) => kind !== "joint"),
      ),
    ]
      .map(textOf)
      .join("\n");
    const ids = new Set(namesOf(interim.definitions.whole ?? interim.definitions));
    expect(ids.size).toBeGreaterThan(200);
    expect(said.split(/[^A-Za-z0-9-]+/).filter((word) => ids.has(word))).toEqual([]);
  });

  test("and none of them, nor any kind, in the source that makes it", () => {
    const folder = join(packageRoot, "src/owed");
    const kinds = [...interim.definitions.kinds.keys()];
    const quoted = readdirSync(folder).flatMap((file) =>
      [...readFileSync(join(folder, file), "utf8").matchAll(/"([a-z]+(?:-[a-z]+)*)"/g)].map(([, word = ""]) => word),
    );
    const known = new Set([
      ...namesOf(interim.definitions),
      ...kinds.filter((kind) => !["book", "issue"].includes(kind)),
    ]);
    expect(quoted.filter((word) => known.has(word) && word !== "original")).toEqual([]);
  });
});
