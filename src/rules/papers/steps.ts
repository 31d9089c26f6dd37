import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const plan = commonPractice("inspection and test plan: work stops at a hold point until it is released");

export const stepOrder = rule({
  id: "step-order",
  title: "A step is done after the steps before it",
  basis: plan,
  kind: "inspection-step",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    started: optional(date("started")),
    done: date("done"),
    before: anyOf(things("predecessors[]", { done: date("done") })),
  },
  *check({ started, done, before }, step) {
    const begun = started ?? done;
    for (const other of before)
      if (canPrecede(other.done, begun) === "no")
        yield {
          at: started === undefined ? "done" : "started",
          name: other.$.id,
          message: `step ${step.name} was ${started === undefined ? "done" : "begun"} on ${begun.text}, before step ${other.$.name} was done on ${other.done.text}`,
          why: `step ${step.name} names ${other.$.name} as a step before it`,
          hint: "correct the wrong date; if it was allowed, record an order exception",
          related: [{ at: [other, "done"], message: `done on ${other.done.text}` }],
        };
  },
  examples: [
    { name: "on the same day", given: { done: "2026-06-01", before: [{ done: "2026-06-01" }] }, objections: [] },
    { name: "the first step", given: { done: "2026-06-01" }, objections: [] },
    {
      name: "a day too early",
      given: { done: "2026-05-31", before: [{ $: "S-020", done: "2026-06-01" }] },
      objections: ["step X-01 was done on 2026-05-31, before step S-020 was done on 2026-06-01"],
    },
    {
      name: "begun too early",
      given: { started: "2026-05-31", done: "2026-06-02", before: [{ $: "S-020", done: "2026-06-01" }] },
      objections: ["step X-01 was begun on 2026-05-31, before step S-020 was done on 2026-06-01"],
    },
  ],
});

export const stepTimes = rule({
  id: "step-times",
  title: "A step is done after it was begun",
  basis: ownChoice("nothing ends before it begins"),
  kind: "inspection-step",
  severity: "nonconformity",
  owner: "quality",
  inputs: { started: optional(date("started")), done: date("done") },
  *check({ started, done }, step) {
    if (started !== undefined && canPrecede(started, done) === "no")
      yield {
        at: "done",
        accuses: ["started", "done"],
        message: `step ${step.name} was done on ${done.text}, before it was begun on ${started.text}`,
        why: "both days are entered in one record",
        hint: "correct the wrong one against the plan",
      };
  },
  examples: [
    { name: "the same day", given: { started: "2026-06-01", done: "2026-06-01" }, objections: [] },
    { name: "no start entered", given: { done: "2026-06-01" }, objections: [] },
    {
      name: "the day before",
      given: { started: "2026-06-01", done: "2026-05-31" },
      objections: ["step X-01 was done on 2026-05-31, before it was begun on 2026-06-01"],
    },
  ],
});

const point = {
  party: text("party"),
  point: text("point"),
  outcome: optional(text("outcome")),
  day: optional(date("date")),
  person: optional(text("person")),
  release: optional(text("release")),
};

/** Parts that leave no mark on the plan. */
const silent = ["monitor"];

export const stepSigned = rule({
  id: "step-signed",
  title: "Each party has signed its part in a step that is done",
  basis: plan,
  kind: "inspection-step",
  severity: "gap",
  owner: "quality",
  inputs: { done: date("done"), points: list(thing("points[]", point)) },
  *check({ done, points }, step) {
    for (const one of points.filter((part) => !silent.includes(part.point))) {
      const missing = [
        one.outcome === undefined && needsOutcome(one.point) ? "outcome" : "",
        one.person === undefined && one.outcome !== "not attended" ? "person" : "",
        one.day === undefined && one.outcome !== "not attended" ? "date" : "",
      ].filter((name) => name !== "");
      if (missing.length > 0)
        yield {
          at: one,
          name: one.party,
          message: `step ${step.name} was done on ${done.text}; the ${one.point} point of the ${one.party} has no ${missing.join(" and no ")}`,
          why: `${one.party}: ${one.point}${one.outcome === undefined ? "" : `, ${one.outcome}`}`,
          hint: `enter it from the signed plan, or get the signature of the ${one.party}`,
        };
    }
  },
  examples: [
    { name: "signed", given: signed({}), objections: [] },
    {
      name: "only watched",
      given: signed({ point: "monitor", person: undefined, day: undefined, outcome: undefined }),
      objections: [],
    },
    {
      name: "a witness who did not come",
      given: signed({ point: "witness", outcome: "not attended", person: undefined, day: undefined }),
      objections: [],
    },
    {
      name: "no signature",
      given: signed({ person: undefined, day: undefined }),
      objections: ["step X-01 was done on 2026-06-01; the hold point of the inspection body has no person and no date"],
    },
    {
      name: "nobody says whether the witness came",
      given: signed({ point: "witness", outcome: undefined }),
      objections: ["step X-01 was done on 2026-06-01; the witness point of the inspection body has no outcome"],
    },
  ],
});

const needsOutcome = (name: string) => ["hold", "witness", "review"].includes(name);

export const holdReleased = rule({
  id: "hold-released",
  title: "A hold point is attended or released in writing, not after the step was done",
  basis: plan,
  kind: "inspection-step",
  severity: "nonconformity",
  owner: "quality",
  inputs: { done: date("done"), points: list(thing("points[]", point)) },
  *check({ done, points }, step) {
    for (const one of points.filter((part) => part.point === "hold")) {
      const faults = [
        one.outcome === "not attended" ? "was neither attended nor released" : "",
        one.outcome === "released in writing" && one.release === undefined
          ? "is said to be released in writing, but names no letter"
          : "",
        one.day !== undefined && canPrecede(one.day, done) === "no"
          ? `was signed on ${one.day.text}, after the step was done on ${done.text}`
          : "",
      ].filter((fault) => fault !== "");
      if (faults.length > 0)
        yield {
          at: one,
          name: one.party,
          message: `the hold point of the ${one.party} in step ${step.name} ${faults.join("; it ")}`,
          why: `${one.party}: hold, ${one.outcome ?? "no outcome"}`,
          hint: "add the release given before the work went on; else raise a nonconformity report with the party",
        };
    }
  },
  examples: [
    { name: "attended on the day", given: signed({}), objections: [] },
    {
      name: "released in writing",
      given: signed({ outcome: "released in writing", release: "letter 26-114", day: "2026-05-28" }),
      objections: [],
    },
    {
      name: "a witness who did not come",
      given: signed({ point: "witness", outcome: "not attended" }),
      objections: [],
    },
    {
      name: "not attended",
      given: signed({ outcome: "not attended" }),
      objections: ["the hold point of the inspection body in step X-01 was neither attended nor released"],
    },
    {
      name: "released, but no letter",
      given: signed({ outcome: "released in writing" }),
      objections: [
        "the hold point of the inspection body in step X-01 is said to be released in writing, but names no letter",
      ],
    },
    {
      name: "signed a day late",
      given: signed({ day: "2026-06-02" }),
      objections: [
        "the hold point of the inspection body in step X-01 was signed on 2026-06-02, after the step was done on 2026-06-01",
      ],
    },
  ],
});

function signed(changes: Readonly<Record<string, string | undefined>>) {
  const own: Readonly<Record<string, string | undefined>> = {
    party: "inspection body",
    point: "hold",
    outcome: "attended",
    day: "2026-06-01",
    person: "P20",
    ...changes,
  };
  return {
    done: "2026-06-01",
    points: [Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined))],
  };
}
