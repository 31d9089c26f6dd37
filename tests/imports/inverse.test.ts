import { describe, expect, test } from "vitest";
import { mapSchema, readMaps } from "../../src/imports/read-maps.ts";
import { planImport } from "../../src/imports/plan.ts";
import { propose } from "../../src/imports/propose.ts";
import { toSheets } from "../../src/imports/to-sheets.ts";
import { loadBook } from "../../src/load/book-files.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Json } from "../../src/model/json.ts";
import { isList, isObject } from "../../src/model/json.ts";
import { isSheetFault, type SheetToWrite, type Workbook } from "../../src/sheets/cells.ts";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";
import { writeWorkbook } from "../../src/sheets/write/workbook.ts";
import { asWritten } from "./tables.ts";

const kinds = loadKinds(["schemas"]);
const schema = mapSchema("schemas");

/** The record with the members of each object in the order of their names, and without what the import adds. */
export function canonical(value: Json): Json {
  if (isList(value)) return value.map(canonical);
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([name]) => !["imported", "kind", "$schema"].includes(name))
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, one]) => [name, canonical(one)]),
  );
}

/** The kinds of one book through the bytes of a workbook too: another book would show nothing more. */
const inBytes = "boiler";

async function readBack(sheets: readonly SheetToWrite[]): Promise<Workbook> {
  const bytes = await writeWorkbook(sheets);
  if (isSheetFault(bytes)) throw new Error(bytes.message);
  const packed = await readBytes(bytes, "x.xlsx");
  if ("hint" in packed) throw new Error(packed.message);
  return unpack(packed);
}

for (const book of ["boiler", "air-receiver", "air-receiver-interim"])
  describe(`sheets of the book ${book} are read back as they were`, () => {
    const { records } = loadBook(`demo-data/${book}/book`, kinds);
    const present = [...new Set(records.map(({ kind }) => kind))];
    test.each(present)("%s", async (name) => {
      const kind = kinds.get(name);
      if (kind === undefined) throw new Error(name);
      const own = records.filter((record) => record.kind === name);
      const sheets = toSheets(
        kind,
        own.map(({ value }) => ({ value, known: false })),
        () => [],
      );
      const workbook = book === inBytes ? await readBack(sheets) : asWritten(sheets);
      const proposal = propose(workbook, kinds, { bySheet: new Map() });
      expect(proposal.faults).toEqual([]);
      const read = readMaps("imports/x.json", JSON.stringify(proposal.maps), kinds, schema);
      expect(read.faults).toEqual([]);
      const plan = planImport({
        workbook,
        file: "x.xlsx",
        sha256: "0".repeat(64),
        maps: read.maps,
        mapName: "x",
        records: [],
        kinds,
      });
      expect(plan.faults).toEqual([]);
      const back = new Map(plan.records.map(({ id, value }) => [id, canonical(value)]));
      for (const { id, value } of own) expect(back.get(id)).toEqual(canonical(value));
      expect(back.size).toBe(own.length);
    });
  });
