import { ownChoice } from "../model/basis.ts";
import { anyOf, list, text, type Input } from "../model/input.ts";
import { rule, type Rule } from "../model/rule.ts";

const basis = ownChoice("what was rejected is not evidence of conformity until it is put right on record");

/** Tests and examinations whose record says that they were passed. */
function accepted(
  id: string,
  title: string,
  kind: string,
  owner: string,
  what: string,
  results: Input<readonly string[]>,
): Rule {
  return rule({
    id,
    title,
    basis,
    kind,
    severity: "nonconformity",
    owner,
    inputs: { results },
    *check({ results: found }, subject) {
      if (found.includes("rejected"))
        yield {
          at: "results",
          message: `${what} ${subject.id} was rejected`,
          why: `recorded: ${found.join(", ")}`,
          hint: "enter the result of the repetition, or raise a nonconformity report and have it decided",
        };
    },
    examples: [
      { name: "accepted", given: { results: ["accepted"] }, objections: [] },
      { name: "rejected", given: { results: ["rejected"] }, objections: [`${what} X-01 was rejected`] },
      {
        name: "one of several rejected",
        given: { results: ["accepted", "rejected"] },
        objections: [`${what} X-01 was rejected`],
      },
    ],
  });
}

const one = (path: string) => list(text(path));
const some = (path: string) => anyOf(one(path));

export const productionTestAccepted = accepted(
  "production-test-accepted",
  "A production test is passed",
  "production-test",
  "testing",
  "production test",
  one("result"),
);
export const productionTestsAccepted = accepted(
  "production-test-parts-accepted",
  "Each further test of a production test is passed",
  "production-test",
  "testing",
  "a part of production test",
  some("otherTests[].result"),
);
export const heatTreatmentAccepted = accepted(
  "heat-treatment-accepted",
  "A heat treatment is accepted",
  "heat-treatment",
  "welding coordination",
  "heat treatment",
  one("result"),
);
export const dimensionsAccepted = accepted(
  "dimensions-accepted",
  "A dimension is accepted",
  "dimension-check#rows",
  "quality",
  "dimension",
  one("result"),
);
export const dimensionCheckAccepted = accepted(
  "dimension-check-accepted",
  "A check of dimensions is accepted",
  "dimension-check",
  "quality",
  "dimension check",
  one("result"),
);
export const pressureTestAccepted = accepted(
  "pressure-test-accepted",
  "A pressure test is passed",
  "pressure-test",
  "quality",
  "pressure test",
  one("result"),
);
export const visualUnderPressureAccepted = accepted(
  "test-examination-accepted",
  "The look at every joint under pressure found nothing",
  "pressure-test",
  "quality",
  "the examination at pressure test",
  one("visualExamination.result"),
);
export const seatTight = accepted(
  "valve-tight",
  "The seat of a safety valve is tight",
  "safety-valve",
  "supplier",
  "the seat of safety valve",
  one("bench.seatTightness"),
);
export const procedureTestAccepted = accepted(
  "procedure-test-accepted",
  "Each test of a procedure qualification is passed",
  "procedure-qualification",
  "welding coordination",
  "a test of procedure qualification",
  some("tests[].result"),
);
export const certificateTestAccepted = accepted(
  "certificate-test-accepted",
  "Each further test on a material certificate is passed",
  "material-certificate#rows",
  "purchasing",
  "a test of certificate row",
  some("otherTests[].result"),
);
