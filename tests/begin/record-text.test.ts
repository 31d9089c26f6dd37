import fc from "fast-check";
import { expect, test } from "vitest";
import { manyRecords, oneRecord } from "../../src/begin/record-text.ts";
import type { JsonObject } from "../../src/model/json.ts";

const objects = fc.dictionary(fc.string(), fc.jsonValue()).map((one) => one as JsonObject);

test("what is written is what is read again, member by member in order", () => {
  fc.assert(
    fc.property(fc.array(objects), (records) => {
      const text = manyRecords("joint", "../.schemas", records);
      expect(JSON.stringify(JSON.parse(text))).toBe(
        JSON.stringify({ $schema: "../.schemas/joint.json", kind: "joint", records }),
      );
    }),
  );
});

test("a record has a line for each field, a row that fits stands on one", () => {
  const long = "x".repeat(90);
  expect(
    manyRecords("joint", ".schemas", [{ id: "L1", parts: ["1"], rows: [{ a: "1", b: [] }, { a: long }], none: [] }]),
  ).toBe(
    `{\n  "$schema": ".schemas/joint.json",\n  "kind": "joint",\n  "records": [\n    {\n      "id": "L1",\n      "parts": ["1"],\n` +
      `      "rows": [\n        { "a": "1", "b": [] },\n        {\n          "a": "${long}"\n        }\n      ],\n      "none": []\n    }\n  ]\n}\n`,
  );
  expect(oneRecord("part", "..", { id: "1" })).toBe(
    `{\n  "$schema": "../part.json",\n  "kind": "part",\n  "id": "1"\n}\n`,
  );
});
