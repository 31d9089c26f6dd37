import type { Facts } from "../../book/facts.ts";
import { welder, weldLog } from "../../sheets/binders.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { procedureQualification, productionTest, repair, weldingProcedure } from "../../sheets/papers.ts";

const issued = "2026-05-19";

const welders = [
  ["W03", "2026-05-20"],
  ["W07", "2026-04-22"],
] as const;

const logs = [
  ["2026-06-03", /^(L1|L2|C1)$/],
  ["2026-06-10", /^(C2|C3)$/],
  ["2026-06-12", /^N/],
] as const;

export const weldingOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...facts
    .all("welding-procedure")
    .map((record) => ({ ...weldingProcedure(facts, record), day: issued, compared: "2026-05-21" })),
  ...facts
    .all("procedure-qualification")
    .map((record) => ({ ...procedureQualification(facts, record), compared: "2026-05-20" })),
  ...welders.map(([person, day]) => ({ ...welder(facts, person, day), compared: "2026-05-22" })),
  ...logs.map(([day, ids], index) => {
    const held = facts.all("weld-log").filter(({ joint }) => ids.test(joint));
    return weldLog(facts, index + 1, held, day);
  }),
  ...facts.all("repair").map((record) => repair(facts, record)),
  ...facts.all("production-test").map((record) => ({
    ...productionTest(facts, record),
    path: "welding/production-test.pdf",
  })),
];
