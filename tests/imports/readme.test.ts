import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { mapSchema, readMaps } from "../../src/imports/read-maps.ts";
import { loadKinds } from "../../src/load/kinds.ts";

test("the map that README shows is one", () => {
  const guide = readFileSync("README.md", "utf8");
  const [, map = ""] = /^## Sheets$.*?```json\n(.*?)```/ms.exec(guide) ?? [];
  const read = readMaps("imports/x.json", map, loadKinds(["schemas"]), mapSchema("schemas"));
  expect(read.faults).toEqual([]);
  expect(read.maps[0]?.columns.size).toBe(6);
});
