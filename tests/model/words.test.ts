import { describe, expect, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { placeWords, thePlace } from "../../src/model/words.ts";

const kinds = loadKinds(["schemas"]);
const record = (kind: string, id: string, value: JsonObject) => ({ kind, id, value: { id, ...value } });

describe("a place in words", () => {
  const log = record("weld-log", "WL-L1", { runs: [{ layer: "root" }, { layer: "fill" }] });
  test.each([
    ["", "weld log WL-L1"],
    ["/joint", "the joint of weld log WL-L1"],
    ["/runs/1", "weld log WL-L1, run fill"],
    ["/runs/1/current", "the current of weld log WL-L1, run fill"],
    ["/runs/1/date", "the date of weld log WL-L1, run fill"],
    ["/nothing/such", "the such of nothing of weld log WL-L1"],
  ])("%s", (pointer, words) => {
    expect(thePlace(kinds, log, pointer)).toBe(words);
  });

  test("says nothing twice where a field bears the name of what it holds, or what it holds says it", () => {
    const original = record("original", "ORG-1", { transcription: { date: "2026-06-05", records: ["x"] } });
    expect(thePlace(kinds, original, "/transcription/date")).toBe("the day of the comparison of original ORG-1");
    expect(placeWords(kinds, original, "/transcription/comparedBy").field).toBe('name "compared by" of comparison');
    const batch = record("consumable-batch", "B-1", { batch: "7", certificate: { batch: "7" } });
    expect(placeWords(kinds, batch, "/certificate/batch")).toEqual({
      field: "batch of certificate",
      of: "consumable batch B-1",
      short: "B-1",
    });
    const wall = { name: "wall", type: "quantity", title: "Wall", description: "", required: false } as const;
    const inWall = { name: "wall", type: "object", title: "Wall", description: "", required: false } as const;
    const joint = kinds.get("joint");
    const odd = joint && { ...joint, fields: new Map([["wall", { ...inWall, fields: new Map([["wall", wall]]) }]]) };
    expect(odd && thePlace(new Map([["joint", odd]]), record("joint", "L1", {}), "/wall/wall")).toBe(
      "the wall of joint L1",
    );
  });
});
