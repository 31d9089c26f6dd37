import { describeBasis } from "../../model/basis.ts";
import type { Kind } from "../../model/kind.ts";
import type { Outcome } from "../../model/finding.ts";
import type { BookRecord } from "../../model/record.ts";
import { countWords, tally } from "../../model/mark.ts";
import type { Block, Row, Text } from "../blocks.ts";
import { linkOutcomes } from "./chain-block.ts";
import { markOf, titleOfOutcome, worst, type Context } from "./context.ts";
import { addTo, grouped } from "../../model/grouped.ts";
import { shownOutcomes } from "./judged-block.ts";
import { checksAnchor } from "./opening.ts";
import { plainTable, wordsCell, type Heads } from "./plain-table.ts";
import type { Numbering } from "./record-blocks.ts";
import { lowerTitle } from "../../model/titles.ts";
import { definitionOf } from "../../model/outcome-name.ts";

const heads: Heads = { Checked: 5, Basis: 3.6, "Checks#": 0.8, "Of these": 1.6, Verdict: 1.4 };

/**
 * What is checked of the records of a kind, once for all of them: rule by rule, or link by link where they have a chain.
 * On paper the records themselves then only say that all of it passed.
 */
export function checksTable(
  context: Context,
  kind: Kind,
  records: readonly BookRecord[],
  next: Numbering,
): readonly Block[] {
  const chain = context.chains.find((one) => one.kind === kind.name);
  const rows =
    chain === undefined
      ? rulesOf(context, records).map((outcomes) => rowOf(context, [], outcomes))
      : linksOf(context, records).map(([what, outcomes]) =>
          rowOf(context, [{ type: "strong", text: what }, ": "], outcomes),
        );
  if (rows.length === 0) return [];
  const title = `What is checked of each ${lowerTitle(kind.title)}${chain === undefined ? "" : ", link by link of its chain"}`;
  return [{ type: "anchor", anchor: checksAnchor(kind.name) }, plainTable(next(), title, heads, rows)];
}

const applying = (outcomes: readonly Outcome[]) => outcomes.filter(({ verdict }) => verdict !== "not applicable");

/** Outcomes of the records by the links of their chain, in its order; links of which nothing is judged are left out. */
function linksOf(context: Context, records: readonly BookRecord[]): readonly (readonly [string, readonly Outcome[]])[] {
  const by = new Map<string, Outcome[]>();
  for (const [what, outcomes] of records.flatMap((record) => linkOutcomes(context, record))) {
    // In the order of the chain, also where the first record has nothing under a link.
    if (!by.has(what)) by.set(what, []);
    for (const outcome of applying(outcomes)) addTo(by, what, outcome);
  }
  return [...by].filter(([, outcomes]) => outcomes.length > 0);
}

/** Outcomes of the records, one list for each sentence that is judged. */
function rulesOf(context: Context, records: readonly BookRecord[]): readonly (readonly Outcome[])[] {
  const outcomes = records.flatMap((record) => applying(shownOutcomes(context, record)));
  return [...grouped(outcomes, (outcome) => titleOfOutcome(context, outcome)).values()];
}

function rowOf(context: Context, lead: Text, outcomes: readonly Outcome[]): Row {
  const titles = [...new Set(outcomes.map((outcome) => titleOfOutcome(context, outcome)))];
  const bases = [
    ...new Set(
      outcomes.flatMap(({ definition }) => {
        const basis = context.bases.get(definitionOf(definition).id);
        return basis === undefined ? [] : [describeBasis(basis)];
      }),
    ),
  ];
  const marks = outcomes.map(markOf);
  return {
    cells: [
      { type: "text", text: [...lead, `${titles.join("; ")}.`] },
      wordsCell(bases.join("; ")),
      { type: "number", text: String(outcomes.length) },
      wordsCell(countWords(tally(marks))),
      { type: "mark", mark: worst(marks) },
    ],
  };
}
