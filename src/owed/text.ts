import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { limitWords, type ToHold } from "./announced.ts";
import { grouped } from "../model/grouped.ts";
import type { OwedItem } from "./items.ts";
import { whoOf, type OwedBy, type OwedList } from "./list.ts";
import { adoptWords, paperWords, thingInFull, whenWords } from "./words.ts";

/** The list as it is pasted into a mail: by who must act, then by day, one line for each thing. Nothing is cut off. */
export function owedText(list: OwedList, head: readonly string[], announced: readonly ToHold[] = []): string {
  const { groups, accepted } = list;
  return `${[
    head.join("\n"),
    ...groups.map(groupText),
    ...(accepted.length === 0
      ? []
      : [["missing and accepted: nobody owes it", ...accepted.map((item) => `  ${lineOf(item)}`)].join("\n")]),
    ...announcedTexts(announced),
    totalSentence(list),
  ].join("\n\n")}\n`;
}

/** What measurements will be held against, by who makes them: what holds for all of one sort stands once. */
function announcedTexts(all: readonly ToHold[]): readonly string[] {
  const sort = ({ announced: { definition, of, remark = "" }, item }: ToHold) =>
    JSON.stringify([whoOf(item), item.milestone?.name, item.named ? "" : of, definition, remark]);
  return [...grouped(all, sort).values()].map(announcedText);
}

function announcedText(same: readonly ToHold[]): string {
  const [first] = same;
  if (first === undefined) return "";
  const { announced, item } = first;
  const common = announced.limits.map(limitWords).filter((line) => same.every((one) => wordsIn(one).includes(line)));
  const remark = announced.remark === undefined ? [] : [announced.remark];
  const one = same.length === 1 ? ` of ${inFull(first)}` : "";
  return [
    `what the ${announced.of}${one} will be held against: ${[whoOf(item), whenWords(item), ...remark].join("; ")}`,
    ...common.map((line) => `  ${line}`),
    ...same.flatMap((hold) => {
      const own = [...wordsIn(hold).filter((line) => !common.includes(line)), ...hold.announced.because];
      return same.length === 1
        ? own.map((line) => `  ${line}`)
        : [`  ${inFull(hold)}: ${own.join("; ") || "the same"}`];
    }),
  ]
    .map(plain)
    .join("\n");
}

const wordsIn = ({ announced }: ToHold) => announced.limits.map(limitWords);

const inFull = ({ thing, title }: ToHold) => (title === "" ? thing : `${thing}, ${title}`);

function groupText({ who, items }: OwedBy): string {
  const whens = [...new Set(items.map(whenWords))];
  return [
    `${plain(who)}: ${items.length}`,
    ...whens.flatMap((when) => [
      `  ${plain(when)}`,
      ...items
        .filter((item) => whenWords(item) === when)
        .flatMap((item) => [`    ${lineOf(item)}`, ...adoptLines(item)]),
    ]),
  ].join("\n");
}

/** What a designer may sign for instead, a line for each. */
const adoptLines = ({ adoptable }: OwedItem): readonly string[] =>
  adoptable.map((one) => `      ${plain(adoptWords(one))}`);

/** What, for which thing; then the paper, and what stands in the way. */
function lineOf(item: OwedItem): string {
  const { what, says, because } = item;
  // A sentence names its thing itself, and a record that links name comes before who names it.
  const named = what === says ? what : item.named ? `${what}, ${item.thing}` : `${thingInFull(item)}: ${what}`;
  const planned = item.planned === null ? "" : `planned for ${item.planned}`;
  const more = [planned, paperWords(item), ...because].filter((part) => part !== "");
  return plain(more.length === 0 ? named : `${named} (${more.join("; ")})`);
}

/** How much is owed, and of how much that is a part. */
export function totalSentence({ groups, accepted, all, listed }: OwedList): string {
  const open = groups.flatMap(({ items }) => items);
  const of = (standing: OwedItem["standing"]) => open.filter((item) => item.standing === standing).length;
  const parts = [
    `${of("due")} due`,
    `${of("not due")} not due yet`,
    ...(of("open") === 0 ? [] : [`${of("open")} absent for a reason that a finding names`]),
    ...(accepted.length === 0 ? [] : [`${accepted.length} accepted by exceptions`]),
  ];
  const rest =
    all === listed ? "" : `; ${counted(all - listed, "more thing is", "more things are")} owed beside this list`;
  return `${counted(listed, "thing is", "things are")} missing: ${parts.join(", ")}${rest}`;
}
