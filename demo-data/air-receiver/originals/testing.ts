import type { NdtReport } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { coatingReport } from "../../sheets/coating-report.ts";
import { printed, weekdayLater, type OriginalSheet } from "../../sheets/original.ts";
import { dimensionCheck, ndtReport, nonconformityReport } from "../../sheets/papers.ts";

/** Surface tests in the order they were made, after the others. */
function reportsOf(facts: Facts): readonly NdtReport[] {
  const reports = facts.all("ndt-report");
  const surface = reports.filter(({ method }) => method === "MT" || method === "PT");
  const byDate = [...surface].sort((one, other) => printed(one.date).localeCompare(printed(other.date)));
  return [...reports.filter((one) => !surface.includes(one)), ...byDate];
}

export const testingOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...reportsOf(facts).map((record) => ndtReport(facts, record)),
  ...facts.all("dimension-check").map((record) => dimensionCheck(facts, record)),
  ...facts.all("coating-report").map((record) => coatingReport(facts, record)),
  ...facts.all("nonconformity-report").map((record) => ({
    ...nonconformityReport(facts, record),
    compared: weekdayLater(printed(record.closed), 1),
  })),
];
