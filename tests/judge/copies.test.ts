import { describe, expect, test } from "vitest";
import { answering, finding, open, verdicts } from "../support/small-book.ts";
import { inputs, run, sheet, stress, wall, type Sheet } from "./wall-sheets.ts";

describe("what sheets copy from records", () => {
  const thin = "nonconformity wall|part:P1|e too low";
  const sheets = (...all: readonly Sheet[]) => ({
    "calculation-sheet": Object.fromEntries(all.map((one, index) => [`S${index + 1}`, sheet(one)])),
  });
  test("one sheet against the record: what the record's value would fail is said with it", () => {
    const book = run({}, { thickness: "5 mm" });
    const key = "wall/inputs|calculation-sheet:S1|input e";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    const { related, waiting, place } = finding(book, key);
    expect(place).toEqual({ file: "calculation-sheet/S1.json", pointer: "/inputs/3/value" });
    expect(related.map(({ message, place: at }) => `${at.file} ${message}`)).toEqual([
      "part/P1.json waits for this: part P1: the thickness is 5 mm, below the required thickness, 5.556 mm",
      "part/P1.json 5 mm here",
    ]);
    expect(waiting).toContain("wall|part:P1");
    expect(verdicts(book)["wall|part:P1"]).toBe(`not judged: ${key}`);
  });
  test("what passes with the record's value passes", () => {
    const book = run({ inputs: { ...inputs, e: "9 mm" } });
    expect(open(book)).toEqual(["nonconformity wall/inputs|calculation-sheet:S1|input e"]);
    expect(verdicts(book)["wall|part:P1"]).toBe("passed");
  });
  test("one thing wrong in record and sheet alike is what acceptance says", () => {
    expect(open(run({ inputs: { ...inputs, e: "5 mm" } }, { thickness: "5 mm" }))).toEqual([thin]);
  });
  test("a deviation that accepts the difference does not accept what it failed", () => {
    const key = "wall/inputs|calculation-sheet:S1|input e";
    const accepted = answering(run({}, { thickness: "5 mm" }), [key]);
    const book = run({}, { thickness: "5 mm" }, [wall, stress], { deviation: { D1: accepted } });
    expect(open(book)).toEqual([thin]);
    expect(verdicts(book)["wall/inputs|calculation-sheet:S1#e"]).toBe("failed");
  });
  test("several sheets outvote the record: one finding, there", () => {
    const book = run({}, { thickness: "5 mm" }, [wall, stress], sheets({}, { results: { t: "9 mm" } }));
    const key = "value-copied|part:P1|thickness";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key)).toMatchObject({
      place: { file: "part/P1.json", pointer: "/thickness" },
      message: "the thickness of part P1 is 5 mm, but 10 mm on 2 sheets",
      why: "copied as thickness, by S1, S2",
    });
    expect(verdicts(book)).toMatchObject({
      "wall/inputs|calculation-sheet:S1#e": "failed",
      "wall/inputs|calculation-sheet:S2#e": "failed",
      "wall/results|calculation-sheet:S2": `not judged: ${key}`,
      "wall|part:P1": `not judged: ${key}`,
    });
  });
  test("sheets that differ from the record and from each other: one finding that doubts all", () => {
    const book = run({}, { thickness: "5 mm" }, [wall, stress], sheets({}, { inputs: { ...inputs, e: "12 mm" } }));
    const key = "value-copied|part:P1|thickness";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key).message).toBe(
      "the thickness of part P1 is 5 mm, but 10 mm on sheet S1, 12 mm on sheet S2",
    );
    expect(finding(book, key)).toMatchObject({
      accuses: ["calculation-sheet:S1/inputs/3/value", "calculation-sheet:S2/inputs/3/value"],
      disputes: ["part:P1/thickness"],
    });
  });
  test("a sheet confirms the record: the other is at fault, and the record's own fault stands beside it", () => {
    const alike = { inputs: { ...inputs, e: "5 mm" } };
    const book = run({}, { thickness: "5 mm" }, [wall, stress], sheets(alike, alike, {}));
    // What acceptance says of 5 mm comes first; the sheet that copied otherwise waits for it.
    expect(open(book)).toEqual([thin]);
    const sound = run({}, {}, [wall, stress], sheets({}, {}, { inputs: { ...inputs, e: "9 mm" } }));
    expect(open(sound)).toEqual(["nonconformity wall/inputs|calculation-sheet:S3|input e"]);
    expect(verdicts(sound)["wall|part:P1"]).toBe("passed");
  });
  test("a computed input waits for what its calculation read", () => {
    // The class decides f; a sheet of f states the other class, a sheet of t the f that follows from it.
    const other: Sheet = { calculation: "stress", inputs: { k: "II" } };
    const book = run({}, {}, [wall, stress], sheets(other, { inputs: { ...inputs, f: "100 MPa" } }));
    expect(open(book)).toEqual(["nonconformity stress/inputs|calculation-sheet:S1|input k"]);
  });
});
