import type { Computed } from "../../model/book.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Text } from "../blocks.ts";
import { pageOfComputed, type Context } from "./context.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";

/** What was recomputed about a record: each acceptance with its figures, and a link to the calculation. */
export function computedBlocks(context: Context, record: BookRecord): Block[] {
  const about = (context.computed.get(record) ?? []).filter(({ accept }) => accept.length > 0);
  if (about.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Recomputed" },
    { type: "judged", items: about.flatMap((computed) => acceptanceItems(context, computed)) },
  ];
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
