import { expect, test } from "vitest";
import type { Publication } from "../../../src/publish/publication.ts";
import { demoBook, laidOutOnce } from "../../support/demo-book.ts";

const publication: Publication = await laidOutOnce(demoBook);
const tableOf = (title: string) => {
  const table = publication.pages
    .flatMap(({ blocks }) => blocks)
    .find((block) => block.type === "table" && block.title === title);
  if (table?.type !== "table") throw new Error(`no table "${title}"`);
  return table;
};
const rowOf = (title: string, id: string) =>
  tableOf(title)
    .groups.flat()
    .map(({ cells }) => cells.map((cell) => (cell.type === "text" ? cell.text.map((one) => textOf(one)).join("") : "")))
    .find(([first]) => first === id);
const textOf = (one: string | { readonly type: string }): string =>
  typeof one === "string" ? one : "text" in one ? String(one.text) : "";

test("the plan shows what each party does, side by side, with the day it signed", () => {
  const heads = tableOf("29 inspection steps").columns.map(({ head }) => head);
  expect(heads.slice(4, 7)).toEqual(["Maker", "Inspection body", "Client"]);
  const row = rowOf("29 inspection steps", "ITP-230") ?? [];
  expect(row.slice(4, 7)).toEqual(["perform, 2026-06-23", "hold, 2026-06-23", "witness, 2026-06-23"]);
});

test("what is asked of a run stands in one column for each layer, not in one for each field and layer", () => {
  const title = "11 weld logs";
  expect(tableOf(title).columns.map(({ head }) => head)).toEqual([
    "Weld log",
    "Joint",
    "Welding procedure",
    "Root",
    "Fill",
    "Cap",
    "Verdict",
  ]);
  expect(rowOf(title, "WL-C1")?.[3]).toMatch(/^\d+, .+ \(W\d+\), \d{4}-\d\d-\d\d$/);
});

test("a column of a list says each value once", () => {
  expect(rowOf("13 NDT reports", "VT-03")).toContain("C2, C3, N01, N02");
  expect(rowOf("13 NDT reports", "RT-04")).toContain("C2, C3");
});
