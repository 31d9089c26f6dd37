import type { Computed, Done, Waiting } from "../../model/book.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Text } from "../blocks.ts";
import { countSentence } from "../../model/mark.ts";
import { markOf, markOfJudged, pageOfComputed, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { fewItems } from "./judged-block.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";
import { counted } from "./titles.ts";

/** What was recomputed about a record: each acceptance with its figures, and a link to the calculation. */
export function computedBlocks(context: Context, record: BookRecord): Block[] {
  const about = (context.computed.get(record) ?? []).filter((one) => one.state === "waiting" || one.accept.length > 0);
  if (about.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Recomputed" },
    ...[...grouped(about, ({ calculation }) => calculation.id).values()].map((all) => judgedOf(context, all)),
  ];
}

/** The acceptances of one calculation. On paper those of many rows are summed up: its own page has a row for each. */
function judgedOf(context: Context, all: readonly Computed[]): Block {
  const items = all.flatMap((computed) =>
    computed.state === "done" ? acceptanceItems(context, computed) : [waitingItem(context, computed)],
  );
  const [first] = all;
  const sound = items.length >= fewItems && items.every(({ mark }) => mark === "passed");
  if (first === undefined || !sound || !context.summedUp.has(first.calculation.id)) return { type: "judged", items };
  const { title, id } = first.calculation;
  const said = countSentence(
    items.map(({ mark }) => mark),
    (count) => counted(count, "acceptance"),
  );
  const onPaper: Text = [`${said}, by `, { type: "link", to: { page: `calculation/${id}.html` }, text: title }, "."];
  return { type: "judged", items, onPaper };
}

type Item = Extract<Block, { type: "judged" }>["items"][number];

/** A calculation without a result stands among those with one, with its reason. */
export function waitingItem(context: Context, computed: Waiting): Item {
  const because = reasonsOf(context, [computed.outcome]);
  return {
    text: [
      { type: "link", to: { page: pageOfComputed(context, computed) }, text: computed.calculation.title },
      ": what it says is not judged",
    ],
    mark: markOf(computed.outcome),
    ...(because.length > 0 && { because }),
  };
}

/** Acceptances as sentences: what must hold, the two figures, and where they come from. */
export function acceptanceItems(context: Context, computed: Done): readonly Item[] {
  return computed.accept.map(({ acceptance, left, right, ...judged }) => {
    const unit =
      unitOfSymbol(computed, acceptance.left) === "1"
        ? unitOfSymbol(computed, acceptance.right)
        : unitOfSymbol(computed, acceptance.left);
    const { inputs, steps } = computed.calculation;
    const options = (inputs[acceptance.left] ?? steps.find(({ symbol }) => symbol === acceptance.left))?.options;
    const text: Text = [
      `${acceptance.means.charAt(0).toUpperCase()}${acceptance.means.slice(1)}: `,
      { type: "whole", text: options?.[left] ?? withUnit(figure(left, 5), unit) },
      " against ",
      { type: "whole", text: options?.[right] ?? withUnit(figure(right, 5), unit) },
      ", ",
      { type: "link", to: { page: pageOfComputed(context, computed) }, text: computed.calculation.title },
    ];
    return { text, mark: markOfJudged(context, judged) };
  });
}
