import type { Deviation } from "../../generated/records.ts";

/** The one hole that stayed wider than drawn. */
export const deviations: readonly Deviation[] = [
  {
    id: "DEV-01",
    title: "tube hole of the rear tube plate, row 7, place 4",
    answers: [
      {
        finding:
          "dimension-check-rows-accepted|dimension-check:DIM-01|rows (bore of tube holes, P04, pass 3, row 7, place 4)",
        digest: "e9360ee6edc456ad",
      },
    ],
    requirement: "drawing TQ417-04-DRG-004: tube holes 51.5 mm ± 0.2 mm",
    reason:
      "The hole measures 51.86 mm. The least ligament is 20.3 mm instead of 20.5 mm; the tube end closes the clearance of 0.86 mm and is still thinned within the procedure.",
    conditions:
      "The tube of this hole is expanded to the bore measured there, its thinning recorded, and its end looked at during the pressure test.",
    nonconformity: "NCR-03",
    authority: "nonconformity report NCR-03, decision of design",
    by: "R1",
    date: "2026-03-10",
    agreement: [
      { role: "design", person: "R1", date: "2026-03-10" },
      { role: "inspection body", person: "E1", date: "2026-03-10" },
    ],
  },
];
