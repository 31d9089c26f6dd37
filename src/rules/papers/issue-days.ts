import { ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const milestones = ownChoice("milestones are listed in the order of manufacture, each with the day it was reached");
const history = ownChoice("the history tells what was issued, one issue after the other, and ends with this one");

export const milestonesInOrder = rule({
  id: "issue-milestones-in-order",
  title: "The days of milestones follow each other in their order",
  basis: milestones,
  kind: "issue",
  severity: "query",
  owner: "document control",
  inputs: { milestones: anyOf(things("milestones[]", { name: text("name"), day: optional(date("reached")) })) },
  *check({ milestones: all }) {
    const dated = all.flatMap((one) => (one.day === undefined ? [] : [{ one, name: one.name, day: one.day }]));
    for (const [index, { one, name, day }] of dated.entries()) {
      const before = dated[index - 1];
      if (before !== undefined && canPrecede(before.day, day) === "no")
        yield {
          at: [one, "day"],
          accuses: [
            [one, "day"],
            [before.one, "day"],
          ],
          name,
          message: `milestone "${name}" is dated ${day.text}, before "${before.name}" of ${before.day.text}`,
          why: "milestones are listed in the order of manufacture",
          hint: "correct the wrong day, or the order; if it was so, answer this query",
          related: [{ at: [before.one, "day"], message: before.day.text }],
        };
    }
  },
  examples: [
    { name: "one after the other", given: dated(["cutting", "2026-05-19"], ["welding", "2026-06-12"]), objections: [] },
    { name: "on one day", given: dated(["cutting", "2026-05-19"], ["welding", "2026-05-19"]), objections: [] },
    {
      name: "one not dated yet",
      given: dated(["cutting", "2026-05-19"], ["coating"], ["release", "2026-07-17"]),
      objections: [],
    },
    {
      name: "the second before the first",
      given: dated(["cutting", "2026-05-19"], ["welding", "2026-05-18"]),
      objections: ['milestone "welding" is dated 2026-05-18, before "cutting" of 2026-05-19'],
    },
    {
      name: "before one further up, with none between them dated",
      given: dated(["cutting", "2026-05-19"], ["coating"], ["release", "2026-05-18"]),
      objections: ['milestone "release" is dated 2026-05-18, before "cutting" of 2026-05-19'],
    },
  ],
});

function dated(...rows: readonly (readonly [name: string, day?: string])[]) {
  return { milestones: rows.map(([name, day]) => ({ name, ...(day !== undefined && { day }) })) };
}

const named = (name: string) => `milestones[name="${name}"]`;

export const orderReached = rule({
  id: "issue-order-day",
  title: "The milestone of the order is of the day of the order",
  basis: milestones,
  kind: "issue",
  when: [{ path: `${named("order")}.reached`, exists: true }],
  severity: "query",
  owner: "document control",
  inputs: {
    reached: anyOf(things(named("order"), { day: optional(date("reached")) })),
    ordered: date("book.book.orderDate"),
  },
  *check({ reached, ordered }) {
    for (const one of reached)
      if (one.day !== undefined && one.day.day !== ordered.day)
        yield {
          at: [one, "day"],
          message: `milestone "order" is dated ${one.day.text}, the order ${ordered.text}`,
          why: "the day of the order is stated in book.json, the milestone in issue.json",
          hint: "correct the wrong one; if the order counts from another day than its own, answer this query",
          related: [{ at: "ordered", message: `ordered on ${ordered.text}` }],
        };
  },
  examples: [
    { name: "one day", given: { reached: [{ day: "2026-01-19" }], ordered: "2026-01-19" }, objections: [] },
    {
      name: "a month apart",
      given: { reached: [{ day: "2026-02-19" }], ordered: "2026-01-19" },
      objections: ['milestone "order" is dated 2026-02-19, the order 2026-01-19'],
    },
  ],
});

export const finalReached = rule({
  id: "issue-final-reached",
  title: "In a final issue no milestone is still planned",
  basis: milestones,
  kind: "issue",
  when: [{ path: "state", equals: "final" }],
  severity: "nonconformity",
  owner: "document control",
  inputs: {
    cutOff: date("dataCutOff"),
    milestones: anyOf(things("milestones[]", { name: text("name"), day: optional(date("reached")) })),
  },
  *check({ cutOff, milestones: all }) {
    for (const one of all)
      if (one.day !== undefined && canPrecede(one.day, cutOff) === "no")
        yield {
          at: [one, "day"],
          name: one.name,
          message: `milestone "${one.name}" is dated ${one.day.text}, after the evidence was cut off on ${cutOff.text}`,
          why: "a day after the cut-off is a plan, and a final issue plans nothing",
          hint: "correct the wrong day; what is still to come makes the issue an interim one",
          related: [{ at: "cutOff", message: `cut off on ${cutOff.text}` }],
        };
  },
  examples: [
    {
      name: "released on that day",
      given: { cutOff: "2026-07-17", ...dated(["release", "2026-07-17"]) },
      objections: [],
    },
    {
      name: "released the day after",
      given: { cutOff: "2026-07-17", ...dated(["release", "2026-07-18"]) },
      objections: ['milestone "release" is dated 2026-07-18, after the evidence was cut off on 2026-07-17'],
    },
  ],
});

export const historyDays = rule({
  id: "issue-history-days",
  title: "Issues follow each other in their days, the first after the order, a final one not before the release",
  basis: history,
  kind: "issue",
  when: [{ path: "history", exists: true }],
  severity: "nonconformity",
  owner: "document control",
  inputs: {
    revision: text("revision"),
    issued: date("issueDate"),
    cutOff: date("dataCutOff"),
    rows: anyOf(things("history[]", { revision: text("revision"), state: text("state"), day: date("date") })),
    released: anyOf(things(named("release"), { day: optional(date("reached")) })),
    ordered: date("book.book.orderDate"),
  },
  *check({ revision, issued, cutOff, rows, released, ordered }) {
    for (const [index, row] of rows.entries()) {
      const before = rows[index - 1];
      const late = released.find(
        ({ day }) => day !== undefined && canPrecede(day, cutOff) === "yes" && canPrecede(day, row.day) === "no",
      )?.day;
      const fault =
        canPrecede(before?.day ?? ordered, row.day) === "no"
          ? before === undefined
            ? `before the order of ${ordered.text}`
            : `before revision ${before.revision} of ${before.day.text}`
          : row.state === "final" && late !== undefined
            ? `as final, before the release of ${late.text}`
            : row.revision === revision && row.day.day !== issued.day && canPrecede(cutOff, issued) === "yes"
              ? `and is dated ${issued.text} itself`
              : undefined;
      if (fault !== undefined)
        yield {
          at: [row, "day"],
          accuses: [],
          name: row.revision,
          message: `the history has revision ${row.revision} issued on ${row.day.text}, ${fault}`,
          why: "the history lists the issues of the book, oldest first, and ends with this one",
          hint: "correct the wrong day",
        };
    }
  },
  examples: [
    {
      name: "one after the other",
      given: issues(["P1", "interim", "2026-03-23"], ["0", "final", "2026-07-17"]),
      objections: [],
    },
    {
      name: "the first before the order",
      given: issues(["P1", "interim", "2026-01-18"], ["0", "final", "2026-07-17"]),
      objections: ["the history has revision P1 issued on 2026-01-18, before the order of 2026-01-19"],
    },
    {
      name: "the second before the first",
      given: issues(["P1", "interim", "2026-03-23"], ["P2", "interim", "2026-03-22"]),
      objections: ["the history has revision P2 issued on 2026-03-22, before revision P1 of 2026-03-23"],
    },
    {
      name: "final before the release",
      given: issues(["0", "final", "2026-07-16"], ["1", "final", "2026-08-01"]),
      objections: ["the history has revision 0 issued on 2026-07-16, as final, before the release of 2026-07-17"],
    },
    {
      name: "this one of another day than it bears",
      given: issues(["0", "final", "2026-07-18"]),
      objections: ["the history has revision 0 issued on 2026-07-18, and is dated 2026-07-17 itself"],
    },
  ],
});

function issues(...rows: readonly (readonly [revision: string, state: string, day: string])[]) {
  return {
    revision: "0",
    issued: "2026-07-17",
    cutOff: "2026-07-17",
    ordered: "2026-01-19",
    released: [{ day: "2026-07-17" }],
    rows: rows.map(([revision, state, day]) => ({ revision, state, day })),
  };
}
