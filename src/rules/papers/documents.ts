import { fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, date, list, text, thing, things, type Condition, type Handle, type Thing } from "../../model/input.ts";
import { rule, type Objection, type Rule } from "../../model/rule.ts";
import { stepsTo, usesOfDrawing, usesOfProcedure } from "../shared/reports.ts";
import { AKind, kindName } from "../shared/words.ts";
import { kindIn, rowsOfKind } from "../../model/kind-text.ts";

const basis = fromMemory("EN ISO 3834-2", "2021", "control of documents: the revision in use is the one in force");

const used = { day: date("date") };
const revision = {
  name: text("revision"),
  approved: date("approved"),
  all: list(thing("record.revisions[]", { name: text("revision"), approved: date("approved") })),
};
type Revision = Pick<Thing<typeof revision>, "name" | "approved" | "all">;
const isBefore = (a: DateValue, b: DateValue) => canPrecede(b, a) === "no";

/** Uses of a revision on days on which it was not yet approved, or already replaced: one objection that lists them. */
function* notInForce(
  { name, approved, all }: Revision,
  uses: readonly Thing<typeof used>[],
  what: string,
  subject: Handle,
): Generator<Objection<typeof revision>> {
  const replacing = (day: DateValue) =>
    all.find((one) => one.name !== name && isBefore(approved, one.approved) && isBefore(one.approved, day));
  const wrong = uses.filter(({ day }) => isBefore(day, approved) || replacing(day) !== undefined);
  const [first] = wrong;
  if (first === undefined) return;
  const later = replacing(first.day);
  yield {
    at: "approved",
    accuses: [],
    message: `${what} ${subject.name} was not in force on ${[...new Set(wrong.map(({ day }) => day.text))].sort().join(", ")}`,
    why:
      later === undefined
        ? `it was approved on ${approved.text}`
        : `revision ${later.name} replaced it on ${later.approved.text}`,
    hint: "correct the date or the revision; else have the difference between the revisions judged and recorded as a nonconformity",
    related: wrong.map((one) => ({
      at: one,
      message: `used in ${kindName(one.$.kind)} ${one.$.name} on ${one.day.text}`,
    })),
  };
}

const examples = (what: string) => [
  { name: "on the day of approval", given: sheet("2026-05-19"), objections: [] },
  {
    name: "a day before",
    given: sheet("2026-05-18"),
    objections: [`${what} X-01 was not in force on 2026-05-18`],
  },
  { name: "on the day of its replacement", given: sheet("2026-06-01"), objections: [] },
  {
    name: "the day after its replacement",
    given: sheet("2026-06-02"),
    objections: [`${what} X-01 was not in force on 2026-06-02`],
  },
  { name: "never used", given: sheet(), objections: [] },
];

/** Revision 1 of 2026-05-19, replaced on 2026-06-01, used on some days. */
function sheet(...days: readonly string[]) {
  const first = { name: "1", approved: "2026-05-19" };
  return { ...first, all: [first, { name: "2", approved: "2026-06-01" }], tests: days.map((day) => ({ day })) };
}

const shared = { basis, severity: "nonconformity", owner: "document control" } as const;

export const drawingInForce = rule({
  ...shared,
  id: "drawing-in-force",
  title: "A revision of a drawing was approved before it was worked to, and not replaced",
  kind: "drawing#revisions",
  inputs: {
    ...revision,
    ...usesOfDrawing,
  },
  *check({ name, approved, all, ...uses }, subject) {
    yield* notInForce({ name, approved, all }, Object.values(uses).flat(), "drawing", subject);
  },
  examples: examples("drawing"),
});

export const testProcedureInForce = rule({
  ...shared,
  id: "procedure-in-force",
  title: "A revision of a procedure was approved before it was worked to, and not replaced",
  kind: "procedure#revisions",
  inputs: {
    ...revision,
    ...usesOfProcedure,
  },
  *check({ name, approved, all, ...uses }, subject) {
    yield* notInForce({ name, approved, all }, Object.values(uses).flat(), "procedure", subject);
  },
  examples: examples("procedure"),
});

export const documentInForce = rule({
  ...shared,
  id: "document-in-force",
  title: "A revision of a document was approved before a step was done to it, and not replaced",
  kind: "document#revisions",
  inputs: { ...revision, tests: stepsTo },
  *check({ tests, ...own }, subject) {
    yield* notInForce(own, tests, "document", subject);
  },
  examples: examples("document"),
});

export const repairProcedureInForce = rule({
  ...shared,
  // The same of what a weld log says: one revision that was not in force is one finding, whatever was welded to it.
  fault: "welding-procedure-in-force",
  id: "repair-procedure-in-force",
  title:
    "A revision of a welding procedure was approved before a repair, a test piece, tube ends or a step was done to it, and not replaced",
  kind: "welding-procedure#revisions",
  inputs: {
    ...revision,
    tests: anyOf(things("<production-test:weldingProcedure>", { day: date("welded") })),
    repairs: anyOf(things("<repair:weldingProcedure>", used)),
    tubeEnds: anyOf(things("<tube-end-group:weldingProcedure>", used)),
    steps: stepsTo,
  },
  *check({ tests, repairs, tubeEnds, steps, ...own }, subject) {
    yield* notInForce(own, [...tests, ...repairs, ...tubeEnds, ...steps], "welding procedure", subject);
  },
  examples: examples("welding procedure"),
});

const revisions = ["drawing", "document", "procedure", "welding-procedure"];

/** Whoever prepared something does not check it; where one of the two is not named, nobody has. */
export const checkedByAnother: readonly Rule[] = [
  { kind: "calculation-sheet", when: [{ path: "adopts", exists: false }] },
  ...revisions.map((kind) => ({ kind: rowsOfKind(kind, "revisions") })),
].map(({ kind, when }: { readonly kind: string; readonly when?: readonly Condition[] }) => {
  const name = kindIn(kind);
  const did = "prepared and checked";
  return rule({
    id: `${name}-checked-by-another`,
    title: `${AKind(name)} is ${did} by two people`,
    basis: ownChoice("nobody sees the own slip: two people, two looks"),
    kind,
    ...(when !== undefined && { when }),
    severity: "query",
    owner: "document control",
    inputs: { first: text("preparedBy"), second: text("checkedBy") },
    *check({ first: one, second: other }, subject) {
      if (one === other)
        yield {
          at: "second",
          message: `${subject.name} was ${did} by ${one} alone`,
          why: "both fields name the same person",
          hint: "have a second person look at it, or correct the slip",
        };
    },
    examples: [
      { name: "two people", given: { first: "P03", second: "P04" }, objections: [] },
      { name: "one person", given: { first: "P03", second: "P03" }, objections: [`X-01 was ${did} by P03 alone`] },
    ],
  });
});
