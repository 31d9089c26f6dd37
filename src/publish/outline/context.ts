import { fieldSteps, stepName } from "../../model/field-steps.ts";
import { resultChecks } from "../../plan/result-checks.ts";
import { builtInRules } from "../../judge/built-in.ts";
import type { Basis } from "../../model/basis.ts";
import type { Computed, Judged, JudgedBook } from "../../model/book.ts";
import type { Chain } from "../../model/chain.ts";
import type { Finding, Outcome, Subject } from "../../model/finding.ts";
import { sheetPlaces, type SheetAt } from "../../model/imported.ts";
import type { Kind } from "../../model/kind.ts";
import { type BookRecord, addressOf } from "../../model/record.ts";
import { atPointer, pointerStep, isList, type Json, stepsOf } from "../../model/json.ts";
import { gravity, markOf, worst } from "../../model/mark.ts";
import { rowName } from "../../model/stable.ts";
import type { Inline, Mark, Target } from "../blocks.ts";
import { addressOfRecord, calculationPage, frontKinds, rowSlugs } from "./address.ts";
import { sectionsOf, type BookSection } from "./sections.ts";
import { lowerTitle, titleOfDefinition } from "../../model/titles.ts";
import { addTo, grouped } from "../../model/grouped.ts";
import { recordId, recordOfSubject } from "../../model/subject.ts";

/** From so many subjects on, a calculation is printed once with a table; the page of each subject stays on screen. */
const manySubjects = 8;

export { gravity, markOf, worst };

/** The judged book with the indexes pages are made from. */
export interface Context {
  readonly judged: JudgedBook;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly chains: readonly Chain[];
  /** Kinds the book has records of, but for those the front page is made of. */
  readonly present: readonly Kind[];
  /** Sections of the book, in order. */
  readonly sections: readonly BookSection[];
  readonly findings: ReadonlyMap<string, Finding>;
  /** Outcomes by `kind:id` of their subject; rows (`kind:id#row`) under their record as well. */
  readonly outcomes: ReadonlyMap<string, readonly Outcome[]>;
  /** Recomputations by the record they are about. */
  readonly computed: ReadonlyMap<BookRecord, readonly Computed[]>;
  /** Bases of definitions, by id. */
  readonly bases: ReadonlyMap<string, Basis>;
  /** Ids of the rows of the register. */
  readonly requirements: ReadonlySet<string>;
  readonly calculations: ReadonlySet<string>;
  /** Calculations with so many subjects that they are printed once for all of them. */
  readonly summedUp: ReadonlySet<string>;
  /** File and line of a place, as people cite it. */
  source(record: BookRecord, pointer?: string): string;
  /** Row of the sheet that a place came from. */
  readonly sheetAt: SheetAt;
}

export function contextOf(judged: JudgedBook, chains: readonly Chain[]): Context {
  const outcomes = new Map<string, Outcome[]>();
  for (const outcome of judged.outcomes) {
    if (outcome.subject === null) continue;
    const [own, record] = [addressOf(outcome.subject), recordOfSubject(outcome.subject)];
    addTo(outcomes, own, outcome);
    if (record !== own) addTo(outcomes, record, outcome);
  }
  const { definitions, loaded } = judged;
  const present = [...definitions.kinds.values()].filter(
    ({ name }) => !frontKinds.has(name) && (judged.graph.byKind.get(name)?.size ?? 0) > 0,
  );
  return {
    judged,
    kinds: definitions.kinds,
    chains,
    present,
    sections: sectionsOf(judged.book, present),
    findings: new Map(judged.findings.map((finding) => [finding.key, finding])),
    outcomes,
    computed: grouped(judged.computed, ({ subject }) => subject),
    bases: new Map(
      [
        ...definitions.rules,
        ...definitions.calculations,
        ...definitions.facts,
        ...resultChecks(definitions.kinds),
        ...builtInRules,
        ...definitions.registers.flatMap((one) => one.requirements),
      ].map(({ id, basis }) => [id, basis]),
    ),
    requirements: new Set(definitions.registers.flatMap(({ requirements }) => requirements.map(({ id }) => id))),
    calculations: new Set(definitions.calculations.map(({ id }) => id)),
    summedUp: new Set(
      [...grouped(judged.computed, ({ calculation }) => calculation.id)].flatMap(([id, all]) =>
        all.length < manySubjects ? [] : [id],
      ),
    ),
    sheetAt: sheetPlaces(loaded.records),
    source: (record, pointer = "") => {
      const place = { file: record.file, pointer: record.pointer + pointer };
      return `${record.file}:${loaded.locator.position(place).line}`;
    },
  };
}

export function kindOf(context: Context, record: Pick<BookRecord, "kind">): Kind {
  const kind = context.kinds.get(record.kind);
  if (kind === undefined) throw new Error(`no kind "${record.kind}"`);
  return kind;
}

export function targetOf(context: Context, record: BookRecord, pointer = ""): Target {
  return addressOfRecord(kindOf(context, record), record, slugOf(context, record, pointer));
}

/** Page of a calculation about a record or one of its rows. */
export function pageOfComputed(context: Context, { calculation, subject, pointer }: Computed): string {
  return calculationPage(calculation.id, subject, slugOf(context, subject, pointer));
}

/** "P01, N6": what a calculation is about, as a link to its page. */
export function subjectLink(context: Context, computed: Computed): Extract<Inline, { type: "link" }> {
  const row = rowOf(context, computed.subject, computed.pointer);
  const text = `${computed.subject.id}${row === undefined ? "" : `, ${row}`}`;
  return { type: "link", to: { page: pageOfComputed(context, computed) }, text };
}

/** "Cylindrical shell: P01, shell course 1": a calculation with what it is about. */
export function titleOfComputed(context: Context, { calculation, subject, pointer }: Computed): string {
  const label = rowOf(context, subject, pointer) ?? labelOf(context, subject);
  // A label of words stands in the middle of a line here; an id or a short form keeps its capitals.
  const within = label.replace(/^\p{Lu}(?=\p{Ll})/u, (first) => first.toLowerCase());
  return `${calculation.title}: ${subject.id}${within === "" ? "" : `, ${within}`}`;
}

/** Name of the row a pointer leads into, or undefined. */
export function rowOf(context: Context, record: BookRecord, pointer: string): string | undefined {
  const [list = "", index] = stepsOf(pointer);
  const field = kindOf(context, record).fields.get(list);
  if (field?.type !== "list" || index === undefined) return undefined;
  return rowName(field, atPointer(record.value, `/${list}/${index}`));
}

const slugs = new WeakMap<BookRecord, Map<string, readonly string[]>>();

/** What a row of a record is called in addresses; undefined for a pointer that leads into no list of objects or texts. */
export function slugOf(context: Context, record: BookRecord, pointer: string): string | undefined {
  const [list = "", index] = stepsOf(pointer);
  const field = kindOf(context, record).fields.get(list);
  const rows = record.value[list];
  if (field?.type !== "list" || index === undefined || !isList(rows)) return undefined;
  const known = slugs.get(record) ?? new Map<string, readonly string[]>();
  slugs.set(record, known);
  let names = known.get(list);
  if (names === undefined) known.set(list, (names = rowSlugs(rows.map((row) => rowName(field, row)))));
  return names[Number(index)];
}

/** "Shell course 1": what a record is called beside its id; "" when its kind has no label or the record no such field. */
export function labelOf(context: Context, record: BookRecord): string {
  const kind = kindOf(context, record);
  const label = kind.label === undefined ? "" : plain(valueAt(record.value, kind.label));
  // A label that the id says already is not said twice.
  return record.id.includes(label) ? "" : label;
}

export function valueAt(value: Json, path: string): Json | undefined {
  return atPointer(
    value,
    fieldSteps(path)
      .map((step) => pointerStep(stepName(step)))
      .join(""),
  );
}

export const plain = (value: Json | undefined): string =>
  value === undefined || typeof value === "object" ? "" : String(value);

export function linkTo(context: Context, record: BookRecord, text?: string, pointer = ""): Inline {
  const row = rowOf(context, record, pointer);
  return {
    type: "link",
    to: targetOf(context, record, pointer),
    text: text ?? (row === undefined ? record.id : `${record.id}, ${row}`),
  };
}

/** "joint L1", as a link. */
export function nameOf(context: Context, record: BookRecord): Inline {
  return linkTo(context, record, `${lowerTitle(kindOf(context, record).title)} ${record.id}`);
}

/** The mark of one comparison of a calculation: its verdict, or *answered* where an exception answers what stands against it. */
export function markOfJudged(context: Context, { verdict, finding }: Judged): Mark {
  const answered = finding !== undefined && context.findings.get(finding)?.exception != null;
  return verdict === "failed" && answered ? "answered" : verdict;
}

export function titleOfOutcome(context: Context, outcome: Outcome): string {
  return titleOfDefinition(context.judged.titles, outcome.definition);
}

export function recordOf(context: Context, subject: Subject): BookRecord | undefined {
  return context.judged.graph.byKind.get(subject.kind)?.get(recordId(subject.id));
}
