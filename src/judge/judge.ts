import { findingOf } from "../court/entries.ts";
import { countsOf, inOrder } from "../court/summary.ts";
import type { JudgedBook, LoadedBook } from "../model/book.ts";
import type { Definitions } from "../model/definitions.ts";
import { addressOf } from "../model/record.ts";
import type { Memory } from "../reading/visits.ts";
import type { Remembered } from "./again.ts";
import { announcedIn } from "./announced.ts";
import { frameOf } from "./frame.ts";
import { judging, type State } from "./judging.ts";
import { missingIn } from "./missing.ts";
import { settleRefusals } from "./refusals.ts";
import { answersByFinding, sayReopened } from "./review.ts";
import { settleOwing } from "./settle-owing.ts";
import { settleOwed, withWaiting } from "./settle.ts";

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

function judgeAfter(before: Memory | null, loaded: LoadedBook, given: Definitions, remember: boolean): Remembered {
  const frame = frameOf(before, loaded, given, remember);
  return { judged: judgedBook(judging.run(frame)), memory: frame.memory };
}

/** The book as it is handed on to reports and pages. */
function judgedBook(state: State): JudgedBook {
  const { court, loaded, book, issue, calendar, force, titles, profile, memory, fingerprint, exceptions } = state;
  const { outcomes, waiting, gaps, of, results, computed } = state;
  const { world } = court;
  const answers = answersByFinding(exceptions);
  const findings = inOrder(
    [...court.entries.values()].map((entry) =>
      sayReopened(world, answers, withWaiting(findingOf(world, entry), waiting)),
    ),
  );
  const missing = missingIn(world, gaps, of, results, calendar);
  return {
    loaded,
    definitions: world.definitions,
    inForce: force.force,
    titles,
    graph: world.graph,
    book,
    issue,
    state: calendar.final ? "final" : "interim",
    profile: profile.profile?.id ?? "",
    parameters: profile.parameters,
    tables: memory.tables.tables,
    findings,
    outcomes,
    computed: computed.map(({ computed: one, outcome }) => ({ ...one, outcome: outcomes[outcome] ?? one.outcome })),
    owed: state.owed.map((one) => settleOwed(court, one, outcomes)),
    owing: settleOwing(court, state.owing, of, results, calendar),
    absent: new Map([...of].flatMap(([key, gap]) => [[key, results.get(gap)] as const].flatMap(known))),
    missing,
    announced: announcedIn(world, world.definitions, missing, findings),
    refusals: settleRefusals(court, state.refusals),
    readBack: state.papers,
    comparisons: state.comparisons,
    counts: countsOf(findings, outcomes),
    fingerprint,
    exceptions: exceptions.map(({ record, answers: own }) => ({
      record,
      answers: own.map(({ finding }) => finding),
      lifts: own.some(({ finding }) => court.entries.get(finding)?.exception === addressOf(record)),
    })),
  };
}

const known = <T>([key, value]: readonly [string, T | undefined]): readonly (readonly [string, T])[] =>
  value === undefined ? [] : [[key, value]];
