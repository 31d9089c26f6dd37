import { describe, expect, test } from "vitest";
import {
  anyOf,
  exists,
  list as listOf,
  optional,
  quantity as quantityOf,
  text as textOf,
  thing,
  things,
} from "../../src/model/input.ts";
import { rule, type Rule } from "../../src/model/rule.ts";
import { basis, define, fault, judged, open, owes, verdicts, type Records } from "../support/small-book.ts";
import { flag, link, list, object, oneOf, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { due: "now" }),
    mark: text({ due: "welding" }),
    note: text(),
    marks: list(text()),
    rows: list(
      object({
        row: text({ required: true }),
        value: quantity("mm", { due: "now" }),
        method: oneOf(["RT", "UT"], { due: "now" }),
      }),
    ),
    pressure: flag({ due: "now" }),
    plate: link("plate"),
    other: link("plate"),
  },
  plate: { grade: text({ due: "now" }), thickness: quantity("mm"), number: text() },
  report: { part: link("part", { required: true }), method: oneOf(["RT", "UT"], { required: true }), result: text() },
};

const frame = { basis, owner: "shop", severity: "nonconformity", examples: [], title: "rule" } as const;
const silent: Pick<Rule, "check"> = {
  *check() {
    yield* [];
  },
};
const needing = (inputs: Rule["inputs"], more: Partial<Rule> = {}): Rule =>
  rule({
    ...frame,
    id: "r",
    kind: "part",
    inputs,
    *check(values) {
      Object.values(values);
      yield* [];
    },
    ...more,
  });

const run = (
  one: Rule,
  records: Records,
  more: Parameters<typeof define>[0] | object = {},
  findings = [] as ReturnType<typeof fault>[],
) => judged(define({ kinds, rules: [one], ...more }), { records, findings });
const part = (value: object) =>
  ({ part: { P1: { thickness: "8 mm", mark: "A", pressure: true, ...value } } }) as Records;
const only = (book: ReturnType<typeof run>) => verdicts(book)["r|part:P1"];

describe("required", () => {
  const rowNeeds = { owed: [owes("row", "part", "note")] };
  test("present: judged", () => {
    expect(only(run(needing({ t: quantityOf("thickness", "mm") }), part({})))).toBe("passed");
  });
  test("absent: not judged, one gap", () => {
    const book = run(needing({ note: textOf("note") }), part({}), rowNeeds);
    expect(open(book)).toEqual(["gap missing|part:P1|note"]);
    expect(only(book)).toBe("not judged: missing|part:P1|note");
  });
  test("an empty list is absent", () => {
    const book = run(needing({ marks: listOf(textOf("marks[]")) }), part({ marks: [] }), {
      owed: [owes("row", "part", "marks")],
    });
    expect(open(book)).toEqual(["gap missing|part:P1|marks"]);
    expect(verdicts(book)).toEqual({
      "r|part:P1": "not judged: missing|part:P1|marks",
      "row|part:P1": "not judged: missing|part:P1|marks",
    });
  });
  test("an input that the code never reads is still needed", () => {
    expect(only(run(needing({ note: textOf("note") }, silent), part({}), rowNeeds))).toBe(
      "not judged: missing|part:P1|note",
    );
  });
  test("read as what it is not: a query, not judged", () => {
    const kindsAny = { ...kinds, part: { ...kinds.part, thickness: quantity("any", { due: "now" }) } };
    const book = run(needing({ t: quantityOf("thickness", "mm") }), part({ thickness: "8 bar" }), { kinds: kindsAny });
    expect(open(book)).toEqual(["query value-usable|part:P1|thickness|mm"]);
    expect(only(book)).toBe("not judged: value-usable|part:P1|thickness|mm");
  });
});

describe("any", () => {
  test("an empty list is fine", () => {
    expect(only(run(needing({ marks: anyOf(listOf(textOf("marks[]"))) }), part({ marks: [] })))).toBe("passed");
  });
  test("no list at all is fine", () => {
    expect(
      only(run(needing({ reports: anyOf(things("<report:part>", { result: optional(textOf("result")) })) }), part({}))),
    ).toBe("passed");
  });
  test("a link on the way that leads nowhere is not", () => {
    const records = { ...part({ plate: "PL9" }), plate: { PL1: { grade: "A" } } };
    const book = run(needing({ numbers: anyOf(listOf(textOf("plate.number"))) }), records);
    expect(only(book)).toBe("not judged: missing|plate:PL9");
    expect(open(book)).toEqual(["gap missing|plate:PL9"]);
  });
});

describe("optional", () => {
  test("absent: the code sees nothing, and is judged", () => {
    const seen: unknown[] = [];
    const one = needing(
      { note: optional(textOf("note")) },
      {
        *check(values) {
          seen.push(Object.values(values)[0]);
          yield* [];
        },
      },
    );
    expect(only(run(one, part({})))).toBe("passed");
    expect(seen).toEqual([undefined, undefined]);
  });
  test("a link that leads nowhere is not absent: not judged", () => {
    const records = { ...part({ plate: "PL9" }), plate: { PL1: { grade: "A" } } };
    const book = run(needing({ number: optional(textOf("plate.number")) }), records);
    expect(only(book)).toBe("not judged: missing|plate:PL9");
  });
  test("an accused place is not absent: not judged", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/note");
    expect(only(run(needing({ note: optional(textOf("note")) }), part({}), {}, [wrong]))).toBe(
      "not judged: record-schema|part:P1|note",
    );
  });
});

describe("exists", () => {
  test.each([
    ["there", { note: "x" }, true],
    ["not there", {}, false],
    ["an empty list", {}, false],
  ])("%s", (_, value, expected) => {
    const seen: unknown[] = [];
    const one = needing(
      { has: exists("note") },
      {
        *check(values) {
          seen.push(values["has" as never]);
          yield* [];
        },
      },
    );
    expect(only(run(one, part(value)))).toBe("passed");
    expect(seen[0]).toBe(expected);
  });
  test("an accused place: not judged", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/note");
    expect(only(run(needing({ has: exists("note") }), part({ note: "x" }), {}, [wrong]))).toBe(
      "not judged: record-schema|part:P1|note",
    );
  });
});

describe("when", () => {
  const when = (...conditions: NonNullable<Rule["when"]>) =>
    needing({ t: quantityOf("thickness", "mm") }, { when: conditions });
  const pressure = { path: "pressure", equals: true };
  test("true: judged", () => expect(only(run(when(pressure), part({})))).toBe("passed"));
  test("false: not applicable", () =>
    expect(only(run(when(pressure), part({ pressure: false })))).toBe("not applicable"));
  test("absent: not judged, never false", () => {
    const book = run(when(pressure), { part: { P1: { thickness: "8 mm", mark: "A" } } });
    expect(only(book)).toBe("not judged: missing|part:P1|pressure");
    expect(open(book)).toEqual(["gap missing|part:P1|pressure"]);
  });
  test("accused: not judged, never false", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/pressure");
    expect(only(run(when(pressure), part({ pressure: false }), {}, [wrong]))).toBe(
      "not judged: record-schema|part:P1|pressure",
    );
  });
  test("false is false though another condition cannot be answered, in either order", () => {
    const records = {
      part: { P1: { thickness: "8 mm", mark: "A", pressure: false, plate: "PL1" } },
      plate: { PL1: {} },
    };
    const grade = { path: "mark", equals: "B" };
    const open1 = { path: "pressure", equals: false };
    const owed = { owed: [owes("row", "part", "note")] };
    const note = { path: "note", equals: "x" };
    expect(only(run(when(grade, note), records, owed))).toBe("not applicable");
    expect(only(run(when(note, grade), records, owed))).toBe("not applicable");
    expect(only(run(when(open1, note), records, owed))).toBe("not judged: missing|part:P1|note");
  });
  test("one of several values", () => {
    expect(only(run(when({ path: "mark", equals: ["A", "B"] }), part({})))).toBe("passed");
    expect(only(run(when({ path: "mark", equals: ["B", "C"] }), part({})))).toBe("not applicable");
  });
  test("exists true and false", () => {
    expect(only(run(when({ path: "note", exists: true }), part({})))).toBe("not applicable");
    expect(only(run(when({ path: "note", exists: false }), part({})))).toBe("passed");
    expect(only(run(when({ path: "note", exists: true }), part({ note: "x" })))).toBe("passed");
  });
  test("not applicable is counted apart, never passed", () => {
    const { counts } = run(when(pressure), part({ pressure: false }));
    expect([counts.passed, counts.notApplicable, counts.notJudged]).toEqual([0, 1, 0]);
  });
});

describe("filters", () => {
  const rows = {
    rows: [
      { row: "1", value: "1 mm", method: "RT" },
      { row: "2", value: "2 mm" },
    ],
  };
  test("a filter that cannot be answered is not judged, for lists that may be empty too", () => {
    const book = run(needing({ values: anyOf(listOf(quantityOf('rows[method="UT"].value', "mm"))) }), part(rows));
    expect(only(book)).toBe("not judged: missing|part:P1|rows (2) method");
    expect(open(book)).toEqual(["gap missing|part:P1|rows (2) method"]);
  });
  test("a candidate that may be the one asked for is no second gap", () => {
    const book = run(needing({ values: listOf(quantityOf('rows[method="UT"].value', "mm")) }), part(rows), {
      owed: [owes("ut", "part", "rows")],
    });
    expect(open(book)).toEqual(["gap missing|part:P1|rows (2) method"]);
  });
  test("none passes: absent", () => {
    const owed = [owes("ut", "part", 'rows[method="UT"]')];
    const book = run(
      needing({ values: listOf(quantityOf('rows[method="UT"].value', "mm")) }),
      part({ rows: [rows.rows[0]] }),
      { owed },
    );
    expect(open(book)).toEqual(["gap missing|part:P1|rows UT"]);
  });
});

describe("one value is read", () => {
  const reports = (a: string, b: string) => ({
    ...part({}),
    report: { R1: { part: "P1", method: "RT", result: a }, R2: { part: "P1", method: "RT", result: b } },
  });
  const one = needing({ result: optional(textOf("<report:part>.result")) });
  test("several that state the same are one", () => expect(only(run(one, reports("ok", "ok")))).toBe("passed"));
  test("several that differ are a query, never a guess", () => {
    const book = run(one, reports("ok", "bad"));
    expect(open(book)).toEqual(["query value-single|part:P1|report result"]);
    expect(only(book)).toBe("not judged: value-single|part:P1|report result");
  });
  test("links of two fields to one record are one thing", () => {
    const records = { ...part({ plate: "PL1", other: "PL1" }), plate: { PL1: { grade: "A" } } };
    expect(only(run(needing({ plate: optional(thing("plate", { grade: textOf("grade") })) }), records))).toBe("passed");
  });
});

describe("things are read lazily", () => {
  const plates = { plate: { PL1: { grade: "A" } } };
  const records = { ...part({ plate: "PL1" }), ...plates };
  const inputs = { plate: optional(thing("plate", { grade: textOf("grade"), number: textOf("number") })) };
  const owed = { owed: [owes("number", "plate", "number", "welding")] };
  const reading = (name: "grade" | "number") =>
    rule({
      ...frame,
      id: "r",
      kind: "part",
      inputs,
      *check({ plate }) {
        if (plate !== undefined && plate[name] === "B") yield { at: "plate", message: "m", why: "w", hint: "h" };
      },
    });
  test("a required value of a thing that is never read is not missed", () => {
    expect(only(run(reading("grade"), records, owed))).toBe("passed");
  });
  test("one that is read and absent ends the rule: not judged, once", () => {
    const book = run(reading("number"), records, owed);
    expect(only(book)).toBe("not judged: missing|plate:PL1|number");
    expect(open(book)).toEqual(["gap missing|plate:PL1|number"]);
  });
  test("an accused value of a thing that is never read does not matter", () => {
    const wrong = fault("record-schema", ["plate", "PL1"], "/number");
    expect(only(run(reading("grade"), records, owed, [wrong]))).toBe("passed");
  });
  test("one that is read is not judged because of the fault", () => {
    const wrong = fault("record-schema", ["plate", "PL1"], "/grade");
    expect(only(run(reading("grade"), records, owed, [wrong]))).toBe("not judged: record-schema|plate:PL1|grade");
  });
});
