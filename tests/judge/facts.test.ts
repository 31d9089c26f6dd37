import { describe, expect, test } from "vitest";
import type { Fact } from "../../src/model/fact.ts";
import { quantity as quantityOf, optional } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { basis, define, fault, finding, judged, open, verdicts, type Records } from "../support/small-book.ts";
import { day, link, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  item: { pressure: quantity("bar"), serial: text(), made: day() },
  plate: { pressure: quantity("bar"), serial: text(), of: link("item"), made: day() },
  paper: { pressure: quantity("bar"), of: link("item"), made: day() },
  drawing: { pressure: quantity("bar") },
};
const pressure: Fact = {
  id: "pressure",
  title: "the pressure",
  basis,
  reading: { type: "quantity", unit: "bar" },
  owner: "design",
  statements: ["book.item.pressure", "book.plate.pressure", "book.paper.pressure", "book.drawing.pressure"],
};
const run = (records: Records, fact: Fact = pressure, more = {}) =>
  judged(define({ kinds, facts: [fact], ...more }), { records });
const stating = (...texts: readonly (string | null)[]): Records =>
  Object.fromEntries(
    ["item", "plate", "paper", "drawing"].map((kind, index) => [
      kind,
      { X1: texts[index] == null ? {} : { pressure: texts[index] ?? "" } },
    ]),
  );
const accused = (book: ReturnType<typeof run>, key = "pressure|book|") => [...finding(book, key).accuses].sort();

describe("one fact, several records", () => {
  test("all agree", () =>
    expect(verdicts(run(stating("11 bar", "11 bar", "11 bar", "11 bar")))).toEqual({ pressure: "passed" }));
  test("units differ, values do not", () => {
    expect(open(run(stating("11 bar", "1.1 MPa", "1100 kPa", "11.0 bar")))).toEqual([]);
  });
  test("the odd one is accused", () => {
    const book = run(stating("11 bar", "11 bar", "12 bar", "1.1 MPa"));
    expect(open(book)).toEqual(["nonconformity pressure|book|"]);
    expect(accused(book)).toEqual(["paper:X1/pressure"]);
    const one = finding(book, "pressure|book|");
    expect(one.subject).toEqual({ kind: "paper", id: "X1" });
    expect(one.message).toBe("the pressure is 12 bar in paper X1, but 11 bar in 3 other records");
    expect(one.owner).toBe("design");
  });
  test("two against one of three is one odd", () =>
    expect(accused(run(stating("11 bar", "12 bar", "11 bar", null)))).toEqual(["plate:X1/pressure"]));
  test("two against two: all are accused", () => {
    expect(accused(run(stating("11 bar", "11 bar", "12 bar", "12 bar")))).toHaveLength(4);
  });
  test("all differ: all are accused, as one finding", () => {
    const book = run(stating("11 bar", "12 bar", "13 bar", null));
    expect(open(book)).toEqual(["nonconformity pressure|book|"]);
    expect(accused(book)).toEqual(["item:X1/pressure", "paper:X1/pressure", "plate:X1/pressure"]);
  });
  test("two only: both are accused", () =>
    expect(accused(run(stating("11 bar", null, "12 bar", null)))).toEqual(["item:X1/pressure", "paper:X1/pressure"]));
  test("absent statements are no difference", () => {
    expect(verdicts(run(stating("11 bar", null, "11 bar", null)))).toEqual({ pressure: "passed" });
    expect(verdicts(run(stating("11 bar", null, null, null)))).toEqual({ pressure: "not applicable" });
    expect(verdicts(run({}))).toEqual({ pressure: "not applicable" });
  });
  test("a bound decides nothing: a query", () => {
    expect(open(run(stating("11 bar", "<12 bar", null, null)))).toEqual(["query pressure|book|"]);
    expect(open(run(stating("11 bar", "<10 bar", null, null)))).toEqual(["nonconformity pressure|book|"]);
  });
  test("a statement that was accused before: not judged because of it", () => {
    const wrong = fault("record-schema", ["plate", "X1"], "/pressure");
    const book = judged(define({ kinds, facts: [pressure] }), {
      records: stating("11 bar", "12 bar", "11 bar", null),
      findings: [wrong],
    });
    expect(open(book)).toEqual(["nonconformity record-schema|plate:X1|pressure"]);
    expect(verdicts(book)).toEqual({ pressure: "not judged: record-schema|plate:X1|pressure" });
  });
  test("what reads the odd one later waits; what reads the others does not", () => {
    const high = rule({
      id: "high",
      title: "high",
      basis,
      owner: "design",
      severity: "nonconformity",
      kind: "item",
      inputs: {
        own: optional(quantityOf("pressure", "bar")),
        plate: optional(quantityOf("<plate:of>.pressure", "bar")),
      },
      *check({ own, plate }) {
        if ((own?.value ?? 0) + (plate?.value ?? 0) > 1000) yield { at: "own", message: "m", why: "w", hint: "h" };
      },
      examples: [],
    });
    const records = {
      ...stating("11 bar", "12 bar", "11 bar", "11 bar"),
      plate: { X1: { pressure: "12 bar", of: "X1" } },
    };
    expect(verdicts(run(records, pressure, { rules: [high] }))["high|item:X1"]).toBe("not judged: pressure|book|");
    const other = {
      ...records,
      plate: { X1: { pressure: "11 bar", of: "X1" } },
      drawing: { X1: { pressure: "12 bar" } },
    };
    expect(verdicts(run(other, pressure, { rules: [high] }))["high|item:X1"]).toBe("passed");
  });
});

describe("other readings", () => {
  test("dates: a day and another", () => {
    const made: Fact = {
      ...pressure,
      id: "made",
      reading: { type: "date" },
      statements: ["book.item.made", "book.plate.made"],
    };
    expect(open(run({ item: { X1: { made: "2026-03-01" } }, plate: { X1: { made: "2026-03-01" } } }, made))).toEqual(
      [],
    );
    expect(open(run({ item: { X1: { made: "2026-03-01" } }, plate: { X1: { made: "2026-03-02" } } }, made))).toEqual([
      "nonconformity made|book|",
    ]);
  });
  test("texts, to the letter", () => {
    const serial: Fact = {
      ...pressure,
      id: "serial",
      reading: { type: "text" },
      statements: ["book.item.serial", "book.plate.serial"],
    };
    expect(open(run({ item: { X1: { serial: "A-1" } }, plate: { X1: { serial: "A-1" } } }, serial))).toEqual([]);
    expect(open(run({ item: { X1: { serial: "A-1" } }, plate: { X1: { serial: "A1" } } }, serial))).toEqual([
      "nonconformity serial|book|",
    ]);
  });
});

describe("statements about several things", () => {
  const each: Fact = {
    ...pressure,
    statements: ["book.item.pressure", "book.plate.pressure", "book.paper.pressure"],
    about: "of",
  };
  const ofItems: Fact = { ...each, statements: ["book.plate.pressure", "book.paper.pressure"] };
  const records = (second: string) => ({
    item: { A: {}, B: {} },
    plate: { P1: { of: "A", pressure: "11 bar" }, P2: { of: "B", pressure: "6 bar" } },
    paper: { Q1: { of: "A", pressure: "11 bar" }, Q2: { of: "B", pressure: second } },
  });
  test("are compared thing by thing", () => {
    expect(verdicts(run(records("6 bar"), ofItems))).toEqual({
      "pressure|item:A": "passed",
      "pressure|item:B": "passed",
    });
    expect(open(run(records("7 bar"), ofItems))).toEqual(["nonconformity pressure|item:B|"]);
  });
  test("a thing in doubt does not stop the others", () => {
    const wrong = fault("record-schema", ["plate", "P1"], "/pressure");
    const book = judged(define({ kinds, facts: [ofItems] }), { records: records("7 bar"), findings: [wrong] });
    expect(verdicts(book)).toEqual({
      "pressure|item:A": "not judged: record-schema|plate:P1|pressure",
      "pressure|item:B": "failed",
    });
  });
});
