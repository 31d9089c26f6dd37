import { list, text, things, type Inputs } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import {
  asPiece,
  asTables,
  given,
  madeExamples,
  outsideOf,
  pieceInputs,
  placeFor,
  printedOf,
  same,
  saidHeld,
  shared,
  standard,
  tableInputs,
  trimmed,
  type Got,
  type Row,
} from "./made.ts";
import { piece, rangeFrom, type FromPiece, type RangeTables } from "./pieces.ts";
import { beyond, saidRange, saidRanges, type Range } from "./range.ts";
import { named, ofSide, placeOf, type Side } from "./side.ts";
import { isMade, madeRule, type Variable } from "./variable.ts";
import { variables } from "./variables.ts";

/** What is asked of each qualification of a procedure for one variable. */
export const qualificationInputs = ({ printed }: Variable, way: FromPiece): Inputs => ({
  ...(printed === undefined ? {} : named("printed", printed.inputs(""))),
  standard: piece.standard,
  ...pieceInputs(way),
});

/** What several qualifications of a procedure hold of a variable: as printed, else as the test piece gives it. */
export function heldBy(rows: readonly Row[], { piece: way, printed }: Variable, tables: RangeTables): readonly Range[] {
  return rows.flatMap(
    (row) => printedOf(row, printed) ?? (way === undefined ? undefined : rangeFrom(way, asPiece(row), tables)) ?? [],
  );
}

const processOf = { printedProcess: list(text("range.processes[]")) };
const processesOf = (row: Row) => row["printedProcess"] as readonly string[];

/** Qualifications by what rests on them: of what is of the whole weld, those of each process by themselves. */
function bases(got: Got, ofWhole: boolean): readonly { readonly process?: string; readonly rows: readonly Row[] }[] {
  const rows = got["qualifications"] as readonly Row[];
  const processes = ofWhole ? (got["processes"] as readonly string[]) : [];
  if (processes.length < 2) return [{ rows }];
  return processes.flatMap((process) => {
    const own = rows.filter((row) => processesOf(row).includes(process));
    // A process without any test is found by the rule about processes.
    return own.length === 0 ? [] : [{ process, rows: own }];
  });
}

/** What a procedure specifies lies within what its qualifications hold. */
function procedureQualified(variable: Variable, way: FromPiece, side: Side): Rule {
  const { title, match = same, examples, printed, ofWhole = false } = variable;
  const { remedy = "name the qualification that covers it, or narrow the procedure" } = variable;
  const row = qualificationInputs(variable, way);
  const inputs: Inputs = {
    ...named("asked", side.inputs("")),
    ...(ofWhole && { processes: list(text("processes[]")) }),
    qualifications: things("qualifications[]", { ...row, ...(ofWhole && processOf) }),
    ...tableInputs(way),
  };
  const places = side.places.map((place) => placeOf("asked", place));
  return rule({
    ...shared,
    id: madeRule(variable, "range to procedure"),
    title: `The ${title} of a welding procedure lies within what its qualifications cover`,
    basis: standard,
    kind: "welding-procedure#revisions",
    when: side.stated(""),
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const asked = side.read(ofSide("asked", got, side));
      if (asked === undefined) return;
      for (const { process, rows } of bases(got, ofWhole)) {
        const held = heldBy(rows, variable, asTables(got));
        const names = rows.map(({ $ }) => $.name).join(", ");
        const by = process === undefined ? "" : ` for ${process}`;
        const far = held.length === 0 ? undefined : beyond(held, asked, match);
        if (held.length === 0)
          yield {
            at: placeFor("asked", side, undefined),
            accuses: [],
            name: process === undefined ? "unknown" : `unknown ${process}`,
            unsure: true,
            message: `${subject.name} specifies ${title} ${saidRange(asked)}; no qualification it names${by} states one`,
            why: `qualified by ${names}`,
            hint: "enter what the record of the test states; if it states nothing, ask the body that approved it",
          };
        else if (far !== undefined)
          yield {
            at: placeFor("asked", side, far.end),
            accuses: places,
            ...(process !== undefined && { name: process }),
            message: `${subject.name} specifies ${title} ${outsideOf(asked, far.names)}; its qualifications${by} cover ${saidRanges(held)}`,
            why: `qualified by ${names}`,
            hint: remedy,
          };
      }
    },
    examples: madeExamples(
      examples,
      (range, { held, piece: test }) => ({
        ...given("asked", side, range),
        ...(ofWhole && { processes: ["135"] }),
        qualifications: [
          {
            standard: "EN ISO 15614-1",
            ...trimmed(test, row),
            ...(ofWhole && { printedProcess: ["135"] }),
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

export const proceduresQualified: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "range to procedure") && one.piece !== undefined && one.procedure !== undefined
    ? [procedureQualified(one, one.piece, one.procedure)]
    : [],
);
