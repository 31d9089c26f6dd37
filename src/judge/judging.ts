import { applyCalculations } from "../compute/apply.ts";
import { checkSheets } from "../compute/sheets.ts";
import { withAnswers } from "../court/answered.ts";
import { stage, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import type { JudgedBook } from "../model/book.ts";
import { answerable } from "../model/exceptions.ts";
import type { Finding } from "../model/finding.ts";
import { notRead } from "../model/not-read.ts";
import { addressOf } from "../model/record.ts";
import { foldAbsences } from "./absences.ts";
import { judgeComparisons, readFromIn, wantComparisons } from "./comparisons.ts";
import { checkDays } from "./days.ts";
import { prepareExceptions } from "./exceptions.ts";
import { applyFact } from "./facts.ts";
import { readValues, saySuspects } from "./fields.ts";
import { textOf, type Frame } from "./frame.ts";
import { gapKey } from "./gap-finding.ts";
import { historySound } from "./history.ts";
import { scopesInForce, sheetsOutOfForce } from "./in-force.ts";
import { foldIncomplete } from "./incomplete.ts";
import { checkListed, checkPassedOver } from "./milestones.ts";
import { onePaperEach } from "./one-paper.ts";
import { originalsShown, originalsSound } from "./originals.ts";
import { noteOrphans, openKinds } from "./orphans.ts";
import { wantPapers, wantRowPapers } from "./papers.ts";
import { readBack } from "./read-back.ts";
import { judgeRefusals } from "./refusals.ts";
import { applyRequirement } from "./register.ts";
import { checkRests } from "./rests.ts";
import { reviewExceptions } from "./review.ts";
import { applyAgainst, applyRule } from "./rules.ts";
import { addStillWaiting, settleGaps, settleOutcome, waitingByFinding } from "./settle.ts";
import { Steps } from "./steps.ts";
import { checkBases } from "./verified.ts";
import { wantOwed } from "./want-owed.ts";
import { wantFields, wantLinks } from "./wants.ts";

const isQuery = ({ severity }: Finding) => severity === "query";
const isFault = (finding: Finding) => !isQuery(finding);
const isException = (kind: string) => answerable.has(kind);
const isEvidence = (kind: string) => !isException(kind);

/**
 * How a book is judged, from top to bottom. What no exception answers comes first, then the exceptions, then what they may
 * answer, then what is missing, then what became of it all.
 */
export const judging = Steps.from<Frame>()
  .stage("files and schemas", "says what loading found in files and against schemas", ({ court, loaded }) => {
    for (const finding of loaded.findings) addFinding(court, finding);
  })
  .stage("ids and links", "says which ids and links are wrong", ({ court, found }) => {
    addUnlessDoubted(court, found.links.filter(isFault));
  })
  .stage("values", "reads every value by its schema, and says which cannot be read", ({ court, cutOff }) => ({
    suspects: readValues(court, cutOff),
  }))
  .stage(
    "frame of the book",
    "holds profile, tables, register, hashes of originals, scopes, history and milestones against what there is",
    ({ court, found, loaded, book, issue, force, all, named, fingerprint, calendar, requirements, plan }) => {
      addUnlessDoubted(court, [...found.own.filter(isFault), ...found.register]);
      originalsSound(court, loaded.files);
      scopesInForce(court, book, force.left, all, named);
      historySound(court, issue, fingerprint);
      checkListed(court, issue, calendar, requirements, plan.owing);
    },
  )
  .stage("suspects in exceptions", "asks about implausible values in records of exceptions", (state) => {
    saySuspects(state.court, state.suspects, isException, state.issue);
  })
  .stage("rules on exceptions", "applies the rules whose subjects are exceptions", ({ court, plan }) => {
    for (const rule of plan.exceptions) applyRule(court, rule, plan.single.has(rule.id));
  })
  .stages("exceptions", "prepares what each exception answers; a fault of one lifts nothing", (state) => {
    const { court, calendar, issue, cutOff, plan } = state;
    const last = calendar.final ? textOf(issue, "issueDate") : cutOff;
    return { exceptions: prepareExceptions(court, last, plan.ordered) };
  })
  .stage(
    "queries",
    "asks what an exception may answer: look-alike ids, own parameters, originals that cannot be shown, implausible values",
    ({ court, found, loaded, suspects, issue }) => {
      addUnlessDoubted(court, [...found.links.filter(isQuery), ...found.own.filter(isQuery)]);
      originalsShown(court, loaded.files);
      saySuspects(court, suspects, isEvidence, issue);
    },
  )
  .stage("one paper each", "asks where records of several numbers are read from one page", ({ court }) => {
    onePaperEach(court);
  })
  .stage("read back", "looks for recorded values on the pages they were read from", ({ court, loaded }) => ({
    papers: loaded.texts === undefined ? (new Map() as JudgedBook["readBack"]) : readBack(court, loaded.texts()),
  }))
  .stage("comparisons", "asks whether what a second person compared is still what is recorded", (state) => ({
    comparisons: judgeComparisons(state.court, state.papers),
  }))
  .stage(
    "rules against one value",
    "applies the rules that hold records against one value of the book",
    ({ court, plan }) => {
      applyAgainst(court, plan.against);
    },
  )
  .stage("rules within a record", "applies the rules that read no other record", ({ court, plan }) => {
    for (const rule of plan.within) applyRule(court, rule, true);
  })
  .stage("refusals", "asks of each rejected result whether something closes it", ({ court }) => ({
    refusals: judgeRefusals(court),
  }))
  .stage("facts", "compares what several records state of one thing", ({ court }) => {
    for (const fact of court.world.definitions.facts) applyFact(court, fact);
  })
  .stages(
    "calculations",
    "compares what sheets copy, does every calculation, inputs before results, then compares the sheets",
    (state) => {
      const { court, plan, force } = state;
      const sheets = new Set<object>();
      const computed = applyCalculations(court, plan.calculations, sheets);
      for (const sheet of sheetsOutOfForce(court.world.graph, force.force)) sheets.add(sheet);
      return { computed, sheets };
    },
  )
  .stage("sheets", "says which sheets of the maker nothing was compared with", ({ court, sheets }) => {
    checkSheets(court, court.world.definitions.calculations, sheets);
  })
  .stages("rules that dispute", "applies each in a stage of its own: the next reads what it disputes", (state) => {
    for (const rule of state.plan.disputing) stage(state.court, () => applyRule(state.court, rule, false));
  })
  .stage("rules along chains", "applies the rules that read other records and results", ({ court, plan }) => {
    for (const rule of plan.chain) applyRule(court, rule, false);
  })
  .stage("rules over the whole book", "applies the rules that read all records of a kind", ({ court, plan }) => {
    for (const rule of plan.whole) applyRule(court, rule, false);
  })
  .stage("days", "holds days of events against those of signatures and comparisons", ({ court }) => {
    checkDays(court);
  })
  .stage(
    "what rests on days",
    "holds days of events against those of what rests on them, and of milestones",
    ({ court, issue }) => {
      checkRests(court, issue);
    },
  )
  .step("what is owed", "registers who wants what: rows of the register, readers, fields, papers, links", (state) => {
    const { court, requirements, plan, comparisons } = state;
    const owed = requirements.flatMap((row) => applyRequirement(court, row));
    const owing = wantOwed(court, plan.owing);
    wantFields(court);
    wantPapers(court);
    wantRowPapers(court);
    wantComparisons(court, comparisons);
    wantLinks(court);
    return { owed, owing };
  })
  .stage("milestones passed over", "asks about a milestone that is not reached before one that is", (state) => {
    checkPassedOver(state.court, state.issue, state.calendar);
  })
  .stages("gaps", "makes one gap of what several want; says it where it is due and nothing explains it", (state) => {
    const { court, cutOff, calendar, issue, loaded } = state;
    const { gaps, of } = foldAbsences(court, cutOff);
    const unreadable = notRead(loaded).map(({ key }) => key);
    const results = settleGaps(court, gaps, calendar, issue, unreadable);
    foldIncomplete(court, results);
    return { gaps, of, results };
  })
  .step("outcomes", "settles every outcome by what became of what it waits for", ({ court, of, results }) => {
    const settled = court.outcomes.map((outcome) => settleOutcome(outcome, of, results));
    return { settled, waiting: waitingByFinding(court, settled) };
  })
  .stage("verified bases", "where the book asks for it, says what rests on less than a verified basis", (state) => {
    checkBases(state.court, state.book, state.court.world.definitions, state.requirements, state.settled);
  })
  .stages("still waiting", "says once more what an answered finding leaves unjudged", ({ court, waiting, titles }) => {
    addStillWaiting(court, waiting, titles);
  })
  .stage("orphans and exceptions", "notes what nothing names; reviews exceptions that answer nothing", (state) => {
    const { court, gaps, results, comparisons, exceptions, settled } = state;
    noteOrphans(court, openKinds(court.world, gaps), readFromIn(comparisons));
    const quiet = gaps.filter((gap) => !("finding" in (results.get(gap) ?? {})));
    reviewExceptions(court, exceptions, settled, new Set(quiet.map((gap) => gapKey(court.world, gap))));
  })
  .step("answers", "gives each outcome the exceptions that answer all that stands against it", (state) => ({
    outcomes: withAnswers(state.court, state.settled, state.waiting),
  }));

/** What all steps have handed on. */
export type State = ReturnType<typeof judging.run>;

/** Faults found without asking what was accused before; of two about one place the earlier stands. */
function addUnlessDoubted(court: Court, findings: readonly Finding[]): void {
  for (const finding of findings) {
    const { subject, place } = finding;
    const record = subject === null ? undefined : court.world.graph.byKind.get(subject.kind)?.get(subject.id);
    const inside =
      record !== undefined && place.file === record.file && `${place.pointer}/`.startsWith(`${record.pointer}/`);
    const pointer = inside ? place.pointer.slice(record.pointer.length) : "";
    if (record === undefined || court.world.ledger.doubts(addressOf(record, pointer)).length === 0)
      addFinding(court, finding);
  }
}
