import { resultChecks } from "../../plan/result-checks.ts";
import type { Outcome } from "../../model/finding.ts";
import { countSentence, markOf } from "../../model/mark.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { statedBlocks } from "./proved-blocks.ts";
import { shelfOf } from "../../model/shelf.ts";
import { comparedCount } from "./comparison-words.ts";
import { linkTo, nameOf, plain, recordOf, titleOfOutcome, type Context } from "./context.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { listed } from "./listed.ts";
import { numbering } from "./record-blocks.ts";
import { readBackBlocks } from "./read-back-blocks.ts";
import { subjectWords } from "../../model/titles.ts";
import { counted } from "./titles.ts";
import { unreadBlocks } from "./unread-blocks.ts";
import { kindIn } from "../../model/kind-text.ts";
import { recordId, rowOfSubject } from "../../model/subject.ts";

/** What the checks leave out: said aloud, since silence is never a pass. */
export function notCheckedPage(context: Context, number: string, section: number): Page {
  const { outcomes, definitions, graph, loaded } = context.judged;
  const open = outcomes.filter((outcome) => outcome.verdict === "not judged" && markOf(outcome) !== "not due");
  const notDue = outcomes.filter((outcome) => markOf(outcome) === "not due").length;
  const judgedKinds = new Set([
    ...[...definitions.rules, ...resultChecks(definitions.kinds)].map(({ kind }) => kindIn(kind)),
    ...definitions.calculations.map(({ appliesTo }) => kindIn(appliesTo.kind)),
  ]);
  const unjudged = [...graph.byKind.keys()].filter((kind) => !judgedKinds.has(kind) && kind !== "heat");
  const { read, open: uncompared, byReading } = comparedCount(context);
  const applied = new Set(context.judged.computed.map(({ calculation }) => calculation.id));
  const idle = definitions.calculations.filter(({ id }) => !applied.has(id));
  // A part without an acceptance of its own was drawn, but its strength was not recomputed.
  const bearing = [...(graph.byKind.get("part")?.values() ?? [])].filter(
    (part) => part.value["pressureBearing"] === true,
  );
  const bare = bearing.filter(
    (part) => !context.computed.get(part)?.some((one) => one.state === "done" && one.accept.length > 0),
  );
  const waits = (part: BookRecord) => context.computed.get(part)?.some(({ state }) => state === "waiting") === true;
  const next = numbering(number);
  const names = (list: readonly string[]): Text => [list.length === 0 ? "None." : `${list.join(", ")}.`];
  return {
    url: "not-checked.html",
    number,
    title: "What was not checked",
    under: ["A check that was not made is not a check that passed."],
    section,
    blocks: [
      { type: "heading", level: 2, text: "Outside the loaded rules" },
      {
        type: "list",
        ordered: false,
        items: [
          [
            "Whether an original is genuine, and whether it describes this equipment: a person compares it with the thing.",
          ],
          [
            "Wind, earthquake, lifting, external piping loads and fatigue, unless a calculation of this book covers them by name.",
          ],
          [
            "Whether the code chosen is the right one for the place and use, and whether its edition is in force there.",
          ],
          ["Anything that is only on a scan and in no record."],
        ],
      },
      { type: "heading", level: 2, text: "Not judged in this book" },
      { type: "paragraph", text: [openSentence(open, notDue)] },
      ...(open.length === 0 ? [] : [openList(context, open)]),
      { type: "heading", level: 2, text: "Pressure parts whose thickness was not recomputed" },
      {
        type: "paragraph",
        text:
          bare.length === 0
            ? [bearing.length === 0 ? "The book has no record of a pressure part." : "None."]
            : [
                ...listed(
                  bare.map((part) => [
                    nameOf(context, part),
                    ` (${[plain(part.value["name"]), ...(waits(part) ? ["its calculations wait"] : [])].filter(Boolean).join("; ")})`,
                  ]),
                ),
                ". Openings and their reinforcement are recomputed only where the part lists them; where the maker calculated others, the document is among the records.",
              ],
      },
      { type: "heading", level: 2, text: "Kinds that are read, linked and checked for form only" },
      { type: "paragraph", text: names(unjudged.map((kind) => definitions.kinds.get(kind)?.title ?? kind)) },
      { type: "heading", level: 2, text: "Calculations that apply to nothing here" },
      { type: "paragraph", text: names(idle.map(({ title }) => title)) },
      ...statedBlocks(context, next),
      ...unreadBlocks(context, next),
      ...sharedBlocks(context),
      { type: "heading", level: 2, text: "Records not yet compared with their original by a person" },
      {
        type: "paragraph",
        text:
          read === 0
            ? ["No record names an original it was taken from."]
            : uncompared.length === 0
              ? [
                  byReading.length === 0
                    ? `None: a person is named for each of ${counted(read, "record")} taken from an original.`
                    : `A person is named for ${read - byReading.length} of ${counted(read, "record")} taken from an original; for the others the file's own text stands in place of that.`,
                ]
              : [
                  `${uncompared.length} of ${counted(read, "record")} taken from an original, or changed since they were compared: `,
                  ...listed(
                    uncompared.map((record) => [linkTo(context, record)]),
                    shownRecords,
                  ),
                  ".",
                ],
      },
      ...(byReading.length === 0
        ? []
        : [
            {
              type: "paragraph",
              text: [
                "Read back from the file's own text in place of that, as the profile allows; no program looked for choices and sentences in them: ",
                ...listed(
                  byReading.map((record) => [linkTo(context, record)]),
                  shownRecords,
                ),
                ".",
              ],
            } satisfies Block,
          ]),
      ...readBackBlocks(context),
      { type: "heading", level: 2, text: "Files" },
      {
        type: "paragraph",
        text: [
          loaded.unreadable.length === 0
            ? "Every file that is there could be read."
            : `Not read: ${loaded.unreadable.join(", ")}.`,
        ],
      },
    ],
  };
}

/** What rules that add up cannot see of what stands on a shelf, where other books may have taken from it. */
function sharedBlocks(context: Context): Block[] {
  const { definitions, outcomes, graph } = context.judged;
  const items = definitions.rules.flatMap(({ id, title, shared }): Text[] => {
    if (shared === undefined) return [];
    const subjects = outcomes.flatMap(({ definition, subject, verdict }) => {
      const record = subject === null ? undefined : graph.byKind.get(subject.kind)?.get(recordId(subject.id));
      const counts = definition === id && verdict !== "not applicable" && record !== undefined;
      return counts && shelfOf(record.file) !== undefined ? [record] : [];
    });
    const records = [...new Set(subjects)].map((record): Text => [linkTo(context, record)]);
    return records.length === 0
      ? []
      : [[`${title}: ${shared}, where they stand on a shelf: `, ...listed(records, shownRecords), "."]];
  });
  return items.length === 0
    ? []
    : [
        { type: "heading", level: 2, text: "Taken for other books" },
        { type: "list", ordered: false, items },
      ];
}

const shownRecords = 100;
const shownChecks = 200;

function openSentence(open: readonly Outcome[], notDue: number): string {
  const due = notDue === 0 ? "" : ` ${counted(notDue, "more check is", "more checks are")} not due.`;
  if (open.length === 0) return `No check that is due was left without a verdict.${due}`;
  return `${countSentence(open.map(markOf), (count) => counted(count, "check"))}.${due}`;
}

function openList(context: Context, open: readonly Outcome[]): Block {
  const items = open.slice(0, shownChecks).map((outcome): Text => {
    const because = reasonsOf(context, [outcome]);
    return [
      `${titleOfOutcome(context, outcome)}, `,
      ...(outcome.subject === null ? ["the book"] : subjectText(context, outcome.subject)),
      ...(because.length === 0 ? [] : [{ type: "soft", text: ": " } as const, ...because]),
    ];
  });
  const more = open.length - items.length;
  return {
    type: "list",
    ordered: false,
    items: more === 0 ? items : [...items, [`and ${counted(more, "more check")}, each on the page of its record`]],
  };
}

function subjectText(context: Context, subject: { readonly kind: string; readonly id: string }): Text {
  const record = recordOf(context, subject);
  const row = rowOfSubject(subject.id);
  return record === undefined
    ? [subjectWords(context.judged.definitions.kinds, subject)]
    : [nameOf(context, record), ...(row === undefined ? [] : [`, ${row}`])];
}
