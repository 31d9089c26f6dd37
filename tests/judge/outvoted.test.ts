import { describe, expect, test } from "vitest";
import { canPrecede } from "../../src/model/dates.ts";
import { date, thing } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { basis, define, finding, judged, open, owes, verdicts, type Records } from "../support/small-book.ts";
import { event, link, list, object, text } from "../support/small-kinds.ts";

const kinds = {
  order: { placed: event({ due: "now" }) },
  log: { date: event({ due: "now" }), runs: list(object({ run: text(), date: event() }), { rowKey: "run" }) },
  test: { date: event({ due: "now" }) },
  note: { about: link("log") },
};
const against = {
  input: "placed",
  fault: "before-order",
  says: (value: string, days: string, count: number) => `ordered ${value}, but ${count} earlier, ${days}`,
  hint: "correct the order",
} as const;
const after = (kind: "log" | "test") =>
  rule({
    id: `${kind}-after`,
    title: `${kind} after`,
    basis,
    owner: "shop",
    severity: "nonconformity",
    kind,
    against,
    inputs: { day: date("date"), placed: date("book.order.placed") },
    *check({ day, placed }, subject) {
      if (canPrecede(placed, day) === "no") yield { at: "day", message: `${subject.id} is early`, why: "w", hint: "h" };
    },
    examples: [],
  });
const run = (records: Records, issue = {}) =>
  judged(
    define({
      kinds,
      rules: [after("log"), after("test")],
      owed: [owes("order", "book", "book.order")],
    }),
    {
      records,
      issue,
    },
  );
const order = { O: { placed: "2026-05-01" } };
const days = (all: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(all).map(([id, day]) => [id, { date: day }]));

describe("one date that many records contradict", () => {
  test("is accused alone; the days, and the first in time, whatever its kind, are named", () => {
    const book = run({
      order,
      log: days({ A: "2026-04-03", B: "2026-04-02", C: "2026-05-02" }),
      test: days({ T: "2026-03-09" }),
    });
    const key = "before-order|order:O|placed";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key)).toMatchObject({
      subject: { kind: "test", id: "T" },
      place: { file: "order/O.json", pointer: "/placed" },
      message: "ordered 2026-05-01, but 3 earlier, from 2026-03-09 to 2026-04-03 (first: test T on 2026-03-09; 2 more)",
      accuses: ["order:O/placed"],
    });
    expect(finding(book, key).related.map(({ subject }) => subject?.id)).toEqual(["T", "B", "A"]);
    expect(verdicts(book)).toMatchObject({
      "log-after|log:A": `not judged: ${key}`,
      "log-after|log:C": "passed",
      "test-after|test:T": `not judged: ${key}`,
    });
  });
  test("two records that contradict it are each at fault", () => {
    const book = run({ order, log: days({ A: "2026-04-03", C: "2026-05-02" }), test: days({ T: "2026-03-09" }) });
    expect(open(book)).toEqual(["nonconformity log-after|log:A|", "nonconformity test-after|test:T|"]);
    expect(finding(book, "log-after|log:A|").accuses).toEqual(["log:A/date"]);
  });
});

describe("the day on which evidence was cut off", () => {
  const late = { A: "2026-07-03", B: "2026-07-02", C: "2026-05-02" };
  test("forgotten, it is one finding that names the days and the first event", () => {
    const book = run({ order, log: days(late), test: days({ T: "2026-07-04" }) });
    const key = "event-recorded|issue:ISSUE|dataCutOff";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key)).toMatchObject({
      subject: { kind: "log", id: "B" },
      place: { file: "issue.json", pointer: "/dataCutOff" },
      message:
        "evidence was cut off on 2026-07-01, but 3 records tell of later events, from 2026-07-02 to 2026-07-04 (first: log B on 2026-07-02; 2 more)",
    });
    expect(finding(book, key).related.map(({ subject }) => subject?.id)).toEqual(["B", "A", "T"]);
  });
  test("rows of one record are one record", () => {
    const runs = ["1", "2", "3"].map((one) => ({ run: one, date: "2026-07-03" }));
    const book = run({ order, log: { A: { date: "2026-06-30", runs } } });
    expect(open(book)).toHaveLength(3);
  });
});

describe("one fault of many subjects", () => {
  const placed = rule({
    id: "placed",
    title: "placed",
    basis,
    owner: "shop",
    severity: "nonconformity",
    kind: "log",
    inputs: { day: date("date"), order: thing("order", { placed: date("placed") }) },
    *check({ day, order: one }, log) {
      if (canPrecede(one.placed, day) === "no")
        yield { at: "day", on: one, message: `log ${log.id} is of ${day.text}`, why: "w", hint: "h" };
    },
    examples: [],
  });
  const own = { ...kinds, log: { ...kinds.log, order: link("order", { due: "now" }) } };
  const logs = (all: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(all).map(([id, day]) => [id, { date: day, order: "O" }]));
  test("is named after the first of them in time, with the number of the others, which follow in that order", () => {
    const book = judged(define({ kinds: own, rules: [placed] }), {
      records: { order, log: logs({ A: "2026-04-03", B: "2026-04-02", C: "2026-04-03", D: "2026-05-01" }) },
    });
    const key = "placed|order:O|";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key)).toMatchObject({
      subject: { kind: "log", id: "B" },
      message: "log B is of 2026-04-02 (first: log B on 2026-04-02; 2 more)",
    });
    expect(finding(book, key).related.map(({ subject }) => subject?.id)).toEqual(["A", "C"]);
  });
});
