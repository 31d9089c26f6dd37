import { orderOf, type Facts } from "../../book/facts.ts";
import { consumables, millApprovals, procedures } from "../../sheets/binders.ts";
import { drawMarks } from "../../sheets/materials.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { materialCertificate } from "../../sheets/papers.ts";
import type { Paragraphs } from "../../sheets/procedure.ts";
import { procedureWords } from "../texts/procedures.ts";
import { lastOf } from "./working-days.ts";

/** What a procedure says; undefined where its author has left that to the words kept here. */
export type ParagraphsOf = (procedure: string) => Paragraphs | undefined;

const short = (organisation: string) => organisation.slice(0, 12);

/** The procedures of each firm in one binder. */
export function procedureOriginals(facts: Facts, paragraphsOf: ParagraphsOf): readonly OriginalSheet[] {
  const employer = (person: string | undefined) =>
    facts.all("person").find(({ id }) => id === person)?.employer ?? facts.maker;
  const all = facts.all("procedure");
  const owner = ({ revisions = [] }: (typeof all)[number]) => employer(revisions.at(-1)?.preparedBy);
  return [...new Set(all.map(owner))].map((by) =>
    procedures(
      facts,
      all.filter((one) => owner(one) === by),
      { name: short(by), title: `Procedures of ${facts.organisation(by).name}`, by },
      (record) => paragraphsOf(record.id) ?? procedureWords(record),
    ),
  );
}

/** Certificates, approvals of the mills, the marking list, and a binder of fillers for each of their makers. */
export function materialOriginals(facts: Facts): readonly OriginalSheet[] {
  const marks = facts.all("piece-mark");
  const approvals = facts.all("mill-approval");
  const batches = facts.all("consumable-batch");
  const certificates = facts.all("material-certificate");
  const received = lastOf(certificates.map((one) => one.received));
  const marked = lastOf(marks.map(({ cut }) => cut));
  return [
    ...certificates.map((record) => materialCertificate(facts, record)),
    ...(approvals.length === 0 ? [] : [millApprovals(facts, approvals, received)]),
    ...(marks.length === 0 ? [] : [markingList(facts, marked)]),
    ...[...new Set(batches.map(({ manufacturer }) => manufacturer ?? facts.maker))].map((by) => {
      const held = batches.filter(({ manufacturer }) => (manufacturer ?? facts.maker) === by);
      return consumables(facts, held, {
        id: `ORG-CONSUMABLES-${short(by)}`,
        path: `materials/consumables-${short(by).toLowerCase()}.pdf`,
        title: `Documents of the welding consumables, ${facts.organisation(by).name}`,
        number: `${held[0]?.certificate?.number ?? "–"} ff.`,
        by,
        day: lastOf(held.map((one) => one.received)),
      });
    }),
  ];
}

const markingList = (facts: Facts, day: string): OriginalSheet => ({
  id: "ORG-MARKS",
  path: "materials/marking-list.pdf",
  title: "Marking list and cutting list",
  number: `${orderOf(facts)}-06-ML-01`,
  by: facts.maker,
  day,
  compared: day,
  shows: facts.all("piece-mark").map(({ id }) => ["piece-mark", id]),
  draw: (paper) =>
    drawMarks(
      paper,
      facts,
      facts.all("piece-mark"),
      day,
      " Tubes and bars with the vibrating pen on each end; forgings keep the mark of their maker.",
    ),
});
