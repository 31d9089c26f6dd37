import type { RecordTypes } from "../generated/records.ts";
import { orderOf, type Facts } from "../book/facts.ts";
import { drawCalibrations } from "./calibration.ts";
import { drawCalculation, type CalculationWords } from "./calculation-sheet.ts";
import { drawPlan } from "./inspection-plan.ts";
import { drawApproval, drawBatch } from "./materials.ts";
import { printed, weekdayLater, type OriginalSheet } from "./original.ts";
import { binderOf, type Cover } from "./papers.ts";
import { drawProcedure, type Paragraphs } from "./procedure.ts";
import { drawSpecimens } from "./specimens.ts";
import { drawTester } from "./testers.ts";
import { drawLogs } from "./weld-log.ts";
import { drawWelder } from "./welding-papers.ts";

type Records<K extends keyof RecordTypes> = readonly RecordTypes[K][];

/** Number of the first of several papers, and that others follow. */
const andOthers = (number: string | undefined, count: number) => `${printed(number)}${count > 1 ? " ff." : ""}`;

export const millApprovals = (facts: Facts, records: Records<"mill-approval">, day: string): OriginalSheet =>
  binderOf(
    "mill-approval",
    records,
    {
      id: "ORG-MILLS",
      path: "materials/mill-approvals.pdf",
      title: "Approvals of the material makers",
      number: `PQ-QS-${String(facts.equipment.year)}-TQ`,
      by: facts.body,
      day,
    },
    (paper, record) => drawApproval(paper, facts, record),
  );

export const consumables = (facts: Facts, records: Records<"consumable-batch">, cover: Cover): OriginalSheet =>
  binderOf("consumable-batch", records, cover, (paper, record) => drawBatch(paper, facts, record));

export const testers = (facts: Facts, records: Records<"ndt-personnel">, day: string): OriginalSheet =>
  binderOf(
    "ndt-personnel",
    records,
    {
      id: "ORG-TESTERS",
      path: "testing/testers.pdf",
      title: "Certificates of the testers",
      number: andOthers(records.map(({ certificate }) => printed(certificate)).sort()[0], records.length),
      by: facts.body,
      day,
    },
    (paper, record) => drawTester(paper, facts, record),
  );

export const welder = (facts: Facts, person: string, day: string): OriginalSheet => {
  const held = facts.all("welder-qualification").filter((one) => one.person === person);
  return binderOf(
    "welder-qualification",
    held,
    {
      id: `ORG-WELDER-${person}`,
      path: `welding/welder-${person.toLowerCase()}.pdf`,
      title: `Certificates of welder ${person}`,
      number: andOthers(held[0]?.certificate, 2),
      by: held[0]?.body ?? facts.body,
      day,
    },
    (paper, record) => drawWelder(paper, facts, record),
  );
};

/** A sheet of the weld log, with the logs whose joints it holds. */
export const weldLog = (facts: Facts, number: number, logs: Records<"weld-log">, day: string): OriginalSheet => ({
  id: `ORG-WELD-LOG-${number}`,
  path: `welding/weld-log-${number}.pdf`,
  title: `Weld log, sheet ${number}`,
  number: `${orderOf(facts)}-07-WL-${number}`,
  by: facts.maker,
  day,
  compared: weekdayLater(day, 2),
  shows: logs.map(({ id }) => ["weld-log", id]),
  draw: (paper) => drawLogs(paper, facts, logs),
});

export const calibrations = (facts: Facts, records: Records<"instrument">, cover: Omit<Cover, "number" | "by">) =>
  binderOf(
    "instrument",
    records,
    {
      ...cover,
      number: andOthers(records[0]?.calibrations?.[0]?.certificate, 2),
      by: records[0]?.calibrations?.[0]?.laboratory ?? facts.maker,
    },
    (paper, record) => drawCalibrations(paper, facts, record),
  );

/** The maker's sheets of calculations that belong together. */
export const calculations = (
  facts: Facts,
  records: Records<"calculation-sheet">,
  name: string,
  title: string,
  words: (calculation: string) => CalculationWords | undefined,
): OriginalSheet =>
  binderOf(
    "calculation-sheet",
    records,
    {
      id: `ORG-CAL-${name.toUpperCase()}`,
      path: `calculations/${name}.pdf`,
      title,
      number: andOthers(records[0]?.number, records.length),
      by: facts.maker,
      day: printed(records[0]?.signatures?.[1]?.date),
    },
    (paper, record) => drawCalculation(paper, facts, record, words(record.calculation)),
  );

/** Procedures of one firm in one binder, which has the day of the last approval. */
export const procedures = (
  facts: Facts,
  records: Records<"procedure">,
  cover: Pick<Cover, "title" | "by"> & { readonly name: string },
  paragraphs: (record: RecordTypes["procedure"]) => Paragraphs,
): OriginalSheet => {
  const days = records.map(({ revisions }) => printed(revisions?.at(-1)?.approved)).sort();
  const { name, title, by } = cover;
  return binderOf(
    "procedure",
    records,
    {
      id: `ORG-PROC-${name}`,
      path: `procedures/${name.toLowerCase()}.pdf`,
      title,
      number: printed(records[0]?.number),
      by,
      day: printed(days.at(-1)),
    },
    (paper, record) => drawProcedure(paper, facts, record, paragraphs(record)),
  );
};

/** The inspection plan as it was signed. */
export const completedPlan = (facts: Facts, plan: RecordTypes["document"], day: string): OriginalSheet => ({
  id: "ORG-PLAN",
  path: `documents/${plan.id.toLowerCase()}-completed.pdf`,
  title: "Inspection and test plan, completed",
  number: `${printed(plan.number)} r. ${printed(plan.revisions?.at(-1)?.revision)}`,
  by: facts.maker,
  day,
  compared: weekdayLater(day, 1),
  shows: facts.all("inspection-step").map(({ id }) => ["inspection-step", id]),
  draw: (paper) => {
    drawPlan(paper, facts, day);
  },
});

export const specimens = (facts: Facts, number: string, day: string): OriginalSheet => ({
  id: "ORG-PEOPLE",
  path: "documents/specimen-signatures.pdf",
  title: "Specimen signatures",
  number,
  by: facts.maker,
  day,
  compared: weekdayLater(day, 1),
  shows: facts.all("person").map(({ id }) => ["person", id]),
  draw: (paper) => drawSpecimens(paper, facts),
});
