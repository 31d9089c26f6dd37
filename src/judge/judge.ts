import { applyCalculations } from "../compute/apply.ts";
import { checkSheets } from "../compute/sheets.ts";
import { linkRecords } from "../link/graph.ts";
import { evidenceFingerprint } from "../model/fingerprint.ts";
import type { JudgedBook, LoadedBook } from "../model/book.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { notRead } from "../model/not-read.ts";
import { ProgramError } from "../model/program-error.ts";
import { registerOf } from "../model/requirement.ts";
import { addressOf, publishedPath, type BookRecord } from "../model/record.ts";
import { foldAbsences } from "./absences.ts";
import { keeper, notesFor, type Remembered } from "./again.ts";
import { announcedIn } from "./announced.ts";
import { withAnswers } from "../court/answered.ts";
import { judgeComparisons, readFromIn, wantComparisons, type Comparisons } from "./comparisons.ts";
import { endStage, newCourt, stage, type Court } from "../court/court.ts";
import { addFinding, findingOf } from "../court/entries.ts";
import { prepareExceptions } from "./exceptions.ts";
import { applyFact } from "./facts.ts";
import { readValues, saySuspects, type Suspect } from "./fields.ts";
import { gapKey } from "./gap-finding.ts";
import { historySound } from "./history.ts";
import { forceOf, scopesInForce, sheetsOutOfForce } from "./in-force.ts";
import { foldIncomplete } from "./incomplete.ts";
import { newLedger } from "../reading/ledger.ts";
import { answerable } from "../model/exceptions.ts";
import { missingIn } from "./missing.ts";
import { calendarOf, checkListed, checkPassedOver } from "./milestones.ts";
import { noteOrphans, openKinds } from "./orphans.ts";
import { onePaperEach } from "./one-paper.ts";
import { originalsShown, originalsSound } from "./originals.ts";
import { planOf } from "../plan/plan.ts";
import { wantPapers, wantRowPapers } from "./papers.ts";
import { parametersOf } from "../reading/profile.ts";
import { readBack } from "./read-back.ts";
import { judgeRefusals, settleRefusals } from "./refusals.ts";
import { applyRequirement, registerInForce } from "./register.ts";
import { answersByFinding, reviewExceptions, sayReopened } from "./review.ts";
import { applyAgainst, applyRule } from "./rules.ts";
import { addStillWaiting, settleGaps, settleOutcome, settleOwed, waitingByFinding, withWaiting } from "./settle.ts";
import { countsOf, inOrder } from "../court/summary.ts";
import { tablesOf } from "../reading/tables.ts";
import { titlesOf } from "../plan/titles.ts";
import { checkBases } from "./verified.ts";
import type { Memory } from "../reading/visits.ts";
import { settleOwing } from "./settle-owing.ts";
import { wantOwed } from "./want-owed.ts";
import { wantFields, wantLinks } from "./wants.ts";

/**
 * Judges a loaded book: links it, recomputes it and applies every definition, stage by stage, so that one root cause is
 * one finding. Pure: the same book and definitions give the same value.
 */
export const judge = (loaded: LoadedBook, definitions: Definitions): JudgedBook =>
  judgeAfter(null, loaded, definitions, false).judged;

/** Judges a book so that it can be judged again; that takes more memory, and a little more time. */
export const judgeRemembering = (loaded: LoadedBook, definitions: Definitions): Remembered =>
  judgeAfter(null, loaded, definitions, true);

/**
 * Judges a book that was judged before in another state, by the same definitions. It is the same run: where everything
 * that a definition rested on is as it was, it says what it said. What comes of it is what `judge` gives. The memory
 * stays as it is, and serves any number of times; the new state is remembered where that is asked for.
 */
export const judgeAgain = (before: Memory, loaded: LoadedBook, remember = true): Remembered =>
  judgeAfter(before, loaded, before.all, remember);

function judgeAfter(before: Memory | null, read: LoadedBook, given: Definitions, remember: boolean): Remembered {
  // Those of another book are its own: this one's register may ask for others.
  const all = given.whole ?? given;
  const kept = before === null ? undefined : keeper(before.graph);
  const loaded = kept === undefined ? read : { ...read, records: read.records.map(kept) };
  const { graph, findings: linkFindings } = linkRecords(loaded.records, all.kinds, kept);
  const [book, issue] = [only(loaded, "book"), only(loaded, "issue")];
  const profile = parametersOf(book, all.profiles);
  const tables = tablesOf(graph, all.tables);
  const fingerprint = evidenceFingerprint(
    loaded.files.map((file) => ({ path: publishedPath(file), sha256: file.sha256 })),
  );
  const calendar = calendarOf(issue);
  const { named, findings: unknown } = registerInForce(book, all.registers);
  planOf(all);
  const { force: inForce, left } = forceOf(graph, book, all, named);
  const { definitions } = inForce;
  const { requirements = [] } = registerOf(book.value["register"], definitions.registers) ?? {};
  const plan = planOf(definitions);
  const titles = titlesOf(all);
  const memory: Memory = { all, definitions, graph, parameters: profile.parameters, tables };
  const notes = notesFor(before, memory, remember);
  const court = newCourt({
    ...(notes !== undefined && { notes }),
    graph,
    definitions,
    kinds: definitions.kinds,
    parameters: profile.parameters,
    tables: tables.tables,
    ownTables: tables.own,
    ledger: newLedger(),
    computed: new Map(),
  });

  // What no exception answers: files, schemas, ids and links, unreadable values, hashes, and the frame of the book.
  const [queries, faults] = apart(linkFindings, ({ severity }) => severity === "query");
  const [less, wrong] = apart([...profile.findings, ...tables.findings], ({ severity }) => severity === "query");
  stage(court, () => loaded.findings.forEach((finding) => addFinding(court, finding)));
  stage(court, () => addUnlessDoubted(court, faults));
  const cutOff = textOf(issue, "dataCutOff");
  let suspects: readonly Suspect[] = [];
  stage(court, () => void (suspects = readValues(court, cutOff)));
  stage(court, () => {
    addUnlessDoubted(court, [...wrong, ...unknown]);
    originalsSound(court, loaded.files);
    scopesInForce(court, book, left, all, named);
    historySound(court, issue, fingerprint);
    checkListed(court, issue, calendar, requirements, plan.owing);
  });

  const isException = (kind: string) => answerable.has(kind);
  stage(court, () => saySuspects(court, suspects, isException, issue));
  stage(court, () => plan.exceptions.forEach((rule) => applyRule(court, rule, plan.single.has(rule.id))));
  const last = calendar.final ? textOf(issue, "issueDate") : cutOff;
  const exceptions = prepareExceptions(court, last, plan.ordered);

  stage(court, () => {
    addUnlessDoubted(court, [...queries, ...less]);
    originalsShown(court, loaded.files);
    saySuspects(court, suspects, (kind) => !isException(kind), issue);
  });
  let papers: JudgedBook["readBack"] = new Map();
  stage(court, () => onePaperEach(court));
  stage(court, () => void (papers = loaded.texts === undefined ? papers : readBack(court, loaded.texts())));
  let comparisons: Comparisons = new Map();
  stage(court, () => void (comparisons = judgeComparisons(court, papers)));
  stage(court, () => applyAgainst(court, plan.against));
  stage(court, () => plan.within.forEach((rule) => applyRule(court, rule, true)));
  let refusals: JudgedBook["refusals"] = new Map();
  stage(court, () => void (refusals = judgeRefusals(court)));
  stage(court, () => definitions.facts.forEach((fact) => applyFact(court, fact)));
  const sheets = new Set<object>();
  const computed = applyCalculations(court, plan.calculations, sheets);
  sheetsOutOfForce(graph, inForce).forEach((sheet) => sheets.add(sheet));
  stage(court, () => checkSheets(court, definitions.calculations, sheets));
  for (const rule of plan.disputing) stage(court, () => applyRule(court, rule, false));
  stage(court, () => plan.chain.forEach((rule) => applyRule(court, rule, false)));
  stage(court, () => plan.whole.forEach((rule) => applyRule(court, rule, false)));
  const owed = requirements.flatMap((row) => applyRequirement(court, row));
  const owing = wantOwed(court, plan.owing);
  wantFields(court);
  wantPapers(court);
  wantRowPapers(court);
  wantComparisons(court, comparisons);
  wantLinks(court);
  stage(court, () => checkPassedOver(court, issue, calendar));

  const { gaps, of } = foldAbsences(court, cutOff);
  const results = settleGaps(
    court,
    gaps,
    calendar,
    issue,
    notRead(loaded).map(({ key }) => key),
  );
  foldIncomplete(court, results);
  const settled = court.outcomes.map((outcome) => settleOutcome(outcome, of, results));
  const waiting = waitingByFinding(court, settled);
  stage(court, () => checkBases(court, book, definitions, requirements, settled));
  addStillWaiting(court, waiting, titles);
  noteOrphans(court, openKinds(court.world, gaps), readFromIn(comparisons));
  const quiet = new Set(
    gaps.filter((gap) => !("finding" in (results.get(gap) ?? {}))).map((gap) => gapKey(court.world, gap)),
  );
  reviewExceptions(court, exceptions, settled, quiet);
  endStage(court);
  const outcomes = withAnswers(court, settled, waiting);

  const answers = answersByFinding(exceptions);
  const findings = inOrder(
    [...court.entries.values()].map((entry) =>
      sayReopened(court.world, answers, withWaiting(findingOf(court.world, entry), waiting)),
    ),
  );
  const missing = missingIn(court.world, gaps, of, results, calendar);
  const judged: JudgedBook = {
    loaded,
    definitions,
    inForce,
    titles,
    graph,
    book,
    issue,
    state: calendar.final ? "final" : "interim",
    profile: profile.profile?.id ?? "",
    parameters: profile.parameters,
    tables: tables.tables,
    findings,
    outcomes,
    computed: computed.map(({ computed: one, outcome }) => ({ ...one, outcome: outcomes[outcome] ?? one.outcome })),
    owed: owed.map((one) => settleOwed(court, one, outcomes)),
    owing: settleOwing(court, owing, of, results, calendar),
    absent: new Map([...of].flatMap(([key, gap]) => [[key, results.get(gap)] as const].flatMap(known))),
    missing,
    announced: announcedIn(court.world, definitions, missing, findings),
    refusals: settleRefusals(court, refusals),
    readBack: papers,
    comparisons,
    counts: countsOf(findings, outcomes),
    fingerprint,
    exceptions: exceptions.map(({ record, answers: own }) => ({
      record,
      answers: own.map(({ finding }) => finding),
      lifts: own.some(({ finding }) => court.entries.get(finding)?.exception === addressOf(record)),
    })),
  };
  return { judged, memory };
}

const known = <T>([key, value]: readonly [string, T | undefined]): readonly (readonly [string, T])[] =>
  value === undefined ? [] : [[key, value]];

function only(loaded: LoadedBook, kind: "book" | "issue"): BookRecord {
  const record = loaded.records.find((one) => one.kind === kind);
  if (record === undefined)
    throw new ProgramError(`judging needs the ${kind} record; "fatal" of the loaded book says why there is none`);
  return record;
}

const textOf = (record: BookRecord, field: string): string => {
  const value = record.value[field];
  return typeof value === "string" ? value : "";
};

function apart(findings: readonly Finding[], first: (finding: Finding) => boolean) {
  return [findings.filter(first), findings.filter((finding) => !first(finding))] as const;
}

/** Faults found without asking what was accused before; of two about one place the earlier stands. */
function addUnlessDoubted(court: Court, findings: readonly Finding[]): void {
  for (const finding of findings) {
    const { subject, place } = finding;
    const record = subject === null ? undefined : court.world.graph.byKind.get(subject.kind)?.get(subject.id);
    const inside = record !== undefined && place.file === record.file && place.pointer.startsWith(record.pointer);
    const pointer = inside ? place.pointer.slice(record.pointer.length) : "";
    if (record === undefined || court.world.ledger.doubts(addressOf(record, pointer)).length === 0)
      addFinding(court, finding);
  }
}
