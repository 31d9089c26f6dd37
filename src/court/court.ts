import type { FindingKey } from "../model/finding-key.ts";
import type { Basis } from "../model/basis.ts";
import type { Finding, Outcome, Subject } from "../model/finding.ts";
import type { Address, BookRecord } from "../model/record.ts";
import { stableName, stablePath } from "../model/stable.ts";
import { addFinding, findingOf, nameOfRelated, type Entry } from "./entries.ts";
import { liftOf, type Lift } from "./lift.ts";
import { recordsRead, type Reason, type Trail } from "../reading/trail.ts";
import type { Absence, World } from "../reading/world.ts";
import type { Milestone, Owner } from "../model/vocabulary.ts";
import { outcomeName } from "../model/outcome-name.ts";
import { inBook, newFinding, spotIn } from "../model/new-finding.ts";

/** Who wants what is absent: an outcome, a field that is owed, a link, a row of the register. */
export interface Want {
  readonly absence: Absence;
  /** `definition|kind:id` of the outcome; null when the field or link itself asks. */
  readonly by: string | null;
  /** Milestone at which it is owed; null: who waits for evidence does not say when it is due. */
  readonly due: Milestone | null;
  readonly basis: Basis;
  readonly owner: Owner;
  /** What to do about it, where that is not to enter it from an original. */
  readonly hint?: string;
  /** What it is wanted for: "C: at most 0.20 %". */
  readonly why?: string;
  /** Title of the register's row; such a row gives the gap its basis. */
  readonly requirement?: string;
  /** Title of the definition that reads it and says who owes it: without a row it gives the gap its basis. */
  readonly reader?: string;
}

/** What has been said so far while a book is being judged. */
export interface Court {
  readonly world: World;
  readonly outcomes: DraftOutcome[];
  readonly entries: Map<FindingKey, Entry>;
  readonly wants: Want[];
  /** What exceptions answer, by key of the finding. */
  readonly lifts: Map<string, Lift[]>;
  /** Findings of the stage that is running: they doubt nothing before it ends. */
  readonly fresh: Set<FindingKey>;
  /** Values from the profile and from tables that verdicts rest on, with what they rest on themselves. */
  readonly used: Map<string, Basis>;
}

export interface DraftOutcome extends Outcome {
  /** Keys of absences it waits for; turned into findings at the end. */
  readonly absences?: readonly string[];
  /** The register asks for the very thing that is missing: it does not wait for it. */
  readonly asks?: boolean;
}

export interface DefinitionName {
  readonly id: string;
  readonly basis: Basis;
  readonly owner: Owner;
  /** It compares what follows from a value with our own: while that is disputed, a difference tells nothing more. */
  readonly follows?: boolean;
  /** It gives figures of which nothing is asked. */
  readonly states?: boolean;
}

export const newCourt = (world: World): Court => ({
  world,
  outcomes: [],
  entries: new Map(),
  wants: [],
  lifts: new Map(),
  fresh: new Set(),
  used: new Map(),
});

/**
 * Draws the conclusion of one definition on one subject from what it read and what it objects to. Where something it
 * read is doubted or absent, the objections given are those that do not rest on it. Returns the outcome.
 */
export function conclude(
  court: Court,
  definition: DefinitionName,
  subject: Subject | null,
  trail: Trail,
  objections: readonly Finding[],
  applies = true,
): DraftOutcome {
  const outcome = quiet.get(trail) ?? draft(court, definition, subject, trail, objections, applies);
  // What only says its verdict says the same wherever its trail holds.
  if (court.world.notes !== undefined && isQuiet(trail) && objections.length === 0) quiet.set(trail, outcome);
  if (outcome.verdict === "passed" || outcome.verdict === "computed" || outcome.verdict === "failed")
    for (const [name, basis] of trail.bases) court.used.set(name, basis);
  court.outcomes.push(outcome);
  return outcome;
}

const quiet = new WeakMap<Trail, DraftOutcome>();

const isQuiet = ({ doubts, disputes, absences, reasons }: Trail): boolean =>
  doubts.length + disputes.length + absences.length + reasons.length === 0;

const none: readonly never[] = [];
const nothing: readonly Address[] = [];

function draft(
  court: Court,
  definition: DefinitionName,
  subject: Subject | null,
  trail: Trail,
  objections: readonly Finding[],
  applies: boolean,
): DraftOutcome {
  const { id } = definition;
  const rests = trail.results.length > 0 && { results: [...new Set(trail.results)] };
  const given = definition.states === true ? "computed" : "passed";
  const isBeside = !applies || trail.inapplicable;
  // What does not apply read nothing that its outcome rests on.
  const notApplicable = () =>
    ({ definition: id, subject, findings: none, reads: nothing, verdict: "not applicable", ...rests }) as const;
  const quietly = objections.length === 0 && isQuiet(trail);
  if (quietly && isBeside) return notApplicable();
  const reads = recordsRead(court.world.graph, trail);
  if (quietly) return { definition: id, subject, findings: none, reads, verdict: given, ...rests };
  const base = { definition: id, subject, findings: none, reads, ...rests } as const;
  const open = waits(court, definition, subject, trail);
  if (open !== null && trail.disputes.length > 0) {
    if (definition.follows !== true) for (const key of trail.disputes) withhold(court.entries.get(key), objections);
    return { ...base, ...open };
  }
  if (open !== null) {
    // Made before it met what it waits for: they stand on their own.
    for (const objection of objections) addFinding(court, objection);
    const findings = objections.map(({ key }) => key);
    if (objections.some(({ verdict }) => verdict === "failed")) return { ...base, verdict: "failed", findings };
    return { ...base, ...open, findings };
  }
  if (
    trail.disputes.length > 0 &&
    (trail.reasons.length > 0 || objections.some(({ severity }) => severity !== "note"))
  ) {
    if (definition.follows !== true) for (const key of trail.disputes) withhold(court.entries.get(key), objections);
    return { ...base, verdict: "not judged", because: finding(trail.disputes) };
  }
  if (trail.reasons.length > 0) {
    const reasons = new Map(trail.reasons.map((reason) => [`${reason.key} ${reason.message}`, reason]));
    for (const reason of reasons.values()) addFinding(court, ofReason(definition, subject, reason));
    const findings = [...new Set(trail.reasons.map(({ key }) => key))].sort();
    return { ...base, verdict: "not judged", findings, because: finding(findings) };
  }
  if (isBeside) return notApplicable();
  for (const objection of objections) {
    addFinding(court, objection);
    for (const kind of trail.lists) court.entries.get(objection.key)?.lists.add(kind);
  }
  const findings = objections.map(({ key }) => key);
  const against = objections.filter(({ severity }) => severity !== "note");
  if (against.length === 0) return { ...base, verdict: given, findings };
  if (against.some(({ verdict }) => verdict === "failed")) return { ...base, verdict: "failed", findings };
  return { ...base, verdict: "not judged", findings, because: finding(against.map(({ key }) => key)) };
}

/** Why there is no verdict, if something that was read is doubted or absent. */
function waits(
  court: Court,
  definition: DefinitionName,
  subject: Subject | null,
  trail: Trail,
): Pick<DraftOutcome, "verdict" | "because" | "absences"> | null {
  if (trail.doubts.length > 0) return { verdict: "not judged", because: finding(trail.doubts) };
  if (trail.absences.length === 0) return null;
  const by = outcomeName(definition.id, subject);
  const absences = new Map(trail.absences.map((absence) => [absence.key, absence]));
  for (const absence of absences.values())
    court.wants.push({ absence, by, due: null, basis: definition.basis, owner: definition.owner });
  const keys = [...absences.keys()].sort();
  return { verdict: "not judged", absences: keys };
}

/** An objection that rests on a disputed place is said with the dispute, so that nobody settles one without the other. */
function withhold(entry: Entry | undefined, objections: readonly Finding[]): void {
  for (const { subject, place, message, severity } of objections) {
    const one = { subject, place, message: `waits for this: ${message}` };
    if (severity !== "note") entry?.withheld.set(nameOfRelated(one), one);
  }
}

const finding = (keys: readonly FindingKey[]) => ({ type: "finding", keys: [...new Set(keys)].sort() }) as const;

function ofReason(definition: DefinitionName, subject: Subject | null, reason: Reason): Finding {
  const { rule, at, ...words } = reason;
  const by = { id: rule, basis: definition.basis, owner: "design", severity: "query" } as const;
  const spot = at === null ? { subject, place: inBook } : spotIn(at.record, at.pointer);
  return newFinding(by, spot, { ...words, verdict: "not judged", about: `${words.key} ${words.why}` });
}

/** Ends a stage: its findings are lifted by exceptions, or doubt and dispute the places they name from now on. */
export function endStage(court: Court): void {
  for (const key of court.fresh) {
    const entry = court.entries.get(key);
    if (entry === undefined) continue;
    const lift = liftOf(court.lifts, findingOf(court.world, entry));
    entry.exception = lift?.exception ?? null;
    if (lift !== null || entry.finding.severity === "note") continue;
    court.world.ledger.accuse([...entry.accuses], key);
    court.world.ledger.dispute([...entry.disputes], key);
  }
  court.fresh.clear();
}

/** Runs one stage. */
export function stage(court: Court, run: () => void): void {
  run();
  endStage(court);
}

/** Place, key and subject of a finding about something in a record. */
export function locate(
  world: World,
  record: BookRecord,
  pointer: string,
): Pick<Finding, "subject" | "place"> & { readonly where: string; readonly name: string } {
  const kind = world.kinds.get(record.kind);
  return {
    ...spotIn(record, pointer),
    where: kind === undefined ? pointer : stablePath(kind, record.value, pointer),
    name: kind === undefined ? pointer.slice(1) : stableName(kind, record.value, pointer),
  };
}
