import type { Computed } from "../../model/book.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Text } from "../blocks.ts";
import { grouped, pageOfComputed, type Context } from "./context.ts";
import { fewItems } from "./judged-block.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";

/** What was recomputed about a record: each acceptance with its figures, and a link to the calculation. */
export function computedBlocks(context: Context, record: BookRecord): Block[] {
  const about = (context.computed.get(record) ?? []).filter(({ accept }) => accept.length > 0);
  if (about.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Recomputed" },
    ...[...grouped(about, ({ calculation }) => calculation.id).values()].map((all) => judgedOf(context, all)),
  ];
}

/** The acceptances of one calculation. On paper those of many rows are summed up: its own page has a row for each. */
function judgedOf(context: Context, all: readonly Computed[]): Block {
  const items = all.flatMap((computed) => acceptanceItems(context, computed));
  const [first] = all;
  const sound = items.length >= fewItems && items.every(({ mark }) => mark === "passed");
  if (first === undefined || !sound || !context.summedUp.has(first.calculation.id)) return { type: "judged", items };
  const { title, id } = first.calculation;
  const onPaper: Text = [
    `${items.length} acceptances of `,
    { type: "link", to: { page: `calculation/${id}.html` }, text: title },
    ", all passed.",
  ];
  return { type: "judged", items, onPaper };
}

/** Acceptances as sentences: what must hold, the two figures, and where they come from. */
export function acceptanceItems(context: Context, computed: Computed): Extract<Block, { type: "judged" }>["items"] {
  return computed.accept.map(({ acceptance, left, right, holds }) => {
    const unit =
      unitOfSymbol(computed, acceptance.left) === "1"
        ? unitOfSymbol(computed, acceptance.right)
        : unitOfSymbol(computed, acceptance.left);
    const text: Text = [
      `${acceptance.means.charAt(0).toUpperCase()}${acceptance.means.slice(1)}: `,
      { type: "whole", text: withUnit(figure(left, 5), unit) },
      " against ",
      { type: "whole", text: withUnit(figure(right, 5), unit) },
      ", ",
      { type: "link", to: { page: pageOfComputed(context, computed) }, text: computed.calculation.title },
    ];
    return { text, mark: holds ? "passed" : "failed" };
  });
}
