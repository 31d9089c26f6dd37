import { awaitedBy } from "../../judge/awaited.ts";
import type { Computed, ComputedStep, Done, JudgedBook } from "../../model/book.ts";
import { addTo } from "../../model/grouped.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Block, Row, Text } from "../blocks.ts";
import { resultOf } from "./calculation-steps.ts";
import { pageOfComputed, subjectLink, type Context } from "./context.ts";
import { plainTable } from "./plain-table.ts";
import type { Numbering } from "./record-blocks.ts";
import { upper } from "./titles.ts";

const known = new WeakMap<JudgedBook, ReadonlyMap<BookRecord, readonly Done[]>>();

/** Calculations that only give limits, by the record they are about and by the records of what is measured. */
function limitsOf(judged: JudgedBook): ReadonlyMap<BookRecord, readonly Done[]> {
  const before = known.get(judged);
  if (before !== undefined) return before;
  const found = new Map<BookRecord, Done[]>();
  for (const one of judged.computed) {
    if (one.state !== "done" || !givesLimits(one)) continue;
    for (const record of new Set([one.subject, ...awaitedBy(judged, one).map((at) => at.record)]))
      addTo(found, record, one);
  }
  known.set(judged, found);
  return found;
}

const givesLimits = ({ calculation }: Computed) =>
  calculation.announces !== undefined && calculation.accept.length === 0;

/**
 * The limits that are computed of a record, or that what is measured in it is held against, each with the page it is
 * computed on. Those that are still announced stand with who must measure.
 */
export function limitsTable(context: Context, record: BookRecord, next: Numbering): Block[] {
  const { judged } = context;
  const all = (limitsOf(judged).get(record) ?? []).filter(
    (one) =>
      judged.state === "final" ||
      !judged.announced.some(
        ({ definition, subject, pointer }) =>
          definition === one.calculation.id && subject === one.subject && pointer === one.pointer && subject === record,
      ),
  );
  if (all.length === 0) return [];
  const rows = all.map((one) => rowsOf(context, record, one)).filter((group) => group.length > 0);
  return [
    { type: "heading", level: 2, text: "Limits computed" },
    {
      ...plainTable(
        next(),
        all.some(({ subject }) => subject !== record)
          ? "What is measured here is held against these limits"
          : "Limits of measurements, each from its own calculation",
        { "What is limited": 4, Limit: 1.6, "Computed in": 2.6 },
        [],
      ),
      groups: rows,
    },
  ];
}

function rowsOf(context: Context, record: BookRecord, computed: Done): Row[] {
  const { calculation, subject } = computed;
  const { text: of } = subjectLink(context, computed);
  const title = subject === record && computed.pointer === "" ? calculation.title : `${calculation.title}, ${of}`;
  const from: Text = [{ type: "link", to: { page: pageOfComputed(context, computed) }, text: title }];
  return limitsIn(computed).map(({ done, sense }, index): Row => ({
    cells: [
      { type: "text", text: [upper(done.step.means)] },
      { type: "text", text: [sense, { type: "whole", text: resultOf(done) }] },
      index === 0 ? { type: "text", text: from } : { type: "ditto", full: title },
    ],
  }));
}

/** The results of a calculation that it announces as limits, each with "at least " or "at most " where it is one. */
export function limitsIn({
  calculation,
  steps,
}: Done): readonly { readonly done: ComputedStep; readonly sense: string }[] {
  const senses = new Map(
    (calculation.announces ?? []).flatMap(({ limits }) =>
      limits.flatMap((limit) => ("symbol" in limit ? [[limit.symbol, limit.is] as const] : [])),
    ),
  );
  return steps.flatMap((done) => {
    const sense = senses.get(done.step.symbol);
    return sense === undefined ? [] : [{ done, sense: sense === "is" ? "" : `${sense} ` }];
  });
}
