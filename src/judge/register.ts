import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import type { Owed } from "../model/book.ts";
import { printStep, printSteps, wordsOfSteps } from "../model/path.ts";
import type { Register, Requirement } from "../model/requirement.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { pathOf } from "../reading/bind.ts";
import { conclude, type Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import { caseOf, holds, subjectsOf, type Case } from "../reading/subjects.ts";
import type { Trail } from "../reading/trail.ts";
import { newVisits } from "../reading/visits.ts";
import type { Absence, World } from "../reading/world.ts";
import { absenceKey } from "../reading/absent.ts";
import { keyOf } from "../model/finding-key.ts";
import { finderOf, newFinding, spotIn } from "../model/new-finding.ts";

const basis = ownChoice("a book names the register it answers to; a name nobody knows asks for nothing");

export const registerRules = [
  {
    id: "register-known",
    title: "The book names a register there is",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: ["book"], paths: ["register"] }],
  },
] as const satisfies readonly BuiltIn[];

/** The register the book names. One that is not named, or that nobody knows, is a finding, and the rows of the first stand in for its own. */
export function registerInForce(
  book: BookRecord,
  registers: readonly Register[],
): {
  readonly named: Register | undefined;
  readonly findings: readonly Finding[];
} {
  const name = book.value["register"];
  const named = registers.find(({ id }) => id === name);
  if (named !== undefined || registers.length === 0) return { named, findings: [] };
  const known = typeof name === "string";
  const message = known ? `there is no register "${name}"` : "the book names no register of what it must contain";
  const finding = newFinding(finderOf(registerRules, "register-known"), spotIn(book, known ? "/register" : ""), {
    key: keyOf("register-known", book, known ? name : ""),
    message,
    why: `the registers are ${registers.map(({ id }) => `"${id}"`).join(", ")}`,
    hint: known ? "correct the name" : `name one of them in "register"`,
    about: known ? name : "",
    accuses: [addressOf(book, "/register")],
  });
  return { named, findings: [finding] };
}

/** A requirement applied to one record, before it is known whether what is missing is due. */
export interface DraftOwed extends Omit<Owed, "state" | "outcome"> {
  /** Where its outcome stands among all. */
  readonly outcome: number;
}

/** Follows one row of the register from every record it is about. */
export function applyRequirement(court: Court, requirement: Requirement): DraftOwed[] {
  const { world } = court;
  return subjectsOf(world, requirement.each.kind).map((one) => {
    const { record, pointer, subject, address } = one;
    const said = visit(world, requirement, address, () => look(world, requirement, caseOf(world, one)));
    const { trail, applies, evidence } = said;
    const before = court.wants.length;
    const asks = trail.absences.every((absence) => isAskedFor(absence, requirement));
    const outcome = conclude(court, requirement, subject, trail, [], applies);
    court.outcomes[court.outcomes.length - 1] = { asks, ...outcome };
    // A want of the register gives the gap its basis, its words and its date.
    for (let index = before; index < court.wants.length; index++) {
      const want = court.wants[index];
      if (want !== undefined) court.wants[index] = { ...want, due: requirement.due, requirement: requirement.title };
    }
    return { requirement, subject: record, pointer, evidence, outcome: court.outcomes.length - 1 };
  });
}

/** What a row of the register finds of one subject, and what it went by. */
interface Found {
  readonly trail: Trail;
  readonly applies: boolean;
  readonly evidence: readonly BookRecord[];
}

const visit = newVisits<Found>(() => true);

function look(world: World, requirement: Requirement, one: Case): Found {
  const { hit, trail } = one;
  const applies = holds(world, requirement.each.when, hit, trail);
  const found = applies ? follow(world, pathOf(requirement.needs), hit, trail) : [];
  const evidence = [...new Set(found.flatMap((each) => (each.record === null ? [] : [each.record])))];
  const atLeast = requirement.atLeast ?? 1;
  if (evidence.length > 0 && evidence.length < atLeast)
    trail.absences.push(shortfall(one, requirement, { found: evidence, atLeast }));
  return { trail, applies, evidence };
}

/** Whether what is missing is what the row asks for, and not something on the way to it. */
function isAskedFor({ step, target, short }: Absence, { needs }: Requirement): boolean {
  const last = pathOf(needs).steps.findLast(({ type }) => type !== "items" && type !== "filter");
  return short !== undefined || (target === null && last !== undefined && step === printStep(last));
}

/** Fewer than the register asks for. Of a single step back it is a missing link back like any other. */
function shortfall({ record, pointer }: Case, { needs }: Requirement, short: NonNullable<Absence["short"]>): Absence {
  const { steps } = pathOf(needs);
  const [head, ...tail] = steps;
  const single = head?.type === "back" && tail.every((step) => step.type === "filter");
  const step = single ? printSteps([head]) : needs;
  const filters = single ? printSteps(tail) : "";
  return {
    key: absenceKey({ record, pointer }, `${needs} at least ${short.atLeast}`),
    name: `${wordsOfSteps(steps)} at least ${short.atLeast}`,
    owner: { record, pointer },
    step,
    filters,
    kind: single ? head.kind : null,
    target: null,
    short,
  };
}
