import { awaitedBy } from "../../judge/awaited.ts";
import type { Computed, JudgedBook } from "../../model/book.ts";
import type { Outcome } from "../../model/finding.ts";
import { addTo, grouped } from "../../model/grouped.ts";
import { countSentence } from "../../model/mark.ts";
import type { BookRecord } from "../../model/record.ts";
import { subjectWords } from "../../model/titles.ts";
import type { Block, Text } from "../blocks.ts";
import { linkTo, markOf, nameOf, pageOfComputed, recordOf, titleOfOutcome, worst, type Context } from "./context.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { listed } from "./listed.ts";
import { counted } from "./titles.ts";
import { calculationKey } from "../../model/calculation-key.ts";

const known = new WeakMap<JudgedBook, ReadonlyMap<string, readonly Outcome[]>>();

/** The checks that read each result, by its `calculationKey`. */
function readersOf(judged: JudgedBook): ReadonlyMap<string, readonly Outcome[]> {
  const before = known.get(judged);
  if (before !== undefined) return before;
  const found = new Map<string, Outcome[]>();
  for (const outcome of judged.outcomes)
    if (outcome.verdict !== "not applicable") for (const key of outcome.results ?? []) addTo(found, key, outcome);
  known.set(judged, found);
  return found;
}

const shownSubjects = 24;

/**
 * Where results of one calculation go: every check and every other calculation that reads it, with its verdict, and of limits the records
 * of what is measured. What nothing reads, and nothing
 * is asked of, is said to be for information.
 */
export function usesBlocks(context: Context, results: readonly Computed[]): Block[] {
  const byKey = readersOf(context.judged);
  const readers = new Set(
    results.flatMap((one) => byKey.get(calculationKey(one.calculation.id, one.subject, one.pointer)) ?? []),
  );
  const all = [...grouped(readers, ({ definition }) => definition).values()];
  const measured = [...new Set(results.flatMap((one) => awaitedBy(context.judged, one).map(({ record }) => record)))];
  const heading: Block = { type: "heading", level: 2, text: "Where it is used" };
  const places: Block[] = measured.length === 0 ? [] : [{ type: "paragraph", text: measuredText(context, measured) }];
  // What was held against something by itself is no mere information, though nothing else reads it.
  if (all.length === 0 && results.some(({ outcome }) => outcome.verdict !== "computed"))
    return places.length === 0 ? [] : [heading, ...places];
  if (all.length === 0)
    return [
      heading,
      ...places,
      {
        type: "paragraph",
        text: ["No check and no other calculation of this book reads it: it is given for information."],
      },
    ];
  return [heading, ...places, { type: "judged", items: all.map((outcomes) => readerItem(context, outcomes)) }];
}

const measuredText = (context: Context, measured: readonly BookRecord[]): Text => [
  "What is measured against it stands in ",
  ...listed(
    measured.map((record) => [nameOf(context, record)]),
    shownSubjects,
  ),
  ".",
];

/** One definition that reads the result, of all it is applied to. */
function readerItem(context: Context, outcomes: readonly Outcome[]) {
  const [first] = outcomes;
  const marks = outcomes.map(markOf);
  const because = reasonsOf(context, outcomes);
  return {
    text: [
      `${first === undefined ? "" : titleOfOutcome(context, first)}: `,
      ...listed(
        outcomes.map((outcome) => subjectText(context, outcome)),
        shownSubjects,
      ),
      outcomes.length < 2 ? "." : `. ${countSentence(marks, (count) => counted(count, "check"))}.`,
    ] as Text,
    mark: worst(marks),
    ...(because.length > 0 && { because }),
  };
}

/** What a check is about: of a calculation its page, else the record. */
function subjectText(context: Context, { definition, subject }: Outcome): Text {
  const record = subject === null ? undefined : recordOf(context, subject);
  if (subject === null || record === undefined) return ["the book"];
  const other = (context.computed.get(record) ?? []).find(
    ({ calculation, outcome }) => calculation.id === definition && outcome.subject?.id === subject.id,
  );
  const words = subjectWords(context.judged.definitions.kinds, subject);
  if (other !== undefined) return [{ type: "link", to: { page: pageOfComputed(context, other) }, text: words }];
  return [linkTo(context, record, words)];
}
