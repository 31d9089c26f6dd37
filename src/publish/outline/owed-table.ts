import { describeBasis } from "../../model/basis.ts";
import type { Owing } from "../../model/owing.ts";
import { grouped } from "../../model/grouped.ts";
import { countWords, tally, worst, type Mark } from "../../model/mark.ts";
import { kindWords, titleOfDefinition } from "../../model/titles.ts";
import type { Cell, Row, TableBlock, Text } from "../blocks.ts";
import { nameOf, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { termOf } from "./values.ts";

const marks: Readonly<Record<Owing["state"], Mark>> = {
  met: "passed",
  "not due": "not due",
  waived: "answered",
  missing: "not judged",
  "not judged": "not judged",
};

/** What became of each thing that definitions are owed. */
export const owingMarks = (owing: readonly Owing[]): readonly Mark[] => owing.map(({ state }) => marks[state]);

/** What rules and calculations read and somebody owes them, by who reads it first: until when, by whom, on what basis. */
export function owedTable(context: Context, number: string, there: string, shownMissing: number): TableBlock {
  const { owing, titles } = context.judged;
  const groups = grouped(owing, ({ by: [first], subject }) =>
    JSON.stringify([first?.id, first?.due, first?.owner, subject.kind]),
  );
  const rows = [...groups.values()].flatMap((all): Resting[] => {
    const [one] = all;
    const [reader] = one?.by ?? [];
    if (one === undefined || reader === undefined) return [];
    const own = owingMarks(all);
    const missing = all.flatMap(({ state, subject }): Text[] => (state === "met" ? [] : [[nameOf(context, subject)]]));
    const whats = [...new Set(all.map(({ what }) => what))];
    return [
      {
        basis: describeBasis(reader.basis),
        reader: wordsCell(titleOfDefinition(titles, reader.id)),
        cells: [
          wordsCell(`of each ${kindWords(context.kinds, one.subject.kind)}: ${whats.join("; ")}`),
          wordsCell(termOf(reader.due)),
          wordsCell(reader.owner),
          { type: "number", text: String(all.length) },
          wordsCell(countWords(tally(own), there)),
          missing.length === 0 ? { type: "empty" } : { type: "text", text: listed(missing, shownMissing) },
          worst(own) === "passed" ? wordsCell(there) : { type: "mark", mark: worst(own) },
        ],
      },
    ];
  });
  const table = plainTable(
    number,
    "What rules and calculations are owed",
    {
      "Read by": 2.6,
      "On what basis": 2.2,
      "What is owed": 3.6,
      "Due at": 1.6,
      "Owed by": 1.6,
      "Asked of#": 0.9,
      "Of these": 1.8,
      "Not met by": 2,
      Verdict: 1.4,
    },
    [],
  );
  return { ...table, groups: byBasis(rows) };
}

interface Resting {
  readonly basis: string;
  readonly reader: Cell;
  readonly cells: readonly Cell[];
}

/** Rows in groups of one basis, in the order of the first of each: many readers rest on the same, and it is printed once. */
const byBasis = (rows: readonly Resting[]): readonly (readonly Row[])[] =>
  [...grouped(rows, ({ basis }) => basis)].map(([basis, same]) =>
    same.map(({ reader, cells }, index) => ({
      cells: [reader, index === 0 ? wordsCell(basis) : { type: "ditto", full: basis }, ...cells],
    })),
  );
