import type { Kind } from "./kind.ts";

/** A title inside a sentence: small letters, but for words that are capitals throughout ("NDT report"). */
export function lowerTitle(title: string): string {
  return title
    .split(" ")
    .map((word) => (word.length > 1 && word === word.toUpperCase() ? word : word.toLowerCase()))
    .join(" ");
}

/** What a definition is called. `furnace/results` is what sheets of the maker say of it. */
export function titleOfDefinition(titles: ReadonlyMap<string, string>, definition: string): string {
  const [id = "", part] = definition.split("/");
  const title = titles.get(definition) ?? titles.get(id) ?? definition;
  return part === undefined ? title : `${title}: ${part} of the maker’s sheet`;
}

/** "A seam is radiographed over its length (joint C3)", of the outcome named `radiographic-extent|joint:C3`. */
export function spokenOutcome(
  { titles, kinds }: { readonly titles: ReadonlyMap<string, string>; readonly kinds: ReadonlyMap<string, Kind> },
  name: string,
): string {
  const [definition = "", subject] = name.split("|");
  const title = titleOfDefinition(titles, definition);
  if (subject === undefined) return title;
  const [kind = "", ...id] = subject.split(":");
  return `${title} (${lowerTitle(kinds.get(kind)?.title ?? kind)} ${id.join(":").replace("#", ", ")})`;
}
