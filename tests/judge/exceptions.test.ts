import { describe, expect, test } from "vitest";
import { date, optional, quantity as quantityOf, text as textOf, thing } from "../../src/model/input.ts";
import { canPrecede } from "../../src/model/dates.ts";
import { rule } from "../../src/model/rule.ts";
import type { JsonObject } from "../../src/model/json.ts";
import {
  answering,
  basis,
  define,
  fault,
  finding,
  judged,
  lifted,
  milestones,
  open,
  owes,
  verdicts,
  type SmallBook,
} from "../support/small-book.ts";
import { event, link, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { plausible: ["1 mm", "100 mm"] }),
    note: text({ due: "welding" }),
    cut: event(),
    marked: event(),
    plate: link("plate"),
    link: link("plate"),
  },
  plate: { thickness: quantity("mm"), grade: text({ due: "now" }) },
};
const frame = { basis, owner: "shop", severity: "nonconformity", kind: "part", examples: [] } as const;
const words = { why: "w", hint: "h" };
const thick = rule({
  ...frame,
  id: "thick",
  title: "thick",
  inputs: { thickness: optional(quantityOf("thickness", "mm")) },
  *check({ thickness }) {
    if ((thickness?.value ?? 9) < 8) yield { at: "thickness", message: "thin", ...words };
  },
});
const asPlate = rule({
  ...frame,
  id: "as-plate",
  title: "as plate",
  inputs: {
    thickness: optional(quantityOf("thickness", "mm")),
    plate: optional(thing("plate", { thickness: optional(quantityOf("thickness", "mm")), grade: textOf("grade") })),
  },
  *check({ thickness, plate }) {
    if (plate?.thickness !== undefined && plate.thickness.value !== thickness?.value)
      yield { at: "thickness", message: "not as its plate", ...words };
  },
});
const graded = rule({
  ...frame,
  id: "graded",
  title: "graded",
  inputs: { plate: optional(thing("plate", { grade: textOf("grade") })) },
  *check({ plate }) {
    if (plate?.grade === "Z") yield { at: "plate", message: "Z", ...words };
  },
});
const marked = rule({
  ...frame,
  id: "marked",
  title: "marked before it was cut",
  inputs: { cut: optional(date("cut")), marked: optional(date("marked")) },
  *check({ cut, marked: mark }) {
    if (cut !== undefined && mark !== undefined && canPrecede(mark, cut) === "no")
      yield { at: "marked", message: "late", ...words };
  },
});
const rules = [thick, asPlate, graded, marked];
const run = (book: SmallBook) => judged(define({ kinds, rules }), book);
const sound = { thickness: "10 mm", note: "x" };
const withException = (
  records: SmallBook["records"],
  kind: string,
  keys: readonly string[],
  more: JsonObject = {},
  issue: JsonObject = {},
) => {
  const before = run({ records, issue });
  return run({ records: { ...records, [kind]: { E1: answering(before, keys, more) } }, issue });
};
const thin = { part: { P1: { ...sound, thickness: "7 mm" } } };
const odd = { part: { P1: { ...sound, thickness: "0.5 mm" } } };
const lacking = { part: { P1: { thickness: "10 mm" } } };
const late = { part: { P1: { ...sound, cut: "2026-03-01", marked: "2026-03-02" } } };
const keys = {
  thin: "thick|part:P1|",
  odd: "value-plausible|part:P1|thickness",
  lacking: "missing|part:P1|note",
  late: "marked|part:P1|",
};

describe("each kind of exception answers its own sort and no other", () => {
  test.each([
    ["deviation", thin, keys.thin],
    ["answered-query", odd, keys.odd],
    ["waiver", lacking, keys.lacking],
    ["order-exception", late, keys.late],
    ["deviation", late, keys.late],
  ])("%s lifts", (kind, records, key) => {
    const book = withException(records, kind, [key]);
    expect(lifted(book)).toContain(`${key} < ${kind}:E1`);
    expect(book.exceptions).toMatchObject([{ answers: [key], lifts: true }]);
    expect(book.counts.lifted).toBe(1);
  });
  test.each([
    ["waiver", thin, keys.thin, "nonconformity"],
    ["answered-query", thin, keys.thin, "nonconformity"],
    ["deviation", odd, keys.odd, "query"],
    ["waiver", odd, keys.odd, "query"],
    ["deviation", lacking, keys.lacking, "gap"],
    ["answered-query", lacking, keys.lacking, "gap"],
    ["order-exception", lacking, keys.lacking, "gap"],
  ])("%s does not lift a finding of another sort", (kind, records, key, severity) => {
    const book = withException(records, kind, [key]);
    expect(lifted(book)).toEqual([]);
    expect(open(book)).toEqual(
      [`${severity} ${key}`, `nonconformity exception-fits|${kind}:E1|answers (${key})`].sort(),
    );
  });
  test("an order-exception answers rules about an order of dates only", () => {
    expect(open(withException(thin, "order-exception", [keys.thin]))).toEqual([
      "nonconformity exception-fits|order-exception:E1|answers (thick|part:P1|)",
      "nonconformity thick|part:P1|",
    ]);
  });
});

describe("the digest", () => {
  const deviation = answering(run({ records: thin }), [keys.thin]);
  test("another value revives the finding, which says so", () => {
    const book = run({ records: { part: { P1: { ...sound, thickness: "6 mm" } }, deviation: { E1: deviation } } });
    expect(open(book)).toEqual([`nonconformity ${keys.thin}`]);
    expect(finding(book, keys.thin).why).toMatch(
      /^w; deviation E1 answered it for other values \(digest [0-9a-f]{16}, now [0-9a-f]{16}\)$/,
    );
  });
  test("a value the outcome did not read does not", () => {
    const book = run({
      records: { part: { P1: { ...sound, thickness: "7 mm", note: "changed" } }, deviation: { E1: deviation } },
    });
    expect(open(book)).toEqual([]);
  });
  test("two exceptions for one finding: the one that fits counts", () => {
    const old = { ...deviation, answers: [{ finding: keys.thin, digest: "0000000000000000" }] };
    const book = run({ records: { ...thin, deviation: { A: old, B: deviation } } });
    expect(lifted(book)).toEqual([`${keys.thin} < deviation:B`]);
  });
});

describe("an exception with a fault lifts nothing", () => {
  test.each([
    ["no reason", { reason: undefined }, "nonconformity exception-sound|deviation:E1|"],
    ["no authority", { authority: undefined }, "nonconformity exception-sound|deviation:E1|"],
    ["nobody", { by: undefined }, "nonconformity exception-sound|deviation:E1|"],
    ["no date", { date: undefined }, "nonconformity exception-sound|deviation:E1|"],
    ["ended", { end: "2026-07-30" }, "nonconformity exception-in-force|deviation:E1|end"],
    ["dated after the cut-off", { date: "2026-07-02" }, "nonconformity event-recorded|deviation:E1|date"],
    ["a date that cannot be read", { date: "1.6.2026" }, "nonconformity date-form|deviation:E1|date"],
  ])("%s", (_, more, fault1) => {
    const whole = answering(run({ records: thin }), [keys.thin], more as unknown as JsonObject);
    const exception = Object.fromEntries(Object.entries(whole).filter(([, value]) => (value as unknown) !== undefined));
    const book = run({ records: { ...thin, deviation: { E1: exception } } });
    expect(open(book)).toEqual([fault1, `nonconformity ${keys.thin}`].sort());
    expect(finding(book, keys.thin).why).toContain(
      `deviation E1 answers it, but lifts nothing because of ${fault1.split(" ")[1] ?? ""}`,
    );
  });
  test("an exception holds on its last day: final, the day of issue; interim, the cut-off", () => {
    expect(open(withException(thin, "deviation", [keys.thin], { end: "2026-07-31" }))).toEqual([]);
    const interim = { state: "interim", ...milestones(["order", "welding"], []) };
    expect(open(withException(thin, "deviation", [keys.thin], { end: "2026-07-01" }, interim))).toEqual([]);
    expect(open(withException(thin, "deviation", [keys.thin], { end: "2026-06-30" }, interim))).toHaveLength(2);
  });
  test("one the schema has objected to anywhere", () => {
    const exception = answering(run({ records: thin }), [keys.thin]);
    const wrong = fault("record-schema", ["deviation", "E1"], "/agreement");
    const book = run({ records: { ...thin, deviation: { E1: exception } }, findings: [wrong] });
    expect(open(book)).toEqual(["nonconformity record-schema|deviation:E1|agreement", `nonconformity ${keys.thin}`]);
  });
  test("a rule about exceptions is judged before what they answer", () => {
    const signed = rule({
      ...frame,
      id: "minutes",
      title: "minutes",
      kind: "deviation",
      inputs: { authority: optional(textOf("authority")) },
      *check({ authority }) {
        if (authority !== "minutes 4") yield { at: "authority", message: "no minutes", ...words };
      },
    });
    const definitions = define({ kinds, rules: [...rules, signed] });
    const deviation = answering(run({ records: thin }), [keys.thin]);
    expect(open(judged(definitions, { records: { ...thin, deviation: { E1: deviation } } }))).toEqual([]);
    const other = judged(definitions, {
      records: { ...thin, deviation: { E1: { ...deviation, authority: "a call" } } },
    });
    expect(open(other)).toEqual(["nonconformity minutes|deviation:E1|", `nonconformity ${keys.thin}`]);
  });
});

describe("what no exception answers", () => {
  test.each([
    [
      "a schema",
      { findings: [fault("record-schema", ["part", "P1"], "/note")], records: thin },
      "record-schema|part:P1|note",
    ],
    ["a link", { records: { part: { P1: { ...sound, plate: "pl 1" } } } }, "link-form|part:P1|plate"],
    ["a quantity", { records: { part: { P1: { ...sound, thickness: "7,5 mm" } } } }, "quantity-form|part:P1|thickness"],
    [
      "a hash",
      {
        records: { ...thin, original: { O1: { path: "files/a.pdf", sha256: "aa" } } },
        files: [{ path: "files/a.pdf", size: 1, sha256: "bb", role: "original" as const }],
      },
      "original-unchanged|original:O1|sha256",
    ],
    ["a milestone nobody listed", { records: thin, issue: { milestones: [] } }, "milestone-listed|issue:ISSUE|welding"],
  ])("%s", (_, book, key) => {
    const before = run(book);
    const after = run({ ...book, records: { ...book.records, deviation: { E1: answering(before, [key]) } } });
    expect(lifted(after)).toEqual([]);
    expect(open(after)).toEqual(
      expect.arrayContaining([`nonconformity ${key}`, `nonconformity exception-fits|deviation:E1|answers (${key})`]),
    );
  });
  test("a finding about an exception", () => {
    const first = { ...answering(run({ records: thin }), [keys.thin]), end: "2026-06-01" };
    const ended = run({ records: { ...thin, deviation: { E1: first } } });
    const key = "exception-in-force|deviation:E1|end";
    const book = run({ records: { ...thin, deviation: { E1: first, E2: answering(ended, [key]) } } });
    expect(lifted(book)).toEqual([]);
    expect(open(book)).toContain(`nonconformity exception-fits|deviation:E2|answers (${key})`);
  });
  test("what an exception itself lacks is one fault of it, not a gap as well", () => {
    const own = define({
      kinds: { ...kinds, waiver: { answers: kinds.part.note, reason: text({ due: "now" }) } },
      rules,
    });
    const first = judged(own, { records: { waiver: { W1: {} } } });
    expect(open(first)).toEqual(["nonconformity exception-sound|waiver:W1|"]);
  });
});

describe("an exception that is not needed", () => {
  test("is one query, however many answers", () => {
    const exception = {
      reason: "r",
      authority: "a",
      by: "b",
      date: "2026-06-01",
      answers: [
        { finding: "thick|part:P1|", digest: "0000000000000000" },
        { finding: "thick|part:P9|", digest: "0000000000000000" },
      ],
    };
    const book = run({ records: { part: { P1: sound }, deviation: { E1: exception } } });
    expect(open(book)).toEqual(["query exception-needed|deviation:E1|answers"]);
    expect(book.exceptions).toMatchObject([{ lifts: false }]);
  });
  test("it may be needed while the outcome is not judged", () => {
    const exception = {
      reason: "r",
      authority: "a",
      by: "b",
      date: "2026-06-01",
      answers: [{ finding: "thick|part:P1|", digest: "0000000000000000" }],
    };
    const book = run({ records: { part: { P1: { ...sound, thickness: "7,5 mm" } }, deviation: { E1: exception } } });
    expect(open(book)).toEqual(["nonconformity quantity-form|part:P1|thickness"]);
  });
  test("it may be needed while the record it speaks of is missing: that gap alone is open", () => {
    const exception = {
      reason: "r",
      authority: "a",
      by: "b",
      date: "2026-06-01",
      answers: [{ finding: "even|plate:PL9|", digest: "0000000000000000" }],
    };
    const part = { P1: { ...sound, plate: "PL9" } };
    expect(open(run({ records: { part, deviation: { E1: exception } } }))).toEqual(["gap missing|plate:PL9"]);
    // Nothing else names that plate: the key is misspelt.
    expect(open(run({ records: { part: { P1: sound }, deviation: { E1: exception } } }))).toEqual([
      "query exception-needed|deviation:E1|answers",
    ]);
  });
  test("a waiver of what is not due yet is needed", () => {
    const waiver = answering(run({ records: lacking }), [keys.lacking]);
    const interim = { state: "interim", ...milestones(["order"], ["welding"]) };
    expect(open(run({ records: { ...lacking, waiver: { V1: waiver } }, issue: interim }))).toEqual([]);
    expect(open(run({ records: { part: { P1: sound }, waiver: { V1: waiver } } }))).toEqual([
      "query exception-needed|waiver:V1|answers",
    ]);
  });
});

describe("what depended on an answered finding", () => {
  test("is judged, when the evidence is there", () => {
    const records = {
      part: { P1: { ...sound, thickness: "7 mm", plate: "PL1" } },
      plate: { PL1: { thickness: "9 mm", grade: "A" } },
    };
    const before = run({ records });
    expect(verdicts(before)).toMatchObject({
      "thick|part:P1": "failed",
      "as-plate|part:P1": "not judged: thick|part:P1|",
    });
    const after = withException(records, "deviation", [keys.thin]);
    expect(open(after)).toEqual(["nonconformity as-plate|part:P1|"]);
  });
  test("what still cannot be judged is one gap, unless it is accepted too", () => {
    const records = {
      part: { P1: { ...sound, plate: "PL1" }, P2: { ...sound, plate: "PL1" } },
      plate: { PL1: { thickness: "10 mm" } },
    };
    const key = "missing|plate:PL1|grade";
    const before = run({ records });
    expect(open(before)).toEqual([`gap ${key}`]);
    expect(finding(before, key).waiting).toEqual(["graded|part:P1", "graded|part:P2"]);
    const waived = withException(records, "waiver", [key]);
    expect(open(waived)).toEqual([`gap waiting|${key}`]);
    expect(finding(waived, `waiting|${key}`).message).toBe(
      "2 outcomes cannot be judged because plate PL1 has no grade",
    );
    const all = run({ records: { ...records, waiver: { E1: answering(waived, [key, `waiting|${key}`]) } } });
    expect(open(all)).toEqual([]);
    expect(all.counts).toMatchObject({ gap: 0, lifted: 2, answered: 2, notJudged: 0 });
  });
  test("one more outcome that waits revives the second gap, not the first", () => {
    const records = { part: { P1: { ...sound, plate: "PL1" } }, plate: { PL1: { thickness: "10 mm" } } };
    const key = "missing|plate:PL1|grade";
    const waived = withException(records, "waiver", [key]);
    const waiver = answering(waived, [key, `waiting|${key}`]);
    const more = { ...records, part: { ...records.part, P2: { ...sound, plate: "PL1" } }, waiver: { E1: waiver } };
    expect(open(run({ records: more }))).toEqual([`gap waiting|${key}`]);
  });
  test("a gap for which nothing waits leaves none", () => {
    expect(open(withException(lacking, "waiver", [keys.lacking]))).toEqual([]);
  });
  test("a row of the register that is waived waits for nothing", () => {
    const owed = [owes("row", "part", "note")];
    const definitions = define({ kinds, rules, owed });
    const before = judged(definitions, { records: lacking });
    const book = judged(definitions, { records: { ...lacking, waiver: { V1: answering(before, [keys.lacking]) } } });
    expect(open(book)).toEqual([]);
    expect(book.owed.map(({ state }) => state)).toEqual(["waived"]);
  });
  test("a row whose way is cut off does wait", () => {
    const owed = [owes("row", "part", "plate.grade")];
    const records = { part: { P1: { ...sound, plate: "PL9" } }, plate: { PL1: { grade: "A" } } };
    const definitions = define({ kinds, owed });
    const before = judged(definitions, { records });
    const book = judged(definitions, {
      records: { ...records, waiver: { V1: answering(before, ["missing|plate:PL9"]) } },
    });
    expect(open(book)).toEqual(["gap waiting|missing|plate:PL9"]);
  });
});
