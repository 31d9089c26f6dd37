import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isSheetFault } from "../../src/sheets/cells.ts";
import { writeWorkbook } from "../../src/sheets/write/workbook.ts";
import { awkward, many, ours } from "./ours.ts";

/** A workbook of ours, and what openpyxl 3.0.9 and LibreOffice Calc 7.4.7 read in these very bytes (read-ours.sh beside them). */
const fixtures = join(import.meta.dirname, "fixtures");

/** What one program reads in a cell: its type, its number format, its text, a note. */
type Read = readonly [type: string, format: string, text: string, note?: string];

interface ReadSheet {
  readonly state: string;
  readonly cells: Readonly<Record<string, Read>>;
  readonly lists: readonly (readonly string[])[];
}

describe("a workbook of ours, as other programs read it", () => {
  test("these are the bytes they read", async () => {
    const now = await writeWorkbook([ours]);
    if (isSheetFault(now)) throw new Error(now.message);
    expect(Buffer.from(now).equals(readFileSync(join(fixtures, "ours.xlsx")))).toBe(true);
  });

  const read = JSON.parse(readFileSync(join(fixtures, "ours.openpyxl.json"), "utf8")) as Readonly<
    Record<string, ReadSheet>
  >;
  // Every program ends a line in a cell with one sign.
  const texts = awkward.map((text) => text.replaceAll("\r\n", "\n"));

  test("openpyxl: every cell a text as it was written, none a number, a date or a formula", () => {
    const { cells = {}, state, lists } = read["weld-log"] ?? {};
    expect(state).toBe("visible");
    const wanted: Record<string, string> = { A2: "WL-1", B2: "8.0", C2: "accepted" };
    ours.columns.forEach(({ heading }, index) => (wanted[`${"ABCD".charAt(index)}1`] = heading));
    // It leaves signs that XML cannot hold in the form the standard gives them (ECMA-376 part 1, 22.9.2.19).
    const held = (text: string) => text.replaceAll("\r\n", "_x000D_\n").replaceAll("\u0001", "_x0001_");
    awkward.forEach((text, index) => (wanted[`A${index + 3}`] = held(text)));
    expect(Object.fromEntries(Object.entries(cells).map(([at, [, , text]]) => [at, text]))).toEqual(wanted);
    expect(new Set(Object.values(cells).map(([type, format]) => `${type} ${format}`))).toEqual(new Set(["s @"]));
    expect(cells["A1"]?.[3]).toBe("note: What is stamped.\nIn capitals.");
    expect(lists).toEqual([
      ["C2:C1048576", "list", "Choices!$A$1:$A$2"],
      ["D2:D1048576", "list", `Choices!$B$1:$B$${many.length}`],
    ]);
  });

  test("openpyxl: lists to choose from stand on a hidden sheet", () => {
    const { cells = {}, state } = read["Choices"] ?? {};
    expect(state).toBe("hidden");
    const column = (name: string) =>
      Object.entries(cells).flatMap(([at, [, , text]]) => (at.startsWith(name) ? [text] : []));
    expect([column("A"), column("B")]).toEqual([["accepted", "rejected"], many]);
  });

  test("LibreOffice Calc: the same, as it shows them", () => {
    const quoted = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    const lines = [
      ours.columns.map(({ heading }) => quoted(heading)).join(","),
      "WL-1,8.0,accepted,",
      ...texts.map((text) => `${quoted(text)},,,`),
    ];
    expect(readFileSync(join(fixtures, "ours.calc.csv"), "utf8")).toBe(`${lines.join("\n")}\n`);
  });
});
