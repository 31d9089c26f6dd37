import { fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { inspectionPlan } from "../shared/plan.ts";
import { aKind, kindName } from "../shared/words.ts";

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
    basis: inspectionPlan,
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
