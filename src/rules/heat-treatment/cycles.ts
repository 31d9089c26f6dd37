import { fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, flag, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { treated } from "../../requirements/testing-conditions.ts";
import { owedBy } from "../../model/owes.ts";

export const heatTreatmentPlanned = rule({
  id: "heat-treatment-planned",
  title: "A joint and its welding procedure agree on heat treatment after welding",
  basis: fromMemory("EN ISO 15614-1", "2017", "heat treatment after welding is an essential variable"),
  kind: "joint",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    planned: optional(flag("postWeldHeatTreatment")),
    procedure: thing("weldingProcedure", { treated: flag("postWeldHeatTreatment") }),
  },
  *check({ planned, procedure }, joint) {
    if (planned !== undefined && planned !== procedure.treated)
      yield {
        at: "planned",
        message: `joint ${joint.name} is planned ${planned ? "with" : "without"} heat treatment; ${procedure.$.name} is qualified ${procedure.treated ? "with" : "without"} it`,
        why: "a procedure tested without heat treatment does not cover a weld with it, nor the reverse",
        hint: planned
          ? "name the procedure that fits and add the chart of the heat treatment; if it was not treated, raise a nonconformity report"
          : "name the procedure that fits, or correct the joint; if it was treated without being planned to, raise a nonconformity report",
        related: [{ at: [procedure, "treated"], message: "stated here" }],
      };
  },
  examples: [
    { name: "both without", given: { planned: false, procedure: { treated: false } }, objections: [] },
    { name: "the joint does not say", given: { procedure: { treated: true } }, objections: [] },
    {
      name: "only the joint",
      given: { planned: true, procedure: { $: "WPS-03 revision 2", treated: false } },
      objections: ["joint X-01 is planned with heat treatment; WPS-03 revision 2 is qualified without it"],
    },
  ],
});

const planned = {
  planned: optional(flag("postWeldHeatTreatment")),
  procedure: thing("weldingProcedure", { treated: flag("postWeldHeatTreatment") }),
};

export const treatedAsPlanned = rule({
  id: "treated-as-planned",
  title: "A joint goes through a heat treatment only where it is planned with one",
  basis: fromMemory("EN ISO 15614-1", "2017", "heat treatment after welding is an essential variable"),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    type: text("type"),
    started: date("started"),
    named: anyOf(list(text("joints[]"))),
    parts: anyOf(list(text("parts[]"))),
    joints: anyOf(things("joints[]", planned)),
    // What is welded of parts that lie in the furnace lies there too.
    ofParts: anyOf(
      things("parts[].<joint:parts[]>", {
        ...planned,
        parts: anyOf(list(text("parts[]"))),
        runs: anyOf(list(date("<weld-log:joint>.runs[].date"))),
      }),
    ),
  },
  *check({ type, started, parts, joints, ofParts }, charge) {
    const inside = ofParts.filter(
      (joint) =>
        joint.runs.length > 0 &&
        joint.parts.every((part) => parts.includes(part)) &&
        joint.runs.every((day) => canPrecede(started, day) === "no"),
    );
    const all = new Map([...inside, ...joints].map((joint) => [joint.$.id, joint]));
    // A joint that is planned with it and welded to a procedure without is found by the plan.
    const strange = [...all.values()].filter((joint) => joint.planned !== true && !joint.procedure.treated);
    const [first] = strange;
    if (first !== undefined)
      yield {
        at: joints.length > 0 ? "named" : "parts",
        accuses: [],
        message: `${type} ${charge.name} was made on joint ${strange.map(({ $ }) => $.name).join(", ")}; ${first.procedure.$.name} is qualified without heat treatment after welding`,
        why: "a weld that was tested as welded is another one after heat treatment",
        hint: "name the procedure that was tested with it; else raise a nonconformity report and have the joints judged",
        related: [{ at: [first.procedure, "treated"], message: "stated here" }],
      };
  },
  examples: [
    {
      name: "planned with it",
      given: { ...relieved(), named: ["L1"], joints: [{ planned: true, procedure: { treated: true } }] },
      objections: [],
    },
    {
      name: "planned without it",
      given: {
        ...relieved(),
        named: ["L1"],
        joints: [{ $: "L1", planned: false, procedure: { $: "WPS-03 revision 2", treated: false } }],
      },
      objections: [
        "stress relief X-01 was made on joint L1; WPS-03 revision 2 is qualified without heat treatment after welding",
      ],
    },
    {
      name: "with its parts",
      given: relieved("2026-05-28"),
      objections: [
        "stress relief X-01 was made on joint C2; WPS-03 revision 2 is qualified without heat treatment after welding",
      ],
    },
    { name: "its parts before they were welded", given: relieved("2026-06-09"), objections: [] },
  ],
});

function relieved(welded?: string) {
  const joint = { $: "C2", procedure: { $: "WPS-03 revision 2", treated: false }, parts: ["P01", "P02"] };
  return {
    type: "stress relief",
    started: "2026-06-08",
    ...(welded !== undefined && { parts: ["P01", "P02"], ofParts: [{ ...joint, runs: [welded] }] }),
  };
}

export const heatTreatmentAfterWelding = rule({
  id: "heat-treatment-after-welding",
  title: "A joint is heat treated after its last run and its last repair",
  basis: ownChoice("a run welded after the treatment is not treated"),
  kind: "joint",
  when: [treated],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    treatments: list(thing("<heat-treatment:joints[]>", { started: date("started") })),
    logs: list(
      thing("<weld-log:joint>", {
        runs: list(thing("runs[]", { day: date("date"), finished: optional(date("finished")) })),
      }),
    ),
    repairs: anyOf(things("<repair:joint>", { day: date("date") })),
  },
  owes: [owedBy("welding coordination", "testing-complete", "treatments")],
  *check({ treatments, logs, repairs }, joint) {
    const work = [
      ...logs.flatMap((log) => log.runs.map((run) => ({ of: log, end: run.finished ?? run.day }))),
      ...repairs.map((repair) => ({ of: repair, end: repair.day })),
    ];
    const untreated = work.find(({ end }) => treatments.every(({ started }) => canPrecede(end, started) === "no"));
    const [first] = treatments;
    if (untreated !== undefined && first !== undefined)
      yield {
        at: [first, "started"],
        message: `joint ${joint.name} was heat treated before it was welded on ${untreated.end.text}`,
        why: treatments.map((one) => `${one.$.name} started ${one.started.text}`).join("; "),
        hint: "correct the wrong date, or have the joint treated again",
        related: [{ at: untreated.of, message: `welded on ${untreated.end.text}` }],
      };
  },
  examples: [
    {
      name: "on the day it was finished",
      given: { treatments: [{ started: "2026-06-12" }], logs: [{ runs: [{ day: "2026-06-12" }] }] },
      objections: [],
    },
    {
      name: "a day before",
      given: {
        treatments: [{ $: "HT-01", started: "2026-06-11" }],
        logs: [{ $: "WL-03", runs: [{ day: "2026-06-12" }] }],
      },
      objections: ["joint X-01 was heat treated before it was welded on 2026-06-12"],
    },
    {
      name: "before a repair",
      given: {
        treatments: [{ $: "HT-01", started: "2026-06-11" }],
        logs: [{ runs: [{ day: "2026-06-01" }] }],
        repairs: [{ $: "C2R1", day: "2026-06-15" }],
      },
      objections: ["joint X-01 was heat treated before it was welded on 2026-06-15"],
    },
    {
      name: "again after the repair",
      given: {
        treatments: [{ started: "2026-06-11" }, { started: "2026-06-16" }],
        logs: [{ runs: [{ day: "2026-06-01" }] }],
        repairs: [{ day: "2026-06-15" }],
      },
      objections: [],
    },
  ],
});

export const heatTreatmentTimes = rule({
  id: "heat-treatment-times",
  title: "A heat treatment ends after it began",
  basis: ownChoice("nothing ends before it begins"),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { started: date("started"), finished: date("finished"), type: text("type") },
  *check({ started, finished, type }, charge) {
    if (canPrecede(started, finished) === "no")
      yield {
        at: "finished",
        accuses: ["started", "finished"],
        message: `${type} ${charge.name} is entered as finished on ${finished.text}, before it started on ${started.text}`,
        why: "both times are entered in one record",
        hint: "compare with the chart and correct the wrong one",
      };
  },
  examples: [
    {
      name: "later",
      given: { started: "2026-06-11T06:00+02:00", finished: "2026-06-11T14:00+02:00", type: "stress relief" },
      objections: [],
    },
    {
      name: "earlier",
      given: { started: "2026-06-11T06:00+02:00", finished: "2026-06-11T05:00+02:00", type: "stress relief" },
      objections: [
        "stress relief X-01 is entered as finished on 2026-06-11T05:00+02:00, before it started on 2026-06-11T06:00+02:00",
      ],
    },
  ],
});
