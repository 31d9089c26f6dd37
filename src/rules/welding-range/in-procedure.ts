import { fromMemory } from "../../model/basis.ts";
import { thing, type Inputs } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { given, madeExamples, outsideOf, placeFor, same, saidHeld, shared, type Got, type Row } from "./made.ts";
import { beyond, saidRange } from "./range.ts";
import { named, ofSide, placeOf, type Side } from "./side.ts";
import { isMade, madeRule, type Variable } from "./variable.ts";
import { variables } from "./variables.ts";

const stated = fromMemory("EN ISO 15609-1", "2019", "ranges of the specification; they are those it states");

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
    when: asking.stated(needing.at),
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
