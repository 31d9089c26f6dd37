import type { Computed, JudgedBook } from "./book.ts";
import type { Outcome } from "./finding.ts";

/** How many calculations the maker adopts, so that nothing independent stands beside them. */
export interface Adopted {
  readonly calculations: number;
  /** Of which no sheet is signed for the figures as they are. */
  readonly unsigned: number;
}

/** Id of the check whether a sheet that adopts figures is signed for them. */
export const adoptionCheck = "figures-adopted";

/** What became of the signature of a sheet that adopts figures. */
export const isAdoption = ({ definition }: Outcome): boolean => definition === adoptionCheck;

/** Whether all there is of the maker about a calculation are sheets that adopt ours: nothing independent stands beside it. */
export const isAdopted = ({ sheets }: Pick<Computed, "sheets">): boolean =>
  sheets.length > 0 && sheets.every(({ adopts }) => adopts !== undefined);

export function adoptedIn({ computed, outcomes }: Pick<JudgedBook, "computed" | "outcomes">): Adopted {
  const all = computed.filter(isAdopted);
  const signed = new Set(
    outcomes.flatMap((one) => (isAdoption(one) && one.verdict === "passed" ? [one.subject?.id ?? ""] : [])),
  );
  const unsigned = all.filter(({ sheets }) => !sheets.some(({ record }) => signed.has(record.id)));
  return { calculations: all.length, unsigned: unsigned.length };
}

/** "4 calculations adopted: nothing independent stands beside them; nobody has signed for the figures of 1 as they are". */
export function adoptedSentence({ calculations, unsigned }: Adopted): string {
  const one = calculations === 1;
  return (
    `${calculations} calculation${one ? "" : "s"} adopted: nothing independent stands beside ${one ? "it" : "them"}` +
    (unsigned === 0 ? "" : `; nobody has signed for the figures of ${one ? "it" : unsigned} as they are`)
  );
}
