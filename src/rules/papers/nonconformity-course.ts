import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, flag, list, optional, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { kindName } from "../shared/words.ts";

const course = commonPractice("a nonconformity is found, decided on, corrected, checked and closed, in this order");
const basis = { owner: "quality", basis: course } as const;
/** What ends with the item set right. */
const corrected = ["rework", "repair"];

export const cancelledWithout = rule({
  ...basis,
  id: "nonconformity-cancelled",
  title: "A cancelled report decides nothing, and no other report does",
  kind: "nonconformity-report",
  when: [{ path: "disposition", exists: true }],
  severity: "nonconformity",
  inputs: { state: text("state"), disposition: optional(text("disposition")) },
  *check({ state, disposition }, report) {
    if (disposition !== undefined && (state === "cancelled") !== (disposition === "none"))
      yield {
        at: "state",
        accuses: ["state", "disposition"],
        message: `nonconformity report ${report.name} is "${state}", and its disposition is "${disposition}"`,
        why: "a report is cancelled where nothing was wrong, and then decides nothing",
        hint: "compare with the report and correct the wrong one",
      };
  },
  examples: [
    { name: "closed after rework", given: { state: "closed", disposition: "rework" }, objections: [] },
    { name: "cancelled", given: { state: "cancelled", disposition: "none" }, objections: [] },
    {
      name: "cancelled, and still reworked",
      given: { state: "cancelled", disposition: "rework" },
      objections: ['nonconformity report X-01 is "cancelled", and its disposition is "rework"'],
    },
    {
      name: "closed with nothing decided",
      given: { state: "closed", disposition: "none" },
      objections: ['nonconformity report X-01 is "closed", and its disposition is "none"'],
    },
  ],
});

export const agreedBeforeClosed = rule({
  ...basis,
  id: "nonconformity-agreed",
  title: "What is done with the item is agreed before the report is closed",
  kind: "nonconformity-report",
  when: [
    { path: "closed", exists: true },
    { path: "approvals", exists: true },
  ],
  severity: "nonconformity",
  inputs: {
    raised: date("raised"),
    closed: optional(date("closed")),
    approvals: anyOf(things("approvals[]", { role: text("role"), day: date("date") })),
  },
  *check({ raised, closed, approvals }, report) {
    // Closed before it was raised: then that day is wrong, and said to be.
    if (closed !== undefined && canPrecede(raised, closed) === "no") return;
    for (const approval of approvals)
      if (closed !== undefined && canPrecede(approval.day, closed) === "no")
        yield {
          at: [approval, "day"],
          accuses: [[approval, "day"], "closed"],
          name: approval.role,
          message: `nonconformity report ${report.name} was closed on ${closed.text}, before it was agreed to as ${approval.role} on ${approval.day.text}`,
          why: "both days are entered in one record",
          hint: "correct the wrong one against the report",
          related: [{ at: "closed", message: `closed on ${closed.text}` }],
        };
  },
  examples: [
    {
      name: "on one day",
      given: {
        raised: "2026-06-11",
        closed: "2026-06-17",
        approvals: [{ role: "inspection body", day: "2026-06-17" }],
      },
      objections: [],
    },
    {
      name: "agreed a day later",
      given: {
        raised: "2026-06-11",
        closed: "2026-06-17",
        approvals: [{ role: "inspection body", day: "2026-06-18" }],
      },
      objections: [
        "nonconformity report X-01 was closed on 2026-06-17, before it was agreed to as inspection body on 2026-06-18",
      ],
    },
  ],
});

export const bodyAgreed = rule({
  ...basis,
  id: "nonconformity-body-agreed",
  title: "The inspection body agrees to what is done with a part or weld that contains pressure",
  basis: commonPractice("what concerns pressure parts is decided together with the body that inspects the equipment"),
  kind: "nonconformity-report",
  when: [
    { path: "pressureRelated", equals: true },
    { path: "approvals", exists: true },
    { path: "book.book.inspectionBody", exists: true },
  ],
  severity: "query",
  inputs: { state: text("state"), roles: anyOf(list(text("approvals[].role"))) },
  *check({ state, roles }, report) {
    if (state !== "cancelled" && !roles.includes("inspection body"))
      yield {
        at: "roles",
        accuses: [],
        message: `nonconformity report ${report.name} concerns pressure, and the inspection body has not agreed to it`,
        why: `agreed to by: ${roles.join(", ")}`,
        hint: "enter the agreement from the report, or get it; if the body need not agree, answer this query",
      };
  },
  examples: [
    { name: "agreed", given: { state: "closed", roles: ["welding coordinator", "inspection body"] }, objections: [] },
    { name: "cancelled", given: { state: "cancelled", roles: ["quality control"] }, objections: [] },
    {
      name: "not agreed",
      given: { state: "closed", roles: ["welding coordinator"] },
      objections: ["nonconformity report X-01 concerns pressure, and the inspection body has not agreed to it"],
    },
  ],
});

export const correctorNamed = rule({
  ...basis,
  id: "nonconformity-corrector",
  title: "A report closed after rework or repair names who corrected",
  kind: "nonconformity-report",
  when: [{ path: "closed", exists: true }],
  severity: "gap",
  inputs: { disposition: text("disposition"), corrector: exists("correctedBy") },
  *check({ disposition, corrector }, report) {
    if (corrected.includes(disposition) && !corrector)
      yield {
        at: "disposition",
        accuses: [],
        message: `nonconformity report ${report.name} was closed after ${disposition}, and names nobody who corrected`,
        why: "who corrected does not close, so both are named",
        hint: "enter who corrected it, or correct the disposition",
      };
  },
  examples: [
    { name: "named", given: { disposition: "rework", corrector: true }, objections: [] },
    { name: "used as it is", given: { disposition: "use-as-is" }, objections: [] },
    {
      name: "nobody",
      given: { disposition: "repair" },
      objections: ["nonconformity report X-01 was closed after repair, and names nobody who corrected"],
    },
  ],
});

export const repairDecided = rule({
  ...basis,
  id: "repair-decided",
  title: "A repair agrees with the nonconformity report it was made for",
  kind: "repair",
  when: [{ path: "nonconformity", exists: true }],
  severity: "nonconformity",
  inputs: {
    joint: text("joint"),
    welders: list(text("welders[]")),
    report: thing("nonconformity", {
      disposition: text("disposition"),
      affected: list(text("affected[]")),
      corrector: optional(text("correctedBy")),
      closer: optional(text("closedBy")),
    }),
  },
  *check({ joint, welders, report }, repair) {
    const { disposition, affected, corrector, closer } = report;
    const faults = [
      corrected.includes(disposition) ? "" : `ends in "${disposition}"`,
      affected.includes(`joint:${joint}`) ? "" : `does not name joint ${joint} as affected`,
      corrector === undefined || corrector === closer || welders.includes(corrector)
        ? ""
        : `names ${corrector} as who corrected, and not ${welders.join(" or ")}, who welded`,
    ].filter((fault) => fault !== "");
    if (faults.length > 0)
      yield {
        at: report,
        message: `repair ${repair.name} of joint ${joint} was made for nonconformity report ${report.$.name}, which ${faults.join(" and ")}`,
        why: "the repair names the report",
        hint: "compare both with their originals and correct the wrong one",
        related: [{ at: report, message: "stated here" }],
      };
  },
  examples: [
    { name: "they agree", given: made({}), objections: [] },
    { name: "nobody named who corrected yet", given: made({ corrector: undefined }), objections: [] },
    {
      name: "scrapped",
      given: made({ disposition: "scrap" }),
      objections: ['repair X-01 of joint C2 was made for nonconformity report NCR-01, which ends in "scrap"'],
    },
    {
      name: "another joint",
      given: made({ affected: ["joint:C3"] }),
      objections: [
        "repair X-01 of joint C2 was made for nonconformity report NCR-01, which does not name joint C2 as affected",
      ],
    },
    {
      name: "another welder",
      given: made({ corrector: "S1" }),
      objections: [
        "repair X-01 of joint C2 was made for nonconformity report NCR-01, which names S1 as who corrected, and not W07, who welded",
      ],
    },
  ],
});

function made(changes: Readonly<Record<string, string | readonly string[] | undefined>>) {
  const report = { disposition: "rework", affected: ["joint:C2", "ndt-report:RT-03"], corrector: "W07", ...changes };
  const stated = Object.fromEntries(
    Object.entries<string | readonly string[] | undefined>(report).filter(([, value]) => value !== undefined),
  );
  return { joint: "C2", welders: ["W07"], report: { $: "NCR-01", ...stated } };
}

/** What contains pressure makes a report about it one that concerns pressure. */
export const pressureConcerned: readonly Rule[] = ["part", "joint"].map((kind) =>
  rule({
    ...basis,
    id: `${kind}-pressure-related`,
    title: `A report that affects a ${kind} under pressure says that it concerns pressure`,
    basis: ownChoice("what concerns pressure is closed before the test, and the body that inspects is asked"),
    kind,
    when: [
      { path: "pressureBearing", equals: true },
      { path: "<nonconformity-report:affected[]>", exists: true },
    ],
    severity: "query",
    inputs: { reports: anyOf(things("<nonconformity-report:affected[]>", { related: flag("pressureRelated") })) },
    *check({ reports }, subject) {
      for (const report of reports)
        if (!report.related)
          yield {
            at: [report, "related"],
            on: report,
            message: `nonconformity report ${report.$.name} says that it does not concern pressure, and affects ${kind} ${subject.name}, which contains it`,
            why: `${kind} ${subject.name} is recorded as bearing pressure`,
            hint: "correct the report; if what was found has no bearing on pressure, answer this query",
            related: [{ at: "subject", message: "bears pressure" }],
          };
    },
    examples: [
      { name: "it says so", given: { reports: [{ related: true }] }, objections: [] },
      {
        name: "it says that it does not",
        given: { reports: [{ $: "NCR-01", related: false }] },
        objections: [
          `nonconformity report NCR-01 says that it does not concern pressure, and affects ${kind} X-01, which contains it`,
        ],
      },
    ],
  }),
);

/** What was found in a report is raised when that has been made. */
export const raisedAfterFound: readonly Rule[] = ["ndt-report"].map((kind) =>
  rule({
    ...basis,
    id: `${kind}-raised`,
    title: `A nonconformity is raised when the ${kindName(kind)} it is about has been made`,
    kind,
    when: [{ path: "<nonconformity-report:affected[]>", exists: true }],
    severity: "query",
    inputs: {
      day: date("date"),
      reports: anyOf(things("<nonconformity-report:affected[]>", { raised: date("raised") })),
    },
    *check({ day, reports }, subject) {
      for (const report of reports)
        if (canPrecede(day, report.raised) === "no")
          yield {
            at: [report, "raised"],
            on: report,
            name: subject.id,
            message: `nonconformity report ${report.$.name} was raised on ${report.raised.text}; ${kindName(kind)} ${subject.name}, which it is about, is of ${day.text}`,
            why: "the report names it as affected",
            hint: "correct the wrong day, or name the right record",
            related: [{ at: "day", message: day.text }],
          };
    },
    examples: [
      { name: "on one day", given: { day: "2026-06-11", reports: [{ raised: "2026-06-11" }] }, objections: [] },
      {
        name: "a day before",
        given: { day: "2026-06-12", reports: [{ $: "NCR-01", raised: "2026-06-11" }] },
        objections: [
          `nonconformity report NCR-01 was raised on 2026-06-11; ${kindName(kind)} X-01, which it is about, is of 2026-06-12`,
        ],
      },
    ],
  }),
);

export const deviationReported = rule({
  ...basis,
  id: "deviation-reported",
  title: "A deviation for a nonconformity is decided after that was raised, and is the concession the report names",
  kind: "deviation",
  when: [
    { path: "nonconformity", exists: true },
    { path: "date", exists: true },
  ],
  severity: "nonconformity",
  inputs: {
    day: date("date"),
    report: thing("nonconformity", { raised: date("raised"), concession: optional(text("concession")) }),
  },
  *check({ day, report }, deviation) {
    if (canPrecede(report.raised, day) === "no")
      yield {
        at: "day",
        name: "order",
        message: `deviation ${deviation.name} was decided on ${day.text}, before nonconformity report ${report.$.name} was raised on ${report.raised.text}`,
        why: `deviation ${deviation.name} names the report`,
        hint: "correct the wrong day against the originals",
        related: [{ at: [report, "raised"], message: `raised on ${report.raised.text}` }],
      };
    if (report.concession !== undefined && report.concession !== deviation.id)
      yield {
        at: "subject",
        name: "concession",
        message: `deviation ${deviation.name} is for nonconformity report ${report.$.name}, which names ${report.concession} as its concession`,
        why: "each names the other",
        hint: "correct the wrong link",
        related: [{ at: [report, "concession"], message: "named here" }],
      };
  },
  examples: [
    {
      name: "on the day it was raised",
      given: { day: "2026-03-27", report: { raised: "2026-03-27", concession: "X-01" } },
      objections: [],
    },
    {
      name: "not named by the report yet",
      given: { day: "2026-03-27", report: { raised: "2026-03-27" } },
      objections: [],
    },
    {
      name: "a day before it",
      given: { day: "2026-03-26", report: { $: "NCR-03", raised: "2026-03-27" } },
      objections: [
        "deviation X-01 was decided on 2026-03-26, before nonconformity report NCR-03 was raised on 2026-03-27",
      ],
    },
    {
      name: "another concession",
      given: { day: "2026-03-27", report: { $: "NCR-03", raised: "2026-03-27", concession: "DEV-02" } },
      objections: ["deviation X-01 is for nonconformity report NCR-03, which names DEV-02 as its concession"],
    },
  ],
});
