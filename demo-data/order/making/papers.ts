import type { Document, Drawing } from "../../generated/records.ts";

type Revision = NonNullable<Drawing["revisions"]>[number];

export const drawn = (
  revision: string,
  date: string,
  approved: string,
  status: Revision["status"],
  reason: string,
): Revision => ({
  revision,
  date,
  ...(status !== undefined && { status }),
  reason,
  preparedBy: "R1",
  checkedBy: "R2",
  approvedBy: "K1",
  approved,
  sheets: 1,
});

/** A drawing issued, and once more after a change. */
export const twice = (reason: string): Revision[] => [
  drawn("A", "2026-03-10", "2026-03-16", "superseded", "first issue"),
  drawn("B", "2026-05-04", "2026-05-08", "for-construction", reason),
];

/** A document of a job, which its number begins with, in its first and only revision. */
export const documentOf =
  (job: string) =>
  (
    id: string,
    type: Document["type"],
    title: string,
    [revision, date, approved]: readonly [string, string, string],
    [preparedBy, checkedBy, approvedBy]: readonly [string, string, string],
    sheets = 1,
  ): Document => ({
    id,
    number: `${job}-${id}`,
    title,
    ...(type !== undefined && { type }),
    language: "en",
    revisions: [
      {
        revision,
        date,
        status: "for-record",
        reason: "first issue",
        preparedBy,
        checkedBy,
        approvedBy,
        approved,
        sheets,
      },
    ],
  });

export const design = ["R1", "R2", "K1"] as const;
export const quality = ["D2", "B4", "K1"] as const;
