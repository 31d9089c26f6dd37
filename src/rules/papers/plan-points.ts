import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { inspectionPlan } from "../shared/plan.ts";

/** What may have happened at a point. What a hold needs is judged by itself. */
const outcomes: Readonly<Record<string, readonly string[]>> = {
  hold: ["attended", "released in writing", "not attended"],
  witness: ["attended", "released in writing", "not attended"],
  review: ["reviewed"],
  approve: ["reviewed"],
  monitor: ["attended", "not attended", "reviewed"],
  perform: ["attended"],
};

export const pointOutcome = rule({
  id: "step-point-outcome",
  title: "What happened at a point of the plan is what that point provides for",
  basis: inspectionPlan,
  kind: "inspection-step",
  severity: "query",
  owner: "quality",
  inputs: {
    points: things("points[]", {
      party: text("party"),
      point: text("point"),
      outcome: optional(text("outcome")),
      person: optional(text("person")),
    }),
  },
  *check({ points }, step) {
    for (const one of points) {
      const { party, point, outcome, person } = one;
      const fault =
        point === "perform" && party !== "maker"
          ? `the ${party} performs it, and only the maker does`
          : outcome !== undefined && outcomes[point]?.includes(outcome) === false
            ? `the ${point} point of the ${party} ends in "${outcome}"`
            : outcome === "not attended" && point !== "hold" && person !== undefined
              ? `the ${party} did not attend, and ${person} signed for it`
              : undefined;
      if (fault !== undefined)
        yield {
          at: one,
          accuses: [],
          name: party,
          message: `in step ${step.name} ${fault}`,
          why: `${party}: ${point}${outcome === undefined ? "" : `, ${outcome}`}`,
          hint: "compare with the signed plan and correct the point, the party or what happened",
        };
    }
  },
  examples: [
    { name: "a witness who came", given: at("inspection body", "witness", "attended"), objections: [] },
    { name: "a witness who did not", given: at("client", "witness", "not attended"), objections: [] },
    { name: "a review", given: at("client", "review", "reviewed"), objections: [] },
    { name: "nothing has happened yet", given: at("client", "review"), objections: [] },
    {
      name: "a review that was attended",
      given: at("inspection body", "review", "attended"),
      objections: ['in step X-01 the review point of the inspection body ends in "attended"'],
    },
    {
      name: "work done by the body",
      given: at("inspection body", "perform", "attended"),
      objections: ["in step X-01 the inspection body performs it, and only the maker does"],
    },
    {
      name: "a signature of who was not there",
      given: at("client", "witness", "not attended", "P1"),
      objections: ["in step X-01 the client did not attend, and P1 signed for it"],
    },
  ],
});

function at(party: string, point: string, outcome?: string, person?: string) {
  return {
    points: [{ party, point, ...(outcome !== undefined && { outcome }), ...(person !== undefined && { person }) }],
  };
}

export const stepPerformed = rule({
  id: "step-performed",
  title: "A step of the plan is performed by one party",
  basis: inspectionPlan,
  kind: "inspection-step",
  severity: "query",
  owner: "quality",
  inputs: { points: list(text("points[].point")) },
  *check({ points }, step) {
    if (!points.includes("perform"))
      yield {
        at: "points",
        accuses: [],
        message: `in step ${step.name} nobody performs: its points are ${points.join(", ")}`,
        why: "what is held, witnessed or reviewed is done by somebody",
        hint: "compare with the plan and correct the point of the party that does it",
      };
  },
  examples: [
    { name: "by the maker", given: { points: ["perform", "witness"] }, objections: [] },
    {
      name: "by nobody",
      given: { points: ["hold", "witness"] },
      objections: ["in step X-01 nobody performs: its points are hold, witness"],
    },
  ],
});

export const planInOrder = rule({
  id: "step-planned-order",
  title: "A step is not planned before the steps that must be done first",
  basis: ownChoice("a plan that cannot be kept is none"),
  kind: "inspection-step",
  when: [
    { path: "planned", exists: true },
    { path: "predecessors", exists: true },
  ],
  severity: "query",
  owner: "quality",
  inputs: {
    planned: optional(date("planned")),
    before: anyOf(things("predecessors[]", { planned: optional(date("planned")) })),
  },
  *check({ planned, before }, step) {
    for (const other of before)
      if (planned !== undefined && other.planned !== undefined && canPrecede(other.planned, planned) === "no")
        yield {
          at: "planned",
          accuses: [],
          name: other.$.id,
          message: `step ${step.name} is planned for ${planned.text}, before step ${other.$.name}, planned for ${other.planned.text}`,
          why: `step ${step.name} names ${other.$.name} as a step before it`,
          hint: "correct the wrong day, or which steps come before",
          related: [{ at: [other, "planned"], message: `planned for ${other.planned.text}` }],
        };
  },
  examples: [
    { name: "on one day", given: { planned: "2026-06-18", before: [{ planned: "2026-06-18" }] }, objections: [] },
    { name: "the other is not planned yet", given: { planned: "2026-06-18", before: [{}] }, objections: [] },
    {
      name: "a day before",
      given: { planned: "2026-06-17", before: [{ $: "S-020", planned: "2026-06-18" }] },
      objections: ["step X-01 is planned for 2026-06-17, before step S-020, planned for 2026-06-18"],
    },
  ],
});

export const noticeGiven = rule({
  id: "step-notice",
  title: "Notice of a step is given before it is done",
  basis: commonPractice("parties that are to be present are told beforehand"),
  kind: "inspection-step",
  when: [{ path: "notice", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: { notice: optional(date("notice")), done: date("done"), ordered: date("book.book.orderDate") },
  *check({ notice, done, ordered }, step) {
    if (notice === undefined) return;
    const late = canPrecede(notice, done) === "no";
    if (late || canPrecede(ordered, notice) === "no")
      yield {
        at: "notice",
        message: `notice of step ${step.name} was given on ${notice.text}, ${late ? `after it was done on ${done.text}` : `before the order of ${ordered.text}`}`,
        why: "the plan states both days",
        hint: "correct the wrong day against the letter and the plan",
      };
  },
  examples: [
    {
      name: "a week before",
      given: { notice: "2026-06-11", done: "2026-06-18", ordered: "2026-01-19" },
      objections: [],
    },
    {
      name: "on the day of the order",
      given: { notice: "2026-01-19", done: "2026-06-18", ordered: "2026-01-19" },
      objections: [],
    },
    {
      name: "a day after",
      given: { notice: "2026-06-19", done: "2026-06-18", ordered: "2026-01-19" },
      objections: ["notice of step X-01 was given on 2026-06-19, after it was done on 2026-06-18"],
    },
    {
      name: "before the order",
      given: { notice: "2026-01-18", done: "2026-06-18", ordered: "2026-01-19" },
      objections: ["notice of step X-01 was given on 2026-01-18, before the order of 2026-01-19"],
    },
  ],
});
