import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import { calculation, type Calculation, type ListFunction } from "../../src/model/calculation.ts";
import { optional, quantity as quantityOf, text as textOf } from "../../src/model/input.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { rule } from "../../src/model/rule.ts";
import type { Table } from "../../src/model/table.ts";
import {
  answering,
  basis,
  define,
  fault,
  finding,
  judged,
  open,
  owes,
  verdicts,
  type SmallBook,
} from "../support/small-book.ts";
import { flag, link, list, object, oneOf, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { due: "now" }),
    diameter: quantity("mm", { due: "now" }),
    pressure: quantity("MPa", { due: "now" }),
    allowance: quantity("mm"),
    grade: text({ due: "now" }),
    class: oneOf(["I", "II", "III"], { due: "now" }),
    bearing: flag({ due: "now" }),
    plate: link("plate"),
    readings: list(object({ value: quantity("mm", { due: "now" }) }), { due: "now" }),
  },
  plate: { grade: text({ due: "now" }) },
};
const strength: Table = {
  id: "strength",
  title: "Strength",
  standard: "S 1",
  keys: [
    { name: "grade", match: "equal" },
    { name: "thickness", match: "interval", unit: "mm" },
  ],
  columns: { yield: { unit: "MPa", means: "yield strength" }, hot: { unit: "MPa", means: "hot strength" } },
  rows: [
    { keys: { grade: "A", thickness: { over: 0, upTo: 16 } }, values: { yield: "200 MPa", hot: "150 MPa" }, basis },
    { keys: { grade: "A", thickness: { over: 16, upTo: 40 } }, values: { yield: "190 MPa" }, basis },
  ],
};
const empty = { limits: [], accept: [], compared: [], covers: "a test", examples: [], basis } as const;
const stress = calculation({
  ...empty,
  id: "stress",
  title: "Stress",
  appliesTo: { kind: "part", when: [{ path: "bearing", equals: true }] },
  inputs: { R: { path: "table(strength, grade, thickness).yield", unit: "MPa", means: "yield strength" } },
  steps: [{ symbol: "f", unit: "MPa", means: "design stress", formula: "R/2" }],
});
const wall = calculation({
  ...empty,
  id: "wall",
  title: "Wall",
  appliesTo: { kind: "part", when: [{ path: "bearing", equals: true }] },
  inputs: {
    p: { path: "pressure", unit: "MPa", means: "pressure", unsafe: "low" },
    D: { path: "diameter", unit: "mm", means: "diameter", unsafe: "low" },
    f: { path: "calculation(stress).f", unit: "MPa", means: "design stress" },
    c: { path: "allowance", unit: "mm", means: "allowance", need: "optional", otherwise: 0 },
    e: { path: "thickness", unit: "mm", means: "thickness", unsafe: "high" },
  },
  steps: [{ symbol: "t", unit: "mm", means: "required thickness", formula: "p*D/(2*f) + c" }],
  limits: [
    {
      left: "t",
      relation: "<=",
      right: "D/10",
      means: "the wall is thin",
      wrong: "the required wall is {left}, above {right}, a tenth of the diameter",
    },
  ],
  accept: [{ left: "e", relation: ">=", right: "t", means: "the wall is thick enough", accuses: "e" }],
});
const sound = {
  thickness: "10 mm",
  diameter: "1000 mm",
  pressure: "1 MPa",
  grade: "A",
  class: "I",
  bearing: true,
  readings: [{ value: "10 mm" }],
};
const run = (
  calculations: readonly Calculation[],
  part: object,
  more: Partial<SmallBook> & { readonly define?: object } = {},
) => {
  const { define: own = {}, ...book } = more;
  return judged(define({ kinds, calculations, tables: [strength], ...own }), {
    ...book,
    records: { part: { P1: { ...sound, ...part } }, ...more.records },
  });
};
const both = [wall, stress];
const doneOf = ({ computed }: Pick<JudgedBook, "computed">) => computed.filter((one) => one.state === "done");

describe("inputs before results", () => {
  test("whatever the order of the list", () => {
    const book = run(both, {});
    expect(verdicts(book)).toEqual({ "stress|part:P1": "computed", "wall|part:P1": "passed" });
    expect(doneOf(book).map(({ calculation: { id }, steps }) => [id, steps[0]?.value])).toEqual([
      ["stress", 100],
      ["wall", 5],
    ]);
  });
  test("a result carries every place it rests on", () => {
    const wallDone = doneOf(run(both, {})).find(({ calculation: { id } }) => id === "wall");
    expect([...(wallDone?.reads.values() ?? [])].flatMap((places) => [...places])).toEqual(
      expect.arrayContaining(["part:P1/pressure", "part:P1/grade", "part:P1/thickness"]),
    );
  });
  test("a circle is refused, by name", () => {
    const a = {
      ...stress,
      id: "a",
      inputs: { x: { path: "calculation(b).f", unit: "MPa", means: "x" } },
      steps: [{ symbol: "f", unit: "MPa", means: "f", formula: "x" }],
    };
    const b = { ...a, id: "b", inputs: { x: { path: "calculation(a).f", unit: "MPa", means: "x" } } };
    expect(() => planOf(define({ kinds, calculations: [a, b] }))).toThrow(
      "calculations need each other in a circle: a, b",
    );
  });
  test("a circle by way of a table's key is one too", () => {
    const byKey = {
      ...stress,
      inputs: { R: { path: "table(strength, grade, calculation(wall).t).yield", unit: "MPa", means: "R" } },
    };
    expect(() => planOf(define({ kinds, calculations: [byKey, wall], tables: [strength] }))).toThrow("in a circle");
  });
  test("what the first waits for, the second waits for too", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/grade");
    const book = run(both, {}, { findings: [wrong] });
    const because = "not judged: record-schema|part:P1|grade";
    expect(verdicts(book)).toEqual({ "stress|part:P1": because, "wall|part:P1": because });
  });
  test("an absent input: one gap, both wait", () => {
    const { grade: _, ...rest } = sound;
    const book = judged(define({ kinds, calculations: both, tables: [strength] }), { records: { part: { P1: rest } } });
    expect(open(book)).toEqual(["gap missing|part:P1|grade"]);
    expect(finding(book, "missing|part:P1|grade").waiting).toEqual(["stress|part:P1", "wall|part:P1"]);
  });
  test("not applicable hands on: what reads it does not apply either", () => {
    expect(verdicts(run(both, { bearing: false }))).toEqual({
      "stress|part:P1": "not applicable",
      "wall|part:P1": "not applicable",
    });
  });
});

describe("tables", () => {
  test("no row: one query for the keys, whoever asks, and no pass", () => {
    const book = run(both, { grade: "B" });
    expect(open(book)).toEqual(["query table-row|grade B"]);
    const because = "not judged: table-row|grade B";
    expect(verdicts(book)).toEqual({ "stress|part:P1": because, "wall|part:P1": because });
  });
  test("two subjects with the same keys share it, others have their own", () => {
    const records = { part: { P2: { ...sound, grade: "B" }, P3: { ...sound, grade: "C" } } };
    const book = judged(define({ kinds, calculations: [stress], tables: [strength] }), {
      records: { part: { P1: { ...sound, grade: "B" }, ...records.part } },
    });
    expect(open(book)).toEqual(["query table-row|grade B", "query table-row|grade C"]);
    expect(finding(book, "table-row|grade B").waiting).toEqual(["stress|part:P1", "stress|part:P2"]);
  });
  test("it accuses the keys: later stages wait", () => {
    const other = rule({
      id: "grade-known",
      title: "grade",
      basis,
      owner: "design",
      severity: "nonconformity",
      kind: "plate",
      inputs: { grade: optional(textOf("<part:plate>.grade")) },
      *check({ grade }) {
        if (grade === "Z") yield { at: "grade", message: "m", why: "w", hint: "h" };
      },
      examples: [],
    });
    const book = run(
      [stress],
      { grade: "B", plate: "PL1" },
      { records: { plate: { PL1: { grade: "A" } } }, define: { rules: [other] } },
    );
    expect(verdicts(book)["grade-known|plate:PL1"]).toBe("not judged: table-row|grade B");
  });
  test.each([
    ["16 mm", 100],
    ["16.1 mm", 95],
    ["40 mm", 95],
  ])("an interval's ends: %s", (thickness, f) => {
    expect(doneOf(run([stress], { thickness }))[0]?.steps[0]?.value).toBe(f);
  });
  test("beyond the last interval there is no row", () => {
    expect(open(run([stress], { thickness: "40.1 mm" }))).toEqual(["query table-row|grade A, thickness 40.1 mm"]);
  });
  test("an empty cell is not judged", () => {
    const hot = {
      ...stress,
      inputs: { R: { path: "table(strength, grade, thickness).hot", unit: "MPa", means: "hot" } },
    };
    expect(open(run([hot], {}))).toEqual([]);
    expect(open(run([hot], { thickness: "20 mm" }))).toEqual(["query table-row|grade A, thickness 20 mm hot"]);
  });
});

describe("limits of validity", () => {
  const thick = { pressure: "25 MPa", thickness: "16 mm" };
  test("outside: not judged, with a query; nothing is accepted or refused", () => {
    const book = run(both, thick);
    expect(open(book)).toEqual(["query wall|part:P1|limit t too high"]);
    expect(verdicts(book)["wall|part:P1"]).toBe("not judged: wall|part:P1|limit t too high");
    expect(doneOf(book).map(({ calculation: { id } }) => id)).toEqual(["stress"]);
    const [waiting] = book.computed.filter(({ state }) => state === "waiting");
    expect(waiting?.outcome.because).toEqual({ type: "finding", keys: ["wall|part:P1|limit t too high"] });
    expect(waiting?.limits.map(({ verdict, finding }) => [verdict, finding])).toEqual([
      ["not judged", "wall|part:P1|limit t too high"],
    ]);
  });
  test("at the limit it is inside", () => {
    expect(open(run(both, { ...thick, pressure: "20 MPa", thickness: "16 mm" }))).toEqual([
      "nonconformity wall|part:P1|e too low",
    ]);
  });
  const reader = rule({
    id: "reads-wall",
    title: "reads",
    basis,
    owner: "design",
    severity: "nonconformity",
    kind: "part",
    when: [{ path: "bearing", equals: true }],
    inputs: { t: quantityOf("calculation(wall).t", "cm") },
    *check({ t }) {
      if (t.value > 1) yield { at: "subject", message: `required ${t.value} cm`, why: "w", hint: "h" };
    },
    examples: [],
  });
  test("what reads the result waits; when the query is answered, that it still waits is a gap of its own", () => {
    const book = run(both, thick, { define: { rules: [reader] } });
    const key = "wall|part:P1|limit t too high";
    expect(verdicts(book)["reads-wall|part:P1"]).toBe(`not judged: ${key}`);
    const answer = answering(book, [key]);
    const answered = run(both, thick, { define: { rules: [reader] }, records: { "answered-query": { Q1: answer } } });
    expect(open(answered)).toEqual([`gap waiting|${key}`]);
    const waiver = answering(answered, [`waiting|${key}`]);
    const accepted = run(both, thick, {
      define: { rules: [reader] },
      records: { "answered-query": { Q1: answer }, waiver: { V1: waiver } },
    });
    expect(open(accepted)).toEqual([]);
    expect(accepted.counts).toMatchObject({ lifted: 2, answered: 2, notJudged: 0 });
  });
  test("a rule gets a result in its own unit", () => {
    expect(open(run(both, { pressure: "3 MPa", thickness: "15 mm" }, { define: { rules: [reader] } }))).toEqual([
      "nonconformity reads-wall|part:P1|",
    ]);
    expect(open(run(both, { pressure: "2 MPa" }, { define: { rules: [reader] } }))).toEqual([]);
  });
});

describe("acceptance", () => {
  const tolerance = rule({
    id: "tolerance",
    title: "tolerance",
    basis,
    owner: "shop",
    severity: "nonconformity",
    kind: "plate",
    inputs: { thickness: optional(quantityOf("<part:plate>.thickness", "mm")) },
    *check({ thickness }) {
      if ((thickness?.value ?? 10) < 9) yield { at: "thickness", message: "m", why: "w", hint: "h" };
    },
    examples: [],
  });
  test("failing accuses the judged value, before later stages look at it", () => {
    const book = run(
      both,
      { thickness: "4.9 mm", plate: "PL1" },
      { records: { plate: { PL1: { grade: "A" } } }, define: { rules: [tolerance] } },
    );
    const key = "wall|part:P1|e too low";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key).place).toEqual({ file: "part/P1.json", pointer: "/thickness" });
    expect(verdicts(book)).toMatchObject({ "wall|part:P1": "failed", "tolerance|plate:PL1": `not judged: ${key}` });
  });
  test("a value that several subjects are judged by is one finding about that value", () => {
    const shared = {
      ...wall,
      inputs: { ...wall.inputs, p: { path: "book.plate.thickness", unit: "mm", means: "least thickness" } },
      steps: [{ symbol: "t", unit: "mm", means: "required thickness", formula: "p*f/f" }],
      accept: [{ left: "e", relation: ">=", right: "t", means: "the wall is thick enough", accuses: "p" }],
    } satisfies Calculation;
    const plate = { ...kinds.plate, thickness: quantity("mm", { due: "now" }) };
    const book = judged(
      define({
        kinds: { ...kinds, plate },
        calculations: [shared, stress],
        tables: [strength],
        owed: [owes("plates", "book", "book.plate")],
      }),
      {
        records: {
          part: { P1: sound, P2: { ...sound, thickness: "11 mm" }, P3: { ...sound, thickness: "30 mm" } },
          plate: { PL1: { grade: "A", thickness: "20 mm" } },
        },
      },
    );
    const key = "wall|plate:PL1|thickness e too low";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key).related.map(({ message }) => message)).toEqual([
      "part P2: the thickness is 11 mm, below the required thickness, 20 mm",
    ]);
    expect(verdicts(book)).toMatchObject({
      "wall|part:P1": "failed",
      "wall|part:P2": "failed",
      "wall|part:P3": "passed",
    });
  });
  test("equality is enough", () => {
    expect(open(run(both, { thickness: "5 mm" }))).toEqual([]);
    expect(open(run(both, { thickness: "4.999999 mm" }))).toEqual(["nonconformity wall|part:P1|e too low"]);
  });
  test("an optional input that is absent takes its default, and is seen when it is there", () => {
    expect(open(run(both, { thickness: "5 mm", allowance: "0.1 mm" }))).toEqual([
      "nonconformity wall|part:P1|e too low",
    ]);
  });
  test("one that needs an optional input is skipped without it", () => {
    const asks = {
      ...wall,
      accept: [{ left: "c", relation: ">=", right: "'1 mm'", means: "allowance", accuses: "c", needs: "c" }],
    } satisfies Calculation;
    expect(open(run([asks, stress], {}))).toEqual([]);
    expect(open(run([asks, stress], { allowance: "0.5 mm" }))).toEqual(["nonconformity wall|part:P1|c too low"]);
  });
});

describe("bounds", () => {
  test("the end on the unsafe side is put in, and it is said", () => {
    const book = run(both, { pressure: "<1 MPa" });
    expect(book.computed.find(({ calculation: { id } }) => id === "wall")?.inputs.get("p")).toMatchObject({
      value: 1,
      bound: "high",
      written: "<1 MPa",
    });
    const least = calculation({
      ...empty,
      id: "least",
      title: "Least",
      appliesTo: { kind: "part" },
      inputs: { e: { path: "thickness", unit: "mm", means: "thickness", unsafe: "high" } },
      steps: [],
      accept: [{ left: "e", relation: ">=", right: "'5 mm'", means: "thick enough", accuses: "e" }],
    });
    expect(open(run([least], { thickness: ">6 mm" }))).toEqual([]);
    expect(open(run([least], { thickness: ">4 mm" }))).toEqual(["nonconformity least|part:P1|e too low"]);
  });
  test("an open end is no value: a query", () => {
    expect(open(run(both, { pressure: ">1 MPa" }))[0]).toMatch(/^query value-usable\|part:P1\|pressure/);
  });
});

describe("classes and rows", () => {
  const byClass = calculation({
    ...empty,
    id: "by-class",
    title: "By class",
    appliesTo: { kind: "part" },
    inputs: { k: { path: "class", unit: "1", means: "class", options: ["I", "II"] } },
    steps: [{ symbol: "next", unit: "1", means: "next class", formula: "k + 1", options: ["I", "II", "III"] }],
  });
  test("a class enters by its place, a result leaves by its name", () => {
    const named = rule({
      id: "named",
      title: "named",
      basis,
      owner: "design",
      severity: "nonconformity",
      kind: "part",
      inputs: { next: textOf("calculation(by-class).next") },
      *check({ next }) {
        if (next !== "II") yield { at: "subject", message: `next is ${next}`, why: "w", hint: "h" };
      },
      examples: [],
    });
    expect(open(run([byClass], {}, { define: { rules: [named] } }))).toEqual([]);
    expect(finding(run([byClass], { class: "II" }, { define: { rules: [named] } }), "named|part:P1|").message).toBe(
      "next is III",
    );
  });
  test("a class the calculation does not know is a query, never a number", () => {
    expect(open(run([byClass], { class: "III" }))).toEqual(["query value-usable|part:P1|class|option"]);
  });
  const least: ListFunction = {
    name: "least",
    means: "least of the readings",
    basis,
    parameters: [{ name: "readings", unit: "rows" }],
    unit: "mm",
    compute: (rows) => {
      if (!Array.isArray(rows)) throw new Error("rows expected");
      const values = rows.map((row) => (row as unknown as { value: { value: number } }).value.value);
      return values.length < 2
        ? { refused: `${values.length} reading, two are needed` }
        : { value: Math.min(...values), lines: [`least of ${values.join(", ")}`] };
    },
  };
  const measured = calculation({
    ...empty,
    id: "measured",
    title: "Measured",
    appliesTo: { kind: "part" },
    inputs: {
      readings: { path: "readings[]", unit: "rows", means: "readings", rows: { value: quantityOf("value", "mm") } },
    },
    functions: [least],
    steps: [{ symbol: "m", unit: "mm", means: "least", formula: "least(readings)" }],
  });
  test("a named function gets the rows, and its lines are kept", () => {
    const [done] = doneOf(run([measured], { readings: [{ value: "9 mm" }, { value: "8.5 mm" }] }));
    expect(done?.steps[0]).toMatchObject({ value: 8.5, lines: ["least of 9, 8.5"] });
  });
  test("one that refuses: not judged, with its reason", () => {
    const book = run([measured], {});
    expect(open(book)).toEqual(["query measured|part:P1|refused"]);
    expect(finding(book, "measured|part:P1|refused").message).toBe("part P1: 1 reading, two are needed");
  });
  test("a value absent in a row: one gap, not judged", () => {
    const book = run([measured], { readings: [{ value: "9 mm" }, {}] });
    expect(open(book)).toEqual(["gap missing|part:P1|readings (1) value"]);
  });
  test("an empty list is absent", () => {
    expect(open(run([measured], { readings: [] }))).toEqual(["gap missing|part:P1|readings"]);
  });
  const needing = (need: "any" | "optional"): Calculation => ({
    ...measured,
    inputs: { readings: { path: "plate.<part:plate>", unit: "rows", means: "readings", need, rows: {} } },
  });
  test("optional rows of which there are none: the steps that need them are left out", () => {
    const more = [...measured.steps, { symbol: "two", unit: "1", means: "two", formula: "2" }];
    const book = run([{ ...needing("optional"), steps: more, accept: [] }], {});
    expect(open(book)).toEqual([]);
    expect(doneOf(book)[0]?.steps.map(({ step }) => step.symbol)).toEqual(["two"]);
  });
  test("a calculation of which nothing is left has shown nothing", () => {
    const book = run([{ ...needing("optional"), accept: [] }], {});
    expect(open(book)).toEqual(["query measured|part:P1|refused"]);
  });
  test("an acceptance is left out with the value it names, and with no other", () => {
    const more = [...measured.steps, { symbol: "two", unit: "1", means: "two", formula: "2" }];
    const [step] = measured.steps;
    const one = {
      left: step?.symbol ?? "",
      relation: ">",
      right: "'0 mm'",
      means: "enough",
      accuses: "readings",
    } as const;
    const judge = (accept: Calculation["accept"]) => open(run([{ ...needing("optional"), steps: more, accept }], {}));
    expect(judge([{ ...one, needs: "readings" }])).toEqual([]);
    expect(judge([one])).toEqual(["query measured|part:P1|refused"]);
  });
  test("rows of which none is fine: the function gets the empty list", () => {
    expect(finding(run([needing("any")], {}), "measured|part:P1|refused").message).toBe(
      "part P1: 0 reading, two are needed",
    );
  });
});

test("a second method that disagrees is a query", () => {
  const checked: Calculation = {
    ...wall,
    crossCheck: { means: "by halves", symbol: "t", formula: "p*D/f", unit: "mm", within: "0.01*t", basis },
  };
  expect(open(run([checked, stress], {}))).toEqual(["query wall|part:P1|second method"]);
});

test("a formula that has no value is refused, not a number", () => {
  const divided = { ...wall, steps: [{ symbol: "t", unit: "mm", means: "t", formula: "D*p/(p - p)" }] };
  expect(open(run([divided, stress], {}))).toEqual(["query wall|part:P1|refused"]);
});

test("a calculation of something that is owed by the register alone", () => {
  const noted = {
    ...stress,
    inputs: { R: { path: "plate.grade", unit: "1", means: "R", options: ["A", "B"] } },
    steps: [{ symbol: "f", unit: "1", means: "f", formula: "R" }],
    appliesTo: { kind: "part" },
  } satisfies Calculation;
  const book = run(
    [noted],
    { plate: "PL1" },
    { records: { plate: { PL1: { grade: "A" } } }, define: { owed: [owes("plate", "part", "plate")] } },
  );
  expect(verdicts(book)).toEqual({ "stress|part:P1": "computed", "plate|part:P1": "passed" });
});
