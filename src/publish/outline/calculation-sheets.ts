import { isAdopted } from "../../model/adopted.ts";
import type { ComparedValue, Computed } from "../../model/book.ts";
import { symbolDisplay } from "../../model/formula/typeset.ts";
import type { Block, Cell, Row } from "../blocks.ts";
import { formsOf } from "./calculation-symbols.ts";
import { linkTo, markOf, plain, subjectLink, targetOf, worst, type Context } from "./context.ts";
import { adoptionBlock, adoptionMark, toAdopt } from "./adoption.ts";
import { plainTable, wordsCell } from "./plain-table.ts";

const noSheet = "The book holds no sheet of the maker for this calculation.";
const figuresOnly = "These figures are ours. No sheet of the maker stands beside them, so nothing is compared here.";
const adoptedOnly =
  "The maker adopts this recomputation. Nothing independent stands beside it, so nothing is compared.";
const notCompared = "Nothing of the maker’s sheet is compared while there is no result to compare it with.";
const apart = "The recomputation takes no value from the maker’s sheet. Inputs and results are compared one by one.";

const sheetsHeading = (said: string): Block[] => [
  { type: "heading", level: 2, text: "Recorded against recomputed" },
  { type: "paragraph", text: [said] },
];

/** The maker's sheets beside the recomputation, a table for each that states figures of its own. */
export function sheets(context: Context, computed: Computed, next: () => string): Block[] {
  const own = computed.sheets.filter(({ adopts }) => adopts === undefined);
  const adopting = adoptionBlock(context, computed);
  const none = computed.outcome.verdict === "computed" ? figuresOnly : noSheet;
  if (computed.sheets.length === 0) return sheetsHeading(`${none}${toAdopt(context, computed)}`);
  if (own.length === 0) return [...sheetsHeading(adoptedOnly), ...adopting];
  if (computed.state === "waiting") return [...sheetsHeading(notCompared), ...adopting];
  return [
    ...sheetsHeading(apart),
    ...own.map(({ record, values }): Block => {
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
    ...adopting,
  ];
}

/** The maker's sheets of one calculation, a row for each: how much of them agrees. */
export function sheetsOfAll(context: Context, all: readonly Computed[], next: () => string): Block[] {
  const rows = all.flatMap((computed) =>
    computed.sheets.map(({ record, values, adopts }): Row => {
      const agree = (sort: ComparedValue["sort"]): Cell => {
        if (adopts !== undefined) return wordsCell("adopted");
        const group = values.filter((one) => one.sort === sort);
        const good = group.filter(({ verdict }) => verdict === "passed").length;
        if (computed.state === "waiting") return wordsCell("not compared");
        return group.length === 0 ? { type: "empty" } : wordsCell(`${good} of ${group.length}`);
      };
      return {
        cells: [
          { type: "text", text: [subjectLink(context, computed)] },
          { type: "text", text: [linkTo(context, record)] },
          wordsCell(plain(record.value["revision"])),
          agree("input"),
          agree("result"),
          wordsCell(values.find(({ sort }) => sort === "adopted")?.recorded ?? ""),
          {
            type: "mark",
            mark:
              adopts !== undefined
                ? adoptionMark(context, record)
                : computed.state === "waiting"
                  ? markOf(computed.outcome)
                  : worst(values.map(({ verdict }) => verdict)),
          },
        ],
      };
    }),
  );
  if (rows.length === 0)
    return sheetsHeading(all.every(({ outcome }) => outcome.verdict === "computed") ? figuresOnly : noSheet);
  const heads = {
    "Made for": 2,
    Sheet: 1.5,
    Revision: 1,
    "Inputs agree": 1.2,
    "Results agree": 1.2,
    Adopted: 1.5,
    Verdict: 1.5,
  };
  const adopted = all.filter(isAdopted).length;
  const beside =
    adopted === 0
      ? ""
      : ` Of ${adopted} ${adopted === 1 ? "subject" : "subjects"} the maker adopts the recomputation: nothing independent stands beside it, and the verdict says whether it is signed for these figures.`;
  return [
    ...sheetsHeading(`${apart}${beside}`),
    plainTable(next(), "The maker’s sheets against the recomputation", heads, rows),
  ];
}

function recomputedCell({ recomputed, unit }: ComparedValue): Cell {
  const tail = ` ${unit}`;
  const text = recomputed.endsWith(tail) ? recomputed.slice(0, -tail.length) : recomputed;
  return /^[\d.−-]/.test(text) ? { type: "number", text } : { type: "text", text: [text] };
}
