import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import type { Document, Drawing, Organisation } from "../../demo-data/generated/records.ts";
import { finalEdition } from "../../demo-data/air-receiver/book-files.ts";
import { organisationOf } from "../../demo-data/shop/firms.ts";
import { recordFiles as receiverFiles } from "../../demo-data/air-receiver/records.ts";
import { lentFiles } from "../../demo-data/order/records.ts";
import { factsOf } from "../../demo-data/book/facts.ts";
import { filesOf } from "../../demo-data/book/book-files.ts";
import { file } from "../../demo-data/book/records.ts";
import { originalsOf } from "../../demo-data/boiler/originals/index.ts";
import { lastOf, workingDaysLater } from "../../demo-data/boiler/originals/working-days.ts";
import { joints } from "../../demo-data/boiler/facts/joints.ts";
import { parts } from "../../demo-data/boiler/facts/parts.ts";
import { recordFiles as boilerFiles } from "../../demo-data/boiler/records.ts";
import { textOf } from "../../demo-data/boiler/texts/index.ts";
import { procedureWords } from "../../demo-data/boiler/texts/procedures.ts";
import { columns, table } from "../../demo-data/paper/tables.ts";
import { lookOf } from "../../demo-data/paper/looks.ts";
import { finish, newPaper, newSheet, note } from "../../demo-data/paper/paper.ts";
import { marksAround, marksOfTime, marksUpTo } from "../../demo-data/sheets/axis.ts";

const client: Organisation = { id: "OATMARROW", name: "Oatmarrow Maltings", roles: ["client"] };

const drawing = (id: string, more: Partial<Drawing>): Drawing => ({
  id,
  number: `TQ417-04-${id}`,
  title: "drawing",
  revisions: [{ revision: "A", date: "2026-01-19", approved: "2026-01-21", reason: "first issue", preparedBy: "R1" }],
  ...more,
});

const titles: readonly (readonly [NonNullable<Document["type"]>, string])[] = [
  ["design-data", "Design data"],
  ["risk-analysis", "Hazards"],
  ["inspection-plan", "Inspection and test plan"],
  ["material-list", "Material list"],
  ["operating-instructions", "Instructions"],
  ["final-inspection-report", "Final inspection"],
  ["compliance-statement", "Requirements"],
  ["correspondence", "Order"],
  ["other", "Report of the functional test"],
  ["other", "Declaration of the supplier: burner"],
  ["other", "Declaration of the supplier: feed pumps"],
  ["other", "Requirements of the water"],
];

const documents = titles.map(([type, title], index): Document => ({
  id: `DOC-${index + 1}`,
  number: `TQ417-DOC-${index + 1}`,
  title,
  type,
  revisions: [{ revision: "0", date: "2026-01-28", approved: "2026-02-04", preparedBy: "R1", approvedBy: "K1" }],
}));

/** The boiler's parts and joints with the papers of the receiver: records of every kind, not made for these sheets. */
const files = [
  ...boilerFiles.filter(({ kind }) => ["book", "equipment", "part", "joint"].includes(kind)),
  ...[...lentFiles, ...receiverFiles(finalEdition)].filter(
    ({ kind }) => !["book", "equipment", "part", "joint", "drawing", "document"].includes(kind),
  ),
  file("more.json", "organisation", [client]),
  file("drawings.json", "drawing", [
    ...Array.from({ length: 12 }, (_, index) =>
      drawing(`DRG-${String(index + 1).padStart(2, "0")}`, { parts: parts.map(({ id }) => id) }),
    ).filter(({ id }) => id !== "DRG-02"),
    drawing("DRG-02", { type: "weld-map", joints: joints.map(({ id }) => id) }),
  ]),
  file("documents.json", "document", documents),
  file("decisions.json", "deviation", [
    { id: "DEV-01", title: "a hole too wide", date: "2026-03-10", by: "R1", reason: "it holds" },
  ]),
  file("decisions.json", "waiver", [{ id: "WAI-01", date: "2026-03-10", by: "R1", ground: "no such part" }]),
];
const facts = factsOf(files);
const originals = originalsOf(facts);

describe("the papers of a book are drawn from any records of their kind", () => {
  test("each record but those that have no paper is on one, and no two papers share an id or a path", () => {
    const shown = new Set(originals.flatMap(({ shows }) => shows.map(([kind, id]) => `${kind} ${id}`)));
    const bare = files
      .filter(({ kind }) => !["book", "issue", "organisation"].includes(kind))
      .flatMap(({ kind, records }) => records.map((record) => `${kind} ${"id" in record ? String(record.id) : ""}`))
      .filter((address) => !shown.has(address));
    expect(bare).toEqual([]);
    expect(new Set(originals.map(({ id }) => id)).size).toBe(originals.length);
    expect(new Set(originals.map(({ path }) => path)).size).toBe(originals.length);
  });

  test("every one is drawn, says that it is invented, and holds the pages its records name", async () => {
    const made = await filesOf({ facts, files, originals, cutOff: "9999-12-31" });
    const pages = new Map<string, number>();
    for (const { id, path } of originals) {
      const document = await PDFDocument.load(made.get(`files/${path}`) ?? "", { updateMetadata: false });
      expect(document.getSubject()).toBe("Demonstration, invented data");
      pages.set(id, document.getPageCount());
    }
    const sources = [...made]
      .filter(([path]) => path.endsWith(".json"))
      .flatMap(([, text]) => [...String(text).matchAll(/"original": "([^"]+)",\s+"page": (\d+)/g)]);
    expect(sources.length).toBeGreaterThan(250);
    expect(sources.filter(([, id = "", page]) => Number(page) > (pages.get(id) ?? 0))).toEqual([]);
    // The table of joints goes on over to the second sheet of the weld map.
    expect(sources.some(([, id, page]) => id === "ORG-DRG-02A" && page === "2")).toBe(true);
  });

  test("data are compared after the paper and not on a day of rest", () => {
    const isRest = (day: string) => [0, 6].includes(new Date(`${day}T12:00:00Z`).getUTCDay());
    const wrong = originals
      .filter(({ compared }) => compared !== finalEdition.cutOff)
      .filter(({ day, compared }) => compared <= day || isRest(compared));
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });
});

test("who is who: the facts find people and firms, and refuse a firm they do not know", () => {
  expect(facts.organisation("PENQUILLITH")).toBe(organisationOf("PENQUILLITH"));
  expect(facts.stamp("PENQUILLITH")).toBe("PENQUILLITH\n0000");
  expect([facts.first("inspection body"), facts.last("inspection body")]).toEqual([
    "E. Cairnhollow",
    "A. Thornleigh-Voss",
  ]);
  expect(() => facts.organisation("NOBODY")).toThrow("the records name no organisation NOBODY");
  expect(() => factsOf([])).toThrow("the records have no book or no equipment");
});

test("a document or a procedure that nobody has written is refused, not handed over blank", () => {
  expect(() => textOf(facts, { id: "DOC-77", type: "other", title: "Unknown" })).toThrow('document DOC-77, "Unknown"');
  expect(() => procedureWords({ id: "PRC-NONE", type: "coating" })).toThrow("procedure PRC-NONE has no words");
  expect(procedureWords({ id: "PRC-UT", type: "ndt", method: "UT" }).length).toBeGreaterThan(3);
});

test("a long table goes on over further sheets, and tells on which page each row begins", async () => {
  const paper = await newPaper(lookOf(client), "list", "L-1", "2026-01-12");
  const sheet = newSheet(paper);
  const rows = Array.from({ length: 120 }, (_, index) => [String(index), "text"]);
  table(sheet, columns(["No.", "What"]), rows, 8, (index) => note(paper, "row", String(index)));
  expect(paper.pages.length).toBe(3);
  expect([paper.found.get("row:0"), paper.found.get("row:119")]).toEqual([1, 3]);
  const document = await PDFDocument.load(await finish(paper));
  expect(document.getPageCount()).toBe(3);
});

test("axes: round steps that hold the greatest value, quarters of an hour over a test", () => {
  expect(marksUpTo(16.05)).toEqual([0, 4, 8, 12, 16, 20]);
  expect(marksUpTo(15.7)).toEqual([0, 4, 8, 12, 16]);
  expect(marksUpTo(905)).toEqual([0, 200, 400, 600, 800, 1000]);
  expect(marksAround([14.5, 14.8])).toEqual([14, 14.5, 15]);
  expect(marksAround([20, 20])).toEqual([20, 20.5, 21]);
  expect(marksOfTime("10:05", "11:02").map(({ label }) => label)).toEqual([
    "10:00",
    "10:15",
    "10:30",
    "10:45",
    "11:00",
    "",
  ]);
  expect(
    marksOfTime("06:40", "13:10")
      .map(({ label }) => label)
      .slice(0, 2),
  ).toEqual(["06:00", "07:00"]);
});

test("working days leave out Saturday and Sunday", () => {
  // 2026-05-01 is a Friday: ISO 8601, week 18.
  expect(workingDaysLater("2026-05-01", 2)).toBe("2026-05-05");
  expect(workingDaysLater("2026-05-04", 2)).toBe("2026-05-06");
  expect(lastOf([undefined, "2026-03-04", "2026-02-28"])).toBe("2026-03-04");
});
