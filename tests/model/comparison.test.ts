import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import { comparisonsOf, linesByOriginal } from "../../src/model/comparison.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import type { BookRecord } from "../../src/model/record.ts";

const kinds = loadKinds(["schemas"]);
const record = (kind: string, id: string, value: JsonObject): BookRecord => ({
  kind,
  id,
  file: `${kind}.json`,
  pointer: "",
  value: { id, ...value },
  faulty: false,
});
const [hash, other] = ["a".repeat(64), "b".repeat(64)];
const row = (heat: string) => ({ heat, thickness: "8.0 mm" });
const certificate = record("material-certificate", "CRT-1", {
  type: "3.1",
  rows: [row("A1"), row("A2")],
  source: { original: "ORG-1", page: 1 },
});

/** Originals that a second person compared with records as they are. */
function compared(
  records: readonly BookRecord[],
  bare: readonly BookRecord[],
  by: JsonObject = { enteredBy: ["P1"], comparedBy: "P2", date: "2026-02-01" },
) {
  const lines = linesByOriginal(records, kinds, originalsAmong(bare));
  return bare.map((one) =>
    record("original", one.id, {
      ...one.value,
      transcription: { sha256: one.value["sha256"] ?? "", records: lines.get(one.id) ?? [], ...by },
    }),
  );
}
const paper = record("original", "ORG-1", { sha256: hash });
const states = (one: BookRecord, originals: readonly BookRecord[]) =>
  comparisonsOf(one, kinds.get(one.kind), originalsAmong(originals)).map(
    ({ original, state }) => `${original.id} ${state}`,
  );
const changed = (value: JsonObject): BookRecord => ({ ...certificate, value: { ...certificate.value, ...value } });

describe("a comparison with an original", () => {
  const done = compared([certificate], [paper]);

  test("stands for the values that were compared, whatever their order and our own notes", () => {
    expect(states(certificate, done)).toEqual(["ORG-1 compared"]);
    expect(states(changed({ rows: [row("A2"), row("A1")], remarks: "seen" }), done)).toEqual(["ORG-1 compared"]);
    expect(states(changed({ source: { original: "ORG-1", page: 2 } }), done)).toEqual(["ORG-1 compared"]);
  });

  test("is void when a value, a name of a row or the file is another, or where the record was not among them", () => {
    expect(states(changed({ type: "3.2" }), done)).toEqual(["ORG-1 changed"]);
    expect(states(changed({ rows: [row("A1")] }), done)).toEqual(["ORG-1 changed"]);
    expect(states(changed({ rows: [row("A1"), row("A3")] }), done)).toEqual(["ORG-1 changed"]);
    expect(states({ ...certificate, id: "CRT-2" }, done)).toEqual(["ORG-1 left out"]);
    const replaced = done.map((one) => ({ ...one, value: { ...one.value, sha256: other } }));
    expect(states(certificate, replaced)).toEqual(["ORG-1 other file"]);
  });

  test("is none by nobody, by whoever typed, or while nobody says who typed", () => {
    expect(states(certificate, [paper])).toEqual(["ORG-1 nobody"]);
    expect(states(certificate, compared([certificate], [paper], { enteredBy: ["P1"] }))).toEqual(["ORG-1 nobody"]);
    for (const enteredBy of [["P2"], ["P1", "P2"], []])
      expect(states(certificate, compared([certificate], [paper], { enteredBy, comparedBy: "P2" }))).toEqual([
        "ORG-1 alone",
      ]);
  });

  test("of what is read from two originals both are needed, each for what was read from it", () => {
    const second = record("original", "ORG-2", { sha256: other });
    const two = changed({ sources: { "/rows/1": { original: "ORG-2", page: 1 } } });
    expect(states(two, [...compared([two], [paper]), second])).toEqual(["ORG-2 nobody", "ORG-1 compared"]);
    const both = compared([two], [paper, second]);
    expect(states(two, both)).toEqual(["ORG-2 compared", "ORG-1 compared"]);
    const later = { ...two, value: { ...two.value, rows: [row("A1"), { ...row("A2"), thickness: "9.0 mm" }] } };
    expect(states(later, both)).toEqual(["ORG-2 changed", "ORG-1 compared"]);
  });

  test("stands on the filed sheet of a record that was imported from it and names no other", () => {
    const { source: _, ...value } = certificate.value;
    const imported = { file: "certificates.xlsx", sha256: hash, row: 2, map: "certificates", fields: "0".repeat(16) };
    const born = { ...certificate, value: { ...value, imported } };
    expect(states(born, [paper])).toEqual(["ORG-1 nobody"]);
    expect(states(born, compared([born], [paper]))).toEqual(["ORG-1 compared"]);
    const scanned = changed({ imported: { ...imported, sha256: other } });
    expect(states(scanned, [...done, record("original", "ORG-2", { sha256: other })])).toEqual(["ORG-1 compared"]);
    expect(states({ ...certificate, value }, done)).toEqual([]);
  });

  test("is written as the beginning of the SHA-256 (FIPS 180-4) of the values by their place", () => {
    const typed = [
      '/rows[A1]/heat="A1"',
      '/rows[A1]/thickness="8.0 mm"',
      '/rows[A2]/heat="A2"',
      '/rows[A2]/thickness="8.0 mm"',
      '/type="3.1"',
    ].join("\n");
    const digest = createHash("sha256").update(typed, "utf8").digest("hex").slice(0, 16);
    expect(linesByOriginal([certificate], kinds, originalsAmong([paper])).get("ORG-1")).toEqual([
      `${digest} material-certificate:CRT-1`,
    ]);
  });
});
