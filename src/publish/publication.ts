import { publishedPath, type BookFile } from "../model/record.ts";
import type { Block, Target, Text } from "./blocks.ts";

/** Where a file of the book lies in its issue: records below `evidence/`, originals as they lie in the book. */
export const issuePath = (file: Pick<BookFile, "path" | "publishedAs" | "role">): string =>
  file.role === "original" ? publishedPath(file) : `evidence/${publishedPath(file)}`;

/** Whether an original has a form that is not published: only its record and its hash are. */
export const isWithheld = (file: Pick<BookFile, "nature">): boolean => file.nature?.published === false;

/** What a place of a page is looked up by: "serial HV-55110". */
export interface Sought {
  readonly anchor?: string;
  readonly text: string;
}

/** One page of the site, and one run of pages of the PDF. */
export interface Page {
  /** Path in the issue, such as `joint/r-L1.html`. */
  readonly url: string;
  /** "7.3" */
  readonly number?: string;
  /** Small line over the title: "Joint". */
  readonly kindLine?: string;
  readonly title: string;
  /** Sentence under the title. */
  readonly under?: Text;
  /** What its records are looked up by, beside what stands at its anchors. */
  readonly sought?: readonly Sought[];
  /** Made anew each time they are read, so that a large book need not fit into memory at once: read them once. */
  readonly blocks: readonly Block[];
  /** Section of the book the page belongs to; index into `Publication.sections`, or null for front matter. */
  readonly section: number | null;
  /** Opening page of a section (large number). */
  readonly opening?: boolean;
  /** Left out of the PDF (pages that only serve navigation on screen). */
  readonly screenOnly?: boolean;
  /** Of such a page: where on paper what it says is summed up. Links to it lead there. */
  readonly printedAt?: Target;
}

export interface Section {
  readonly number: string;
  readonly title: string;
  readonly opening: string;
}

/** An original to append to the PDF, and to copy beside the site. */
export interface Appendix {
  readonly id: string;
  readonly title: string;
  /** Path in the issue. */
  readonly path: string;
  readonly sha256: string;
  readonly pages: number;
  readonly mediaType: string;
  /** Why its pages are not printed, and whether the file lies beside the book all the same. */
  readonly notShown?: { readonly why: string; readonly beside: boolean };
  /** Page of the site that describes it. */
  readonly page: Target;
}

/** The whole publication as a value. */
export interface Publication {
  /** "TQ423-01" */
  readonly number: string;
  readonly title: string;
  /** "revision 0, final" */
  readonly state: string;
  readonly interim: boolean;
  /** "Interim issue P3, not for acceptance. Evidence recorded up to 18 June 2026." */
  readonly interimLine?: string;
  readonly demonstration: boolean;
  /** Full SHA-256 of the evidence. */
  readonly fingerprint: string;
  readonly issueDate: string;
  readonly dataCutOff: string;
  readonly maker: string;
  readonly client: string;
  readonly language: string;
  readonly sections: readonly Section[];
  readonly pages: readonly Page[];
  readonly originals: readonly Appendix[];
  /** Tool name and version, for metadata. */
  readonly tool: string;
}
