import { describeBasis } from "../../model/basis.ts";
import type { Chain, ChainStep } from "../../model/chain.ts";
import type { Outcome } from "../../model/finding.ts";
import { parsePath } from "../../model/path.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { fieldAt } from "../../model/kind.ts";
import { atPointer, isList, isObject } from "../../model/json.ts";
import { countSentence } from "../../model/mark.ts";
import type { Block, ChainLink, Mark, Note, Text } from "../blocks.ts";
import { kindOf, linkTo, markOf, titleOfOutcome, valueAt, worst, type Context } from "./context.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { atOpening } from "./opening.ts";
import { listed } from "./listed.ts";
import { counted, lowerTitle } from "./titles.ts";
import { walk } from "./walk.ts";
import { labelOfField, textOf } from "./values.ts";

/**
 * The chain of evidence of a record: what proves it, link by link, each with its verdict. Kinds without a chain of their
 * own get one made of what they name and what the register owes them.
 */
export function chainBlock(context: Context, record: BookRecord): Extract<Block, { type: "chain" }> {
  const chain = context.chains.find(({ kind }) => kind === record.kind);
  const links = walked(context, record).map((one) => chainLink(context, record, one));
  return {
    type: "chain",
    label: `Evidence for ${record.kind} ${record.id}`,
    links,
    count: countOf(links.map(({ mark }) => mark)),
    ...(chain !== undefined && { onPaper: atOpening(context, record.kind, "What is checked at each link") }),
  };
}

/** A chain for any kind: each field that links, and each row of the register about it. */
function ownChain(context: Context, record: BookRecord): Chain {
  const kind = kindOf(context, record);
  const links = [...kind.fields.values()].flatMap((field): ChainStep[] => {
    const isLink = field.type === "link" || field.item?.type === "link";
    if (!isLink || ["attachments"].includes(field.name)) return [];
    return [{ what: field.title, paths: [field.type === "list" ? `${field.name}[]` : field.name], judgedBy: [] }];
  });
  const owed = context.judged.owed
    .filter((one) => one.subject === record)
    .map((one): ChainStep => ({
      what: one.requirement.title,
      paths: [one.requirement.needs],
      judgedBy: [one.requirement.id],
    }));
  const rules = context.outcomes.get(addressOf(record)) ?? [];
  const own =
    rules.length > 0
      ? [
          {
            what: `Checks of this ${lowerTitle(kind.title)}`,
            paths: [],
            judgedBy: [...new Set(rules.map(({ definition }) => definition))],
          },
        ]
      : [];
  return { kind: record.kind, links: [...links, ...owed, ...own] };
}

/** A link of a record's chain as it was walked: what its paths lead to, and what was judged there. */
interface WalkedLink {
  readonly step: ChainStep;
  readonly reached: readonly { readonly record: BookRecord; readonly pointer: string }[];
  readonly outcomes: readonly Outcome[];
}

const known = new WeakMap<Context, Map<BookRecord, readonly WalkedLink[]>>();

/** The chain of a record, walked once: its own page shows it, and its section counts it. */
function walked(context: Context, record: BookRecord): readonly WalkedLink[] {
  const all = known.get(context) ?? new Map<BookRecord, readonly WalkedLink[]>();
  known.set(context, all);
  let links = all.get(record);
  if (links === undefined) {
    const chain = context.chains.find(({ kind }) => kind === record.kind) ?? ownChain(context, record);
    links = chain.links.map((step) => {
      const hits = step.paths.flatMap((path) => walk(context.judged, record, parsePath(path)));
      const reached = [...new Map(hits.map((hit) => [addressOf(hit.record, hit.pointer), hit])).values()];
      const records = reached.map((hit) => hit.record);
      return { step, reached, outcomes: outcomesFor(context, record, records, step) };
    });
    all.set(record, links);
  }
  return links;
}

/** Outcomes of each link of a record's chain. */
export function linkOutcomes(context: Context, record: BookRecord): readonly (readonly Outcome[])[] {
  return walked(context, record).map(({ outcomes }) => outcomes);
}

function chainLink(context: Context, record: BookRecord, { step, reached, outcomes }: WalkedLink): ChainLink {
  const marks = outcomes.map(markOf);
  const none = context.judged.state === "interim" ? "not due" : "not applicable";
  const mark =
    outcomes.length > 0 && (reached.length > 0 || worst(marks) !== "not applicable")
      ? worst(marks)
      : reached.length > 0
        ? "passed"
        : none;
  const bad = outcomes.filter(
    (outcome) => markOf(outcome) === mark && (mark === "failed" || mark === "not judged" || mark === "not due"),
  );
  const because = reasonsOf(context, bad);
  return {
    what: step.what,
    mark,
    text: [...sentences(record, context, reached, step, mark), ...figuresText(context, record, step)],
    ...(because.length > 0 && { because }),
    notes: notesOf(context, outcomes, mark),
  };
}

/** Outcomes of the step's definitions about the record itself, what its paths lead to, and rows of those. */
function outcomesFor(context: Context, record: BookRecord, reached: readonly BookRecord[], step: ChainStep): Outcome[] {
  const wanted = new Set(step.judgedBy);
  const about = [record, ...new Set(reached.filter((one) => one !== record))];
  const outcomes = about.flatMap((one) =>
    (context.outcomes.get(addressOf(one)) ?? []).filter(({ definition }) => wanted.has(definition)),
  );
  return [...new Set(outcomes)];
}

function sentences(
  subject: BookRecord,
  context: Context,
  reached: readonly { readonly record: BookRecord; readonly pointer: string }[],
  step: ChainStep,
  mark: Mark,
): Text[] {
  if (reached.length === 0) {
    if (mark === "not due") return [["No evidence yet; it is not due."]];
    if (mark === "not applicable")
      return [["Nothing of this is recorded, and the loaded rules ask for nothing of it here."]];
    return mark === "passed" ? [["None is recorded, and none is asked for."]] : [];
  }
  const shown = reached
    .slice(0, 8)
    .map((hit): Text => [
      linkTo(context, hit.record, undefined, hit.pointer),
      ...says(context, hit.record, subject, step),
    ]);
  const joined = shown.flatMap((one, index): Text => (index === 0 ? one : ["; ", ...one]));
  return [[...joined, reached.length > 8 ? `; and ${reached.length - 8} more.` : "."]];
}

/** A few words about a record: what the step asks to be said of its kind, else what its kind shows in tables. */
function says(context: Context, record: BookRecord, subject: BookRecord, step: ChainStep): Text {
  const kind = kindOf(context, record);
  const asked = step.says?.[record.kind];
  const parts = (asked ?? kind.columns.slice(0, 4)).flatMap((path): Text[] => {
    const field = fieldAt(kind, path);
    const value = valueAt(record.value, path);
    if (field === undefined || value === undefined || value === subject.id || value === record.id || path === "id")
      return [];
    if (isList(value) && (asked === undefined || value.some((one) => typeof one === "object"))) return [];
    if (typeof value === "object" && !isList(value)) return [];
    const text = textOf(context, record, field, value, `/${path.replaceAll(".", "/")}`);
    return [asked === undefined || path === kind.label ? text : [`${lowerTitle(labelOfField(field))} `, ...text]];
  });
  return parts.slice(0, asked === undefined ? 3 : asked.length).flatMap((part): Text => [", ", ...part]);
}

/** What the step says in figures, from the subject and what its own paths find. */
function figuresText({ judged }: Context, record: BookRecord, { figures }: ChainStep): Text[] {
  const found = (path: string) =>
    walk(judged, record, parsePath(path)).flatMap((hit) => {
      const value = hit.pointer === "" ? hit.record.value : atPointer(hit.record.value, hit.pointer);
      return isObject(value) ? [value] : [];
    });
  return (figures?.(record.value, found) ?? []).map((text): Text => [{ type: "soft", text }]);
}

function notesOf(context: Context, outcomes: readonly Outcome[], mark: Mark): Note[] {
  const applying = outcomes.filter(({ verdict }) => verdict !== "not applicable");
  if (applying.length === 0 || mark === "not applicable") return [];
  const titles = [...new Set(applying.map((outcome) => titleOfOutcome(context, outcome)))];
  // Reasons of our own are printed with the rule; here stands what others wrote.
  const used = [
    ...new Set(
      applying.flatMap(({ definition }) => {
        const basis = context.bases.get(definition.split("/")[0] ?? definition);
        return basis === undefined || basis.class === "own choice" ? [] : [describeBasis(basis)];
      }),
    ),
  ];
  return [
    {
      lead: "Checked",
      text: [
        ...listed(
          titles.map((title) => [title]),
          3,
          "; ",
        ),
        `. ${countSentence(applying.map(markOf), (count) => counted(count, "check"))}.`,
      ],
    },
    ...(used.length === 0
      ? []
      : [
          {
            lead: "Basis",
            text: [
              ...listed(
                used.map((basis) => [basis]),
                2,
                "; ",
              ),
            ],
          } satisfies Note,
        ]),
  ];
}

const numbers = [
  "No",
  "One",
  "Two",
  "Three",
  "Four",
  "Five",
  "Six",
  "Seven",
  "Eight",
  "Nine",
  "Ten",
  "Eleven",
  "Twelve",
  "Thirteen",
  "Fourteen",
  "Fifteen",
  "Sixteen",
];

export const inWords = (count: number) => numbers[count] ?? String(count);

const countOf = (marks: readonly Mark[]): string =>
  `${countSentence(marks, (count) => `${inWords(count)} ${count === 1 ? "link" : "links"}`)}.`;
