import type { Severity } from "../model/finding.ts";
import type { Display } from "../model/formula/typeset.ts";
import type { Mark } from "../model/mark.ts";
import type { Figure } from "./figures/shapes.ts";

/**
 * What a page says, before it is HTML or PDF. `outline.ts` makes these values and decides everything; the two
 * publications print them and decide nothing.
 */

/** Running text with marks. A plain string is text; nothing in it is ever markup. */
export type Inline =
  | string
  /** A link to a page of this book (see `Target`). */
  | { readonly type: "link"; readonly to: Target; readonly text: string }
  /** A link to a file that lies beside the book (originals, evidence), path relative to the root of the issue. */
  | { readonly type: "file"; readonly path: string; readonly text: string }
  /** File and line, fingerprints, commands. */
  | { readonly type: "code"; readonly text: string }
  | { readonly type: "strong"; readonly text: string }
  | { readonly type: "em"; readonly text: string }
  /** Labels and remarks of less weight. */
  | { readonly type: "soft"; readonly text: string }
  /** A symbol of a formula, set as one. */
  | { readonly type: "symbol"; readonly display: Display }
  /** Id, date, number with unit: never broken across lines. */
  | { readonly type: "whole"; readonly text: string };

export type Text = readonly Inline[];

/** A place in the book: a page and, inside it, an anchor. The PDF uses `page#anchor` as named destination. */
export interface Target {
  readonly page: string;
  readonly anchor?: string;
}

export type { Mark };

/** A note in the margin: lead word and text; belongs to the block it stands on. */
export interface Note {
  readonly lead?: string;
  readonly text: Text;
}

interface Noted {
  readonly notes?: readonly Note[];
}

export interface Column {
  readonly head: string;
  /** The head as the symbol of a formula; `head` is then how it is read out. */
  readonly symbol?: Display;
  readonly unit?: string;
  readonly align: "left" | "number";
  /** Share of the width, relative to the other columns; a hint for the PDF. */
  readonly width?: number;
}

export type Cell =
  | { readonly type: "text"; readonly text: Text }
  /** A number as printed; aligned on the decimal point. `display` text exactly, digits never added. */
  | { readonly type: "number"; readonly text: string }
  | { readonly type: "mark"; readonly mark: Mark; readonly because?: Text }
  /** The same as the cell above: printed as a ditto, read out in full. */
  | { readonly type: "ditto"; readonly full: string }
  /** A value between its limits, drawn to the scale of this row; all in one unit. */
  | {
      readonly type: "range";
      readonly low?: number;
      readonly high?: number;
      readonly value: number;
      readonly below?: boolean;
      readonly spoken: string;
    }
  | { readonly type: "empty" };

export interface TableBlock extends Noted {
  readonly type: "table";
  /** "7.3": printed as *Table 7.3*. */
  readonly number: string;
  readonly title: string;
  readonly columns: readonly Column[];
  /** Groups of rows separated by hairlines; the first cell of each row is its header. */
  readonly groups: readonly (readonly Row[])[];
  readonly remark?: Text;
  /** Needs the full width of the page (text and notes). */
  readonly wide?: boolean;
}

export interface Row {
  /** Anchor other pages land on. */
  readonly anchor?: string;
  readonly cells: readonly Cell[];
}

export interface Fact {
  readonly label: string;
  readonly value: Text;
  /** Starts a new group of facts. */
  readonly gap?: boolean;
  readonly anchor?: string;
}

export interface ChainLink {
  readonly what: string;
  readonly mark: Mark;
  /** One or two sentences with links. */
  readonly text: readonly Text[];
  readonly because?: Text;
  readonly notes: readonly Note[];
  readonly anchor?: string;
}

export interface CalculationStep {
  /** What the step is, in words. */
  readonly means: string;
  /** `symbol = formula`, absent for a value that a named function found (then `lines` tell how). */
  readonly formula?: Display;
  /** The same with values. */
  readonly substituted?: Display;
  /** Unrounded, with unit: "168.666 667 N/mm²". */
  readonly result: string;
  /** Rounded, if printed rounded. */
  readonly rounded?: string;
  /** Which alternative governed, and the others' values. */
  readonly governs?: string;
  readonly lines: readonly string[];
  readonly notes: readonly Note[];
}

export interface CalculationBlock {
  readonly type: "calculation";
  readonly steps: readonly CalculationStep[];
}

/** Sentences, each with its mark at the end of a leader (limits of validity, acceptance, checks of a page). */
export interface JudgedBlock extends Noted {
  readonly type: "judged";
  /** On paper, where all items passed and the section lists them once for all records: said instead of them. */
  readonly onPaper?: Text;
  readonly items: readonly { readonly text: Text; readonly mark: Mark; readonly because?: Text }[];
}

export interface FindingItem {
  readonly anchor: string;
  readonly severity: Severity;
  readonly message: Text;
  readonly rows: readonly { readonly label: string; readonly value: Text }[];
  readonly notes: readonly Note[];
}

export type Block =
  | {
      readonly type: "heading";
      readonly level: 2 | 3;
      readonly number?: string;
      readonly text: string;
      readonly anchor?: string;
    }
  | ({ readonly type: "paragraph"; readonly text: Text } & Noted)
  /** Free text of a record: markdown with html off; record text is never trusted. */
  | ({ readonly type: "prose"; readonly markdown: string } & Noted)
  | ({ readonly type: "facts"; readonly facts: readonly Fact[] } & Noted)
  | ({ readonly type: "list"; readonly ordered: boolean; readonly items: readonly Text[] } & Noted)
  | TableBlock
  | CalculationBlock
  | JudgedBlock
  | {
      readonly type: "chain";
      readonly label: string;
      readonly links: readonly ChainLink[];
      readonly count: string;
      /** On paper, where the section says once what is checked at each link: follows the label, for the notes of sound links. */
      readonly onPaper?: Text;
    }
  | { readonly type: "findings"; readonly findings: readonly FindingItem[] }
  | ({ readonly type: "figure"; readonly number: string; readonly caption: Text; readonly figure: Figure } & Noted)
  /** An original: link to page and file, hash, who compared it; `absent` says why there is no file to link to. */
  | {
      readonly type: "scan";
      readonly title: string;
      readonly path: string;
      readonly sha256: string;
      readonly page?: number;
      readonly pages: number;
      readonly compared: string;
      readonly absent?: string;
      /** What is wrong with the file that lies there, and what its copy leaves out. */
      readonly remark?: string;
      /** Of a picture that cannot be shown. */
      readonly hidden?: boolean;
      readonly anchor?: string;
    }
  | {
      readonly type: "signatures";
      readonly rows: readonly {
        readonly for: string;
        readonly that: string;
        readonly date: string;
        readonly by: string;
      }[];
    }
  /** Contents with leaders; the PDF adds page numbers. */
  | { readonly type: "contents"; readonly entries: readonly ContentsEntry[] }
  /** The fingerprint in groups of four. */
  | { readonly type: "fingerprint"; readonly label: string; readonly groups: readonly string[] }
  /** What a reader must be warned of, behind a rule. */
  | { readonly type: "caution"; readonly text: readonly Text[] }
  /** A new place links can land on, without a heading (a record in a grouped page). */
  | { readonly type: "anchor"; readonly anchor: string };

export interface ContentsEntry {
  readonly number: string;
  readonly title: string;
  readonly to: Target;
  readonly level: 1 | 2;
  /** Only on paper, where no search and no section opening is a click away. */
  readonly paperOnly?: boolean;
}
