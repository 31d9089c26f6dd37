import { describe, expect, test } from "vitest";
import { layOut } from "../../src/pipeline.ts";
import type { Cell, Row } from "../../src/publish/blocks.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged } from "../support/demo-book.ts";

const textOf = (cell: Cell | undefined): string =>
  cell?.type === "mark"
    ? cell.mark
    : cell?.type === "number"
      ? cell.text
      : cell?.type === "text"
        ? cell.text.map((part) => (typeof part === "string" ? part : "text" in part ? part.text : "")).join("")
        : "";

/** Rows of the first table of chemistry of certificate CRT-003, as element, value, least, most, verdict. */
async function chemistry(...changes: readonly Change[]): Promise<ReadonlyMap<string, readonly string[]>> {
  const { judged } = judgeChanged(demoBook, changes);
  if (judged === null) throw new Error("the book could not be read");
  const { pages } = await layOut(judged);
  const page = pages.find(({ url }) => url === "material-certificate/r-CRT-003.html");
  const table = page?.blocks.find((block) => block.type === "table");
  if (table?.type !== "table") throw new Error("there is no table of the chemistry");
  const cells = (row: Row) => [0, 2, 3, 4, 6].map((index) => textOf(row.cells[index]));
  return new Map(table.groups.flat().map((row) => [textOf(row.cells[0]), cells(row)]));
}

const setC = (value: string): Change => ({
  set: "material-certificate:CRT-003",
  at: "/rows/0/chemistry/0/value",
  to: value,
});

describe("a certificate's page prints what was held against the limits, and looks up nothing", () => {
  test("each element with its limits and its verdict, sums among them", async () => {
    const rows = await chemistry();
    expect(rows.get("C")?.slice(2)).toEqual(["", "0.2", "passed"]);
    expect(rows.get("Mn")?.slice(2)).toEqual(["0.8", "1.4", "passed"]);
    expect([...rows.keys()].some((name) => name.includes("+"))).toBe(true);
  });

  test("too much of one fails that element alone", async () => {
    const rows = await chemistry(setC("0.24 %"));
    expect(rows.get("C")).toEqual(["C", "0.24", "", "0.2", "failed"]);
    expect(rows.get("Mn")?.at(-1)).toBe("passed");
  });

  test("of a grade whose limits nobody holds, every element is not compared, never passed", async () => {
    const rows = await chemistry({ set: "material-certificate:CRT-003", at: "/rows/0/grade", to: "P266GH" });
    expect(new Set([...rows.values()].map((row) => row.at(-1)))).toEqual(new Set(["not compared"]));
  });
});
