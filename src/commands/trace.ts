import type { JudgedBook } from "../model/book.ts";
import type { BookRecord } from "../model/record.ts";
import { notReadWords } from "../model/not-read.ts";
import { plainText } from "../model/formula/plain-text.ts";
import type { Block, ChainLink, Mark, Text } from "../publish/blocks.ts";
import { jsonText, plain } from "../report/plain.ts";
import type { Ink } from "../report/text.ts";
import { bookFolder, judgeOrSay } from "./books.ts";
import { notReadLine } from "./not-read.ts";
import { recordMeant } from "./trace-name.ts";
import { usesJson, usesText } from "./trace-uses.ts";
import { bookArgument, formatOption, UsageError, type Command } from "./command.ts";

/** Marks of a link that leave the chain unproved. */
const stops: ReadonlySet<Mark> = new Set<Mark>(["failed", "rejected", "not judged"]);

type ChainBlock = Extract<Block, { type: "chain" }>;

export const trace: Command = {
  name: "trace",
  summary: "show the chain of evidence of one record, link by link, and where it was used",
  readsBook: true,
  arguments: [
    { name: "kind", required: true, means: "kind of the record, such as joint, or a word of it, such as batch" },
    { name: "id", required: true, means: "its id, such as L1, or what it alone states, such as a heat number" },
  ],
  options: {
    book: { value: "DIR", means: bookArgument.means },
    format: formatOption(["text", "json"]),
  },
  help: [
    "Prints the chain of a record, as the page of a part, a joint or a group of tube ends shows it: what must be proved, by which records it is, how it was judged and on which basis.",
    "The verdict of a link stands first. A link is passed only where its rules judged all that it reaches; what is there and judged by none of them is on record, and what a record itself rejects is rejected until that is put right.",
    "Behind the chain stands where the record was used: what names it, and what that is about (the joints a person welded, the " +
      "parts that have a heat). That is a list, and no verdict.",
    "Exit 0: every link is passed, on record, answered by an exception, not due or not applicable. Exit 1: a link is failed, rejected or not judged. Exit 2: no such record.",
  ],
  async run(given, effects) {
    const [kind = "", id = ""] = given.arguments;
    const dir = await bookFolder(given.options.get("book"), effects);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    const record = recordMeant(judged, kind, id);
    const chain = await effects.engine.traceRecord(judged, record.kind, record.id);
    if (chain === undefined) throw new UsageError(`there is no chain for ${record.kind} "${record.id}"`);
    effects.print(
      given.options.get("format") === "json"
        ? chainJson(chain, judged, record, effects.engine.tool)
        : `${chainText(chain, effects.ink)}\n${usesText(judged, record, effects.ink)}${notReadLine(judged.loaded)}`,
    );
    return chain.links.some(({ mark }) => stops.has(mark)) ? 1 : 0;
  },
};

/** The longest mark, and a space: what is said of a link stands behind it. */
const column = 16;

/** A chain as text: one line per link, the verdict first; below it, indented, what was found. */
export function chainText(chain: ChainBlock, ink: Ink): string {
  const links = chain.links.map((link) => linkText(link, ink));
  return `${[ink.bold(plain(chain.label)), ...links, plain(chain.count)].join("\n\n")}\n`;
}

function linkText({ what, mark, text, because, notes }: ChainLink, ink: Ink): string {
  const indent = " ".repeat(column);
  return [
    ink.bold(`${mark.padEnd(column)}${plain(what)}`),
    ...text.map((sentence) => `${indent}${plain(textOf(sentence))}`),
    ...(because === undefined ? [] : [`${indent}${plain(textOf(because))}`]),
    ...notes.map(({ lead, text: note }) =>
      ink.dim(`${indent}${lead === undefined ? "" : `${plain(lead)}: `}${plain(textOf(note))}`),
    ),
  ].join("\n");
}

function chainJson(chain: ChainBlock, judged: JudgedBook, record: BookRecord, tool: string): string {
  const { kind, id } = record;
  const links = chain.links.map(({ what, mark, text, because, notes }) => ({
    what,
    verdict: mark,
    text: text.map(textOf),
    because: because === undefined ? null : textOf(because),
    notes: notes.map(({ lead, text: note }) => ({ lead: lead ?? null, text: textOf(note) })),
  }));
  return jsonText({
    tool,
    format: 1,
    subject: { kind, id },
    notRead: notReadWords(judged.loaded),
    label: chain.label,
    links,
    count: chain.count,
    uses: usesJson(judged, record),
  });
}

/** Running text without its marks. */
function textOf(text: Text): string {
  return text
    .map((part) => (typeof part === "string" ? part : part.type === "symbol" ? plainText(part.display) : part.text))
    .join("");
}
