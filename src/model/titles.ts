import type { Kind } from "./kind.ts";
import type { BookRecord } from "./record.ts";
import { definitionOf, outcomeOf, type OutcomeName } from "./outcome-name.ts";
import type { Subject } from "./finding.ts";
import { spokenId } from "./subject.ts";

/** A title inside a sentence: small letters, but for words that are capitals throughout ("NDT report"). */
export function lowerTitle(title: string): string {
  return title
    .split(" ")
    .map((word) => (word.length > 1 && word === word.toUpperCase() ? word : word.toLowerCase()))
    .join(" ");
}

/** Title of a kind inside a sentence; its name where no schema is known. */
export const kindWords = (kinds: ReadonlyMap<string, Kind>, kind: string): string =>
  lowerTitle(kinds.get(kind)?.title ?? kind.replaceAll("-", " "));

/** "material certificate CRT-012". */
export const recordWords = (kinds: ReadonlyMap<string, Kind>, { kind, id }: Pick<BookRecord, "kind" | "id">): string =>
  `${kindWords(kinds, kind)} ${id}`;

/** "weld log WL-L1, cap" of the subject `weld-log WL-L1#cap`. */
export const subjectWords = (kinds: ReadonlyMap<string, Kind>, { kind, id }: Subject): string =>
  `${kindWords(kinds, kind)} ${spokenId(id)}`;

/** What a definition is called. `furnace/results` is what sheets of the maker say of it. */
export function titleOfDefinition(titles: ReadonlyMap<string, string>, definition: string): string {
  const { id, part } = definitionOf(definition);
  const title = titles.get(definition) ?? titles.get(id) ?? definition;
  return part === undefined ? title : `${title}: ${part} of the maker’s sheet`;
}

/** "A seam is radiographed over its length (joint C3)", of the outcome named `radiographic-extent|joint:C3`. */
export function spokenOutcome(
  { titles, kinds }: { readonly titles: ReadonlyMap<string, string>; readonly kinds: ReadonlyMap<string, Kind> },
  name: OutcomeName,
): string {
  const { definition, subject } = outcomeOf(name);
  const title = titleOfDefinition(titles, definition);
  return subject === null ? title : `${title} (${subjectWords(kinds, subject)})`;
}
