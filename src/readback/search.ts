import { placesOf, type Sheet } from "./sheet.ts";
import type { Part } from "./wanted.ts";
import { otherUnit } from "./units.ts";

/** Pages that a record cites, as they are searched; what was looked for once is remembered. */
export interface Pages {
  readonly sheets: readonly Sheet[];
  readonly known: Map<string, boolean>;
}

export const pagesOf = (sheets: readonly Sheet[]): Pages => ({ sheets, known: new Map() });

/** Whether something stands on the pages, in any of its forms, as whole words, and with no other unit behind it. */
export function stands(part: Part, pages: Pages): boolean {
  const key = `${part.first} ${part.unit ?? ""} ${part.within?.also ?? ""}`;
  const before = pages.known.get(key);
  if (before !== undefined) return before;
  const found = look(part, pages.sheets);
  // A link looks for names that its text does not tell.
  if (part.unit !== undefined || part.within !== undefined || found) pages.known.set(key, found);
  return found;
}

function look(part: Part, sheets: readonly Sheet[]): boolean {
  const at = (form: string) =>
    sheets.some((sheet) => placesOf(sheet, form).some((place) => !otherUnit(sheet, place + form.length, part.unit)));
  if (at(part.first) || part.others().some(at)) return true;
  const { within } = part;
  return within !== undefined && sheets.some(({ text }) => text.includes(within.also)) && within.forms().some(at);
}
