import type { Announced } from "../model/missing.ts";
import type { OwedItem } from "./items.ts";
import type { OwedList } from "./list.ts";
import { thingWords, titleOf, type Book } from "./things.ts";

/** What a measurement that is owed will be held against, with the one thing owed it belongs to. */
export interface ToHold {
  readonly announced: Announced;
  /** The first of the list that it awaits: who must act, and for which milestone. */
  readonly item: OwedItem;
  /** "equipment TQ423-01", and what it is called beside its id. */
  readonly thing: string;
  readonly title: string;
}

/** Limits of what a list holds and nobody has accepted as missing, in the order of the definitions. */
export function announcedOf(book: Book, { groups }: Pick<OwedList, "groups">): readonly ToHold[] {
  const open = new Map(groups.flatMap(({ items }) => items.map((item) => [item.key, item] as const)));
  return book.announced.flatMap((announced) => {
    const [item] = announced.awaits.flatMap((key) => open.get(key) ?? []);
    if (item === undefined) return [];
    const { subject, pointer } = announced;
    return [
      {
        announced,
        item,
        // Of a row of what is asked for the record is named: the measurement says the rest.
        thing: thingWords(book, { record: subject, pointer: subject === item.at?.record ? item.at.pointer : pointer }),
        title: titleOf(book, subject),
      },
    ];
  });
}

type Limit = Announced["limits"][number];

/** "length to be tested: at least 379.5 mm"; "quality level: C"; of what nobody can know yet that it is so. */
export function limitWords({ means, is, value }: Limit): string {
  if (value === null) return `${means}: ${notKnown}`;
  // A mail needs no blank of a fixed width, nor any between digits.
  const said = value.replaceAll(/(?<=\d)\u00a0(?=\d)/g, "").replaceAll(/\s/g, " ");
  return is === "is" ? `${means}: ${said}` : `${means}: ${is} ${said}`;
}

/** What stands where a limit would: something it rests on is missing or in doubt. */
export const notKnown = "not known yet";

/** Every limit of one announcement in a line, then what it is counted at, and why some are not computed yet. */
export function announcedWords({ limits, remark, because }: Announced): string {
  const more = [...(remark === undefined ? [] : [remark]), ...because];
  return `${limits.map(limitWords).join("; ")}${more.length === 0 ? "" : ` (${more.join("; ")})`}`;
}
