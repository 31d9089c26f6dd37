import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { aKind, kindName } from "../shared/words.ts";

const plan = commonPractice("inspection and test plan: what each party does at a step, and what it leaves on the plan");

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
  basis: plan,
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

/** Modules in which the body itself makes the final assessment, each vessel's. */
const assessed = ["B+F", "G"];

/** Where the body itself examines each vessel, work stops for it at the pressure test and at the final inspection. */
export const bodyHolds: readonly Rule[] = (
  [
    { id: "pressure-test-hold", kind: "pressure-test", when: [] },
    { id: "final-inspection-hold", kind: "document", when: [{ path: "type", equals: "final-inspection-report" }] },
  ] as const
).map(({ id, kind, when }) =>
  rule({
    id,
    title:
      kind === "document"
        ? "The final inspection is a hold point of the body that makes the final assessment"
        : "The pressure test is a hold point of the body that makes the final assessment",
    basis: fromMemory(
      "Directive 2014/68/EU",
      undefined,
      "Annex III, modules F and G: the body examines each vessel, the final inspection and the proof test included",
    ),
    kind,
    when: [
      ...when,
      { path: "<inspection-step:records[]>", exists: true },
      { path: "book.book.inspectionBody", exists: true },
      { path: "book.equipment.directive.module", exists: true },
    ],
    severity: "query",
    owner: "quality",
    inputs: {
      steps: anyOf(
        things("<inspection-step:records[]>", {
          points: anyOf(things("points[]", { party: text("party"), point: text("point") })),
        }),
      ),
      modules: anyOf(list(text("book.equipment.directive.module"))),
    },
    *check({ steps, modules }, subject) {
      if (!modules.some((module) => assessed.includes(module))) return;
      const held = (one: (typeof steps)[number]) =>
        one.points.some(({ party, point }) => party === "inspection body" && point === "hold");
      const [first] = steps;
      if (first !== undefined && !steps.some(held))
        yield {
          at: first,
          message: `${kindName(kind)} ${subject.name} is evidence of step ${steps.map(({ $ }) => $.name).join(", ")}, which is no hold point of the inspection body`,
          why: `module ${modules.join(", ")}: ${first.points.map(({ party, point }) => `${party}: ${point}`).join("; ")}`,
          hint: "correct the point in the plan; if the body agreed to another part, answer this query with its letter",
        };
    },
    examples: [
      { name: "a hold of the body", given: held("B+F", "hold"), objections: [] },
      { name: "by a module in which the body examines no vessel", given: held("A2", "witness"), objections: [] },
      {
        name: "only a witness",
        given: held("G", "witness"),
        objections: [`${kindName(kind)} X-01 is evidence of step S-230, which is no hold point of the inspection body`],
      },
    ],
  }),
);

function held(module: string, point: string) {
  return {
    modules: [module],
    steps: [
      {
        $: "S-230",
        points: [
          { party: "maker", point: "perform" },
          { party: "inspection body", point },
        ],
      },
    ],
  };
}

/**
 * What is done once, when the steps before it are done. Reports and measurements are not among them: a step that sums up
 * names reports of long before.
 */
const works = [
  ["pressure-test", "date"],
  ["piece-mark", "cut"],
  ["nameplate", "fixed"],
  ["body-certificate", "date"],
] as const;

export const afterSteps: readonly Rule[] = works.map(([kind, path]) =>
  rule({
    id: `${kind}-after-steps`,
    title: `What a step with ${aKind(kind)} must follow is done before that is dated`,
    basis: plan,
    kind,
    when: [
      { path, exists: true },
      { path: "<inspection-step:records[]>.predecessors", exists: true },
    ],
    severity: "query",
    fault: "step-work-early",
    owner: "quality",
    inputs: {
      day: optional(date(path)),
      steps: anyOf(
        things("<inspection-step:records[]>", {
          started: optional(date("started")),
          before: anyOf(things("predecessors[]", { done: optional(date("done")) })),
        }),
      ),
    },
    *check({ day, steps }, subject) {
      if (day === undefined) return;
      // Of several steps the earliest: a record that serves as evidence once more is none of that step's work.
      const late = steps.map((step) => ({
        step,
        other: step.before.find(({ done }) => done !== undefined && canPrecede(done, day) === "no"),
      }));
      const [first] = late;
      if (first === undefined || late.some(({ other }) => other === undefined)) return;
      const { step, other } = first;
      if (other?.done === undefined) return;
      yield {
        at: "day",
        accuses: [],
        on: step,
        name: other.$.id,
        message: `step ${step.$.name} follows step ${other.$.name}, done on ${other.done.text}; its ${kindName(kind)} ${subject.name} is of ${day.text}`,
        why: `step ${step.$.name} names ${other.$.name} as a step before it`,
        hint: "correct the wrong day, or which steps come before; if part of the work was allowed earlier, answer this query",
        related: [{ at: [other, "done"], message: `done on ${other.done.text}` }],
      };
    },
    examples: [
      {
        name: "on one day",
        given: { day: "2026-06-18", steps: [{ before: [{ done: "2026-06-18" }] }] },
        objections: [],
      },
      { name: "not done yet", given: { day: "2026-06-18", steps: [{ before: [{}] }] }, objections: [] },
      {
        name: "evidence of an earlier step too",
        given: {
          day: "2026-06-17",
          steps: [{ before: [{ done: "2026-06-18" }] }, { before: [{ done: "2026-06-01" }] }],
        },
        objections: [],
      },
      {
        name: "a day before",
        given: { day: "2026-06-17", steps: [{ $: "S-030", before: [{ $: "S-020", done: "2026-06-18" }] }] },
        objections: [`step S-030 follows step S-020, done on 2026-06-18; its ${kindName(kind)} X-01 is of 2026-06-17`],
      },
    ],
  }),
);
