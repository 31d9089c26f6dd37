import type { Procedure } from "../../../src/generated/records.ts";

type Revision = NonNullable<Procedure["revisions"]>[number];
type Issue = readonly [revision: string, issued: string, approved: string, reason: string];

const people = { preparedBy: "N1", checkedBy: "N2", approvedBy: "N3", sheets: 1 } as const;

/** A test procedure with the revision in force and the one it replaced. */
const procedure = (
  method: NonNullable<Procedure["method"]>,
  number: string,
  title: string,
  before: Issue,
  inForce: Issue,
): Procedure => {
  const revision = ([name, date, approved, reason]: Issue, status: "superseded" | "for-construction"): Revision => ({
    revision: name,
    date,
    status,
    reason,
    ...people,
    approved,
  });
  return {
    id: `PRC-${method}`,
    type: "ndt",
    method,
    title,
    number,
    revisions: [revision(before, "superseded"), revision(inForce, "for-construction")],
  };
};

const review = (revision: string): Issue => [revision, "2026-01-12", "2026-01-16", "yearly review"];

/** The testers' working procedures, in force from January. */
export const testingProcedures: readonly Procedure[] = [
  procedure(
    "VT",
    "GT-P-01",
    "Visual testing of fusion welds",
    ["3", "2025-01-13", "2025-01-17", "light meter named"],
    review("4"),
  ),
  procedure(
    "RT",
    "GT-P-02",
    "Radiographic testing of butt welds, X-ray and film",
    ["2", "2025-01-13", "2025-01-17", "pipes up to DN 100 through two walls"],
    review("3"),
  ),
  procedure(
    "MT",
    "GT-P-03",
    "Magnetic particle testing of ferritic welds",
    ["2", "2025-01-13", "2025-01-17", "waiting time of 16 h"],
    review("3"),
  ),
  procedure(
    "PT",
    "GT-P-04",
    "Penetrant testing, visible dye",
    ["1", "2024-06-03", "2024-06-10", "first issue"],
    review("2"),
  ),
  procedure(
    "UT",
    "GT-P-05",
    "Ultrasonic testing of corner and T joints from 8 mm",
    ["3", "2025-01-13", "2025-01-17", "reference block of 20 mm plate"],
    review("4"),
  ),
];

/** The revision every test of the order was made to. */
export function procedureInForce(method: NonNullable<Procedure["method"]>): string {
  const found = testingProcedures.find((one) => one.method === method);
  const revision = found?.revisions?.at(-1)?.revision;
  if (found === undefined || revision === undefined) throw new Error(`the facts know no procedure of ${method}`);
  return `${found.id}@${revision}`;
}
