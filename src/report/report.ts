import type { OutcomeName } from "../model/outcome-name.ts";
import { adoptedIn, type Adopted } from "../model/adopted.ts";
import type { Counts, JudgedBook } from "../model/book.ts";
import type { Finding, Related } from "../model/finding.ts";
import { sheetPlaces, type SheetAt } from "../model/imported.ts";
import type { JsonObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { spokenOutcome } from "../model/titles.ts";
import type { Locator, Place, Position } from "../model/place.ts";

/** A finding with the line and column people look it up by. */
export interface Placed {
  readonly finding: Finding;
  readonly position: Position;
  /** The line it stands on, if the file can be shown as text. */
  readonly line: string | undefined;
  /** Row of the sheet its record was imported from, in words. */
  readonly sheet: string | undefined;
  readonly related: readonly {
    readonly related: Related;
    readonly position: Position;
    readonly sheet: string | undefined;
  }[];
  /** What waits for it, in words. */
  readonly waits: readonly string[];
}

/** What every form of report says: which book, how many of what, and each finding at its place. */
export interface Report {
  /** Name and version of the tool. */
  readonly tool: string;
  readonly book: ReportedBook;
  readonly counts: Counts;
  /** Calculations of which the maker adopts our figures. */
  readonly adopted: Adopted;
  /** By file, line, rule and key, in code-point order. */
  readonly findings: readonly Placed[];
}

export interface ReportedBook {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly revision: string;
  readonly state: "interim" | "final";
  readonly issueDate: string;
  readonly dataCutOff: string;
  readonly profile: string;
  readonly language: string;
  readonly demonstration: boolean;
  readonly fingerprint: string;
}

/** The report of a judged book as an issue keeps it: places are those in the issue. */
export function reportOf(judged: JudgedBook, tool: string): Report {
  return reportWith(judged, tool, judged.findings, (place) => place);
}

/**
 * The report for whoever mends the records: places as they are written, those of shelves in the shelves' own files, and what
 * is to be noted there beside the book.
 */
export function reportHere(judged: JudgedBook, tool: string): Report {
  const { locator, aside = [] } = judged.loaded;
  const known = new Set(judged.findings.map(({ key }) => key));
  const beside = aside.filter(({ key }) => !known.has(key));
  const written = (place: Place) => locator.written?.(place) ?? place;
  const report = reportWith(judged, tool, [...judged.findings, ...beside], written);
  return { ...report, counts: { ...report.counts, note: report.counts.note + beside.length } };
}

function reportWith(judged: JudgedBook, tool: string, findings: readonly Finding[], written: (place: Place) => Place) {
  const { titles, definitions, counts, loaded } = judged;
  return {
    tool,
    book: reportedBook(judged),
    counts,
    adopted: adoptedIn(judged),
    findings: placeFindings(findings, loaded.locator, {
      spoken: (name) => spokenOutcome({ titles, kinds: definitions.kinds }, name),
      sheetAt: sheetPlaces(loaded.records),
      written,
    }),
  };
}

/** Name, issue and evidence of a judged book, as reports and issue folders state them. */
export function reportedBook(
  judged: Pick<JudgedBook, "book" | "issue" | "state" | "profile" | "fingerprint">,
): ReportedBook {
  const { book, issue } = judged;
  return {
    id: book.id,
    number: written(book.value, "number") || book.id,
    title: written(book.value, "title"),
    revision: written(issue.value, "revision"),
    state: judged.state,
    issueDate: written(issue.value, "issueDate"),
    dataCutOff: written(issue.value, "dataCutOff"),
    profile: judged.profile,
    language: written(book.value, "language") || "en",
    demonstration: book.value["demonstration"] === true,
    fingerprint: judged.fingerprint,
  };
}

interface Placing {
  /** An outcome's name in words. */
  readonly spoken?: (outcome: OutcomeName) => string;
  readonly sheetAt?: SheetAt;
  /** Where a place is to be looked up, if not there. */
  readonly written?: (place: Place) => Place;
}

/** Findings with their lines and columns, by file, line, rule and key. */
export function placeFindings(
  findings: readonly Finding[],
  locator: Locator,
  { spoken = (name) => name, sheetAt = () => undefined, written = (place) => place }: Placing = {},
): readonly Placed[] {
  const placed = (related: Related) => {
    const place = written(related.place);
    return { related: { ...related, place }, position: locator.position(place), sheet: sheetAt(related.place) };
  };
  return findings
    .map((finding) => {
      const place = written(finding.place);
      const position = locator.position(place);
      return {
        finding: { ...finding, place },
        position,
        line: locator.line(place.file, position.line),
        sheet: sheetAt(finding.place),
        related: finding.related.map(placed),
        waits: finding.waiting.map(spoken),
      };
    })
    .sort(byPlace);
}

function byPlace(a: Placed, b: Placed): number {
  return (
    byCodePoint(a.finding.place.file, b.finding.place.file) ||
    a.position.line - b.position.line ||
    byCodePoint(a.finding.rule, b.finding.rule) ||
    byCodePoint(a.finding.key, b.finding.key)
  );
}

function written(value: JsonObject, field: string): string {
  const found = value[field];
  return typeof found === "string" || typeof found === "number" ? String(found) : "";
}
