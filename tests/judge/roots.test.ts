import { describe, expect, test } from "vitest";
import {
  count,
  list as listOf,
  optional,
  quantity as quantityOf,
  text as textOf,
  thing,
  things,
} from "../../src/model/input.ts";
import { rule, type Rule } from "../../src/model/rule.ts";
import { atMost } from "../../src/model/quantity.ts";
import {
  answering,
  basis,
  define,
  fault,
  finding,
  judged,
  notes,
  open,
  owes,
  recordOf,
  verdicts,
  type SmallBook,
} from "../support/small-book.ts";
import { event, link, list, object, quantity, text, whole } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { plausible: ["1 mm", "100 mm"] }),
    least: quantity("mm"),
    mark: text(),
    plate: link("plate"),
  },
  plate: { thickness: quantity("mm"), grade: text() },
  weld: { welder: link("welder"), date: event(), thickness: quantity("mm") },
  welder: {
    until: text(),
    rows: list(object({ process: text({ required: true }), to: quantity("mm") }), { rowKey: "process" }),
  },
  log: { plate: link("plate"), count: whole() },
};
const frame = { basis, owner: "shop", severity: "nonconformity", examples: [] } as const;
const words = (message: string) => ({ message, why: "it is so", hint: "mend it" });

/** Reads one record: least ≤ thickness. */
const enough = rule({
  ...frame,
  id: "enough",
  title: "enough",
  kind: "part",
  inputs: { thickness: optional(quantityOf("thickness", "mm")), least: optional(quantityOf("least", "mm")) },
  *check({ thickness, least }) {
    if (thickness !== undefined && least !== undefined && atMost(least, thickness) === "no")
      yield { at: "thickness", ...words("too thin") };
  },
});
/** Compares a part with its plate. */
const asPlate = rule({
  ...frame,
  id: "as-plate",
  title: "as plate",
  kind: "part",
  inputs: {
    thickness: optional(quantityOf("thickness", "mm")),
    plate: optional(thing("plate", { thickness: optional(quantityOf("thickness", "mm")) })),
  },
  *check({ thickness, plate }) {
    const other = plate?.thickness;
    if (thickness !== undefined && other !== undefined && thickness.value !== other.value)
      yield { at: "thickness", ...words("not as its plate") };
  },
});
const accusing: Rule = rule({
  ...frame,
  id: "as-plate",
  title: "as plate",
  kind: "part",
  inputs: {
    thickness: optional(quantityOf("thickness", "mm")),
    plate: optional(thing("plate", { thickness: optional(quantityOf("thickness", "mm")) })),
  },
  *check({ thickness, plate }) {
    if (plate?.thickness !== undefined && thickness?.value !== plate.thickness.value)
      yield { at: "thickness", accuses: [[plate, "thickness"]], ...words("not as its plate") };
  },
});
/** Over the whole book, after the chain. */
const total = rule({
  ...frame,
  id: "total",
  title: "total",
  kind: "book",
  inputs: { parts: things("book.part", { thickness: optional(quantityOf("thickness", "mm")) }) },
  *check({ parts }) {
    if (parts.reduce((sum, { thickness }) => sum + (thickness?.value ?? 0), 0) > 1000)
      yield { at: "parts", ...words("too much") };
  },
});
const perPlate = rule({
  ...frame,
  id: "per-plate",
  title: "per plate",
  kind: "log",
  inputs: { plate: optional(thing("plate", { thickness: optional(quantityOf("thickness", "mm")) })) },
  *check({ plate }) {
    if ((plate?.thickness?.value ?? 0) > 99) yield { at: "plate", ...words("too thick") };
  },
});
const owed = [owes("parts", "book", "book.part")];
const run = (rules: readonly Rule[], book: SmallBook, more: Partial<Parameters<typeof define>[0]> = {}) =>
  judged(define({ kinds, rules, owed, ...more }), book);
const thin = {
  part: { P1: { thickness: "7 mm", least: "8 mm", plate: "PL1" } },
  plate: { PL1: { thickness: "8 mm" } },
};
const rows = (book: ReturnType<typeof run>) => {
  const { "parts|book:BOOK": _, ...rest } = verdicts(book);
  return rest;
};

describe("earlier stages explain later ones", () => {
  test("a schema fault: whatever reads the place is not judged because of it, and nothing is said again", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/thickness");
    const book = run([enough, asPlate, total], {
      records: { ...thin, part: { P1: { ...thin.part.P1, thickness: "seven" } } },
      findings: [wrong],
    });
    expect(open(book)).toEqual(["nonconformity record-schema|part:P1|thickness"]);
    const because = "not judged: record-schema|part:P1|thickness";
    expect(rows(book)).toEqual({ "enough|part:P1": because, "as-plate|part:P1": because, "total|book:BOOK": because });
    expect(finding(book, "record-schema|part:P1|thickness").waiting).toEqual([
      "as-plate|part:P1",
      "enough|part:P1",
      "total|book:BOOK",
    ]);
  });
  test("a value that cannot be read", () => {
    const book = run([enough, asPlate], {
      records: { ...thin, part: { P1: { ...thin.part.P1, thickness: "7,0 mm" } } },
    });
    expect(open(book)).toEqual(["nonconformity quantity-form|part:P1|thickness"]);
  });
  test("an implausible value is a query and accuses", () => {
    const book = run([enough, asPlate], {
      records: { ...thin, part: { P1: { ...thin.part.P1, thickness: "0.7 mm" } } },
    });
    expect(open(book)).toEqual(["query value-plausible|part:P1|thickness"]);
    const because = "not judged: value-plausible|part:P1|thickness";
    expect(rows(book)).toEqual({ "enough|part:P1": because, "as-plate|part:P1": because });
  });
  test("a plausible value at its limits", () => {
    for (const thickness of ["1 mm", "100 mm", "0.1 m"])
      expect(open(run([], { records: { part: { P1: { thickness } } } }))).toEqual([]);
    for (const thickness of ["0.99 mm", "101 mm", "0.101 m"])
      expect(open(run([], { records: { part: { P1: { thickness } } } }))).toEqual([
        "query value-plausible|part:P1|thickness",
      ]);
  });
  test("an objection within one record accuses what it points at", () => {
    const book = run([enough, asPlate], { records: thin });
    expect(open(book)).toEqual(["nonconformity enough|part:P1|"]);
    expect(rows(book)).toEqual({ "enough|part:P1": "failed", "as-plate|part:P1": "not judged: enough|part:P1|" });
  });
  test("an objection that compares records accuses nothing unless it says so", () => {
    const records = {
      part: { P1: { thickness: "9 mm", plate: "PL1" } },
      plate: { PL1: { thickness: "8 mm" } },
      log: { L1: { plate: "PL1" } },
    };
    expect(rows(run([asPlate, total], { records }))).toEqual({
      "as-plate|part:P1": "failed",
      "total|book:BOOK": "passed",
    });
  });
  test("one that says which record is wrong does", () => {
    const records = {
      part: { P1: { thickness: "9 mm", plate: "PL1" } },
      plate: { PL1: { thickness: "8 mm" } },
      log: { L1: { plate: "PL1" } },
    };
    const later = rule({
      ...frame,
      id: "all-plates",
      title: "all plates",
      kind: "book",
      inputs: { plates: things("book.plate", { thickness: optional(quantityOf("thickness", "mm")) }) },
      *check({ plates }) {
        for (const plate of plates) if ((plate.thickness?.value ?? 0) > 99) yield { at: plate, ...words("too thick") };
      },
    });
    const more = { owed: [...owed, owes("plates", "book", "book.plate")] };
    const book = run([accusing, later], { records }, more);
    expect(verdicts(book)).toMatchObject({
      "as-plate|part:P1": "failed",
      "all-plates|book:BOOK": "not judged: as-plate|part:P1|",
    });
  });
  test("findings of one stage do not hide each other", () => {
    const records = {
      part: { P1: { thickness: "9 mm", plate: "PL1" } },
      plate: { PL1: { thickness: "100 mm" } },
      log: { L1: { plate: "PL1" } },
    };
    const book = run([accusing, perPlate], { records });
    expect(open(book)).toEqual(["nonconformity as-plate|part:P1|", "nonconformity per-plate|log:L1|"]);
  });
  test("a note accuses nothing", () => {
    const remark = { ...enough, severity: "note" } satisfies Rule;
    const records = { ...thin, part: { P1: { ...thin.part.P1, plate: "PL1" } }, plate: { PL1: { thickness: "7 mm" } } };
    const book = run([remark, asPlate], { records });
    expect(open(book)).toEqual([]);
    expect(notes(book)).toContain("enough|part:P1|");
    expect(rows(book)).toEqual({ "enough|part:P1": "passed", "as-plate|part:P1": "passed" });
  });
});

describe("links and ids", () => {
  test("a malformed link", () => {
    const book = run([asPlate], { records: { ...thin, part: { P1: { plate: "pl 1", thickness: "8 mm" } } } });
    expect(open(book)).toEqual(["nonconformity link-form|part:P1|plate"]);
    expect(rows(book)).toEqual({ "as-plate|part:P1": "not judged: link-form|part:P1|plate" });
  });
  test("a link the schema has objected to is not objected to again", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/plate");
    const book = run([asPlate], { records: { ...thin, part: { P1: { plate: "pl 1" } } }, findings: [wrong] });
    expect(open(book)).toEqual(["nonconformity record-schema|part:P1|plate"]);
  });
  test("an id that is almost an existing one", () => {
    const book = run([asPlate], { records: { ...thin, part: { P1: { plate: "PL-01" } } } });
    expect(open(book)).toEqual(["nonconformity link-exact|part:P1|plate"]);
  });
  test("two ids that are confused: a query that an exception may answer", () => {
    const records = { ...thin, part: { P1: { plate: "PL1" }, P2: { plate: "PL-1" } }, plate: { PL1: {}, "PL-1": {} } };
    const book = run([], { records });
    expect(open(book)).toEqual(["query id-distinct|plate:PL1|id"]);
    const answered = run([], {
      records: { ...records, "answered-query": { Q1: answering(book, ["id-distinct|plate:PL1|id"]) } },
    });
    expect(open(answered)).toEqual([]);
  });
  test("two records with one id: whatever reads it is not judged", () => {
    const book = run([asPlate], {
      records: thin,
      more: [recordOf("plate", "PL1", { thickness: "9 mm" }, "plate/again.json")],
    });
    expect(open(book)).toEqual(["nonconformity id-unique|plate:PL1|id"]);
    expect(rows(book)).toEqual({ "as-plate|part:P1": "not judged: id-unique|plate:PL1|id" });
  });
  test("a row that a link names and that is not there", () => {
    const own = { ...kinds, use: { row: link("welder#rows") } };
    const welder = { W1: { rows: [{ process: "135", to: "10 mm" }] } };
    const use = (row: string) => judged(define({ kinds: own }), { records: { welder, use: { U1: { row } } } });
    expect(open(use("W1#135"))).toEqual([]);
    expect(open(use("W1#141"))).toEqual(["nonconformity link-row|welder:W1|141"]);
    const two = { U1: { row: "W1#141" }, U2: { row: "W1#141" } };
    const both = judged(define({ kinds: own }), { records: { welder, use: two } });
    expect(open(both)).toEqual(["nonconformity link-row|welder:W1|141"]);
    expect(finding(both, "link-row|welder:W1|141").related.map(({ subject }) => subject?.id)).toEqual(["U2"]);
    expect(open(use("W1"))).toEqual(["nonconformity link-form|use:U1|row"]);
  });
  test("two rows with one name accuse both", () => {
    const own = { ...kinds, use: { row: link("welder#rows") } };
    const records = {
      welder: { W1: { rows: [{ process: "135" }, { process: "135" }] } },
      use: { U1: { row: "W1#135" } },
    };
    const book = judged(define({ kinds: own, rules: [], owed: [owes("row", "use", "row.to")] }), { records });
    expect(open(book)).toEqual(["nonconformity row-unique|welder:W1|rows (135)"]);
    expect(verdicts(book)).toEqual({ "row|use:U1": "not judged: row-unique|welder:W1|rows (135)" });
  });
});

describe("one fault of one record, many subjects", () => {
  const lapsed = rule({
    ...frame,
    id: "qualified",
    title: "qualified",
    kind: "weld",
    inputs: { thickness: optional(quantityOf("thickness", "mm")), welder: thing("welder", { until: textOf("until") }) },
    *check({ welder }, weld) {
      if (welder.until < "2026")
        yield { at: "welder", on: welder, ...words(`welder ${welder.$.id} was not qualified for ${weld.id}`) };
    },
  });
  const more = { owed: [owes("welder", "weld", "welder"), owes("until", "welder", "until")] };
  const records = {
    welder: { W1: { until: "2025" }, W2: { until: "2027" } },
    weld: { A: { welder: "W1" }, B: { welder: "W1" }, C: { welder: "W2" }, D: { welder: "W1" } },
  };
  test("a lapsed welder is one finding that lists its welds", () => {
    const book = run([lapsed], { records }, more);
    expect(open(book)).toEqual(["nonconformity qualified|welder:W1|"]);
    const one = finding(book, "qualified|welder:W1|");
    expect(one.subject).toEqual({ kind: "weld", id: "A" });
    expect(one.related.map(({ subject }) => subject?.id)).toEqual(["B", "D"]);
    expect(book.outcomes.filter(({ verdict }) => verdict === "failed").map(({ subject }) => subject?.id)).toEqual([
      "A",
      "B",
      "D",
    ]);
  });
  test("its digest does not depend on the order of the welds, but on their values", () => {
    const shuffled = {
      ...records,
      weld: { D: { welder: "W1" }, C: { welder: "W2" }, B: { welder: "W1" }, A: { welder: "W1" } },
    };
    const digest = (weld: SmallBook["records"][string]) =>
      finding(run([lapsed], { records: { ...records, weld } }, more), "qualified|welder:W1|").digest;
    expect(digest(shuffled.weld)).toBe(digest(records.weld));
    expect(digest({ A: { welder: "W1" } })).not.toBe(digest(records.weld));
  });
});

describe("keys", () => {
  const perRow = rule({
    ...frame,
    id: "row-limit",
    title: "row limit",
    kind: "welder#rows",
    inputs: { to: optional(quantityOf("to", "mm")) },
    *check({ to }) {
      if ((to?.value ?? 0) > 50) yield { at: "to", ...words("too far") };
    },
  });
  const welder = (list: readonly (readonly [string, string])[]) => ({
    records: { welder: { W1: { rows: list.map(([process, to]) => ({ process, to })) } } },
  });
  test("a row is named by its key, and neither key nor digest change when a row is put before it", () => {
    const one = run([perRow], welder([["141", "60 mm"]]));
    const two = run(
      [perRow],
      welder([
        ["135", "10 mm"],
        ["141", "60 mm"],
      ]),
    );
    const key = "row-limit|welder:W1|rows (141)";
    expect(open(one)).toContain(`nonconformity ${key}`);
    expect(finding(one, key).digest).toBe(finding(two, key).digest);
    expect(finding(run([perRow], welder([["141", "61 mm"]])), key).digest).not.toBe(finding(one, key).digest);
  });
  test("two equal keys of one definition on sound data are an error of the program", () => {
    const twice = rule({
      ...frame,
      id: "twice",
      title: "twice",
      kind: "part",
      inputs: {},
      *check() {
        yield { at: "subject", ...words("one") };
        yield { at: "subject", ...words("two") };
      },
    });
    expect(() => run([twice], { records: { part: { P1: {} } } })).toThrow(/objects twice with one key/);
  });
  test("objections with names of their own are two findings", () => {
    const named = rule({
      ...frame,
      id: "named",
      title: "named",
      kind: "part",
      inputs: {},
      *check() {
        yield { at: "subject", name: "a", ...words("one") };
        yield { at: "subject", name: "b", ...words("two") };
      },
    });
    expect(open(run([named], { records: { part: { P1: {} } } }))).toEqual([
      "nonconformity named|part:P1|a",
      "nonconformity named|part:P1|b",
    ]);
  });
});

describe("evidence that does not decide", () => {
  const unsure = rule({
    ...frame,
    id: "below",
    title: "below",
    kind: "part",
    inputs: { thickness: optional(quantityOf("thickness", "mm")), least: optional(quantityOf("least", "mm")) },
    *check({ thickness, least }) {
      if (thickness === undefined || least === undefined) return;
      const answer = atMost(least, thickness);
      if (answer !== "yes") yield { at: "thickness", unsure: answer === "unsure", ...words("perhaps too thin") };
    },
  });
  const part = (thickness: string) => ({ records: { part: { P1: { thickness, least: "8 mm" } } } });
  test("an interval: passed or failed only if the whole of it is, else a query, and not judged", () => {
    expect(rows(run([unsure], part(">9 mm")))).toEqual({ "below|part:P1": "passed" });
    expect(rows(run([unsure], part("<7 mm")))).toEqual({ "below|part:P1": "failed" });
    const book = run([unsure], part(">7 mm"));
    expect(open(book)).toEqual(["query below|part:P1|"]);
    expect(rows(book)).toEqual({ "below|part:P1": "not judged: below|part:P1|" });
  });
});

test("an input that is a count and none is said", () => {
  const counting = rule({
    ...frame,
    id: "count",
    title: "count",
    kind: "part",
    inputs: { mark: optional(count("mark")) },
    *check({ mark }) {
      if ((mark ?? 0) > 3) yield { at: "mark", ...words("too many") };
    },
  });
  expect(open(run([counting], { records: { part: { P1: { mark: "4" } } } }))).toEqual(["nonconformity count|part:P1|"]);
  expect(open(run([counting], { records: { part: { P1: { mark: "four" } } } }))).toEqual([
    "query value-usable|part:P1|mark|number",
  ]);
});

test("values of a list are one objection", () => {
  const all = rule({
    ...frame,
    id: "all",
    title: "all",
    kind: "welder",
    inputs: { to: listOf(quantityOf("rows[].to", "mm")) },
    *check({ to }) {
      const far = to.filter(({ value }) => value > 50);
      if (far.length > 0) yield { at: "to", ...words(`${far.length} too far`) };
    },
  });
  const book = run(
    [all],
    {
      records: {
        welder: {
          W1: {
            rows: [
              { process: "135", to: "60 mm" },
              { process: "141", to: "70 mm" },
            ],
          },
        },
      },
    },
    { owed: [owes("rows", "welder", "rows"), owes("to", "welder", "rows[].to")] },
  );
  expect(open(book)).toEqual(["nonconformity all|welder:W1|"]);
});
