import { expect, test } from "vitest";
import type { Cell } from "../../src/publish/blocks.ts";
import { demoBook, laidOutOnce, sound } from "../support/demo-book.ts";

const { pages } = await laidOutOnce(demoBook);
const table = pages.find(({ url }) => url === "calculations.html")?.blocks.find(({ type }) => type === "table");
const rows = table?.type === "table" ? table.groups.flat() : [];
const wordsOf = (cell: Cell | undefined): string => {
  if (cell?.type === "ditto") return cell.full;
  if (cell?.type === "number") return cell.text;
  if (cell?.type === "mark") return cell.mark;
  if (cell?.type !== "text") return "";
  return cell.text.map((part) => (typeof part === "string" ? part : "text" in part ? part.text : "")).join("");
};
const rowOf = (part: string, calculation: string) =>
  rows
    .map(({ cells }) => cells.map(wordsOf))
    .find(([first = "", second = ""]) => first.startsWith(part) && second.startsWith(calculation)) ?? [];

test("what was adopted, required and measured of a part stand in one row, with the margin", () => {
  const [, , adopted, , is, must = "", margin, measured, least, verdict] = rowOf("P01", "Cylindrical shell");
  const part = sound.graph.byKind.get("part")?.get("P01")?.value;
  expect(adopted).toBe(part?.["nominalThickness"]);
  const required = Number.parseFloat(must.replace("≥ ", ""));
  const nominal = Number.parseFloat(is ?? "");
  expect(nominal).toBe(Number.parseFloat(adopted ?? ""));
  // Both are printed rounded, the margin down.
  expect(Math.abs(Number(margin) - (100 * (nominal - required)) / required)).toBeLessThan(0.1);
  expect(Number.parseFloat(measured ?? "")).toBeGreaterThanOrEqual(Number.parseFloat(least ?? ""));
  expect(verdict).toBe("passed");
});

test("each acceptance of each calculation of a part has its row or its place beside one", () => {
  const about = sound.computed
    .filter((one) => one.state === "done")
    .filter(({ subject, accept }) => subject.kind === "part" && accept.length > 0);
  const parts = new Set(about.map(({ subject }) => subject.id));
  expect(parts.size).toBeGreaterThan(3);
  expect(rows.length).toBeGreaterThanOrEqual(about.length);
  for (const { calculation, subject } of about)
    expect(rowOf(subject.id, calculation.title), calculation.id).not.toEqual([]);
});
