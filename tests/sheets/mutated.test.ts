import { Buffer } from "node:buffer";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unzipSync, zipSync } from "fflate";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";

/** `MUTATED_SHEETS=5000 npx vitest run tests/sheets/mutated` searches longer. */
const numRuns = Number(process.env["MUTATED_SHEETS"] ?? 60);

const fixtures = join(import.meta.dirname, "fixtures");
const files = readdirSync(fixtures)
  .filter((name) => /\.(?:xlsx|csv)$/.test(name))
  .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(fixtures, name))) }));

/** Every cell is either taken or says why not, and a fault has its words. */
async function holds(bytes: Uint8Array, name: string): Promise<void> {
  const read = await readBytes(bytes, name);
  if ("hint" in read) {
    for (const words of [read.message, read.why, read.hint]) expect(words.length).toBeGreaterThan(5);
    return;
  }
  for (const { rows } of unpack(read).sheets)
    for (const { row, cells } of rows) {
      expect(cells.map(({ column }) => column)).toEqual(
        [...new Set(cells.map(({ column }) => column))].sort((a, b) => a - b),
      );
      for (const cell of cells) {
        expect(cell.row).toBe(row);
        if (cell.shown === null) expect(cell.fault).toBeTruthy();
        if (cell.figure !== undefined) expect(cell.figure).toMatch(/^-?\d+(?:\.\d+)?(?: %)?$/);
        if (cell.day !== undefined) expect(cell.day).toMatch(/^\d{4}-\d{2}-\d{2}$/);
        if (cell.type === "number" && cell.fault === undefined) expect(cell.figure).toBeDefined();
      }
    }
}

const file = fc.constantFrom(...files);
const edits = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 8 });
const edited = (bytes: Uint8Array, changes: readonly (readonly [at: number, value: number])[]) => {
  const changed = new Uint8Array(bytes);
  for (const [at, value] of changes) if (changed.length > 0) changed[at % changed.length] = value;
  return changed;
};

describe("a file changed by chance is read or refused in words, never more", () => {
  test("bytes of the file", async () => {
    await fc.assert(
      fc.asyncProperty(file, edits, fc.option(fc.nat()), async ({ name, bytes }, changes, cut) => {
        const changed = edited(bytes, changes);
        await holds(cut === null ? changed : changed.slice(0, cut % (bytes.length + 1)), name);
      }),
      { numRuns },
    );
  });

  test("bytes of a part, packed again with its right check sum", async () => {
    const workbooks = files.filter(({ name }) => name.endsWith(".xlsx"));
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...workbooks), fc.nat(), edits, async ({ name, bytes }, which, changes) => {
        const parts = unzipSync(bytes);
        const names = Object.keys(parts);
        const part = names[which % names.length] ?? "";
        parts[part] = edited(parts[part] ?? new Uint8Array(), changes);
        await holds(zipSync(parts, { level: 1 }), name);
      }),
      { numRuns },
    );
  });

  test("digits and names within the XML, which stays well formed", async () => {
    const words = [
      "0",
      "1",
      "-1",
      "1e400",
      "4294967296",
      "A1",
      "XFD1048576",
      "s",
      "n",
      "d",
      "e",
      "b",
      "str",
      "inlineStr",
      "",
      "0.0",
      "mmm",
    ];
    const workbooks = files.filter(({ name }) => name.endsWith(".xlsx"));
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...workbooks),
        fc.nat(),
        fc.array(fc.tuple(fc.nat(), fc.constantFrom(...words)), { minLength: 1, maxLength: 4 }),
        async ({ name, bytes }, which, changes) => {
          const parts = unzipSync(bytes);
          const names = Object.keys(parts).filter((one) => one.startsWith("xl/"));
          const part = names[which % names.length] ?? "";
          let text = Buffer.from(parts[part] ?? []).toString("utf8");
          for (const [at, word] of changes) {
            const spots = [...text.matchAll(/(?<=="|<v>|<f>)[^"<]*(?="|<)/g)];
            const spot = spots[at % Math.max(spots.length, 1)];
            if (spot !== undefined) text = text.slice(0, spot.index) + word + text.slice(spot.index + spot[0].length);
          }
          parts[part] = new Uint8Array(Buffer.from(text));
          await holds(zipSync(parts, { level: 1 }), name);
        },
      ),
      { numRuns },
    );
  });

  test("any bytes under any of the names", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.uint8Array({ maxLength: 300 }),
          fc.string({ unit: "binary" }).map((text) => new Uint8Array(Buffer.from(text))),
        ),
        fc.constantFrom("a.csv", "a.xlsx", "a.txt"),
        holds,
      ),
      { numRuns: numRuns * 4 },
    );
  });
});
