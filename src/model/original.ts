/** Why an original is not shown, or not published at all, in words for a reader. */
export interface OriginalFault {
  /**
   * form: no form that is published · damaged · empty · protected: encrypted · bound: larger or deeper than what is read.
   */
  readonly sort: "form" | "damaged" | "empty" | "protected" | "bound";
  /** Follows a colon: "the file is encrypted". */
  readonly found: string;
  /** What is accepted instead. */
  readonly accepted: string;
  readonly hint: string;
}

/** What an original is by its content, found before anything of it is published. The same bytes and name give the same. */
export interface OriginalNature {
  readonly mediaType: string;
  /** Pages counted; null where they cannot be. */
  readonly pages: number | null;
  /** Whether it bears a digital signature; null of what can bear none, or cannot be read. */
  readonly signed: boolean | null;
  /** Whether its pages are printed in the book; the others can be opened beside it. */
  readonly shown: boolean;
  /** Whether the file may lie beside the book. */
  readonly published: boolean;
  /** Sorts of things that its copy in the book leaves out. */
  readonly leftOut: readonly string[];
  readonly fault: OriginalFault | null;
}
