import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";
import { readSheetFile } from "../../src/sheets/read.ts";
import { bookInWords } from "./in-words.ts";

/**
 * Bytes that other programs wrote (the scripts that made them lie beside them), and what a person reads in their cells,
 * typed by hand: display texts by the rules that ECMA-376 part 1, 18.8.30 and 18.8.31 gives for number formats.
 */
const fixtures = join(import.meta.dirname, "fixtures");

type Words = Readonly<Record<string, Readonly<Record<string, string>>>>;

const typed = (name: string) => JSON.parse(readFileSync(join(fixtures, `${name}.json`), "utf8")) as Words;

for (const name of ["xlsxwriter", "xlsxwriter-1904", "openpyxl", "calc"])
  describe(`${name}.xlsx is read as it shows`, async () => {
    const answer = await readBytes(readFileSync(join(fixtures, `${name}.xlsx`)), `${name}.xlsx`);
    const read: Words = "sheets" in answer ? bookInWords(unpack(answer)) : {};
    test("sheets and their order", () => expect(Object.keys(read)).toEqual(Object.keys(typed(name))));
    for (const [sheet, cells] of Object.entries(typed(name))) {
      test(`sheet ${sheet} has no cell beside those typed, and labels`, () => {
        const beside = Object.entries(read[sheet] ?? {}).filter(([address]) => cells[address] === undefined);
        expect(beside.filter(([address, text]) => !/^A\d/.test(address) || !text.startsWith("text "))).toEqual([]);
      });
      for (const [address, text] of Object.entries(cells))
        test(`${sheet}, ${address}: ${text}`, () => {
          const found = read[sheet]?.[address] ?? "";
          // Of a fault the beginning is typed, or the part that tells it from others.
          const [value = "", fault] = text.split(" ! ");
          if (fault === undefined) expect(found.startsWith(text) ? text : found).toBe(text);
          else
            expect([found.split(" ! ")[0], found.split(" ! ")[1] ?? ""]).toEqual([
              value,
              expect.stringContaining(fault),
            ]);
        });
    }
  });

test("in a thread of its own a file reads the same", async () => {
  const bytes = readFileSync(join(fixtures, "calc.xlsx"));
  const read = await readSheetFile(bytes, "calc.xlsx");
  expect("sheets" in read && Object.keys(bookInWords(read))).toEqual(Object.keys(typed("calc")));
  expect(await readBytes(bytes, "calc.xlsx")).toMatchObject({ form: "xlsx" });
});
