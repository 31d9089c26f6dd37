import { blocks as isOpen } from "../../model/finding.ts";
import { countSentence, tallyOf } from "../../model/mark.ts";
import type { Block } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { inWords } from "./chain-block.ts";
import type { Context } from "./context.ts";
import { findingGroups, findingsPage } from "./finding-blocks.ts";
import { changedGroups, type LastChange } from "./live.ts";
import { counted } from "./titles.ts";

/** All findings by who must act, those of the last change first in a live view; answered ones and notes at the end. */
export function findingsPageOf(context: Context, number: string, section: number, live?: LastChange): Page {
  const { findings, counts } = context.judged;
  const open = findings.filter(isOpen);
  // A live view lists them above.
  const isNew = (key: string) => live?.fresh.has(key) === true;
  const lifted = findings.filter(({ key, exception }) => exception !== null && !isNew(key));
  const notes = findings.filter(
    ({ key, severity, exception }) => severity === "note" && exception === null && !isNew(key),
  );
  return {
    url: findingsPage,
    number,
    title: "Findings, by who must act",
    under: [
      open.length === 0
        ? `Nothing is open. ${bookSentence(context)}`
        : `${inWords(open.length)} finding${open.length === 1 ? " is" : "s are"} open: ${counted(counts.nonconformity, "nonconformity", "nonconformities")}, ${counted(counts.gap, "gap")} and ${counted(counts.query, "query", "queries")}.`,
      ...(live?.sentence === undefined ? [] : [` With the last change: ${live.sentence}.`]),
    ],
    section,
    blocks: [
      ...(live === undefined ? findingGroups(context, open) : changedGroups(context, open, live)),
      ...(lifted.length === 0
        ? []
        : [
            { type: "heading", level: 2, text: "Answered by an exception" } satisfies Block,
            ...lowered(findingGroups(context, lifted)),
          ]),
      ...(notes.length === 0
        ? []
        : [
            { type: "heading", level: 2, text: "Notes, which never block" } satisfies Block,
            ...lowered(findingGroups(context, notes)),
          ]),
      { type: "heading", level: 2, text: "Checks in figures" },
      {
        type: "paragraph",
        text: [
          `${bookSentence(context)} ${counted(counts.lifted, "finding is", "findings are")} answered by an exception.`,
        ],
      },
    ],
  };
}

/** What became of every check of the book. */
export const bookSentence = ({ judged: { counts } }: Context): string =>
  `${countSentence(tallyOf(counts), (count) => counted(count, "check"))}.`;

/** Groups under a heading of their own stand one level lower. */
function lowered(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => (block.type === "heading" ? { ...block, level: 3 } : block));
}
