import type { Finding, Severity } from "../../model/finding.ts";
import type { Block } from "../blocks.ts";
import type { Context } from "./context.ts";
import { findingGroups } from "./finding-blocks.ts";

/** What the last change of the records did to the list of findings; shown by a live view, never by an issue. */
export interface LastChange {
  /** "2 new, 5 still open, 1 gone"; undefined as long as nothing changed. */
  readonly sentence?: string;
  /** Keys of findings that were not open before it. */
  readonly fresh: ReadonlySet<string>;
  /** Findings that are open no more, and what became of them in words: "not found any more". */
  readonly gone: readonly { readonly severity: Severity; readonly message: string; readonly now: string }[];
}

/** What stands over every page of a live view. */
export const liveLine = (state: string, cutOff: string): string =>
  `Live view of the records as they were last saved, not an issue. ${state}, evidence recorded up to ${cutOff}.`;

/** Findings of a live view: what the last change brought first, whatever its weight, what it ended, and what stayed open. */
export function changedGroups(context: Context, open: readonly Finding[], { fresh, gone }: LastChange): Block[] {
  const brought = context.judged.findings.filter(({ key }) => fresh.has(key));
  const stayed = open.filter(({ key }) => !fresh.has(key));
  const under = (title: string, blocks: readonly Block[]): Block[] =>
    blocks.length === 0
      ? []
      : [
          { type: "heading", level: 2, text: title },
          ...blocks.map((block): Block => (block.type === "heading" ? { ...block, level: 3 } : block)),
        ];
  const ended: Block[] =
    gone.length === 0
      ? []
      : [
          {
            type: "list",
            ordered: false,
            items: gone.map(({ severity, message, now }) => [
              { type: "soft", text: `${severity}: ` },
              message,
              { type: "soft", text: ` · ${now}` },
            ]),
          },
        ];
  return [
    ...under(`New with the last change (${brought.length})`, findingGroups(context, brought)),
    ...under(`Gone with the last change (${gone.length})`, ended),
    ...(brought.length + gone.length === 0
      ? findingGroups(context, stayed)
      : under(`Still open (${stayed.length})`, findingGroups(context, stayed))),
  ];
}
