import type { AnsweredQuery, Deviation } from "../../../src/generated/records.ts";

/** What the check asked, and who looked and answered. */
export const answeredQueries: readonly AnsweredQuery[] = [
  {
    id: "AQ-01",
    answers: [
      { finding: "id-distinct|joint:FL1|id", digest: "f0893ba429c63255" },
      { finding: "id-distinct|joint:FL2|id", digest: "b2bd61b9b659cd20" },
    ],
    reason:
      "FL1 and FL2 are the longitudinal seams of the furnace, F11 and F12 the joints of neck and flange at N11 and N12. The marks lie on parts that cannot be mistaken for each other; logs and reports name part and joint.",
    authority: "weld map TQ417-04-DRG-002, list of joints",
    by: "M1",
    date: "2026-02-06",
  },
];

/** The one hole that stayed wider than drawn. */
export const deviations: readonly Deviation[] = [
  {
    id: "DEV-01",
    title: "tube hole of the rear tube plate, row 7, place 4",
    answers: [
      {
        finding: "dimensions-accepted|dimension-check:DIM-04#bore of tube hole, row 7, place 4|result",
        digest: "0000000000000000",
      },
      { finding: "dimension-check-accepted|dimension-check:DIM-04|result", digest: "0000000000000000" },
    ],
    requirement: "drawing TQ417-04-DRG-004: tube holes 51.5 mm, +0.2 mm, 0 mm",
    reason:
      "The hole measures 51.9 mm. The ligament to the next holes loses 0.2 mm of 20.5 mm; the gap of 0.9 mm is closed within the expansion that the procedure permits.",
    conditions:
      "The tube of this hole is expanded to the bore measured there, its thinning recorded, and its end looked at during the pressure test.",
    nonconformity: "NCR-03",
    authority: "nonconformity report NCR-03, decision of design",
    by: "R1",
    date: "2026-03-30",
    agreement: [
      { role: "design", person: "R1", date: "2026-03-30" },
      { role: "inspection body", person: "E1", date: "2026-03-30" },
    ],
  },
];
