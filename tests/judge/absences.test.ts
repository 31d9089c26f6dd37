import { describe, expect, test } from "vitest";
import { anyOf, list as listOf, text as textOf, things } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import {
  basis,
  define,
  fault,
  finding,
  judged,
  milestones,
  notes,
  open,
  owes,
  verdicts,
  type SmallBook,
} from "../support/small-book.ts";
import { event, flag, link, list, object, oneOf, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    note: text({ due: "welding" }),
    plate: link("plate"),
    limits: object({ pressure: text({ due: "welding" }) }, { due: "welding" }),
  },
  plate: { grade: text({ due: "order" }) },
  joint: {
    welded: event(),
    welder: link("welder", { due: "welding" }),
    procedure: link("procedure", { required: true }),
    final: flag(),
  },
  welder: { name: text() },
  procedure: { name: text() },
  report: {
    method: oneOf(["RT", "UT"], { required: true }),
    rows: list(object({ joint: link("joint", { required: true }), result: text() })),
  },
};
const interim = (reached: readonly string[]) => ({
  state: "interim",
  ...milestones(
    reached,
    ["order", "welding"].filter((name) => !reached.includes(name)),
  ),
});
const run = (book: SmallBook, more: Partial<Parameters<typeof define>[0]> = {}) =>
  judged(define({ kinds, ...more }), book);
const reading = (id: string, kind: string, path: string) =>
  rule({
    id,
    title: id,
    basis,
    kind,
    severity: "nonconformity",
    owner: "shop",
    inputs: { value: listOf(textOf(path)) },
    *check() {
      yield* [];
    },
    examples: [],
  });
const both = { part: { P1: { note: "x", limits: { pressure: "y" } } } };
const noteOnly = { note: "x", limits: { pressure: "y" } };

describe("field, rule and row of the register want the same", () => {
  const records = { part: { P1: { limits: { pressure: "y" } } } };
  const more = {
    rules: [reading("r1", "part", "note"), reading("r2", "part", "note")],
    owed: [owes("row", "part", "note", "order", { title: "the note" })],
  };
  test("one gap, with the basis of the row, the earliest date, and all that wait", () => {
    const book = run({ records, issue: interim(["order"]) }, more);
    expect(open(book)).toEqual(["gap missing|part:P1|note"]);
    const gap = finding(book, "missing|part:P1|note");
    expect(gap.due).toBe("order");
    expect(gap.why).toBe('owed by the register: the note; due at milestone "order"');
    expect(gap.owner).toBe("shop");
    expect(gap.waiting).toEqual(["r1|part:P1", "r2|part:P1"]);
    expect(gap.place).toEqual({ file: "part/P1.json", pointer: "" });
  });
  test("without the row the field decides when it is due", () => {
    const book = run({ records, issue: interim(["order"]) }, { rules: more.rules });
    expect(open(book)).toEqual([]);
    expect(verdicts(book)).toEqual({
      "r1|part:P1": "not judged: not due, welding",
      "r2|part:P1": "not judged: not due, welding",
    });
    expect(book.counts.notDue).toBe(2);
    expect(book.counts.notJudged).toBe(0);
  });
  test("due when its milestone is reached by the cut-off", () => {
    expect(open(run({ records, issue: interim(["order", "welding"]) }))).toEqual(["gap missing|part:P1|note"]);
  });
  test("a milestone reached after the cut-off is not reached", () => {
    const issue = {
      state: "interim",
      dataCutOff: "2026-07-01",
      milestones: [{ name: "order", reached: "2026-07-02" }, { name: "welding" }],
    };
    expect(open(run({ records, issue }, { owed: more.owed }))).toEqual([]);
    const onTheDay = { ...issue, milestones: [{ name: "order", reached: "2026-07-01" }, { name: "welding" }] };
    expect(open(run({ records, issue: onTheDay }, { owed: more.owed }))).toEqual(["gap missing|part:P1|note"]);
  });
  test("final: everything is due", () => {
    expect(open(run({ records }))).toEqual(["gap missing|part:P1|note"]);
  });
});

describe("folding", () => {
  const joint = { procedure: "WPS1", welder: "W1" };
  const around = { procedure: { WPS1: {} }, welder: { W1: {} } };
  const rt = '<report:rows[].joint>[record.method="RT"]';
  test("who wants any wants the same as who wants a certain one", () => {
    const records = { ...around, joint: { J1: joint }, report: { R1: { method: "UT", rows: [] } } };
    const owed = [owes("any", "joint", "<report:rows[].joint>"), owes("rt", "joint", rt)];
    const book = run({ records }, { owed });
    expect(open(book)).toEqual(["gap missing|joint:J1|report RT"]);
    expect(verdicts(book)).toEqual({
      "any|joint:J1": "not judged: missing|joint:J1|report RT",
      "rt|joint:J1": "not judged: missing|joint:J1|report RT",
    });
  });
  test("two certain ones are two gaps, any folds into one of them", () => {
    const records = { ...around, joint: { J1: joint }, report: { R1: { method: "UT", rows: [] } } };
    const ut = rt.replace("RT", "UT");
    const book = run(
      { records },
      { owed: [owes("any", "joint", "<report:rows[].joint>"), owes("rt", "joint", rt), owes("ut", "joint", ut)] },
    );
    expect(open(book)).toEqual(["gap missing|joint:J1|report RT", "gap missing|joint:J1|report UT"]);
  });
  test("any is there, the certain one is not: one gap", () => {
    const records = { ...around, joint: { J1: joint }, report: { R1: { method: "UT", rows: [{ joint: "J1" }] } } };
    const book = run({ records }, { owed: [owes("any", "joint", "<report:rows[].joint>"), owes("rt", "joint", rt)] });
    expect(open(book)).toEqual(["gap missing|joint:J1|report RT"]);
    expect(verdicts(book)["any|joint:J1"]).toBe("passed");
  });
  test("a longer path is missing where the shorter one is", () => {
    const records = { part: { P1: { note: "x" } } };
    const book = run({ records }, { rules: [reading("r", "part", "limits.pressure")] });
    expect(open(book)).toEqual(["gap missing|part:P1|limits"]);
    expect(verdicts(book)).toEqual({ "r|part:P1": "not judged: missing|part:P1|limits" });
  });
  test("a link back that is missing is the one record of its kind that links name and that is not there", () => {
    const records = {
      procedure: { WPS1: {} },
      welder: { W1: {} },
      joint: { J1: joint },
      report: { R1: { method: "RT", rows: [{ joint: "J7" }] } },
    };
    // The report names a joint that is not there; joint J1 has no report.
    const book = run({ records }, { owed: [owes("rt", "joint", rt)] });
    expect(open(book)).toEqual(["gap missing|joint:J7"]);
    expect(verdicts(book)).toEqual({ "rt|joint:J1": "not judged: missing|joint:J7" });
  });
  test("a record named elsewhere and not there explains what is missed of its kind", () => {
    const extra = { ...kinds, joint: { ...kinds.joint, report: link("report") } };
    const records = {
      ...around,
      joint: { J1: { ...joint, report: "R9" } },
      report: { R1: { method: "UT", rows: [] } },
    };
    const book = judged(define({ kinds: extra, owed: [owes("rt", "joint", rt)] }), { records });
    expect(open(book)).toEqual(["gap missing|report:R9"]);
    expect(verdicts(book)).toEqual({ "rt|joint:J1": "not judged: missing|report:R9" });
  });
  test("a mistyped link explains the link back that is missing", () => {
    const records = {
      ...around,
      joint: { J10: joint, J2: joint },
      report: { R1: { method: "RT", rows: [{ joint: "J1O" }, { joint: "J2" }] } },
    };
    const book = run({ records }, { owed: [owes("rt", "joint", rt)] });
    expect(open(book)).toEqual(["nonconformity link-exact|report:R1|rows (0) joint"]);
    expect(verdicts(book)).toEqual({
      "rt|joint:J10": "not judged: link-exact|report:R1|rows (0) joint",
      "rt|joint:J2": "passed",
    });
  });
  test("one link explains one absence, not two", () => {
    const records = {
      ...around,
      joint: { J1: joint, J20: joint },
      report: { R1: { method: "RT", rows: [{ joint: "J2O" }] } },
    };
    const book = run({ records }, { owed: [owes("rt", "joint", rt)] });
    expect(open(book)).toEqual(["gap missing|joint:J1|report RT", "nonconformity link-exact|report:R1|rows (0) joint"]);
  });
  test("a kind of which there is no record is one gap, whoever asks", () => {
    const records = { ...around, joint: { J1: joint, J2: joint } };
    const owed = [
      owes("any", "joint", "<report:rows[].joint>"),
      owes("rt", "joint", rt),
      owes("all", "book", "book.report", "now", { title: "reports" }),
    ];
    const book = run({ records }, { owed });
    expect(open(book)).toEqual(["gap missing|book|report"]);
    expect(finding(book, "missing|book|report").message).toBe("the book holds no report");
  });
  test("the register owes the book its first records, so an empty book fails", () => {
    expect(open(run({ records: {} }, { owed: [owes("parts", "book", "book.part")] }))).toEqual([
      "gap missing|book|part",
    ]);
  });
});

describe("links to records that are not there", () => {
  const joint = { procedure: "WPS1" };
  const around = { procedure: { WPS1: {} }, welder: { W1: {} } };
  test("one gap for each target, whoever names it", () => {
    const records = {
      ...around,
      joint: { J1: { ...joint, welder: "W9" }, J2: { ...joint, welder: "W9" }, J3: { ...joint, welder: "W8" } },
    };
    const book = run({ records });
    expect(open(book)).toEqual(["gap missing|welder:W8", "gap missing|welder:W9"]);
    const gap = finding(book, "missing|welder:W9");
    expect(gap.message).toBe("welder W9 is named by joint J1, but is not in the book");
    expect(gap.hint).toBe('document control to add the record, or to correct the link; nearest: "W1"');
    expect(gap.related.map(({ message }) => message)).toEqual(["named by joint J2 too"]);
  });
  test("due as its field", () => {
    const records = { ...around, joint: { J1: { ...joint, welder: "W9" } } };
    expect(open(run({ records, issue: interim(["order"]) }))).toEqual([]);
    expect(open(run({ records, issue: interim(["order", "welding"]) }))).toEqual(["gap missing|welder:W9"]);
  });
  test("due at once when the naming record tells of an event", () => {
    const records = { ...around, joint: { J1: { ...joint, welder: "W9", welded: "2026-03-01" } } };
    expect(open(run({ records, issue: interim(["order"]) }))).toEqual(["gap missing|welder:W9"]);
  });
  test("due at once when the record cannot be without the link", () => {
    const records = { ...around, joint: { J1: { procedure: "WPS9", welder: "W1" } } };
    expect(open(run({ records, issue: interim([]) }))).toEqual(["gap missing|procedure:WPS9"]);
  });
  test("no date of its own: due as the row that asks for it", () => {
    const records = { part: { P1: { ...noteOnly, plate: "PL9" } }, plate: { PL1: { grade: "A" } } };
    const owed = [owes("row", "part", "plate.grade", "welding")];
    expect(open(run({ records, issue: interim(["order"]) }, { owed }))).toEqual([]);
    expect(open(run({ records, issue: interim(["order"]) }))).toEqual(["gap missing|plate:PL9"]);
  });
});

describe("what explains an absence", () => {
  const records = { part: { P1: { limits: { pressure: "y" } } } };
  test("an accused place is never absent", () => {
    const wrong = fault("record-schema", ["part", "P1"], "/note");
    const book = run(
      { records, findings: [wrong] },
      { rules: [reading("r", "part", "note")], owed: [owes("row", "part", "note")] },
    );
    expect(open(book)).toEqual(["nonconformity record-schema|part:P1|note"]);
    const because = "not judged: record-schema|part:P1|note";
    expect(verdicts(book)).toEqual({ "r|part:P1": because, "row|part:P1": because });
  });
  test("in an accused record nothing is absent, back-links neither", () => {
    const wrong = fault("record-schema", ["part", "P1"], "");
    const book = judged(
      define({ kinds: { ...kinds, use: { part: link("part") } }, owed: [owes("row", "part", "<use:part>")] }),
      {
        records: { ...records, part: { ...records.part, P2: noteOnly }, use: { U1: { part: "P2" } } },
        findings: [wrong],
      },
    );
    expect(open(book)).toEqual(["nonconformity record-schema|part:P1"]);
  });
  test("while a file cannot be read, absences are not judged because of that file", () => {
    const broken = fault("file-syntax", null, "", "part/more.json");
    const book = run(
      { records, findings: [broken], unreadable: ["part/more.json"] },
      { rules: [reading("r", "part", "note")], owed: [owes("row", "part", "note")] },
    );
    expect(open(book)).toEqual(["nonconformity file-syntax|part/more.json"]);
    const because = "not judged: file-syntax|part/more.json";
    expect(verdicts(book)).toEqual({ "r|part:P1": because, "row|part:P1": because });
    expect(finding(book, "file-syntax|part/more.json").waiting).toEqual(["r|part:P1"]);
  });
  test("a file that cannot be read does not make due what is not", () => {
    const broken = fault("file-syntax", null, "", "part/more.json");
    const book = run(
      { records, issue: interim([]), findings: [broken], unreadable: ["part/more.json"] },
      { rules: [reading("r", "part", "note")] },
    );
    expect(verdicts(book)).toEqual({ "r|part:P1": "not judged: not due, welding" });
  });
  test("a milestone nobody listed explains what is due at it, once", () => {
    const book = run({
      records: { part: { P1: {}, P2: {} } },
      issue: { state: "interim", milestones: [{ name: "order", reached: "2026-01-31" }] },
    });
    expect(open(book)).toEqual(["nonconformity milestone-listed|issue:ISSUE|welding"]);
  });
  test("a misspelt milestone is told by who uses it, with the one that may be meant", () => {
    const book = run({
      records: { part: { P1: {} } },
      issue: { state: "interim", milestones: [{ name: "weldng", reached: "2026-01-31" }] },
    });
    const { why, hint } = finding(book, "milestone-listed|issue:ISSUE|welding");
    expect(why).toBe("part.note and 2 more become due at it");
    expect(hint).toContain('if "weldng" is meant, correct the name where it is used');
  });
});

describe("fewer than the register asks for", () => {
  const visits = { ...kinds, visit: { part: link("part", { required: true }) } };
  const owed = [owes("three", "part", "<visit:part>", "now", { atLeast: 3 })];
  const ask = (records: SmallBook["records"]) =>
    judged(define({ kinds: visits, owed }), { records: { ...both, ...records } });
  test("two of three", () => {
    const book = ask({ visit: { V1: { part: "P1" }, V2: { part: "P1" } } });
    expect(open(book)).toEqual(["gap missing|part:P1|visit at least 3"]);
    expect(finding(book, "missing|part:P1|visit at least 3").message).toBe("part P1 has 2 visit; at least 3 are owed");
    expect(book.owed.map(({ state }) => state)).toEqual(["missing"]);
  });
  test("three", () => {
    const book = ask({ visit: { V1: { part: "P1" }, V2: { part: "P1" }, V3: { part: "P1" } } });
    expect(open(book)).toEqual([]);
    expect(book.owed.map(({ state, evidence }) => [state, evidence.length])).toEqual([["met", 3]]);
  });
  test("none: one gap, of the link back", () => {
    expect(
      open(ask({ visit: { V1: { part: "P1" }, V2: { part: "P1" } }, part: { ...both.part, P2: noteOnly } })),
    ).toEqual(["gap missing|part:P1|visit at least 3", "gap missing|part:P2|visit"]);
  });
  test("a mistyped link explains one that is missing", () => {
    const book = ask({ visit: { V1: { part: "P1" }, V2: { part: "P1" }, V3: { part: "P-1" } } });
    expect(open(book)).toEqual(["nonconformity link-exact|visit:V3|part"]);
  });
  test("one mistyped link does not explain two that are missing", () => {
    const book = ask({ visit: { V1: { part: "P1" }, V3: { part: "P-1" } } });
    expect(open(book)).toEqual(["gap missing|part:P1|visit at least 3", "nonconformity link-exact|visit:V3|part"]);
  });
  test("ten rows of one certificate are one certificate", () => {
    const owed2 = [owes("two", "joint", "<report:rows[].joint>", "now", { atLeast: 2 })];
    const records = {
      procedure: { WPS1: {} },
      welder: { W1: {} },
      joint: { J1: { procedure: "WPS1", welder: "W1" } },
      report: { R1: { method: "RT", rows: [{ joint: "J1" }, { joint: "J1" }] } },
    };
    expect(open(run({ records }, { owed: owed2 }))).toEqual(["gap missing|joint:J1|report at least 2"]);
  });
});

describe("records that nothing names", () => {
  test("a note", () => {
    const book = run({
      records: {
        procedure: { WPS1: {} },
        welder: { W1: {}, W2: {} },
        joint: { J1: { procedure: "WPS1", welder: "W1" } },
      },
    });
    expect(open(book)).toEqual([]);
    expect(notes(book)).toEqual(["record-used|welder:W2|"]);
  });
  test("it waits while something of its kind is absent", () => {
    const records = { procedure: { WPS1: {} }, welder: { W1: {} }, joint: { J1: { procedure: "WPS1" } } };
    expect(notes(run({ records }))).toEqual([]);
    expect(notes(run({ records, issue: interim([]) }))).toEqual([]);
  });
  test("it waits while a link of its kind is broken", () => {
    const records = {
      procedure: { WPS1: {} },
      welder: { W1: {}, W20: {} },
      joint: { J1: { procedure: "WPS1", welder: "W2O" } },
    };
    expect(open(run({ records }))).toEqual(["nonconformity link-exact|joint:J1|welder"]);
    expect(notes(run({ records }))).toEqual([]);
  });
  test("a record about something is not there to be named", () => {
    const records = {
      procedure: { WPS1: {} },
      welder: { W1: {} },
      joint: { J1: { procedure: "WPS1", welder: "W1" } },
      report: { R1: { method: "RT", rows: [{ joint: "J1" }] } },
    };
    expect(notes(run({ records }))).toEqual([]);
  });
});

test("an empty list of things from the whole book is no absence for who needs any", () => {
  const one = rule({
    id: "r",
    title: "r",
    basis,
    kind: "book",
    severity: "nonconformity",
    owner: "shop",
    inputs: { parts: anyOf(things("book.part", { note: textOf("note") })) },
    *check() {
      yield* [];
    },
    examples: [],
  });
  expect(verdicts(run({ records: {} }, { rules: [one] }))).toEqual({ "r|book:BOOK": "passed" });
});
