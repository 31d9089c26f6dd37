import type { Procedure } from "../../generated/records.ts";
import { procedure } from "../../order/facts/procedure.ts";
import { review, testerProcedures } from "../../order/facts/procedures-testers.ts";

type Revision = NonNullable<Procedure["revisions"]>[number];
type Method = NonNullable<Procedure["method"]>;
type Issue = readonly [revision: string, date: string, approved: string, reason: string];

/** The revision that the one in force replaced, by method. */
const before: Readonly<Partial<Record<Method, Issue>>> = {
  VT: ["3", "2025-01-13", "2025-01-17", "light meter named"],
  RT: ["2", "2025-01-13", "2025-01-17", "pipes up to DN 100 through two walls"],
  MT: ["2", "2025-01-13", "2025-01-17", "waiting time of 16 h"],
  PT: ["1", "2024-06-03", "2024-06-10", "first issue"],
  UT: ["3", "2025-01-13", "2025-01-17", "reference block of 20 mm plate"],
};

const superseded = ([revision, date, approved, reason]: Issue): Revision => ({
  revision,
  date,
  status: "superseded",
  reason,
  preparedBy: "N1",
  checkedBy: "N2",
  approvedBy: "N3",
  sheets: 1,
  approved,
});

/** The testers' working procedures, in force from January: those the receiver was tested to, and the ultrasonic one. */
export const testingProcedures: readonly Procedure[] = [
  ...testerProcedures.map(({ record }) => record),
  procedure("PRC-UT", "ndt", "GT-P-05", "Ultrasonic testing of corner and T joints from 8 mm", "4", review, "UT"),
].map((record) => {
  const issue = record.method === undefined ? undefined : before[record.method];
  return issue === undefined ? record : { ...record, revisions: [superseded(issue), ...(record.revisions ?? [])] };
});

/** The revision every test of the order was made to. */
export function procedureInForce(method: Method): string {
  const found = testingProcedures.find((one) => one.method === method);
  const revision = found?.revisions?.at(-1)?.revision;
  if (found === undefined || revision === undefined) throw new Error(`the facts know no procedure of ${method}`);
  return `${found.id}@${revision}`;
}
