import { fromMemory, ownChoice } from "../model/basis.ts";
import { canPrecede } from "../model/dates.ts";
import { anyOf, date, list, optional, text, thing, type Input } from "../model/input.ts";
import type { DateValue } from "../model/dates.ts";
import { rule, type Rule } from "../model/rule.ts";

const issued = { name: text("revision"), approved: date("approved") };
const revision = { ...issued, all: list(thing("^.revisions[]", issued)) };
const isBefore = (a: DateValue, b: DateValue) => canPrecede(b, a) === "no";

interface Citation {
  readonly kind: string;
  /** Field that names the revision. */
  readonly field: string;
  /** Day it was used. */
  readonly used: Input<DateValue>;
  /** The schema leaves the link open. */
  readonly open?: boolean;
  readonly what: string;
  readonly owner: string;
}

const citations: readonly Citation[] = [
  { kind: "ndt-report", field: "procedure", used: date("date"), what: "test procedure", owner: "testing" },
  { kind: "ndt-report", field: "drawing", used: date("date"), what: "drawing", owner: "testing" },
  { kind: "dimension-check", field: "drawing", used: date("date"), what: "drawing", owner: "quality" },
  {
    kind: "heat-treatment",
    field: "procedure",
    used: date("started"),
    what: "heat treatment procedure",
    owner: "welding coordination",
  },
  { kind: "pressure-test", field: "procedure", used: date("date"), what: "pressure test procedure", owner: "quality" },
  { kind: "pressure-test", field: "drawing", used: date("date"), what: "drawing", owner: "quality" },
  {
    kind: "safety-valve",
    field: "bench.procedure",
    used: date("bench.date"),
    open: true,
    what: "setting procedure",
    owner: "supplier",
  },
  {
    kind: "repair",
    field: "weldingProcedure",
    used: date("date"),
    what: "welding procedure",
    owner: "welding coordination",
  },
  {
    kind: "production-test",
    field: "weldingProcedure",
    used: date("welded"),
    what: "welding procedure",
    owner: "welding coordination",
  },
  {
    kind: "body-certificate",
    field: "drawings[]",
    used: date("date"),
    open: true,
    what: "drawing",
    owner: "inspection body",
  },
];

const word = (field: string) =>
  field.replace("bench.", "").replace("weldingProcedure", "welding-procedure").replace("[]", "");

/** Each record that cites a revision cites the one that was in force on its own day: approved, and not yet replaced. */
export const revisionsInForce: readonly Rule[] = citations.map(({ kind, field, used, open, what, owner }) => {
  const cited = list(thing(field, revision));
  return rule({
    id: `${kind}-${word(field)}-in-force`,
    title: `The ${what} a ${kind.replace("-", " ")} cites was approved before its use, and not replaced`,
    basis: fromMemory("EN ISO 3834-2", "2021", "control of documents: the revision in use is the one in force"),
    kind,
    severity: "nonconformity",
    owner,
    inputs: { used, cited: open === true ? anyOf(cited) : cited },
    *check({ used: day, cited: revisions }, subject) {
      for (const one of revisions) {
        const early = isBefore(day, one.approved);
        const later = one.all.find(
          ({ name, approved }) => name !== one.name && isBefore(one.approved, approved) && isBefore(approved, day),
        );
        if (!early && later === undefined) continue;
        yield {
          at: "used",
          on: one,
          message: `${what} ${one.$.id.replace("#", " revision ")} was not in force on ${day.text}`,
          why:
            later === undefined
              ? `it was approved on ${one.approved.text}`
              : `revision ${later.name} replaced it on ${later.approved.text}`,
          hint: "correct the date or the revision; else have the difference between the two judged and recorded as a nonconformity",
          related: [{ at: [one, "approved"], message: `cited by ${subject.id}` }],
        };
      }
    },
    examples: [
      {
        name: "on the day of approval",
        given: { used: "2026-05-19", cited: [sheet("1", "2026-05-19")] },
        objections: [],
      },
      {
        name: "a day before",
        given: { used: "2026-05-18", cited: [sheet("1", "2026-05-19")] },
        objections: [`${what} D-01 revision 1 was not in force on 2026-05-18`],
      },
      {
        name: "on the day of its replacement",
        given: { used: "2026-06-01", cited: [sheet("1", "2026-05-19", { name: "2", approved: "2026-06-01" })] },
        objections: [],
      },
      {
        name: "the day after its replacement",
        given: { used: "2026-06-02", cited: [sheet("1", "2026-05-19", { name: "2", approved: "2026-06-01" })] },
        objections: [`${what} D-01 revision 1 was not in force on 2026-06-02`],
      },
    ],
  });
});

function sheet(
  name: string,
  approved: string,
  ...others: readonly { readonly name: string; readonly approved: string }[]
) {
  return { $: `D-01#${name}`, name, approved, all: [{ name, approved }, ...others] };
}

const checked = [
  "calculation-sheet",
  "drawing#revisions",
  "document#revisions",
  "procedure#revisions",
  "welding-procedure#revisions",
];

/** Whoever prepared a sheet or a revision does not check it. */
export const checkedByAnother: readonly Rule[] = checked.map((kind) =>
  rule({
    id: `${kind.replace("#revisions", "")}-checked-by-another`,
    title: `A ${kind.replace("#revisions", "").replace("-", " ")} is checked by another person than prepared it`,
    basis: ownChoice("nobody sees the own slip: two people, two looks"),
    kind,
    severity: "query",
    owner: "design",
    inputs: { prepared: text("preparedBy"), checked: optional(text("checkedBy")) },
    *check({ prepared, checked: second }, subject) {
      if (second === prepared)
        yield {
          at: "checked",
          message: `${subject.id.replace("#", " revision ")} was prepared and checked by ${prepared}`,
          why: "both fields name the same person",
          hint: "have a second person check it, or correct the slip",
        };
    },
    examples: [
      { name: "two people", given: { prepared: "P03", checked: "P04" }, objections: [] },
      { name: "not checked, where that is permitted", given: { prepared: "P03" }, objections: [] },
      {
        name: "one person",
        given: { prepared: "P03", checked: "P03" },
        objections: ["X-01 was prepared and checked by P03"],
      },
    ],
  }),
);
