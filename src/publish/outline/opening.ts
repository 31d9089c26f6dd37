import type { Text } from "../blocks.ts";
import type { Context } from "./context.ts";
import { kindOf } from "./context.ts";

export const openingUrl = (index: number) => `section-${String(index + 1).padStart(2, "0")}.html`;

/** Where the opening of a section says what is checked of every record of a kind. */
export const checksAnchor = (kind: string) => `checks-${kind}`;

/** "…, stands in section 7.", with the link. */
export function atOpening(context: Context, kind: string, what: string): Text {
  const id = kindOf(context, { kind }).section;
  const index = context.sections.findIndex((section) => section.id === id);
  const to = { page: openingUrl(index), anchor: checksAnchor(kind) };
  return [`${what} stands in `, { type: "link", to, text: `section ${index + 1}` }, "."];
}
