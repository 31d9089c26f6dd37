/** One figure that somebody else printed, beside ours for the same question. */
export interface PrintedAnswer {
  /** What is asked, in a few words. */
  readonly what: string;
  /** What it is asked of, in the source's own units. */
  readonly given: string;
  /** The answer as printed. */
  readonly printed: number;
  /** Unit of both answers, as the source has it. */
  readonly unit: string;
  /** Our answer in that unit. */
  ours(): number;
  /** How far ours may lie from it, as a share of it: what the printed digits leave open, or a band that `because` explains. */
  readonly within: number;
  readonly because?: string;
  /** Ids of the calculations it reaches, or names of the functions they use. */
  readonly reaches: readonly string[];
}

/** A publication with the answers taken from it. */
export interface AnswerSource {
  /** Author, title, edition, place in it. */
  readonly source: string;
  /**
   * published: read in full, or a law · excerpt seen: the place was seen, the rest was not · from memory: the figure was
   * not seen again.
   */
  readonly class: "published" | "excerpt seen" | "from memory";
  readonly answers: readonly PrintedAnswer[];
}
