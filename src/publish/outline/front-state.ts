import { isList, isObject } from "../../model/json.ts";
import { isVerified } from "../../model/basis.ts";
import type { Kind } from "../../model/kind.ts";
import { bookState, type BookState, type MilestoneState } from "../../owed/state.ts";
import { milestoneSentence } from "../../owed/words.ts";
import type { Block, Cell, Column, Fact, Row, Text } from "../blocks.ts";
import { inWords } from "./chain-block.ts";
import { nameOf, plain, type Context } from "./context.ts";
import { inFives } from "./row-tables.ts";
import { counted, countedTitle } from "./titles.ts";
import { termOf } from "./values.ts";

/** Where an interim issue stands: one sentence for who asks how far it is, and what is there and missing by milestone. */
export function awaitedBlocks(context: Context): Block[] {
  const { counts, outcomes, state } = context.judged;
  if (state !== "interim") return [];
  const where = bookState(context.judged);
  const notDue = new Map<string, number>();
  for (const { because } of outcomes)
    if (because?.type === "not due") notDue.set(because.milestone, (notDue.get(because.milestone) ?? 0) + 1);
  return [
    { type: "heading", level: 2, text: "How far it is" },
    { type: "paragraph", text: [stateSentence(where, counts.nonconformity + counts.query)] },
    {
      type: "table",
      number: "1",
      title: "What is there and what is missing, by the milestone that makes it due",
      columns: [
        { head: "Milestone", align: "left", width: 2 },
        { head: "Evidence there", align: "number", width: 1.4 },
        { head: "Missing", align: "number", width: 1 },
        { head: "Checks not due", align: "number", width: 1.4 },
        { head: "Day", align: "left", width: 2 },
      ],
      groups: inFives(where.milestones.map((one) => milestoneRow(one, notDue))),
    },
  ];
}

function milestoneRow({ milestone, asked, there, missing }: MilestoneState, notDue: ReadonlyMap<string, number>): Row {
  const day =
    milestone === null
      ? ""
      : milestone.day === undefined
        ? "no day planned"
        : milestone.reached
          ? milestone.day
          : `planned ${milestone.day}`;
  return {
    cells: [
      { type: "text", text: [milestone === null ? "at once" : termOf(milestone.name)] },
      { type: "number", text: asked === 0 ? "none asked" : `${there} of ${asked}` },
      { type: "number", text: String(missing) },
      { type: "number", text: String(milestone === null ? 0 : (notDue.get(milestone.name) ?? 0)) },
      {
        type: "text",
        text: [milestone?.reached === true ? { type: "whole", text: day } : { type: "soft", text: day }],
      },
    ],
  };
}

/** "62 of 85 … are there. The next milestone is welding, planned for 2026-06-19; eight things are missing for it: …" */
function stateSentence({ asked, there, next, heldUp }: BookState, wrong: number): string {
  const sum = heldUp.reduce((all, { count }) => all + count, 0);
  const who = heldUp.map(({ who: name, count }) => `${name} (${count})`).join("; ");
  const missing = sum === 0 ? "nothing is missing" : `${counted(sum, "thing is", "things are")} missing`;
  const held =
    next === undefined
      ? `Every milestone is reached; ${missing}`
      : `The next milestone is ${milestoneSentence(next)}; ${missing} for it`;
  const answers = wrong === 0 ? "" : `; ${counted(wrong, "finding needs", "findings need")} an answer`;
  return `${there} of ${asked} pieces of evidence and values that are asked for are there. ${held}${sum === 0 ? "" : `, from ${who}`}${answers}.`;
}

/** Nonconformity reports and repairs: what a reviewer looks for first. */
export function reportBlocks(context: Context): Block[] {
  const of = (kind: string) => [...(context.judged.graph.byKind.get(kind)?.values() ?? [])];
  const reports = of("nonconformity-report");
  const repairs = of("repair");
  const heading: Block = { type: "heading", level: 2, text: "Nonconformity reports and repairs" };
  if (reports.length + repairs.length === 0) return [heading, { type: "paragraph", text: ["None is recorded."] }];
  return [
    heading,
    {
      type: "list",
      ordered: false,
      items: [
        ...reports.map((report): Text => [
          nameOf(context, report),
          `: ${plain(report.value["title"])}, ${plain(report.value["state"])}${report.value["closed"] === undefined ? "" : ` ${plain(report.value["closed"])}`}.`,
        ]),
        ...repairs.map((repair): Text => [
          nameOf(context, repair),
          ` of joint ${plain(repair.value["joint"])}: ${plain(repair.value["cause"])}`,
        ]),
      ],
    },
  ];
}

/** The issues of this book so far, as its own record lists them. */
export function historyBlocks(context: Context): Block[] {
  const listed = context.judged.issue.value["history"];
  if (!isList(listed) || listed.length === 0) return [];
  const stated = listed.some((one) => isObject(one) && plain(one["fingerprint"]) !== "");
  return [
    { type: "heading", level: 2, text: "Issues of this book" },
    {
      type: "table",
      number: "2",
      title: "Revision history",
      columns: [
        { head: "Revision", align: "left", width: 1 },
        { head: "State", align: "left", width: 1 },
        { head: "Date", align: "left", width: 1.4 },
        { head: "Reason", align: "left", width: 4 },
        ...(stated ? [{ head: "Evidence fingerprint", align: "left", width: 2.4 } satisfies Column] : []),
      ],
      groups: inFives(
        listed.filter(isObject).map((one): Row => ({
          cells: [
            ...["revision", "state", "date", "reason"].map((name): Cell => ({
              type: "text",
              text: [name === "reason" ? plain(one[name]) : { type: "whole", text: plain(one[name]) }],
            })),
            ...(stated ? [fingerprintCell(plain(one["fingerprint"]))] : []),
          ],
        })),
      ),
    },
  ];
}

const fingerprintCell = (hash: string): Cell =>
  hash === ""
    ? { type: "empty" }
    : { type: "text", text: [{ type: "code", text: `${(hash.slice(0, 16).match(/.{4}/g) ?? []).join(" ")} …` }] };

/** What the book holds, section by section. */
export function holdingFacts(
  context: Context,
  sections: readonly { readonly title: string; readonly kinds: readonly Kind[] }[],
): Block[] {
  const facts = sections.flatMap(({ title, kinds }): Fact[] => {
    const counts = kinds.map((kind) => countedTitle(context.judged.graph.byKind.get(kind.name)?.size ?? 0, kind.title));
    return counts.length === 0 ? [] : [{ label: title, value: [counts.join(", ")] }];
  });
  return facts.length === 0 ? [] : [{ type: "facts", facts }];
}

/** On how much of what judged the book a reader may lean. */
export function basisSentence(context: Context): Text {
  const { rules, facts, calculations } = context.judged.definitions;
  const all = [...rules, ...facts, ...calculations];
  const weak = all.filter(({ basis }) => !isVerified(basis)).length;
  return [
    `${inWords(weak)} of ${all.length} definitions rest on memory, common practice, an excerpt or a choice of our own, and say so where they are printed: `,
    { type: "link", to: { page: "judged-with.html" }, text: "what judged this book" },
    ".",
  ];
}
