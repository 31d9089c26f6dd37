import { ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, optional, type Input } from "../../model/input.ts";
import type { DateValue } from "../../model/dates.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { AKind, kindName } from "../shared/words.ts";
import type { Owner } from "../../model/vocabulary.ts";
import { owedBy, type Owes } from "../../model/owes.ts";

interface Order {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** Path of the day that comes first, and what happened then. */
  readonly first: readonly [path: string, what: string];
  readonly then: readonly [path: string, what: string];
  /** Paths the schema leaves open. */
  readonly open?: "first" | "then";
  readonly owner: Owner;
}

const nature = ownChoice("nothing ends before it begins");

const orders: readonly Order[] = [
  {
    id: "certificate-received",
    title: "A material certificate is received after it was issued",
    kind: "material-certificate",
    first: ["issued", "issued"],
    then: ["received", "received"],
    owner: "purchasing",
  },
  {
    id: "qualification-period",
    title: "A welder qualification ends after its test",
    kind: "welder-qualification",
    first: ["testDate", "tested"],
    then: ["validTo", "valid to"],
    open: "then",
    owner: "welding coordination",
  },
  {
    id: "qualification-approved",
    title: "A procedure qualification is approved after its test",
    kind: "procedure-qualification",
    first: ["testDate", "tested"],
    then: ["approved", "approved"],
    owner: "welding coordination",
  },
  {
    id: "tester-period",
    title: "A tester's certificate ends after it was issued",
    kind: "ndt-personnel",
    first: ["issued", "issued"],
    then: ["validTo", "valid to"],
    owner: "testing",
  },
  {
    id: "mill-period",
    title: "The approval of a mill ends after it began",
    kind: "mill-approval",
    first: ["validFrom", "valid from"],
    then: ["validTo", "valid to"],
    owner: "purchasing",
  },
  {
    id: "calibration-period",
    title: "A calibration ends after it was made",
    kind: "instrument#calibrations",
    first: ["date", "calibrated"],
    then: ["validTo", "valid to"],
    owner: "quality",
  },
  {
    id: "body-certificate-period",
    title: "A certificate of the inspection body ends after its date",
    kind: "body-certificate",
    first: ["date", "dated"],
    then: ["validTo", "valid to"],
    open: "then",
    owner: "inspection body",
  },
  {
    id: "issue-dated",
    title: "An issue is dated on the day its evidence was cut off, or later",
    kind: "issue",
    first: ["dataCutOff", "cut off"],
    then: ["issueDate", "dated"],
    owner: "document control",
  },
  {
    id: "weld-finished",
    title: "Welding ends after it began",
    kind: "weld-log#runs",
    first: ["date", "welded"],
    then: ["finished", "finished"],
    open: "then",
    owner: "welding coordination",
  },
  {
    id: "production-test-tested",
    title: "A production test is tested after it was welded",
    kind: "production-test",
    first: ["welded", "welded"],
    then: ["date", "tested"],
    owner: "testing",
  },
];

const input = (path: string, open: boolean): Input<DateValue | undefined> => (open ? optional(date(path)) : date(path));

/** Two days of one thing stand in the order in which they can have happened. */
export const dateOrders: readonly Rule[] = orders.map(({ id, title, kind, first, then, open, owner }) =>
  rule({
    id,
    title,
    basis: nature,
    kind,
    severity: "nonconformity",
    owner,
    inputs: { first: input(first[0], open === "first"), then: input(then[0], open === "then") },
    *check({ first: earlier, then: later }, subject) {
      if (earlier !== undefined && later !== undefined && canPrecede(earlier, later) === "no")
        yield {
          at: "then",
          // Either day may be the slip.
          accuses: ["first", "then"],
          message: `${subject.name} is ${then[1]} ${later.text}, but ${first[1]} ${earlier.text}`,
          why: `the day of "${then[1]}" lies before that of "${first[1]}"`,
          hint: "compare both with the originals and correct the wrong one; if it was so and was allowed, record an order exception",
          related: [{ at: "first", message: `${first[1]} ${earlier.text}` }],
        };
    },
    examples: [
      { name: "the same day", given: { first: "2026-06-01", then: "2026-06-01" }, objections: [] },
      {
        name: "the day before",
        given: { first: "2026-06-01", then: "2026-05-31" },
        objections: [`X-01 is ${then[1]} 2026-05-31, but ${first[1]} 2026-06-01`],
      },
    ],
  }),
);

interface Work {
  readonly kind: string;
  readonly path: string;
  /** Field whose presence decides whether this day is the one that counts. */
  readonly if?: { readonly path: string; readonly exists: boolean };
  /** Who owes the day, where its schema does not say. */
  readonly owes?: readonly Owes[];
  /** Where a kind has several such days, or the day is not that of the record. */
  readonly named?: { readonly id: string; readonly title: string; readonly is: string };
}

const work = (kind: string, path: string): Work => ({ kind, path });
const afterTheOrder: readonly Work[] = [
  work("weld-log", "fitUp.date"),
  work("ndt-report", "date"),
  work("repair", "date"),
  work("heat-treatment", "started"),
  work("production-test", "welded"),
  work("tube-end-group", "date"),
  work("dimension-check", "date"),
  work("coating-report", "prepared"),
  work("hardness-report", "date"),
  work("leak-test", "date"),
  work("alloy-report", "date"),
  work("pressure-test", "date"),
  work("piece-mark", "cut"),
  work("nonconformity-report", "raised"),
  { ...work("calculation-sheet", "date"), if: { path: "adopts", exists: false } },
  {
    ...work("calculation-sheet", 'signatures[role="design"].date'),
    owes: [owedBy("design", "design-approved", "day")],
    if: { path: "adopts", exists: true },
    named: {
      id: "adoption-after-order",
      title: "A calculation sheet that adopts figures is signed after the order",
      is: "adopts figures by a signature of",
    },
  },
  work("declaration", "date"),
];

/** Work on the equipment does not begin before it was ordered. */
export const afterOrder: readonly Rule[] = afterTheOrder.map(({ kind, path, if: only, owes, named }) =>
  rule({
    id: named?.id ?? `${kind}-after-order`,
    title: named?.title ?? `${AKind(kind)} is dated after the order`,
    basis: ownChoice("what is made for an order is not made before it"),
    kind,
    ...(only !== undefined && { when: [only] }),
    severity: "nonconformity",
    owner: "document control",
    against: {
      input: "ordered",
      fault: "before-order",
      says: (ordered, days, count) =>
        `the order is dated ${ordered} in book.json, but ${count} records of work on it are earlier, ${days}`,
      hint: "correct the day of the order; if the work was begun before it, record an order exception",
    },
    inputs: { day: date(path), ordered: date("book.book.orderDate") },
    ...(owes !== undefined && { owes }),
    *check({ day, ordered }, subject) {
      if (canPrecede(ordered, day) === "no")
        yield {
          at: "day",
          message: `${kindName(kind)} ${subject.name} ${named?.is ?? "is dated"} ${day.text}, before the order of ${ordered.text}`,
          why: "the order date is stated in book.json",
          hint: "correct the wrong date; if the work was begun before the order, record an order exception",
          related: [{ at: "ordered", message: `ordered on ${ordered.text}` }],
        };
    },
    examples: [
      { name: "on the day of the order", given: { day: "2026-01-12", ordered: "2026-01-12" }, objections: [] },
      {
        name: "the day before",
        given: { day: "2026-01-11", ordered: "2026-01-12" },
        objections: [`${kindName(kind)} X-01 ${named?.is ?? "is dated"} 2026-01-11, before the order of 2026-01-12`],
      },
    ],
  }),
);
