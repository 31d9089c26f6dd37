import type { Calculation } from "../model/calculation.ts";
import { applyTo } from "../compute/apply.ts";
import { newCourt, type Court } from "../court/court.ts";
import { findingOf } from "../court/entries.ts";
import type { Computed, Done, JudgedBook } from "../model/book.ts";
import { calculationKey, type CalculationKey } from "../model/calculation-key.ts";
import type { Fact } from "../model/fact.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { addTo } from "../model/grouped.ts";
import { atPointer, isList, isObject, pointerStep, stepsOf, type Json } from "../model/json.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import type { Rule } from "../model/rule.ts";
import { planOf } from "../plan/plan.ts";
import { newPage, type Page } from "../reading/notes.ts";
import { newLedger } from "../reading/ledger.ts";
import { tablesOf } from "../reading/tables.ts";
import { subjectsOf, type Applicant } from "../reading/subjects.ts";
import type { World } from "../reading/world.ts";
import { applyFact } from "./facts.ts";
import { applyRuleTo } from "./rules.ts";

/** What would be said if one value were another. */
export interface Supposed {
  /** What rules, facts and calculations would object to and do not now; sheets of the maker are not asked. */
  readonly findings: readonly Finding[];
  /** Calculations that came out otherwise, as they are and as they would be. */
  readonly changed: readonly { readonly was: Computed; readonly is: Done | null }[];
}

/**
 * Gives a function that answers, of a judged book: what would be objected to if one value of a record were another? Only what
 * read the value, or a result that follows from it, is asked again, so an answer takes a millisecond or two where judging the
 * book again takes a hundred. It is the same code that judges. What does not apply as the book stands is not asked; links are
 * followed as they lead now, so the value may be none, nor a name of a row.
 */
export function supposer(judged: JudgedBook): (record: BookRecord, pointer: string, value: Json) => Supposed {
  const asking = new Asking(judged);
  return (record, pointer, value) => asking.suppose(record, pointer, value);
}

/**
 * Gives a function that answers, of a judged book: which places each rule looked at that looked at this one, a rule and a
 * subject at a time. What a rule looks at together it may compare.
 */
export function lookedAtTogether(
  judged: JudgedBook,
): (record: BookRecord, pointer: string) => readonly Page["places"][] {
  const asking = new Asking(judged);
  return (record, pointer) => asking.beside(record, pointer);
}

/** What is asked again of a judged book, and what it rests on. */
class Asking {
  readonly #base: World;
  readonly #rules: ReadonlyMap<string, Rule>;
  readonly #facts: ReadonlyMap<string, Fact>;
  readonly #calculations: ReadonlyMap<string, Calculation>;
  readonly #order: ReadonlyMap<string, number>;
  readonly #single: ReadonlySet<string>;
  readonly #known = new Map<CalculationKey, Computed>();
  readonly #results = new Map<CalculationKey, Done>();
  /** Outcomes by the records and results they read. */
  readonly #readers = new Map<string, Outcome[]>();
  readonly #pages = new Map<Outcome, Page>();
  readonly #applicants = new Map<string, ReadonlyMap<string, Applicant>>();
  readonly #said: ReadonlySet<string>;

  constructor(judged: JudgedBook) {
    const { graph, definitions } = judged;
    const plan = planOf(definitions);
    this.#base = {
      graph,
      definitions,
      kinds: definitions.kinds,
      parameters: judged.parameters,
      tables: judged.tables,
      ownTables: tablesOf(graph, (definitions.whole ?? definitions).tables).own,
      ledger: newLedger(),
      computed: new Map(),
    };
    this.#single = plan.single;
    this.#rules = new Map(definitions.rules.map((rule) => [rule.id, rule]));
    this.#facts = new Map(definitions.facts.map((fact) => [fact.id, fact]));
    this.#calculations = new Map(plan.calculations.map((one) => [one.id, one]));
    this.#order = new Map(plan.calculations.map(({ id }, index) => [id, index]));
    for (const one of judged.computed) {
      const key = calculationKey(one.calculation.id, one.subject, one.pointer);
      this.#known.set(key, one);
      if (one.state === "done") this.#results.set(key, one);
    }
    for (const outcome of judged.outcomes)
      if (isVerdict(outcome))
        for (const name of [...outcome.reads, ...(outcome.results ?? [])]) addTo(this.#readers, name, outcome);
    this.#said = new Set(judged.findings.map(({ key }) => key));
  }

  beside(record: BookRecord, pointer: string): readonly Page["places"][] {
    return this.#readersOf(addressOf(record), pointer)
      .filter(({ definition }) => this.#rules.has(definition))
      .map((outcome) => this.#pageOf(outcome).places);
  }

  #readersOf(record: Address, pointer: string): Outcome[] {
    return (this.#readers.get(record) ?? []).filter((outcome) => meets(this.#pageOf(outcome), record, pointer));
  }

  suppose(record: BookRecord, pointer: string, value: Json): Supposed {
    // Found out before the value is another.
    const waiting = this.#readersOf(addressOf(record), pointer);
    const court = this.#newCourt();
    const changed: { readonly was: Computed; readonly is: Done | null }[] = [];
    const restore = put(record, pointer, value);
    try {
      const asked = new Set(waiting);
      const rest: Outcome[] = [];
      // Inputs before results: of what waits the calculation that comes first.
      for (let next = this.#first(waiting, rest); next !== undefined; next = this.#first(waiting, rest)) {
        const key = this.#ask(court, next);
        const [was, is] = [key && this.#known.get(key), key && court.world.computed.get(key)];
        if (key === undefined || was?.state !== "done" || is === undefined) continue;
        const now = "pending" in is ? null : is;
        if (now !== null && sameResults(was, now)) continue;
        changed.push({ was, is: now });
        for (const outcome of this.#readers.get(key) ?? []) {
          if (asked.has(outcome)) continue;
          asked.add(outcome);
          waiting.push(outcome);
        }
      }
      for (const outcome of rest) this.#ask(court, outcome);
    } finally {
      restore();
    }
    const findings = [...court.entries.values()].map((entry) => findingOf(court.world, entry));
    return { findings: findings.filter(({ key }) => !this.#said.has(key)), changed };
  }

  #newCourt(page: Page | null = null): Court {
    const notes = { page, before: null, now: null };
    return newCourt({ ...this.#base, notes, ledger: newLedger(), computed: new Map(this.#results) });
  }

  /** Applies the definition of an outcome to its subject again; of a calculation, gives the key of its result. */
  #ask(court: Court, { definition, subject }: Outcome): CalculationKey | undefined {
    const [rule, fact] = [this.#rules.get(definition), this.#facts.get(definition)];
    const calculation = this.#calculations.get(definition);
    if (fact !== undefined) applyFact(court, fact);
    const one = subject && this.#applicant(rule?.kind ?? calculation?.appliesTo.kind, subject.id);
    if (one == null) return undefined;
    if (rule !== undefined) applyRuleTo(court, rule, one, this.#single.has(rule.id));
    if (calculation === undefined) return undefined;
    applyTo(court, calculation, one);
    return calculationKey(calculation.id, one.record, one.pointer);
  }

  #applicant(kind: string | undefined, id: string): Applicant | undefined {
    if (kind === undefined) return undefined;
    let all = this.#applicants.get(kind);
    if (all === undefined)
      this.#applicants.set(kind, (all = new Map(subjectsOf(this.#base, kind).map((one) => [one.subject.id, one]))));
    return all.get(id);
  }

  /** All that an outcome rests on, as the book stands: it is asked once for that alone. */
  #pageOf(outcome: Outcome): Page {
    let page = this.#pages.get(outcome);
    if (page === undefined) {
      this.#pages.set(outcome, (page = newPage()));
      this.#ask(this.#newCourt(page), outcome);
    }
    return page;
  }

  /** Takes what waits: of calculations the first in their order; everything else goes to the rest. */
  #first(waiting: Outcome[], rest: Outcome[]): Outcome | undefined {
    let first: Outcome | undefined;
    for (const outcome of waiting) {
      const at = this.#order.get(outcome.definition);
      if (at === undefined) rest.push(outcome);
      else if (first === undefined || at < (this.#order.get(first.definition) ?? 0)) first = outcome;
    }
    const left = waiting.filter((outcome) => outcome !== first && this.#order.has(outcome.definition));
    waiting.splice(0, waiting.length, ...left);
    return first;
  }
}

const isVerdict = ({ verdict }: Outcome) => verdict === "passed" || verdict === "computed" || verdict === "failed";

/** Whether the value at a place, or something in it, was looked at. */
function meets({ places }: Page, record: Address, pointer: string): boolean {
  const pointers = places.get(record);
  return (
    pointers !== undefined && (pointers.has(pointer) || [...pointers].some((one) => one.startsWith(`${pointer}/`)))
  );
}

function sameResults(was: Done, is: Done): boolean {
  return (
    was.steps.length === is.steps.length &&
    was.accept.length === is.accept.length &&
    was.steps.every(({ step, value }, index) => is.steps[index]?.step === step && is.steps[index].value === value) &&
    was.accept.every(({ left, right }, index) => is.accept[index]?.left === left && is.accept[index].right === right)
  );
}

/**
 * Puts a value in the place of another, in the record itself, and gives what puts the old one back: all that holds the record
 * then finds the new value there, and nothing has to be linked again.
 */
function put(record: BookRecord, pointer: string, value: Json): () => void {
  const steps = stepsOf(pointer);
  const name = steps.at(-1) ?? "";
  const around = steps.slice(0, -1).map(pointerStep).join("");
  const holder = atPointer(record.value, around) as Json[] | Record<string, Json>;
  const old = isList(holder) ? holder[Number(name)] : isObject(holder) ? holder[name] : undefined;
  const set = (to: Json) => {
    if (Array.isArray(holder)) holder[Number(name)] = to;
    else holder[name] = to;
  };
  if (old === undefined) throw new RangeError(`${addressOf(record, pointer)} is not there`);
  set(value);
  return () => {
    set(old);
  };
}
