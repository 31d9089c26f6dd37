import type { AnswerSource } from "../../model/answer.ts";
import type { Block, Row } from "../blocks.ts";
import type { Context } from "./context.ts";
import { figure } from "./numbers.ts";
import type { Numbering } from "./record-blocks.ts";
import { plainTable, wordsCell, type Heads } from "./plain-table.ts";

const heads: Heads = { Asked: 3, Of: 4, "Printed#": 1, "Ours#": 1, Unit: 0.8, "Difference#": 1, "Why they differ": 3 };

/** What others printed beside what this tool gives, source by source. Nothing is decided here: a test holds the bands. */
export function answersBlocks(context: Context, next: Numbering, sources: readonly AnswerSource[]): readonly Block[] {
  if (sources.length === 0) return [];
  const reached = new Set(sources.flatMap(({ answers }) => answers.flatMap(({ reaches }) => reaches)));
  const { calculations } = context.judged.definitions;
  const held = calculations.filter(({ id }) => reached.has(id));
  return [
    { type: "heading", level: 2, text: "Answers that others printed" },
    {
      type: "paragraph",
      text: [
        `${held.length} of ${calculations.length} calculations are held against at least one answer of this table; the others against the worked examples above alone. A difference that the printed digits do not explain has its reason beside it.`,
      ],
    },
    ...sources.map(({ source, class: sort, answers }) =>
      plainTable(
        next(),
        `${source} (${sort})`,
        heads,
        answers.map((one): Row => {
          const ours = one.ours();
          const share = (ours / one.printed - 1) * 100;
          return {
            cells: [
              wordsCell(one.what),
              wordsCell(one.given),
              { type: "number", text: String(one.printed) },
              { type: "number", text: figure(ours, 5) },
              wordsCell(one.unit === "1" ? "" : one.unit),
              { type: "number", text: one.printed === 0 ? figure(ours, 2) : `${figure(share, 2)} %` },
              wordsCell(one.because ?? ""),
            ],
          };
        }),
      ),
    ),
  ];
}
