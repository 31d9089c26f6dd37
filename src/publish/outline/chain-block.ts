import { describeBasis } from "../../model/basis.ts";
import type { ChainStep } from "../../model/chain.ts";
import type { Outcome } from "../../model/finding.ts";
import { chainLinks, type WalkedLink } from "../../judge/chain-links.ts";
import { walkPath } from "../../reading/walk-path.ts";
import { parsePath } from "../../model/path.ts";
import { addressOf, type BookRecord, placeAround } from "../../model/record.ts";
import { fieldAt } from "../../model/kind.ts";
import { atPointer, isList, isObject, type JsonObject } from "../../model/json.ts";
import { countSentence } from "../../model/mark.ts";
import type { Block, ChainLink, Mark, Note, Text } from "../blocks.ts";
import { kindOf, linkTo, markOf, titleOfOutcome, valueAt, type Context } from "./context.ts";
import { dueText, reasonsOf } from "./finding-blocks.ts";
import { atOpening } from "./opening.ts";
import { listed } from "./listed.ts";
import { lowerTitle, recordWords } from "../../model/titles.ts";
import { counted } from "./titles.ts";
import { labelOfField, textOf } from "./values.ts";
import { definitionOf } from "../../model/outcome-name.ts";

/**
 * The chain of evidence of a record: what proves it, link by link, each with its verdict. Kinds without a chain of their
 * own get one made of what they name and what the register owes them.
 */
export function chainBlock(context: Context, record: BookRecord): Extract<Block, { type: "chain" }> {
  const chain = context.chains.find(({ kind }) => kind === record.kind);
  const links = chainLinks(context.judged, context.chains, record).map((one) => chainLink(context, record, one));
  return {
    type: "chain",
    label: `Evidence for ${recordWords(context.judged.definitions.kinds, record)}`,
    links,
    count: countOf(links.map(({ mark }) => mark)),
    ...(chain !== undefined && { onPaper: atOpening(context, record.kind, "What is checked at each link") }),
  };
}

/** Outcomes of a record's chain, each list with what its link proves. */
export function linkOutcomes(
  { judged, chains }: Context,
  record: BookRecord,
): readonly (readonly [what: string, outcomes: readonly Outcome[]])[] {
  return chainLinks(judged, chains, record).map(({ step, outcomes }) => [step.what, outcomes]);
}

function chainLink(context: Context, record: BookRecord, link: WalkedLink): ChainLink {
  const { step, outcomes, mark } = link;
  const bad = ["passed", "computed", "on record", "not applicable"].includes(mark)
    ? []
    : outcomes.filter((outcome) => markOf(outcome) === mark);
  const because =
    mark === "not due" && bad.length === 0
      ? dueText(link.notDue)
      : reasonsOf(context, bad, mark === "not judged" ? link.open : []);
  return {
    what: step.what,
    mark,
    text: [...sentences(record, context, link), ...computedText(context, link), ...figuresText(context, record, step)],
    ...(because.length > 0 && { because }),
    notes: notesOf(context, outcomes, mark),
  };
}

const shownRecords = 5;

function sentences(subject: BookRecord, context: Context, { reached, step, mark, outcomes }: WalkedLink): Text[] {
  if (reached.length === 0) {
    if (mark === "not due") return [["No evidence yet; it is not due."]];
    if (mark === "not applicable")
      return [["Nothing of this is recorded, and the loaded rules ask for nothing of it here."]];
    return mark === "passed" && step.paths.length > 0
      ? [["Nothing more is recorded of this, and nothing more is asked for."]]
      : [];
  }
  // What the mark rests on is named first; of the rest it is said how many are left out.
  const first = mark === "on record" ? [...reached].sort((a, b) => Number(a.judged) - Number(b.judged)) : reached;
  const shown = first
    .slice(0, shownRecords)
    .map((hit): Text => [
      linkTo(context, hit.record, undefined, hit.pointer),
      ...says(context, hit.record, subject, step),
    ]);
  const joined = shown.flatMap((one, index): Text => (index === 0 ? one : ["; ", ...one]));
  const left = reached.length - shown.length;
  return [
    [...joined, left > 0 ? `; and ${left} more: the verdict rests on all ${reached.length}.` : "."],
    ...recordedText(reached, outcomes),
  ];
}

/** What is there and judged by none of the link's rules, in a sentence of its own. */
function recordedText(reached: WalkedLink["reached"], outcomes: readonly Outcome[]): Text[] {
  const open = reached.filter(({ judged }) => !judged);
  if (open.length === 0) return [];
  // What failed or waits says so itself: nothing passed there, but it was judged.
  const spoken = new Set(outcomes.filter(({ verdict }) => verdict !== "not applicable").flatMap(({ reads }) => reads));
  const silent = open.filter(({ record }) => !spoken.has(addressOf(record)));
  if (silent.length === 0) return [];
  const number = silent.length === 1 ? "one is" : `${silent.length} are`;
  const what = silent.length < reached.length ? `Of these ${number}` : silent.length === 1 ? "It is" : "All of it is";
  return [[{ type: "soft", text: `${what} on record only: no rule of this link judges what it says.` }]];
}

/** Where nothing was held against a limit, what passed is at most that the maker's figures are ours. */
function computedText(context: Context, { outcomes }: WalkedLink): Text[] {
  const done = outcomes.filter(
    ({ definition, verdict }) => verdict !== "not applicable" && context.calculations.has(definition),
  );
  if (done.length === 0 || done.some(({ verdict }) => verdict !== "computed")) return [];
  const titles = done.map((outcome) => titleOfOutcome(context, outcome));
  const compared = outcomes.some(({ definition, verdict }) => verdict === "passed" && definition.endsWith("/results"));
  const said = compared ? "the maker’s figures agree with it, and it is" : "it is";
  return [
    [{ type: "soft", text: `${[...new Set(titles)].join("; ")}: only computed; ${said} held against no limit here.` }],
  ];
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
  const places = new Map<JsonObject, string>();
  const found = (path: string) =>
    walkPath(judged, record, parsePath(path)).flatMap((hit) => {
      const value = hit.pointer === "" ? hit.record.value : atPointer(hit.record.value, hit.pointer);
      if (!isObject(value)) return [];
      places.set(value, addressOf(hit.record, hit.pointer));
      return [value];
    });
  const open = [...judged.refusals].filter(([, { state }]) => state === "open").map(([address]) => address);
  const isOpen = (value: JsonObject) => {
    const place = places.get(value);
    // The row's own result, as the extent was judged by: a rejected indication in an accepted row is a finding of its own.
    return place !== undefined && open.some((address) => placeAround(address) === place);
  };
  return (figures?.(record.value, found, isOpen) ?? []).map((text): Text => [{ type: "soft", text }]);
}

function notesOf(context: Context, outcomes: readonly Outcome[], mark: Mark): Note[] {
  const applying = outcomes.filter(({ verdict }) => verdict !== "not applicable");
  if (applying.length === 0 || mark === "not applicable") return [];
  const titles = [...new Set(applying.map((outcome) => titleOfOutcome(context, outcome)))];
  // Reasons of our own are printed with the rule; here stands what others wrote.
  const used = [
    ...new Set(
      applying.flatMap(({ definition }) => {
        const basis = context.bases.get(definitionOf(definition).id);
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
