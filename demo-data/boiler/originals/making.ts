import type { WeldLog } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { coatingReport } from "../../sheets/coating-report.ts";
import { calibrations, testers, welder, weldLog } from "../../sheets/binders.ts";
import { dayIn, type OriginalSheet } from "../../sheets/original.ts";
import {
  dimensionCheck,
  heatTreatment,
  ndtReport,
  nonconformityReport,
  pressureTest,
  procedureQualification,
  productionTest,
  repair,
  weldingProcedure,
} from "../../sheets/papers.ts";
import { lastOf } from "./working-days.ts";

/** Sheets of the weld log by the joints they hold: shell, furnace, corners, branches, flanges, stays, attachments. */
const families: readonly RegExp[] = [/^[LC]\d/, /^(FS|FC|WL)/, /^[EK]/, /^[NM]/, /^F\d/, /^S/, /^A/];

const finished = ({ fitUp, runs = [] }: WeldLog) =>
  lastOf([fitUp?.date, ...runs.flatMap((run) => [run.date, run.finished])].map((moment) => moment && dayIn(moment)));

function weldLogs(facts: Facts): readonly OriginalSheet[] {
  const logs = facts.all("weld-log");
  const rest = logs.filter(({ joint }) => !families.some((one) => one.test(joint)));
  const held = families.map((family) => logs.filter(({ joint }) => family.test(joint)));
  return [...held, rest]
    .filter((chosen) => chosen.length > 0)
    .map((chosen, index) => weldLog(facts, index + 1, chosen, lastOf(chosen.map(finished))));
}

/** Procedures, qualifications, welders, logs, heat treatments and repairs. */
export function weldingOriginals(facts: Facts): readonly OriginalSheet[] {
  const held = facts.all("welder-qualification");
  const welders = [...new Set(held.map(({ person }) => person))];
  const latest = (person: string) =>
    lastOf(
      held
        .filter((one) => one.person === person)
        .flatMap(({ testDate, confirmations = [] }) => [testDate, ...confirmations.map(({ date }) => date)]),
    );
  return [
    ...facts.all("welding-procedure").map((record) => weldingProcedure(facts, record)),
    ...facts.all("procedure-qualification").map((record) => procedureQualification(facts, record)),
    ...welders.map((person) => welder(facts, person, latest(person))),
    ...weldLogs(facts),
    ...facts.all("heat-treatment").map((record) => heatTreatment(facts, record)),
    ...facts.all("repair").map((record) => repair(facts, record)),
    ...facts.all("production-test").map((record) => productionTest(facts, record)),
  ];
}

/** Reports, testers, dimensions, nonconformities, the hydrostatic test, and a binder of certificates for each instrument. */
export function testingOriginals(facts: Facts): readonly OriginalSheet[] {
  const personnel = facts.all("ndt-personnel");
  return [
    ...facts.all("ndt-report").map((record) => ndtReport(facts, record)),
    ...(personnel.length === 0
      ? []
      : [
          testers(
            facts,
            personnel,
            lastOf(
              personnel.flatMap(({ issued, visionTest, employerAuthorisation }) => [
                issued,
                visionTest,
                employerAuthorisation,
              ]),
            ),
          ),
        ]),
    ...facts.all("dimension-check").map((record) => dimensionCheck(facts, record)),
    ...facts.all("coating-report").map((record) => coatingReport(facts, record)),
    ...facts.all("nonconformity-report").map((record) => nonconformityReport(facts, record)),
    ...facts.all("pressure-test").map((record) => pressureTest(facts, record)),
    ...facts.all("instrument").map((record) =>
      calibrations(facts, [record], {
        id: `ORG-CALIBRATION-${record.id}`,
        path: `instruments/${record.id.toLowerCase()}.pdf`,
        title: `Calibration of ${record.id}, ${record.name ?? record.type ?? "instrument"}`,
        day: lastOf((record.calibrations ?? []).map(({ date }) => date)),
      }),
    ),
  ];
}
