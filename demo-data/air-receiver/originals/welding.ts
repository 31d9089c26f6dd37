import type { Facts } from "../../book/facts.ts";
import { weldLog } from "../../sheets/binders.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { productionTest, repair } from "../../sheets/papers.ts";

/** Sheets of the weld log: the day each was closed, and its joints. */
export type LogSheets = readonly (readonly [day: string, joints: RegExp])[];

const ofReceiver: LogSheets = [
  ["2026-06-03", /^(L1|L2|C1)$/],
  ["2026-06-10", /^(C2|C3)$/],
  ["2026-06-12", /^N/],
];

export const weldingOriginals = (facts: Facts, logs = ofReceiver): readonly OriginalSheet[] => [
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
