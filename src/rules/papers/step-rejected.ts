import { ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, optional, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const stepRejected = rule({
  id: "step-rejected",
  title: "The nonconformity report of a step was raised when the step was worked on, and closed by when it was done",
  basis: ownChoice("a step that was rejected is done when what was wrong with it is closed"),
  kind: "inspection-step",
  when: [{ path: "nonconformity", exists: true }],
  severity: "query",
  owner: "quality",
  inputs: {
    started: optional(date("started")),
    done: date("done"),
    report: thing("nonconformity", { raised: date("raised"), closed: optional(date("closed")) }),
  },
  *check({ started, done, report }, step) {
    const { raised, closed } = report;
    const fault =
      started !== undefined && canPrecede(started, raised) === "no"
        ? `was raised on ${raised.text}, before step ${step.name} was begun on ${started.text}`
        : canPrecede(raised, done) === "no"
          ? `was raised on ${raised.text}, after step ${step.name} was done on ${done.text}`
          : closed !== undefined && canPrecede(closed, done) === "no"
            ? `was closed on ${closed.text}, after step ${step.name} was done on ${done.text}`
            : undefined;
    if (fault === undefined) return;
    yield {
      at: report,
      on: report,
      name: step.id,
      message: `nonconformity report ${report.$.name} ${fault}`,
      why: `step ${step.name} names it as what it was rejected for`,
      hint: "compare the plan with the report: correct the wrong day, or name the report that belongs to the step",
      related: [{ at: "done", message: `done on ${done.text}` }],
    };
  },
  examples: [
    { name: "within", given: rejected("2026-06-02", "2026-06-04"), objections: [] },
    {
      name: "raised before",
      given: rejected("2026-05-30", "2026-06-04"),
      objections: ["nonconformity report NCR-01 was raised on 2026-05-30, before step X-01 was begun on 2026-06-01"],
    },
    {
      name: "raised afterwards",
      given: rejected("2026-06-06", "2026-06-07"),
      objections: ["nonconformity report NCR-01 was raised on 2026-06-06, after step X-01 was done on 2026-06-05"],
    },
    {
      name: "closed afterwards",
      given: rejected("2026-06-02", "2026-06-07"),
      objections: ["nonconformity report NCR-01 was closed on 2026-06-07, after step X-01 was done on 2026-06-05"],
    },
  ],
});

function rejected(raised: string, closed: string) {
  return { started: "2026-06-01", done: "2026-06-05", report: { $: "NCR-01", raised, closed } };
}
