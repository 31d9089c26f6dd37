/** Hears what is being made, and how much of it is done: for whoever waits at a terminal. */
export type Progress = (stage: string) => void;

/** Steps between two words of progress. */
const often = 50;

/** Counts steps of a piece of work of so many and tells now and then; a short one is not counted out loud. */
export function stepsOf(what: string, many: number, progress: Progress | undefined): () => void {
  let done = 0;
  return () => {
    if (done++ % often === 0 && many > often) progress?.(`${what}, ${done} of ${many}`);
  };
}
