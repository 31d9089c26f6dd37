import type { Outcome } from "../../model/finding.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { countSentence } from "../../model/mark.ts";
import type { Block, Text } from "../blocks.ts";
import { gravity, markOf, titleOfOutcome, type Context } from "./context.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { atOpening } from "./opening.ts";
import { counted } from "./titles.ts";
import { rowOfSubject } from "../../model/subject.ts";

/**
 * The checks of a record that its page lists and counts. A requirement that is met is seen from the record itself, and
 * the register lists it; a calculation stands with its figures.
 */
export function shownOutcomes(context: Context, record: BookRecord): readonly Outcome[] {
  return (context.outcomes.get(addressOf(record)) ?? []).filter(
    ({ definition, verdict }) =>
      (verdict !== "passed" && verdict !== "computed") ||
      !(context.requirements.has(definition) || context.calculations.has(definition)),
  );
}

/** Fewer sentences take no more room than one that sums them up. */
export const fewItems = 3;

/** What was judged about this record, sentence by sentence, gravest first. */
export function judgedBlock(
  context: Context,
  record: BookRecord,
  heading = "What was judged",
  isListed: (outcome: Outcome) => boolean = () => true,
): Block[] {
  const shown = shownOutcomes(context, record).filter(
    (outcome) => outcome.verdict !== "not applicable" && isListed(outcome),
  );
  const listed = new Set(shown);
  const rest = (context.outcomes.get(addressOf(record)) ?? []).filter((outcome) => !listed.has(outcome));
  if (shown.length === 0) return [];
  const items = shown
    .map((outcome) => {
      const row = outcome.subject === null ? undefined : rowOfSubject(outcome.subject.id);
      const mark = markOf(outcome);
      const because = reasonsOf(context, [outcome]);
      return {
        text: [titleOfOutcome(context, outcome), ...(row === undefined ? [] : [` (${row})`])] as Text,
        mark,
        ...(because.length > 0 && { because }),
      };
    })
    .sort((a, b) => gravity(b.mark) - gravity(a.mark));
  return [
    { type: "heading", level: 2, text: heading },
    {
      type: "judged",
      items,
      ...(items.length >= fewItems &&
        items.every(({ mark }) => mark === "passed") && {
          onPaper: atOpening(
            context,
            record.kind,
            `${countSentence(
              items.map(({ mark }) => mark),
              (count) => counted(count, "check"),
            )}; what is checked`,
          ),
        }),
      ...(rest.length > 0 && {
        notes: [{ text: [`${countSentence(rest.map(markOf), (count) => counted(count, "more check"))}.`] }],
      }),
    },
  ];
}
