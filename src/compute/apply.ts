import type { Computed } from "../model/book.ts";
import type { Calculation } from "../model/calculation.ts";
import { conclude, endStage, type Court } from "../judge/court.ts";
import { holds, subjectsOf, type Case } from "../judge/subjects.ts";
import { readsOf } from "../judge/trail.ts";
import { calculationKey, type Pending } from "../judge/world.ts";
import { compareCopies } from "./copies.ts";
import { bindAll } from "./inputs.ts";
import { judgeRun } from "./judge-run.ts";
import { run, type Run } from "./run.ts";
import type { SheetCase } from "./sheet-case.ts";
import { compareSheets } from "./sheets.ts";

/**
 * Compares what the maker's sheets copy, does every calculation on everything it is about, inputs before results, then
 * compares the sheets with all of them: what a calculation doubts, no sheet reports once more. The recomputation never
 * takes a value from a sheet.
 */
export function applyCalculations(
  court: Court,
  calculations: readonly Calculation[],
  seen: Set<object>,
): readonly Computed[] {
  const copies = compareCopies(court, calculations);
  endStage(court);
  const cases = calculations.flatMap((calculation) => {
    const all = [...subjectsOf(court.world, calculation.appliesTo.kind)].map((one): SheetCase => {
      const done = compute(court, calculation, one);
      court.world.computed.set(calculationKey(calculation.id, one.record, one.pointer), done);
      return { calculation, subject: one.record, pointer: one.pointer, done };
    });
    endStage(court);
    return all;
  });
  const sheets = compareSheets(court, cases, copies, seen);
  return cases.flatMap((one) => ("pending" in one.done ? [] : [{ ...one.done, sheets: sheets.get(one) ?? [] }]));
}

function compute(
  court: Court,
  calculation: Calculation,
  { record, pointer, hit, subject, trail }: Case,
): Computed | Pending {
  const applies = holds(court.world, calculation.appliesTo.when, hit, trail);
  const bound = applies ? bindAll(court.world, calculation, hit, trail) : null;
  const done = bound === null ? null : run(calculation, bound.given);
  const findings =
    bound === null || done === null ? [] : judgeRun(court.world, { calculation, record, pointer, trail }, bound, done);
  const named = { id: calculation.id, basis: calculation.basis, owner: calculation.owner ?? "design" };
  const outcome = conclude(court, named, subject, trail, findings, applies);
  if (
    bound === null ||
    done === null ||
    outcome.verdict === "not applicable" ||
    outcome.verdict === "not judged" ||
    !stands(done)
  )
    return {
      pending: true,
      findings: outcome.because?.type === "finding" ? outcome.because.keys : [],
      absences: outcome.because?.type === "absent" ? trail.absences : [],
      notApplicable: outcome.verdict === "not applicable",
    };
  return {
    calculation,
    subject: record,
    pointer,
    inputs: bound.inputs,
    steps: done.steps,
    limits: done.limits.map(({ of, ...rest }) => ({ limit: of, ...rest })),
    accept: done.accept.map(({ of, ...rest }) => ({ acceptance: of, ...rest })),
    ...(done.crossCheck !== undefined && { crossCheck: done.crossCheck }),
    sheets: [],
    verdict: outcome.verdict,
    findings: outcome.findings,
    reads: new Set(readsOf(trail).keys()),
  };
}

/** A result stands when a function did not refuse and the inputs lie within the limits of validity. */
const stands = (done: Run) => done.refused === undefined && done.limits.every((limit) => limit.holds);
