import { fromMemory } from "../../model/basis.ts";
import { thing, things, type Inputs } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { piece, rangeFrom, rangeTables, recomputed, type FromPiece, type Piece, type RangeTables } from "./pieces.ts";
import { beyond, open, saidRange, saidRanges, type Match, type Range } from "./range.ts";
import { named, ofSide, placeOf, type Side } from "./side.ts";
import { isMade, madeRule, variables, type Variable } from "./variables.ts";

const standard = fromMemory(
  "EN ISO 15614-1",
  undefined,
  "ranges of qualification, level 2; each table says its editions",
);
const stated = fromMemory("EN ISO 15609-1", "2019", "ranges of the specification; they are those it states");
const shared = { severity: "nonconformity", owner: "welding coordination" } as const;
const same: Match = (held, asked) => held === asked;

/** Inputs of a test piece that one variable needs, and the tables it asks. */
const pieceInputs = ({ needs }: FromPiece): Inputs =>
  Object.fromEntries(needs.map((need) => [need, piece[need]] as const));
const tableInputs = ({ tables }: FromPiece): Inputs =>
  Object.fromEntries(tables.map((name) => [name, rangeTables[name]] as const));

/** Values of a rule as what they were bound from: its inputs are put together from those of the sides. */
type Got = Readonly<Record<string, unknown>>;
const asPiece = (values: Got) => values as unknown as Piece;
const asTables = (values: Got) => values as unknown as RangeTables;
type Row = Got & { readonly $: { readonly name: string } };

const printedOf = (values: Got, side: Side | undefined) => side?.read(ofSide("printed", values, side));
/** Which input an objection points at. */
const placeFor = (prefix: string, side: Side, end: string | undefined) =>
  placeOf(prefix, end !== undefined && side.places.includes(end) ? end : (side.places[0] ?? ""));
const given = (prefix: string, side: Side, range: readonly string[]) =>
  Object.fromEntries(Object.entries(side.give(range)).map(([name, one]) => [placeOf(prefix, name), one]));
const outsideOf = (range: Range, names: readonly string[]) => (names.length > 0 ? names.join(", ") : saidRange(range));

/** A range a certificate prints is no wider than the test piece gives. */
function printedRange(variable: Variable, way: FromPiece, printed: Side): Rule {
  const { title, match = same, examples } = variable;
  const needed = pieceInputs(way);
  const inputs: Inputs = { ...named("printed", printed.inputs("")), ...needed, ...tableInputs(way) };
  const places = printed.places.map((place) => placeOf("printed", place));
  return rule({
    ...shared,
    id: madeRule(variable, "test piece to range"),
    title: `The ${title} a procedure qualification prints is no wider than its test piece gives; of tests to EN ISO 15614-8, whose tables are not at hand, this is not judged`,
    basis: standard,
    kind: "procedure-qualification",
    when: [{ path: "standard.standard", equals: recomputed }],
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const range = way.range(asPiece(got), asTables(got));
      const asked = printedOf(got, printed);
      if (asked === undefined || range === undefined) return;
      const far = beyond([range], asked, match, true);
      if (far === undefined) return;
      yield {
        at: placeFor("printed", printed, far.end),
        // The range may be printed wrong, or the test piece recorded wrong.
        accuses: [...places, ...way.needs.filter((need) => need !== "edition" && need !== "printedPositions")],
        message: `procedure qualification ${subject.name} prints ${title} ${outsideOf(asked, far.names)}; its test piece gives ${saidRange(range)}`,
        why: `recomputed from the test piece; printed: ${saidRange(asked)}`,
        hint: "compare both with the record of the test; if it prints so, ask the body that approved it, and use no more than the test gives",
      };
    },
    examples: [
      ...madeExamples(
        examples,
        (range) => ({ ...given("printed", printed, range), ...trimmed(examples?.piece, needed) }),
        (example) => [
          `procedure qualification X-01 prints ${title} ${example.said}; its test piece gives ${example.range}`,
        ],
      ),
      ...(examples?.also ?? []).map(({ name, piece: test, printed: range, said }) => ({
        name,
        given: { ...given("printed", printed, range), ...trimmed(test, needed) },
        objections:
          said === undefined
            ? []
            : [`procedure qualification X-01 prints ${title} ${said[0]}; its test piece gives ${said[1]}`],
      })),
    ],
  });
}

type Examples = NonNullable<Variable["examples"]>;
const trimmed = (all: Got | undefined, inputs: Inputs) =>
  Object.fromEntries(Object.entries(all ?? {}).filter(([name]) => name in inputs));

function madeExamples(
  examples: Examples | undefined,
  give: (range: readonly string[], example: Examples) => Got,
  objections: (example: Examples) => readonly string[],
): Rule["examples"] {
  if (examples === undefined) return [];
  return [
    { name: "inside", given: give(examples.inside, examples), objections: [] },
    { name: "outside", given: give(examples.outside, examples), objections: objections(examples) },
  ];
}

/** What several qualifications of a procedure hold of a variable: as printed, else as the test piece gives it. */
function heldBy(rows: readonly Row[], { piece: way, printed }: Variable, tables: RangeTables): readonly Range[] {
  return rows.flatMap(
    (row) => printedOf(row, printed) ?? (way === undefined ? undefined : rangeFrom(way, asPiece(row), tables)) ?? [],
  );
}

/** What a procedure specifies lies within what its qualifications hold. */
function procedureQualified(variable: Variable, way: FromPiece, side: Side): Rule {
  const { title, match = same, examples, printed, mustState } = variable;
  const row: Inputs = {
    ...(printed === undefined ? {} : named("printed", printed.inputs(""))),
    standard: piece.standard,
    ...pieceInputs(way),
  };
  const inputs: Inputs = {
    ...named("asked", side.inputs("")),
    qualifications: things("qualifications[]", row),
    ...tableInputs(way),
  };
  const places = side.places.map((place) => placeOf("asked", place));
  return rule({
    ...shared,
    id: madeRule(variable, "range to procedure"),
    title: `The ${title} of a welding procedure lies within what its qualifications cover`,
    basis: standard,
    kind: "welding-procedure#revisions",
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const asked = side.read(ofSide("asked", got, side));
      const rows = got["qualifications"] as readonly Row[];
      const held = heldBy(rows, variable, asTables(got));
      const names = rows.map(({ $ }) => $.name).join(", ");
      if (asked === undefined) {
        if (mustState !== true || held.every((one) => one === open)) return;
        yield {
          at: "qualifications",
          accuses: [],
          name: "silent",
          unsure: true,
          message: `${subject.name} states no ${title}; its qualifications cover ${saidRanges(held)}`,
          why: `qualified by ${names}`,
          hint: `enter the ${title} from the procedure; if it states none, have it revised`,
        };
        return;
      }
      const far = held.length === 0 ? undefined : beyond(held, asked, match);
      if (held.length === 0)
        yield {
          at: placeFor("asked", side, undefined),
          accuses: [],
          name: "unknown",
          unsure: true,
          message: `${subject.name} specifies ${title} ${saidRange(asked)}; no qualification it names states one`,
          why: `qualified by ${names}`,
          hint: "enter what the record of the test states; if it states nothing, ask the body that approved it",
        };
      else if (far !== undefined)
        yield {
          at: placeFor("asked", side, far.end),
          accuses: places,
          message: `${subject.name} specifies ${title} ${outsideOf(asked, far.names)}; its qualifications cover ${saidRanges(held)}`,
          why: `qualified by ${names}`,
          hint: "name the qualification that covers it, or narrow the procedure",
        };
    },
    examples: madeExamples(
      examples,
      (range, { held, piece: test }) => ({
        ...given("asked", side, range),
        qualifications: [
          {
            standard: "EN ISO 15614-1",
            ...trimmed(test, row),
            ...(printed === undefined ? {} : given("printed", printed, held)),
          },
        ],
      }),
      ({ said, held, range }) => [
        `X-01 specifies ${title} ${said}; its qualifications cover ${printed === undefined ? range : saidHeld(printed, held)}`,
      ],
    ),
  });
}

const saidHeld = (side: Side, held: readonly string[]) =>
  ["names", "name", "flag"].some((one) => side.places.includes(one))
    ? held.join(", ")
    : side.places.includes("to")
      ? side.places.includes("from")
        ? held.length > 1
          ? held.join(" to ")
          : `from ${held.join("")}`
        : `up to ${held.join("")}`
      : `from ${held.join("")}`;

/** Who needs a weld that a procedure must cover. */
interface Needing {
  readonly id: (variable: Variable) => string;
  readonly kind: string;
  /** Path of the procedure, and of the joint or run; empty: the subject itself. */
  readonly procedure: string;
  readonly at: string;
  readonly what: string;
  readonly title: string;
}

/** What is welded lies within the procedure it is welded to. */
function inProcedure(variable: Variable, held: Side, asking: Side, needing: Needing): Rule {
  const { title, match = same, examples } = variable;
  const inputs: Inputs = {
    ...named("asked", asking.inputs(needing.at)),
    procedure: thing(needing.procedure, named("held", held.inputs(""))),
  };
  return rule({
    ...shared,
    id: needing.id(variable),
    title: `The ${title} of ${needing.title} lies within its welding procedure`,
    basis: stated,
    kind: needing.kind,
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const asked = asking.read(ofSide("asked", got, asking));
      if (asked === undefined) return;
      const procedure = got["procedure"] as Row;
      const range = held.read(ofSide("held", procedure, held));
      const far = range === undefined ? undefined : beyond([range], asked, match);
      if (range !== undefined && far === undefined) return;
      yield {
        at: placeFor("asked", asking, far?.end),
        accuses: asking.places.map((place) => placeOf("asked", place)),
        unsure: range === undefined,
        message: `${needing.what} ${subject.name} has ${title} ${outsideOf(asked, far?.names ?? [])}; ${procedure.$.name} ${range === undefined ? "states none" : `is for ${saidRange(range)}`}`,
        why: "the range the procedure states itself",
        hint: "name the procedure that covers it, or correct the slip; else have the weld judged and raise a nonconformity report",
      };
    },
    examples: madeExamples(
      examples,
      (range, { held: wide }) => ({
        ...given("asked", asking, range),
        procedure: { $: "WPS-03 revision 2", ...given("held", held, wide) },
      }),
      ({ said, held: wide }) => [
        `${needing.what} X-01 has ${title} ${said}; WPS-03 revision 2 is for ${saidHeld(held, wide)}`,
      ],
    ),
  });
}

const joint: Needing = {
  id: (variable) => madeRule(variable, "procedure to joint"),
  kind: "joint",
  procedure: "weldingProcedure",
  at: "",
  what: "joint",
  title: "a joint",
};
const run: Needing = {
  id: (variable) => madeRule(variable, "procedure to run"),
  kind: "weld-log#runs",
  procedure: "record.weldingProcedure",
  at: "",
  what: "run",
  title: "a run",
};

export const qualificationRanges: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "test piece to range") && one.piece !== undefined && one.printed !== undefined
    ? [printedRange(one, one.piece, one.printed)]
    : [],
);
export const proceduresQualified: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "range to procedure") && one.piece !== undefined && one.procedure !== undefined
    ? [procedureQualified(one, one.piece, one.procedure)]
    : [],
);
export const jointsInProcedure: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "procedure to joint") && one.procedure !== undefined && one.joint !== undefined
    ? [inProcedure(one, one.procedure, one.joint, joint)]
    : [],
);
export const runsInProcedure: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "procedure to run") && one.procedure !== undefined && one.run !== undefined
    ? [inProcedure(one, one.procedure, one.run, run)]
    : [],
);
