import { fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { covers, span } from "./thickness-range.ts";

export const procedureInForce = rule({
  id: "welding-procedure-in-force",
  title: "A welding procedure was approved before it was used, and not replaced",
  basis: fromMemory("EN ISO 15609-1", "2019", "welding procedure specification"),
  kind: "weld-log#runs",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    welded: date("date"),
    revision: thing("record.weldingProcedure", {
      name: text("revision"),
      approved: date("approved"),
      all: list(thing("record.revisions[]", { name: text("revision"), approved: date("approved") })),
    }),
  },
  *check({ welded, revision }, run) {
    const later = revision.all.find(
      (other) =>
        other.name !== revision.name &&
        canPrecede(revision.approved, other.approved) === "yes" &&
        canPrecede(other.approved, revision.approved) === "no" &&
        canPrecede(welded, other.approved) === "no",
    );
    if (canPrecede(revision.approved, welded) === "no" || later !== undefined)
      yield {
        at: "welded",
        on: revision,
        message: `welding procedure ${revision.$.name} was not in force on ${welded.text}`,
        why:
          later === undefined
            ? `it was approved on ${revision.approved.text}`
            : `revision ${later.name} replaced it on ${later.approved.text}`,
        hint: "correct the date or the revision; else have the weld judged by the welding coordinator and recorded as a nonconformity",
        related: [{ at: [revision, "approved"], message: `used in ${run.name}` }],
      };
  },
  examples: [
    {
      name: "on the day of approval",
      given: {
        welded: "2026-05-19",
        revision: { name: "2", approved: "2026-05-19", all: [{ name: "2", approved: "2026-05-19" }] },
      },
      objections: [],
    },
    {
      name: "a day before",
      given: {
        welded: "2026-05-18",
        revision: {
          $: "WPS-03 revision 2",
          name: "2",
          approved: "2026-05-19",
          all: [{ name: "2", approved: "2026-05-19" }],
        },
      },
      objections: ["welding procedure WPS-03 revision 2 was not in force on 2026-05-18"],
    },
    {
      name: "on the day of its replacement, still in force",
      given: {
        welded: "2026-06-01",
        revision: {
          name: "1",
          approved: "2026-01-19",
          all: [
            { name: "1", approved: "2026-01-19" },
            { name: "2", approved: "2026-06-01" },
          ],
        },
      },
      objections: [],
    },
    {
      name: "after its replacement",
      given: {
        welded: "2026-06-02",
        revision: {
          $: "WPS-03 revision 1",
          name: "1",
          approved: "2026-01-19",
          all: [
            { name: "1", approved: "2026-01-19" },
            { name: "2", approved: "2026-06-01" },
          ],
        },
      },
      objections: ["welding procedure WPS-03 revision 1 was not in force on 2026-06-02"],
    },
  ],
});

export const procedureQualified = rule({
  id: "procedure-qualified",
  title: "A welding procedure lies within the range its qualification tests cover",
  basis: fromMemory("EN ISO 15614-1", "2017", "range of qualification; the ranges are those the record states"),
  kind: "welding-procedure#revisions",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    approved: date("approved"),
    processes: list(text("processes[]")),
    thickness: thing("thickness", {
      from: optional(quantity("minimum", "mm")),
      to: optional(quantity("maximum", "mm")),
    }),
    qualifications: list(
      thing("qualifications[]", {
        processes: list(text("range.processes[]")),
        from: optional(quantity("range.thickness.minimum", "mm")),
        to: optional(quantity("range.thickness.maximum", "mm")),
        approved: date("approved"),
      }),
    ),
  },
  *check({ approved, processes, thickness, qualifications }, revision) {
    const { from, to } = thickness;
    const name = revision.name;
    // Each process rests on tests of its own: one that covers the sizes says nothing of another.
    const by = (process: string) => qualifications.filter((one) => one.processes.includes(process));
    const whole = (process: string) => by(process).filter((one) => covers(one, thickness));
    const untested = processes.filter((process) => by(process).length === 0);
    const uncovered = processes.filter((process) => whole(process).length === 0);
    const held = qualifications
      .map((one) => `${one.$.name}: process ${one.processes.join(", ")}, ${span(one.from, one.to)}`)
      .join("; ");
    if (uncovered.length > 0)
      yield {
        at: untested.length > 0 ? "processes" : "thickness",
        name: "range",
        message: `${name} is for process ${uncovered.join(", ")}, ${span(from, to)}, which no qualification it names covers`,
        why: held,
        hint: "name the qualification that covers it, or narrow the procedure",
      };
    const isLate = (one: (typeof qualifications)[number]) => canPrecede(one.approved, approved) === "no";
    const late = processes.flatMap((process) => (whole(process).every(isLate) ? whole(process) : []));
    if (late.length > 0)
      yield {
        at: "approved",
        name: "order",
        message: `${name} was approved on ${approved.text}, before the test it rests on`,
        why: [...new Set(late)].map((one) => `${one.$.name} approved ${one.approved.text}`).join("; "),
        hint: "correct the dates; if they are right, have the procedure approved again, and the welds made before the test was approved judged on a nonconformity report",
      };
  },
  examples: [
    {
      name: "the whole range",
      given: {
        approved: "2026-05-19",
        processes: ["135"],
        thickness: { from: "3.0 mm", to: "16.0 mm" },
        qualifications: [{ processes: ["135"], from: "3.0 mm", to: "16.0 mm", approved: "2025-11-03" }],
      },
      objections: [],
    },
    {
      name: "thicker than tested",
      given: {
        approved: "2026-05-19",
        processes: ["135"],
        thickness: { from: "3.0 mm", to: "20.0 mm" },
        qualifications: [{ $: "PQ-03", processes: ["135"], from: "3.0 mm", to: "16.0 mm", approved: "2025-11-03" }],
      },
      objections: ["X-01 is for process 135, 3.0 mm to 20.0 mm, which no qualification it names covers"],
    },
    {
      name: "two processes, of which one was tested on thinner plates",
      given: {
        approved: "2026-05-19",
        processes: ["135", "141"],
        thickness: { from: "3.0 mm", to: "16.0 mm" },
        qualifications: [
          { $: "PQ-03", processes: ["135"], from: "3.0 mm", to: "16.0 mm", approved: "2025-11-03" },
          { $: "PQ-05", processes: ["141"], from: "3.0 mm", to: "8.0 mm", approved: "2025-11-03" },
        ],
      },
      objections: ["X-01 is for process 141, 3.0 mm to 16.0 mm, which no qualification it names covers"],
    },
    {
      name: "tested later",
      given: {
        approved: "2026-05-19",
        processes: ["135"],
        thickness: { from: "3.0 mm", to: "16.0 mm" },
        qualifications: [{ processes: ["135"], from: "3.0 mm", to: "16.0 mm", approved: "2026-05-20" }],
      },
      objections: ["X-01 was approved on 2026-05-19, before the test it rests on"],
    },
  ],
});
