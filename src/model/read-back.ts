/** What became of reading the values of one record back from the original it cites. */
export interface ReadBack {
  /**
   * read: from text that the page shows · recognised: from text that a machine laid under or over a scan · no text: the cited
   * pages hold none · unread: the file's text was not read, `why` says so.
   */
  readonly state: "read" | "recognised" | "no text" | "unread";
  /** Values the record takes from it. */
  readonly values: number;
  /** Of them, those that are not there. */
  readonly absent: number;
  readonly why?: string;
  /** Ids of the originals of which every value that is looked for stands in the file's own text, on the page that is cited. */
  readonly whole: readonly string[];
}
