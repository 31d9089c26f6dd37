import type { Procedure } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { article, fields, heading } from "../paper/blocks.ts";
import { signatures, type Signed } from "../paper/marks.ts";
import { newSheet, note, withRoom, type Paper } from "../paper/paper.ts";
import { printed } from "./original.ts";

/** The paragraphs of a procedure's summary: a word in bold, and what it says. */
export type Paragraphs = readonly (readonly [string, string])[];

interface Approved {
  readonly date?: string;
  readonly preparedBy?: string;
  readonly checkedBy?: string;
  readonly approvedBy?: string;
  readonly approved?: string;
}

/** Who prepared, checked and approved a revision. */
export const approvals = (facts: Facts, last: Approved | undefined): readonly Signed[] => [
  { role: "prepared", name: facts.name(last?.preparedBy), date: printed(last?.date) },
  ...(last?.checkedBy === undefined
    ? []
    : [{ role: "checked", name: facts.name(last.checkedBy), date: printed(last.date) }]),
  { role: "approved", name: facts.name(last?.approvedBy), date: printed(last?.approved) },
];

/** The summary sheet of a procedure. */
export function drawProcedure(paper: Paper, facts: Facts, record: Procedure, paragraphs: Paragraphs): void {
  const last = record.revisions?.at(-1);
  const sheet = newSheet(paper, printed(record.title));
  note(paper, "procedure", record.id);
  fields(
    sheet,
    [
      ["Number", printed(record.number)],
      ["Revision", printed(last?.revision)],
      ["Date", printed(last?.date)],
    ],
    3,
  );
  heading(sheet, "Summary sheet");
  for (const [title, text] of paragraphs) article(sheet, title, text);
  const before = (record.revisions ?? []).slice(0, -1);
  if (before.length > 0) {
    const replaced = before.map(
      ({ revision, date, approved }) => `revision ${revision} of ${printed(date)}, approved ${printed(approved)}`,
    );
    article(sheet, "Replaces", `${replaced.join("; ")}.`);
  }
  sheet.y += 14;
  signatures(withRoom(sheet, 66), approvals(facts, last));
}
