import type { Computed, Done, Judged, Waiting } from "../model/book.ts";
import type { Calculation, Comparison } from "../model/calculation.ts";
import { Places } from "../model/places.ts";
import { conclude, endStage, type Court, type DraftOutcome } from "../court/court.ts";
import { caseOf, holds, subjectsOf, type Applicant, type Case } from "../reading/subjects.ts";
import { clear, mergeTrail, newTrail } from "../reading/trail.ts";
import { newVisits } from "../reading/visits.ts";
import { type Pending, type World } from "../reading/world.ts";
import { compareCopies } from "./copies.ts";
import { rowsRead } from "../model/figures.ts";
import { bindAll, type BoundCalculation } from "./inputs.ts";
import { judgeRun, nothingAgainst, type Judgement } from "./judge-run.ts";
import { without } from "../model/rests.ts";
import { run, type Run } from "./run.ts";
import type { SheetCase } from "./sheet-case.ts";
import { compareSheets } from "./sheets.ts";
import { calculationKey } from "../model/calculation-key.ts";

/** A calculation as it stands before absences are settled; `outcome` is the place of its own in the list of all. */
export interface DraftComputed {
  readonly computed: Computed;
  readonly outcome: number;
}

interface Applied extends SheetCase {
  readonly computed: Computed;
  readonly outcome: number;
}

/**
 * Compares what the maker's sheets copy, does every calculation on everything it is about, inputs before results, then
 * compares the sheets with all of them: what a calculation doubts, no sheet reports once more. The recomputation never
 * takes a value from a sheet. What waits is given with the rest; only what a calculation does not apply to is left out.
 */
export function applyCalculations(
  court: Court,
  calculations: readonly Calculation[],
  seen: Set<object>,
): readonly DraftComputed[] {
  const copies = compareCopies(court, calculations);
  endStage(court);
  const cases = calculations.flatMap((calculation) => {
    const all = subjectsOf(court.world, calculation.appliesTo.kind).map((one) => {
      return applyTo(court, calculation, one);
    });
    endStage(court);
    return all;
  });
  const sheets = compareSheets(court, cases, copies, seen);
  return cases.flatMap((one) => {
    const { computed, done, outcome } = one;
    if ("pending" in done && done.notApplicable) return [];
    return [{ computed: { ...computed, sheets: sheets.get(one) ?? [] }, outcome }];
  });
}

/** A calculation done for one subject, before it is concluded from. */
interface Reckoned {
  readonly one: Case;
  readonly applies: boolean;
  /** Addresses that all of it rests on. */
  readonly before: Places;
  readonly bound: BoundCalculation | null;
  readonly open: Pending["open"];
  readonly done: Run | null;
  readonly judgement: Judgement;
}

const visit = newVisits<Reckoned>(
  ({ applies, one: { trail } }) => applies || trail.absences.length > 0 || trail.reasons.length > 0,
);

/** What came of each: whoever reads a result that stands as before reads the same one. */
const results = new WeakMap<Reckoned, Omit<Applied, "outcome">>();

/** Does a calculation for one subject; whoever reads its result then reads this one. */
export function applyTo(court: Court, calculation: Calculation, subject: Applicant): Applied {
  const { world } = court;
  const reckoned = visit(world, calculation, subject.address, () => reckon(world, calculation, caseOf(world, subject)));
  const { one, applies, done, judgement } = reckoned;
  const named = {
    id: calculation.id,
    basis: calculation.basis,
    owner: calculation.owner ?? "design",
    states: done !== null && !holdsAnything(done),
  };
  const outcome = conclude(court, named, subject.subject, one.trail, judgement.findings, applies);
  let applied = results.get(reckoned);
  if (applied === undefined) results.set(reckoned, (applied = resultOf(calculation, reckoned, outcome)));
  world.computed.set(calculationKey(calculation.id, subject.record, subject.pointer), applied.done);
  return { outcome: court.outcomes.length - 1, ...applied };
}

function reckon(world: World, calculation: Calculation, one: Case): Reckoned {
  const { record, pointer, hit, trail } = one;
  const applies = holds(world, calculation.appliesTo.when, hit, trail);
  const before = new Places(trail.reads);
  const bound = applies ? bindAll(world, calculation, hit) : null;
  const open = new Map([...(bound?.trails ?? [])].filter(([, own]) => !clear(own)));
  // Absent or doubted inputs keep from being judged what rests on them, and nothing else.
  const judgeable = open.size === 0 ? calculation : without(calculation, new Set(open.keys()));
  const done = bound === null || judgeable === null ? null : run(judgeable, bound.given);
  const sound = newTrail();
  for (const [symbol, own] of bound?.trails ?? []) {
    mergeTrail(trail, own);
    if (!open.has(symbol)) mergeTrail(sound, own);
  }
  const judgement =
    bound === null || done === null
      ? nothingAgainst
      : judgeRun(world, { calculation, record, pointer, trail: open.size === 0 ? trail : sound }, bound, done);
  return { one, applies, before, bound, open, done, judgement };
}

function resultOf(
  calculation: Calculation,
  { one, before, bound, open, done, judgement }: Reckoned,
  outcome: DraftOutcome,
): Omit<Applied, "outcome"> {
  const { record, pointer } = one;
  const { inputs, limits } = resultsOf(outcome, judgement, bound, done);
  const common = { calculation, subject: record, pointer, outcome, inputs, limits, sheets: [] };
  const waiting: Waiting = { state: "waiting", ...common };
  const waits = (pending: Pending) => ({ calculation, subject: record, pointer, done: pending, computed: waiting });
  if (bound === null || done === null || outcome.verdict === "not applicable" || !stands(done))
    return waits(pendingOf(outcome, one, open));
  const result: Done = {
    state: "done",
    ...common,
    steps: done.steps,
    accept: done.accept.map(({ of, left, right, holds: held }) => ({
      acceptance: of,
      left,
      right,
      margin: marginOf(of, left, right),
      ...judgedBy(outcome, judgement, of, held),
    })),
    ...(done.crossCheck !== undefined && {
      crossCheck: {
        value: done.crossCheck.value,
        ...judgedBy(outcome, judgement, "second method", done.crossCheck.agrees),
      },
    }),
    rows: rowsRead(bound.given),
    reads: new Map([
      ["", before],
      ...[...bound.trails].map(([symbol, own]) => [symbol, new Places(own.reads)] as const),
    ]),
  };
  if (open.size > 0) return waits({ ...pendingOf(outcome, one, open), known: result });
  if (isOpen(outcome)) return waits(pendingOf(outcome, one, open));
  return { calculation, subject: record, pointer, done: result, computed: result };
}

const marginOf = ({ relation }: Comparison, left: number, right: number) =>
  relation === "=" ? -Math.abs(left - right) : relation.startsWith("<") ? right - left : left - right;

const isOpen = ({ verdict }: DraftOutcome) => verdict === "not judged";

/** Whether a result was held against anything: an acceptance that was asked, or a limit that decides. */
const holdsAnything = ({ accept, limits }: Run): boolean =>
  accept.length > 0 || limits.some(({ of }) => of.decides === true);

/** A result stands when a function did not refuse and the inputs lie within the limits of validity. */
const stands = (done: Run) => done.refused === undefined && done.limits.every((limit) => limit.holds);

const pendingOf = (outcome: DraftOutcome, { trail }: Case, open: Pending["open"]): Pending => ({
  pending: true,
  findings: outcome.because?.type === "finding" ? outcome.because.keys : trail.doubts,
  absences: outcome.because?.type === "finding" ? [] : trail.absences,
  notApplicable: outcome.verdict === "not applicable",
  open,
});

function resultsOf(
  outcome: DraftOutcome,
  judgement: Judgement,
  bound: BoundCalculation | null,
  done: Run | null,
): Pick<Computed, "inputs" | "limits"> {
  return {
    inputs: bound?.inputs ?? new Map(),
    limits: (done?.limits ?? []).map(({ of, left, right, holds: held }) => ({
      limit: of,
      left,
      right,
      ...judgedBy(outcome, judgement, of, held),
    })),
  };
}

/** A comparison that does not hold is failed only where the calculation is: what is disputed or outside is open. */
function judgedBy(
  outcome: DraftOutcome,
  { against }: Judgement,
  comparison: Comparison | "second method",
  held: boolean,
): Judged {
  if (held) return { verdict: "passed" };
  const finding = against.get(comparison);
  return {
    verdict: outcome.verdict === "failed" && comparison !== "second method" ? "failed" : "not judged",
    ...(finding !== undefined && { finding }),
  };
}
