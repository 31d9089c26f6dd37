import { describe, expect, test } from "vitest";
import { answering, finding, judged, open, verdicts, type Records } from "../support/small-book.ts";
import { definitions, plant, sound } from "./sound-book.ts";

/** A second qualification of one welder, for the other process, and a report that names both. */
const extra = { welder: "WCD", process: "135", from: "2025-01-01", until: "2027-01-01" };
const records = (more: Records): Records => ({ ...sound, ...more });
const naming = (id: string): Records => ({
  ...plant([]),
  // The label's item is fine; the sheet's subject link stands for any link to the missing record.
  joint: { ...sound["joint"], JX: { ...sound["joint"]?.["JC"], process: "135" } },
  report: {
    VT1: { method: "VT", date: "2026-03-20", rows: ["JA", "JC", "JE", "JX"].map((joint) => ({ joint, result: "ok" })) },
  },
  ...(id === "" ? {} : { plan: { S1: { evidence: id } } }),
});
const withPlan = {
  ...definitions,
  kinds: new Map([
    ...definitions.kinds,
    [
      "plan",
      {
        ...(definitions.kinds.get("label") as NonNullable<ReturnType<typeof definitions.kinds.get>>),
        name: "plan",
        fields: new Map([
          [
            "evidence",
            {
              name: "evidence",
              title: "",
              description: "",
              type: "link" as const,
              required: true,
              targets: ["qualification"],
            },
          ],
        ]),
      },
    ],
  ]),
};
const qualifications = sound["qualification"] ?? {};

describe("an objection that rests on a list of which a record is missing", () => {
  test("waits for it, when nothing else could be meant", () => {
    const book = judged(withPlan, { records: naming("QX") });
    expect(open(book)).toEqual(["gap missing|qualification:QX"]);
    expect(verdicts(book)["qualified|joint:JX"]).toBe("not judged: missing|qualification:QX");
    expect(finding(book, "missing|qualification:QX").waiting).toContain("qualified|joint:JX");
  });
  test("is said when nothing is missing", () => {
    expect(open(judged(withPlan, { records: naming("QAB") }))).toEqual(["nonconformity qualified|welder:WCD|135"]);
  });
  test("is said when two are missing, since nobody can tell which", () => {
    const book = judged(withPlan, {
      records: { ...naming("QX"), plan: { S1: { evidence: "QX" }, S2: { evidence: "QY" } } },
    });
    expect(open(book)).toEqual([
      "gap missing|qualification:QX",
      "gap missing|qualification:QY",
      "nonconformity qualified|welder:WCD|135",
    ]);
  });
  test("is said when another record is objected to as well", () => {
    const lapsed = {
      ...naming("QX"),
      qualification: { ...qualifications, QAB: { ...extra, welder: "WAB", until: "2026-01-01" } },
    };
    expect(open(judged(withPlan, { records: lapsed }))).toEqual([
      "gap missing|qualification:QX",
      "nonconformity qualified|welder:WAB|135",
      "nonconformity qualified|welder:WCD|135",
    ]);
  });
  test("is said when the gap is waived: what depended on it is judged", () => {
    const before = judged(withPlan, { records: naming("QX") });
    const waiver = answering(before, ["missing|qualification:QX"]);
    expect(open(judged(withPlan, { records: { ...naming("QX"), waiver: { V1: waiver } } }))).toEqual([
      "nonconformity qualified|welder:WCD|135",
    ]);
  });
  test("passes once the record is there", () => {
    expect(
      open(judged(withPlan, { records: { ...naming("QX"), qualification: { ...qualifications, QX: extra } } })),
    ).toEqual([]);
  });
});

test("the sound book stays sound beside a plan", () => {
  expect(open(judged(withPlan, { records: records({ plan: { S1: { evidence: "QAB" } } }) }))).toEqual([]);
});
