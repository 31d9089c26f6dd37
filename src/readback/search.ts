import { placesOf, type Sheet } from "./sheet.ts";
import type { Spot } from "./spots.ts";
import type { Part } from "./wanted.ts";
import { otherUnit } from "./units.ts";

/** Pages that a record cites, as they are searched; what was looked for once is remembered. */
export interface Pages {
  readonly sheets: readonly Sheet[];
  readonly known: Map<string, boolean>;
  /** Places of what was sought once, by `partKey`. */
  readonly spots: Map<string, readonly Spot[]>;
}

export const pagesOf = (sheets: readonly Sheet[]): Pages => ({ sheets, known: new Map(), spots: new Map() });

/** What parts are looked for alike; of a link its text does not tell which names it has. */
export const partKey = ({ first, unit, within }: Part): string => `${first} ${unit ?? ""} ${within?.also ?? ""}`;

/** Whether something stands on the pages, in any of its forms, as whole words, and with no other unit behind it. */
export function stands(part: Part, pages: Pages): boolean {
  const key = partKey(part);
  const before = pages.known.get(key);
  if (before !== undefined) return before;
  const found = look(part, pages.sheets);
  if (part.linked !== true || found) pages.known.set(key, found);
  return found;
}

/** All forms of a part that count on these pages, the one most papers have first. */
export function formsOn({ first, others, within }: Part, sheets: readonly Sheet[]): readonly string[] {
  const dated = within !== undefined && sheets.some(({ text }) => text.includes(within.also));
  return [...new Set([first, ...others(), ...(dated ? within.forms() : [])])];
}

function look(part: Part, sheets: readonly Sheet[]): boolean {
  const at = (form: string) =>
    sheets.some((sheet) => placesOf(sheet, form).some((place) => !otherUnit(sheet, place + form.length, part.unit)));
  if (at(part.first) || part.others().some(at)) return true;
  const { within } = part;
  return within !== undefined && sheets.some(({ text }) => text.includes(within.also)) && within.forms().some(at);
}
