import { expect, test } from "vitest";
import { define, judged, milestones, open, type SmallBook } from "../support/small-book.ts";
import { day, event, list, object, text } from "../support/small-kinds.ts";

const kinds = {
  log: {
    date: event(),
    planned: day({ date: "plan" }),
    until: day({ date: "limit" }),
    runs: list(object({ run: text({ required: true }), date: event() }), { rowKey: "run" }),
  },
  part: { note: text({ due: "welding" }) },
};
const run = (value: object, issue: SmallBook["issue"] = {}) =>
  judged(define({ kinds }), { records: { log: { L1: value as never } }, issue });
const interim = (list: readonly object[]) => ({ state: "interim", milestones: list }) as SmallBook["issue"];

test.each([
  ["on the day of the cut-off", { date: "2026-07-01" }, []],
  ["late that day", { date: "2026-07-01T23:59+02:00" }, []],
  ["a day later", { date: "2026-07-02" }, ["nonconformity event-recorded|log:L1|date"]],
  ["in a row", { runs: [{ run: "1", date: "2026-07-02" }] }, ["nonconformity event-recorded|log:L1|runs (1) date"]],
  ["a plan may lie ahead", { planned: "2027-01-01" }, []],
  ["a limit may lie ahead", { until: "2027-01-01" }, []],
])("an event %s", (_, value, found) => expect(open(run(value))).toEqual(found));

test("a day that the calendar does not have", () => {
  expect(open(run({ planned: "2026-02-30" }))).toEqual(["nonconformity date-form|log:L1|planned"]);
});

const later = { records: { part: { P1: { note: "x" } } } };
const states = (issue: SmallBook["issue"]) =>
  open(judged(define({ kinds }), { ...later, ...(issue !== undefined && { issue }) }));

test("a milestone that is used and not listed", () => {
  expect(states({ milestones: [{ name: "order" }] })).toEqual(["nonconformity milestone-listed|issue:ISSUE|welding"]);
});

test("a milestone that only kinds without records use need not be listed", () => {
  expect(open(judged(define({ kinds }), { records: { log: { L1: {} } }, issue: { milestones: [] } }))).toEqual([]);
});

test("one passed over by a later one: a query for each", () => {
  const reached = "2026-05-01";
  expect(states(interim([{ name: "order" }, { name: "welding", reached }]))).toEqual([
    "query milestone-order|issue:ISSUE|order",
  ]);
  expect(states(interim([{ name: "first" }, { name: "order" }, { name: "welding", reached }]))).toEqual([
    "query milestone-order|issue:ISSUE|first",
    "query milestone-order|issue:ISSUE|order",
  ]);
  expect(states(interim([{ name: "order", reached }, { name: "welding" }]))).toEqual([]);
});

test("reached after the cut-off is not reached", () => {
  expect(states(interim([{ name: "order" }, { name: "welding", reached: "2026-07-02" }]))).toEqual([]);
});

test("final: nothing is passed over, all are due", () => {
  expect(states(milestones([], ["order", "welding"]))).toEqual([]);
  expect(open(judged(define({ kinds }), { records: { part: { P1: {} } } }))).toEqual(["gap missing|part:P1|note"]);
});
