import { describe, expect, test } from "vitest";
import type { Calculation } from "../../src/model/calculation.ts";
import { answering, define, fault, finding, judged, notes, open, owes, verdicts } from "../support/small-book.ts";
import { inputs, kinds, part, run, sheet, stress, wall, type Sheet } from "./wall-sheets.ts";

describe("results, half a unit of the last digit on the unsafe side, a whole one on the safe side", () => {
  test.each([
    ["5.6 mm", "safe, within a unit", [], []],
    ["5.5556 mm", "safe, within a unit", [], []],
    ["5.65 mm", "safe, beyond: 0.0944 above, 0.01 allowed", ["query wall/results|calculation-sheet:S1|result t"], []],
    ["6 mm", "safe: 0.444 above, 1 allowed", [], []],
    ["7 mm", "safe, beyond: 1.444 above, 1 allowed", ["query wall/results|calculation-sheet:S1|result t"], []],
    [
      "5.555 mm",
      "unsafe: 0.00056 below, 0.0005 allowed",
      ["nonconformity wall/results|calculation-sheet:S1|result t"],
      [],
    ],
    [
      "5.5555 mm",
      "unsafe: 0.00006 below, 0.00005 allowed",
      ["nonconformity wall/results|calculation-sheet:S1|result t"],
      [],
    ],
    ["5.5 mm", "unsafe: 0.056 below, 0.05 allowed", ["nonconformity wall/results|calculation-sheet:S1|result t"], []],
    ["0.55555556 cm", "in another unit", [], []],
    ["<6 mm", "a bound", ["query wall/results|calculation-sheet:S1|result t"], []],
    ["5.6 bar", "not in its dimension", ["nonconformity wall/results|calculation-sheet:S1|result t"], []],
  ])("%s: %s", (t, _, found, noted) => {
    const book = run({ results: { t } });
    expect(open(book)).toEqual(found);
    expect(notes(book).filter((key) => !key.startsWith("record-used"))).toEqual(noted);
  });
  test("rounded to the unsafe side within half a unit: it agrees", () => {
    const book = run({ results: { t: "5.43 mm" } }, { pressure: "0.9777 MPa" }, [wall, stress]);
    // t = 0.9777 · 1000 / 180 = 5.43167; the sheet's own pressure differs, so compare with the same.
    expect(open(book)).toContain("nonconformity wall/inputs|calculation-sheet:S1|input p");
    const same = run({ inputs: { ...inputs, p: "0.9777 MPa" }, results: { t: "5.43 mm" } }, { pressure: "0.9777 MPa" });
    expect(open(same)).toEqual([]);
    expect(notes(same)).toEqual([]);
    expect(verdicts(same)["wall/results|calculation-sheet:S1#t"]).toBe("passed");
  });
  test("the calculation's own tolerance counts on both sides", () => {
    const own: Calculation = { ...wall, compared: [{ symbol: "t", unsafe: "low", within: 0.06 }] };
    expect(open(run({ results: { t: "5.5 mm" } }, {}, [own, stress]))).toEqual([]);
    expect(open(run({ results: { t: "5.49 mm" } }, {}, [own, stress]))).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|result t",
    ]);
    expect(open(run({ results: { t: "5.61 mm" } }, {}, [own, stress]))).toEqual([]);
    expect(open(run({ results: { t: "5.62 mm" } }, {}, [own, stress]))).toEqual([
      "query wall/results|calculation-sheet:S1|result t",
    ]);
  });
  test("unsafe when too high", () => {
    const own: Calculation = { ...wall, compared: [{ symbol: "t", unsafe: "high" }] };
    expect(open(run({ results: { t: "5.6 mm" } }, {}, [own, stress]))).toEqual([]);
    expect(open(run({ results: { t: "5.62 mm" } }, {}, [own, stress]))).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|result t",
    ]);
    expect(open(run({ results: { t: "5.5 mm" } }, {}, [own, stress]))).toEqual([]);
    expect(open(run({ results: { t: "5.4 mm" } }, {}, [own, stress]))).toEqual([
      "query wall/results|calculation-sheet:S1|result t",
    ]);
  });
  test("unsafe on both sides: half a unit, no note", () => {
    const own: Calculation = { ...wall, compared: [{ symbol: "t", unsafe: "any" }] };
    expect(open(run({ results: { t: "5.56 mm" } }, {}, [own, stress]))).toEqual([]);
    expect(open(run({ results: { t: "5.55 mm" } }, {}, [own, stress]))).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|result t",
    ]);
    expect(open(run({ results: { t: "5.57 mm" } }, {}, [own, stress]))).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|result t",
    ]);
  });
  test("a class agrees by its name", () => {
    expect(open(run({ results: { cat: "high" } }))).toEqual([]);
    expect(open(run({ results: { cat: "low" } }))).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|result cat",
    ]);
  });
});

describe("inputs", () => {
  test.each([
    ["1 MPa", []],
    ["10 bar", []],
    ["1.000 MPa", []],
    ["1.1 MPa", ["nonconformity wall/inputs|calculation-sheet:S1|input p"]],
  ])("pressure %s", (p, found) => expect(open(run({ inputs: { ...inputs, p } }))).toEqual(found));
  test("within half a unit where that is at most 0.5 % of the value", () => {
    // 1000.4 mm rounded to 1000 mm: half a unit is 0.05 %.
    expect(open(run({}, { diameter: "1000.4 mm" }))).toEqual([]);
    expect(open(run({}, { diameter: "1000.6 mm" }))).toEqual([
      "nonconformity wall/inputs|calculation-sheet:S1|input D",
    ]);
    // 10.4 mm rounded to 10 mm: half a unit is 5 %.
    expect(open(run({}, { thickness: "10.4 mm" }))).toEqual(["nonconformity wall/inputs|calculation-sheet:S1|input e"]);
  });
  test("an input that another calculation computes is judged like a result", () => {
    expect(open(run({ inputs: { ...inputs, f: "89 MPa" } }))).toEqual([]);
    expect(open(run({ inputs: { ...inputs, f: "88 MPa" } }))).toEqual([
      "query wall/inputs|calculation-sheet:S1|input f",
    ]);
    expect(open(run({ inputs: { ...inputs, f: "91 MPa" } }))).toEqual([
      "nonconformity wall/inputs|calculation-sheet:S1|input f",
    ]);
  });
  test("one wrong input is one finding: the results wait for it", () => {
    // The maker put in 2 MPa and computed rightly from there.
    const book = run({ inputs: { ...inputs, p: "2 MPa" }, results: { t: "11.2 mm" } });
    const key = "wall/inputs|calculation-sheet:S1|input p";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(verdicts(book)["wall/results|calculation-sheet:S1#t"]).toBe(`not judged: ${key}`);
    expect(verdicts(book)["wall|part:P1"]).toBe("passed");
  });
  test("two wrong inputs are two findings", () => {
    expect(open(run({ inputs: { ...inputs, p: "2 MPa", D: "900 mm" } }))).toEqual([
      "nonconformity wall/inputs|calculation-sheet:S1|input D",
      "nonconformity wall/inputs|calculation-sheet:S1|input p",
    ]);
  });
  test("an input left out is a gap", () => {
    const { D: _, ...rest } = inputs;
    const book = run({ inputs: rest });
    expect(open(book)).toEqual(["gap wall/inputs|calculation-sheet:S1|left out"]);
    expect(finding(book, "wall/inputs|calculation-sheet:S1|left out").message).toBe(
      'sheet S1 does not state the diameter ("D")',
    );
  });
  test("a waiver of one left out does not cover another", () => {
    const { D: _, ...rest } = inputs;
    const key = "wall/inputs|calculation-sheet:S1|left out";
    const waiver = answering(run({ inputs: rest }), [key]);
    expect(open(run({ inputs: rest }, {}, [wall, stress], { waiver: { V1: waiver } }))).toEqual([]);
    const { e: __, ...less } = rest;
    expect(open(run({ inputs: less }, {}, [wall, stress], { waiver: { V1: waiver } }))).toEqual([`gap ${key}`]);
  });
  test("an optional input that no record gives need not be stated, and cannot be compared", () => {
    expect(open(run({}))).toEqual([]);
    expect(open(run({ inputs: { ...inputs, c: "1 mm" } }))).toEqual([
      "query wall/inputs|calculation-sheet:S1|unknown c",
    ]);
    expect(open(run({ inputs: { ...inputs, c: "1 mm" } }, { allowance: "1 mm" }))).toEqual([]);
    expect(open(run({}, { allowance: "1 mm" }))).toEqual(["gap wall/inputs|calculation-sheet:S1|left out"]);
  });
  test("an unknown symbol is a query; one that may be an input misspelt is no gap as well", () => {
    expect(open(run({ inputs: { ...inputs, x: "1 mm" } }))).toEqual([
      "query wall/inputs|calculation-sheet:S1|unknown x",
    ]);
    const { D: _, ...rest } = inputs;
    expect(open(run({ inputs: { ...rest, d: "1000 mm" } }))).toEqual([
      "query wall/inputs|calculation-sheet:S1|unknown d",
    ]);
  });
  test("an unknown result is a query", () => {
    expect(open(run({ results: { s: "5 mm" } }))).toEqual(["query wall/results|calculation-sheet:S1|unknown s"]);
  });
  test("an input repeated among the results is compared as an input", () => {
    const { e: _, ...rest } = inputs;
    expect(open(run({ inputs: rest, results: { e: "10 mm" } }))).toEqual([]);
    expect(open(run({ inputs: rest, results: { e: "11 mm" } }))).toEqual([
      "nonconformity wall/inputs|calculation-sheet:S1|input e",
    ]);
  });
});

describe("the adopted value", () => {
  test("is compared with the part's", () => {
    expect(open(run({ adopted: "10 mm" }))).toEqual([]);
    expect(open(run({ adopted: "10.0 mm" }))).toEqual([]);
    expect(open(run({ adopted: "12 mm" }))).toEqual(["nonconformity wall/results|calculation-sheet:S1|adopted e"]);
  });
  test("waits when acceptance has accused the part's value", () => {
    // The sheet states 5 mm too, and adopts another value: what acceptance says of 5 mm comes first.
    const book = run({ inputs: { ...inputs, e: "5 mm" }, adopted: "10 mm" }, { thickness: "5 mm" });
    expect(open(book)).toEqual(["nonconformity wall|part:P1|e too low"]);
    const because = "not judged: wall|part:P1|e too low";
    expect(verdicts(book)).toMatchObject({
      "wall/inputs|calculation-sheet:S1#e": because,
      "wall/results|calculation-sheet:S1#adopted": because,
    });
  });
  test("stands for the input it does not state", () => {
    const { e: _, ...rest } = inputs;
    const book = run({ inputs: { ...rest, x: "1 mm" }, adopted: "10 mm" }, { thickness: "5 mm" });
    expect(open(book)).toEqual([
      "nonconformity wall/results|calculation-sheet:S1|adopted e",
      "query wall/inputs|calculation-sheet:S1|unknown x",
    ]);
    expect(verdicts(book)["wall|part:P1"]).toBe("not judged: wall/results|calculation-sheet:S1|adopted e");
  });
});

describe("every sheet is compared", () => {
  test("two sheets about one part", () => {
    const book = run({ results: { t: "5.6 mm" } }, {}, [wall, stress], {
      "calculation-sheet": { S1: sheet({ results: { t: "5.6 mm" } }), S2: sheet({ results: { t: "4 mm" } }) },
    });
    expect(open(book)).toEqual(["nonconformity wall/results|calculation-sheet:S2|result t"]);
    expect(book.computed.find((one) => one.calculation.id === "wall")?.sheets.map(({ record }) => record.id)).toEqual([
      "S1",
      "S2",
    ]);
  });
  test("no sheet: the calculation still runs, and the missing sheet is a gap", () => {
    const owed = [owes("sheet", "part", '<calculation-sheet:subject>[calculation="wall"]')];
    const book = judged(define({ kinds, calculations: [wall, stress], owed }), {
      records: {
        part: { P1: part },
        "calculation-sheet": {
          S9: { calculation: "stress", subject: "part:P1", inputs: [{ symbol: "k", word: "I" }] },
        },
      },
    });
    expect(open(book)).toEqual(["gap missing|part:P1|calculation-sheet wall"]);
    expect(verdicts(book)["wall|part:P1"]).toBe("passed");
  });
  test("one about an unknown calculation, or about what the calculation does not apply to", () => {
    expect(open(run({ calculation: "volume" }))).toEqual(["query sheet-compared|calculation-sheet:S1|"]);
    expect(open(run({}, { bearing: false }))).toEqual(["query sheet-compared|calculation-sheet:S1|"]);
  });
  test("one whose part is not in the book: that gap alone", () => {
    const book = judged(define({ kinds, calculations: [wall, stress] }), {
      records: { part: { P1: part }, "calculation-sheet": { S1: { ...sheet({}), subject: "part:P77" } } },
    });
    expect(open(book)).toEqual(["gap missing|part:P77"]);
  });
  test("one whose calculation waits: it waits for the same", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/pressure");
    const book = judged(define({ kinds, calculations: [wall, stress] }), {
      records: { part: { P1: part }, "calculation-sheet": { S1: sheet({ results: { t: "1 mm" } }) } },
      findings: [wrong],
    });
    expect(open(book)).toEqual(["nonconformity record-schema|part:P1|pressure"]);
    expect(verdicts(book)["wall/results|calculation-sheet:S1"]).toBe("not judged: record-schema|part:P1|pressure");
  });
  test("a value on the sheet that cannot be read is that finding alone", () => {
    const book = run({ inputs: { ...inputs, p: "1,0 MPa" }, results: { t: "9 mm" } });
    expect(open(book)).toEqual(["nonconformity quantity-form|calculation-sheet:S1|inputs (p) value"]);
  });
});

test("the recomputation never reads the sheet", () => {
  const values = (one: Sheet) =>
    run(one).computed.map((own) => (own.state === "done" ? own.steps.map(({ value }) => value) : own.outcome.because));
  expect(values({ inputs: { p: "7 MPa" }, results: { t: "1 mm" } })).toEqual(values({}));
});
