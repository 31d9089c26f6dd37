import type { NdtReport } from "../../../src/generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { calibrations, testers } from "../../sheets/binders.ts";
import { daysLater, printed, type OriginalSheet } from "../../sheets/original.ts";
import { dimensionCheck, ndtReport, nonconformityReport } from "../../sheets/papers.ts";

const instruments = [
  ["GAUGES", "the gauges and thermometer of the pressure test", "2026-05-04", "PG-03 PG-04 TH-02"],
  ["SHOP", "measuring equipment of the shop", "2026-04-13", "WM-02 UT-03 TAPE-03 CA-05 CT-01 WG-01"],
  ["TESTERS", "measuring equipment of the testers", "2026-03-30", "DM-01 LM-01 MY-01 FM-01 TH-05"],
  ["SUPPLIERS", "measuring equipment of suppliers", "2026-03-16", "PG-07 TR-11"],
] as const;

function calibrationOriginals(facts: Facts): readonly OriginalSheet[] {
  return instruments.map(([name, what, day, ids]) => {
    const chosen = facts.all("instrument").filter(({ id }) => ids.split(" ").includes(id));
    const cover = {
      id: `ORG-CALIBRATION-${name}`,
      path: `instruments/calibration-${name.toLowerCase()}.pdf`,
      title: `Calibration of ${what}`,
      day,
    };
    return { ...calibrations(facts, chosen, cover), compared: "2026-05-21" };
  });
}

/** Surface tests in the order they were made, after the others. */
function reportsOf(facts: Facts): readonly NdtReport[] {
  const reports = facts.all("ndt-report");
  const surface = reports.filter(({ method }) => method === "MT" || method === "PT");
  const byDate = [...surface].sort((one, other) => printed(one.date).localeCompare(printed(other.date)));
  return [...reports.filter((one) => !surface.includes(one)), ...byDate];
}

export const testingOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...reportsOf(facts).map((record) => ndtReport(facts, record)),
  { ...testers(facts, facts.all("ndt-personnel"), "2026-02-02"), compared: "2026-05-21" },
  ...facts.all("dimension-check").map((record) => dimensionCheck(facts, record)),
  ...facts.all("nonconformity-report").map((record) => ({
    ...nonconformityReport(facts, record),
    compared: daysLater(printed(record.closed), 1),
  })),
  ...calibrationOriginals(facts),
];
