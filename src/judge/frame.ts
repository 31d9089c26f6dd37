import { newCourt, type Court } from "../court/court.ts";
import { linkRecords } from "../link/graph.ts";
import type { LoadedBook } from "../model/book.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { evidenceFingerprint } from "../model/fingerprint.ts";
import { ProgramError } from "../model/program-error.ts";
import { publishedPath, type BookRecord } from "../model/record.ts";
import { registerOf, type Requirement } from "../model/requirement.ts";
import { planOf, type Plan } from "../plan/plan.ts";
import { titlesOf } from "../plan/titles.ts";
import { newLedger } from "../reading/ledger.ts";
import { parametersOf } from "../reading/profile.ts";
import { tablesOf } from "../reading/tables.ts";
import type { Memory } from "../reading/visits.ts";
import { keeper, notesFor } from "./again.ts";
import { forceOf } from "./in-force.ts";
import { calendarOf, type Calendar } from "./milestones.ts";
import { registerInForce } from "./register.ts";

/** What stands before anything is said: the book linked, and what it is judged by. */
export interface Frame {
  readonly court: Court;
  readonly loaded: LoadedBook;
  readonly book: BookRecord;
  readonly issue: BookRecord;
  /** Day up to which evidence was recorded, as written. */
  readonly cutOff: string;
  readonly calendar: Calendar;
  readonly fingerprint: string;
  /** Every definition there is, and which of them are in force. */
  readonly all: Definitions;
  readonly force: ReturnType<typeof forceOf>;
  readonly named: ReturnType<typeof registerInForce>["named"];
  readonly requirements: readonly Requirement[];
  readonly plan: Plan;
  readonly titles: ReadonlyMap<string, string>;
  readonly profile: ReturnType<typeof parametersOf>;
  readonly memory: Memory;
  /** What linking, the profile, the tables and the register have to say; it is said in the stage it belongs to. */
  readonly found: {
    readonly links: readonly Finding[];
    readonly own: readonly Finding[];
    readonly register: readonly Finding[];
  };
}

/** Links a book and finds what it is judged by. Throws a `ProgramError` where it has no book or no issue record. */
export function frameOf(before: Memory | null, read: LoadedBook, given: Definitions, remember: boolean): Frame {
  // Those of another book are its own: this one's register may ask for others.
  const all = given.whole ?? given;
  const kept = before === null ? undefined : keeper(before.graph);
  const loaded = kept === undefined ? read : { ...read, records: read.records.map(kept) };
  const { graph, findings: links } = linkRecords(loaded.records, all.kinds, { kept, again: remember });
  const [book, issue] = [only(loaded, "book"), only(loaded, "issue")];
  const profile = parametersOf(book, all.profiles);
  const tables = tablesOf(graph, all.tables);
  const { named, findings: register } = registerInForce(book, all.registers);
  planOf(all);
  const force = forceOf(graph, book, all, named);
  const { definitions } = force.force;
  const memory: Memory = { all, definitions, graph, parameters: profile.parameters, tables };
  const notes = notesFor(before, memory, remember);
  return {
    court: newCourt({
      ...(notes !== undefined && { notes }),
      graph,
      definitions,
      kinds: definitions.kinds,
      parameters: profile.parameters,
      tables: tables.tables,
      ownTables: tables.own,
      ledger: newLedger(),
      computed: new Map(),
    }),
    loaded,
    book,
    issue,
    cutOff: textOf(issue, "dataCutOff"),
    calendar: calendarOf(issue),
    fingerprint: evidenceFingerprint(loaded.files.map((file) => ({ path: publishedPath(file), sha256: file.sha256 }))),
    all,
    force,
    named,
    requirements: registerOf(book.value["register"], definitions.registers)?.requirements ?? [],
    plan: planOf(definitions),
    titles: titlesOf(all),
    profile,
    memory,
    found: { links, own: [...profile.findings, ...tables.findings], register },
  };
}

function only(loaded: LoadedBook, kind: "book" | "issue"): BookRecord {
  const record = loaded.records.find((one) => one.kind === kind);
  if (record === undefined)
    throw new ProgramError(`judging needs the ${kind} record; "fatal" of the loaded book says why there is none`);
  return record;
}

/** A text of the record; empty where it states none. */
export const textOf = (record: BookRecord, field: string): string => {
  const value = record.value[field];
  return typeof value === "string" ? value : "";
};
