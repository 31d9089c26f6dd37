import type { Inputs } from "../../model/input.ts";
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
  shared,
  standard,
  tableInputs,
  trimmed,
  type Got,
} from "./made.ts";
import { recomputed, type FromPiece } from "./pieces.ts";
import { beyond, saidRange } from "./range.ts";
import { named, placeOf, type Side } from "./side.ts";
import { isMade, madeRule, type Variable } from "./variable.ts";
import { variables } from "./variables.ts";

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
    when: [{ path: "standard.standard", equals: recomputed }, ...printed.stated("")],
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const range = way.range(asPiece(got), asTables(got));
      const asked = printedOf(got, printed);
      if (asked === undefined) return;
      if (range === undefined) {
        yield {
          at: placeFor("printed", printed, undefined),
          accuses: [],
          name: "unstated",
          unsure: true,
          message: `procedure qualification ${subject.name} prints ${title} ${saidRange(asked)}; its test piece states none`,
          why: "a range is recomputed from what was tested",
          hint: `enter the ${title} of the test piece from the record of the test`,
        };
        return;
      }
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
      ...(examples?.also ?? []).map(({ name, piece: test, printed: range, said, source }) => ({
        name,
        ...(source !== undefined && { source }),
        given: { ...given("printed", printed, range), ...trimmed(test, needed) },
        objections:
          said === undefined
            ? []
            : [`procedure qualification X-01 prints ${title} ${said[0]}; its test piece gives ${said[1]}`],
      })),
    ],
  });
}

export const qualificationRanges: readonly Rule[] = variables.flatMap((one) =>
  isMade(one, "test piece to range") && one.piece !== undefined && one.printed !== undefined
    ? [printedRange(one, one.piece, one.printed)]
    : [],
);
