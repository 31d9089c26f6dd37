import type { ComparedValue, Computed } from "../../model/book.ts";
import { symbolDisplay } from "../../model/formula/typeset.ts";
import type { Block, Cell } from "../blocks.ts";
import { formsOf } from "./calculation-symbols.ts";
import { plain, targetOf, type Context } from "./context.ts";

/** The maker's sheets beside the recomputation, a table for each. */
export function sheets(context: Context, computed: Computed, next: () => string): Block[] {
  if (computed.sheets.length === 0)
    return [
      { type: "heading", level: 2, text: "Recorded against recomputed" },
      { type: "paragraph", text: ["The book holds no sheet of the maker for this calculation."] },
    ];
  return [
    { type: "heading", level: 2, text: "Recorded against recomputed" },
    {
      type: "paragraph",
      text: ["The recomputation takes no value from the maker’s sheet. Inputs and results are compared one by one."],
    },
    ...computed.sheets.map(({ record, values }): Block => {
      const group = (sort: string) => values.filter((one) => one.sort === sort);
      return {
        type: "table",
        number: next(),
        title: `Sheet ${record.id}, revision ${plain(record.value["revision"]) || "not stated"}`,
        columns: [
          { head: "Symbol", align: "left", width: 1 },
          { head: "Recorded", align: "left", width: 2 },
          { head: "Recomputed", align: "number", width: 2 },
          { head: "Unit", align: "left", width: 1 },
          { head: "Compared", align: "left", width: 2 },
        ],
        groups: [group("input"), group("result"), group("adopted")]
          .filter((rows) => rows.length > 0)
          .map((rows) =>
            rows.map((one) => ({
              cells: [
                {
                  type: "text",
                  text: [{ type: "symbol", display: symbolDisplay(one.symbol, formsOf(computed).get(one.symbol)) }],
                },
                { type: "text", text: [{ type: "whole", text: one.recorded }] },
                recomputedCell(one),
                { type: "text", text: [one.unit === "1" ? "" : one.unit] },
                { type: "mark", mark: one.verdict },
              ],
            })),
          ),
        notes: [
          {
            lead: "Source",
            text: [
              { type: "link", to: targetOf(context, record), text: record.id },
              " ",
              { type: "code", text: context.source(record) },
            ],
          },
          {
            text: [
              "A recorded result agrees within half a unit of its last digit on the unsafe side, one unit on the safe side.",
            ],
          },
        ],
      };
    }),
  ];
}

function recomputedCell({ recomputed, unit }: ComparedValue): Cell {
  const tail = ` ${unit}`;
  const text = recomputed.endsWith(tail) ? recomputed.slice(0, -tail.length) : recomputed;
  return /^[\d.−-]/.test(text) ? { type: "number", text } : { type: "text", text: [text] };
}
