import type { JsonObject } from "./json.ts";

/** The chain of evidence of one kind, as an inspector walks it: shown on the record's page and by `trace`. */
export interface Chain {
  readonly kind: string;
  readonly links: readonly ChainStep[];
}

export interface ChainStep {
  /** What the link proves, in the trade's words. */
  readonly what: string;
  /** Paths to the records that prove it. */
  readonly paths: readonly string[];
  /** What is said of a record of a kind, in the order of these paths; else the columns of its kind. */
  readonly says?: Readonly<Record<string, readonly string[]>>;
  /** Rules and requirements whose outcomes about the record, or about what the paths lead to, give the verdict. */
  readonly judgedBy: readonly string[];
  /** Sentences in figures that the evidence makes together, such as the length tested of the length that is owed. */
  readonly figures?: (
    subject: JsonObject,
    found: (path: string) => readonly JsonObject[],
    /** Whether something in what was found is rejected, and nothing has closed it. */
    isOpen: (found: JsonObject) => boolean,
  ) => readonly string[];
}
