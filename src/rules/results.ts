import { ownChoice } from "../model/basis.ts";
import { anyOf, list, text, thing } from "../model/input.ts";
import { rule, type Rule } from "../model/rule.ts";
import type { Owner } from "../model/vocabulary.ts";

const basis = ownChoice("what was rejected is not evidence of conformity until it is put right on record");

const shared = { basis, severity: "nonconformity" } as const;
const hint = "enter the result of the repetition, or raise a nonconformity report and have it decided";

/** A test or examination whose record says that it was passed. */
function accepted(id: string, title: string, kind: string, owner: Owner, what: string, path = "result"): Rule {
  return rule({
    ...shared,
    id,
    title,
    kind,
    owner,
    inputs: { result: text(path) },
    *check({ result }, subject) {
      if (result === "rejected")
        yield { at: "result", message: `${what} ${subject.id} was rejected`, why: `recorded: ${result}`, hint };
    },
    examples: [
      { name: "accepted", given: { result: "accepted" }, objections: [] },
      { name: "rejected", given: { result: "rejected" }, objections: [`${what} X-01 was rejected`] },
    ],
  });
}

/** A record with a list of tests, each of which says that it was passed. */
function allAccepted(id: string, title: string, kind: string, owner: Owner, what: string, path: string): Rule {
  return rule({
    ...shared,
    id,
    title,
    kind,
    owner,
    inputs: { tests: anyOf(list(thing(path, { result: text("result") }))) },
    *check({ tests }, subject) {
      const failed = tests.find(({ result }) => result === "rejected");
      if (failed !== undefined)
        yield {
          at: [failed, "result"],
          accuses: ["tests"],
          message: `${what} ${subject.id} was rejected`,
          why: `recorded: ${tests.map(({ result }) => result).join(", ")}`,
          hint,
        };
    },
    examples: [
      { name: "no further test", given: { tests: [] }, objections: [] },
      { name: "accepted", given: { tests: [{ result: "accepted" }] }, objections: [] },
      {
        name: "one of several rejected",
        given: { tests: [{ result: "accepted" }, { result: "rejected" }] },
        objections: [`${what} X-01 was rejected`],
      },
    ],
  });
}

export const productionTestAccepted = accepted(
  "production-test-accepted",
  "A production test is passed",
  "production-test",
  "testing",
  "production test",
);
export const productionTestsAccepted = allAccepted(
  "production-test-parts-accepted",
  "Each further test of a production test is passed",
  "production-test",
  "testing",
  "a part of production test",
  "otherTests[]",
);
export const heatTreatmentAccepted = accepted(
  "heat-treatment-accepted",
  "A heat treatment is accepted",
  "heat-treatment",
  "welding coordination",
  "heat treatment",
);
export const dimensionsAccepted = accepted(
  "dimensions-accepted",
  "A dimension is accepted",
  "dimension-check#rows",
  "quality",
  "dimension",
);
export const dimensionCheckAccepted = accepted(
  "dimension-check-accepted",
  "A check of dimensions is accepted",
  "dimension-check",
  "quality",
  "dimension check",
);
export const pressureTestAccepted = accepted(
  "pressure-test-accepted",
  "A pressure test is passed",
  "pressure-test",
  "quality",
  "pressure test",
);
export const visualUnderPressureAccepted = accepted(
  "test-examination-accepted",
  "The look at every joint under pressure found nothing",
  "pressure-test",
  "quality",
  "the examination at pressure test",
  "visualExamination.result",
);
export const tubeEndsAccepted = accepted(
  "tube-ends-accepted",
  "A group of tube ends is accepted",
  "tube-end-group",
  "quality",
  "group of tube ends",
);
export const functionTestAccepted = accepted(
  "function-test-accepted",
  "What a fitting does was tried, and it did it",
  "fitting#functionTests",
  "quality",
  "the trial of fitting",
);
export const seatTight = accepted(
  "valve-tight",
  "The seat of a safety valve is tight",
  "safety-valve",
  "supplier",
  "the seat of safety valve",
  "bench.seatTightness",
);
export const procedureTestAccepted = allAccepted(
  "procedure-test-accepted",
  "Each test of a procedure qualification is passed",
  "procedure-qualification",
  "welding coordination",
  "a test of procedure qualification",
  "tests[]",
);
export const certificateTestAccepted = allAccepted(
  "certificate-test-accepted",
  "Each further test on a material certificate is passed",
  "material-certificate#rows",
  "purchasing",
  "a test of certificate row",
  "otherTests[]",
);
