import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, list, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { correctedBy, nonconformityCourse as basis } from "../shared/nonconformities.ts";

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

/** Dispositions after which the item is not used. */
const gone = ["scrap", "return"];

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
  inputs: {
    state: text("state"),
    disposition: optional(text("disposition")),
    roles: anyOf(list(text("approvals[].role"))),
  },
  *check({ state, disposition = "", roles }, report) {
    // What is scrapped or sent back goes into no equipment.
    if (gone.includes(disposition)) return;
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
    { name: "scrapped", given: { state: "closed", disposition: "scrap", roles: ["quality control"] }, objections: [] },
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
    if (correctedBy.includes(disposition) && !corrector)
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
