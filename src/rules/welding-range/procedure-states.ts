import { things, type Inputs } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { asTables, given, shared, standard, tableInputs, trimmed, type Got, type Row } from "./made.ts";
import { piece, type FromPiece } from "./pieces.ts";
import { heldBy, qualificationInputs } from "./procedure-qualified.ts";
import { open, saidRanges } from "./range.ts";
import { named, ofSide, type Side } from "./side.ts";
import type { Variable } from "./variable.ts";
import { variables } from "./variables.ts";

/** Where a test limits a variable, a procedure that says nothing of it leaves it to the welder. */
function procedureStates(variable: Variable, way: FromPiece, side: Side, limiting: keyof typeof piece): Rule {
  const { id, title, printed, examples } = variable;
  const row = qualificationInputs(variable, way);
  const inputs: Inputs = {
    ...named("asked", side.inputs("")),
    qualifications: things("qualifications[]", row),
    ...tableInputs(way),
  };
  const qualified = {
    standard: "EN ISO 15614-1",
    ...trimmed(examples?.piece, row),
    ...(printed === undefined ? {} : given("printed", printed, examples?.held ?? [])),
  };
  return rule({
    ...shared,
    id: `procedure-${id}-stated`,
    title: `A welding procedure states the ${title}, where a test it rests on was made with one that limits it`,
    basis: standard,
    kind: "welding-procedure#revisions",
    when: [{ path: `qualifications[].${piece[limiting].path}`, exists: true }],
    severity: "query",
    inputs,
    *check(values, subject) {
      const got: Got = values;
      const rows = got["qualifications"] as readonly Row[];
      const held = heldBy(rows, variable, asTables(got));
      if (side.read(ofSide("asked", got, side)) !== undefined || held.every((one) => one === open)) return;
      yield {
        at: "subject",
        accuses: [],
        message: `${subject.name} states no ${title}; its qualifications cover ${saidRanges(held)}`,
        why: `qualified by ${rows.map(({ $ }) => $.name).join(", ")}`,
        hint: `enter the ${title} from the procedure; if it states none, have it revised`,
      };
    },
    examples: [
      {
        name: "stated",
        given: { ...given("asked", side, examples?.inside ?? []), qualifications: [qualified] },
        objections: [],
      },
      {
        name: "left to the welder",
        given: { qualifications: [qualified] },
        objections: [`X-01 states no ${title}; its qualifications cover ${examples?.range ?? ""}`],
      },
    ],
  });
}

export const proceduresState: readonly Rule[] = variables.flatMap((one) =>
  one.mustState !== undefined && one.piece !== undefined && one.procedure !== undefined
    ? [procedureStates(one, one.piece, one.procedure, one.mustState)]
    : [],
);
