import { figuresOf } from "../../model/figures.ts";
import { adoptedIn, adoptedSentence, isAdoption } from "../../model/adopted.ts";
import type { Computed, JudgedBook } from "../../model/book.ts";
import { isList, isObject } from "../../model/json.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import type { Block, Mark, Text } from "../blocks.ts";
import { linkTo, markOf, pageOfComputed, plain, titleOfComputed, worst, type Context } from "./context.ts";
import { linkOf } from "./evidence-blocks.ts";
import { reasonsOf } from "./finding-blocks.ts";

/** Sheets that adopt the figures of a page: who signed for which, when, and whether they are those of the page. */
export function adoptionBlock(context: Context, computed: Computed): Block[] {
  const items = computed.sheets.flatMap(({ record, adopts }) => {
    if (adopts === undefined) return [];
    const because = reasonsOf(context, adoptionsOf(context, record));
    const text: Text = [
      "Sheet ",
      linkTo(context, record),
      ` adopts the figures of digest `,
      { type: "code", text: adopts },
      `, ${signersOf(context, record)}.${nowWords(context, computed, adopts)}`,
    ];
    return [{ text, mark: adoptionMark(context, record), ...(because.length > 0 && { because }) }];
  });
  return items.length === 0 ? [] : [{ type: "judged", items }];
}

/** On the page of such a sheet: why nothing of it is compared, and where the figures stand. */
export function adoptingBlocks(context: Context, sheet: BookRecord): Block[] {
  const computed = adoptedBy(context.judged).get(sheet);
  if (computed === undefined) return [];
  const to = { page: pageOfComputed(context, computed) };
  return [
    {
      type: "paragraph",
      text: [
        "This sheet states no figures of its own. It adopts those of ",
        { type: "link", to, text: titleOfComputed(context, computed) },
        ": there is nothing to compare, and nothing independent stands beside them.",
      ],
    },
  ];
}

const adopted = new WeakMap<JudgedBook, ReadonlyMap<BookRecord, Computed>>();

/** By sheet that adopts figures, the first calculation whose figures they are. */
function adoptedBy(judged: JudgedBook): ReadonlyMap<BookRecord, Computed> {
  const known = adopted.get(judged);
  if (known !== undefined) return known;
  const found = new Map<BookRecord, Computed>();
  for (const computed of judged.computed)
    for (const { record, adopts } of computed.sheets)
      if (adopts !== undefined && !found.has(record)) found.set(record, computed);
  adopted.set(judged, found);
  return found;
}

const nowWords = ({ judged }: Context, computed: Computed, adopts: string): string =>
  computed.state === "waiting"
    ? " There is no result to hold it against."
    : figuresOf(judged.definitions.kinds, computed) === adopts
      ? " They are the figures of this page."
      : ` The figures of this page have the digest ${figuresOf(judged.definitions.kinds, computed)}.`;

const adoptionsOf = (context: Context, sheet: BookRecord) =>
  (context.outcomes.get(addressOf(sheet)) ?? []).filter(isAdoption);

/** Whether a sheet is signed for the figures it adopts. */
export const adoptionMark = (context: Context, sheet: BookRecord): Mark =>
  worst(adoptionsOf(context, sheet).map(markOf));

/** Who signed for the figures, as the sheet has it. */
function signersOf(context: Context, sheet: BookRecord): string {
  const listed = sheet.value["signatures"];
  const signed = (isList(listed) ? listed : []).flatMap((one, index) => {
    if (!isObject(one)) return [];
    const person = linkOf(context, sheet, `/signatures/${index}/person`);
    const name = person === undefined ? plain(one["person"]) : `${plain(person.value["name"])} (${person.id})`;
    const day = plain(one["date"]);
    return [`signed by ${name} as ${plain(one["role"])}${day === "" ? ", no day stated" : ` on ${day}`}`];
  });
  return signed.length === 0 ? "signed by nobody" : signed.join(", ");
}

/** On the front page: how many calculations the maker adopts. Nothing where there are none. */
export function adoptedBlocks({ judged }: Context): Block[] {
  const adopted = adoptedIn(judged);
  if (adopted.calculations === 0) return [];
  return [
    { type: "heading", level: 2, text: "Calculations adopted" },
    {
      type: "paragraph",
      text: [
        `${adoptedSentence(adopted)}. The maker has no calculation of its own there: its designer signs for the figures that this book recomputes.`,
      ],
    },
  ];
}

/** How the figures of a page may be adopted, while a book is not final and no sheet of the maker stands beside them. */
export const toAdopt = ({ judged }: Context, computed: Computed): string =>
  judged.state === "final" || computed.state === "waiting"
    ? ""
    : ` A designer who adopts these figures signs for their digest, ${figuresOf(judged.definitions.kinds, computed)}; nothing independent then stands beside them.`;
