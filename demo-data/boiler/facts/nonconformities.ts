import type { NonconformityReport } from "../../generated/records.ts";
import { causes } from "./repairs.ts";

const agreed = (
  date: string,
  role: "welding coordinator" | "design",
  person: string,
): NonNullable<NonconformityReport["approvals"]> => [
  { role, person, date },
  { role: "inspection body", person: "E1", date },
];

const closing = (day: string) =>
  ({
    state: "closed",
    closedBy: "D2",
    closed: day,
    signatures: [{ role: "quality control", person: "D2", date: day }],
  }) satisfies Partial<NonconformityReport>;

/** Two welds that were put right, and one hole that stayed as it is. */
export const nonconformities: readonly NonconformityReport[] = [
  {
    id: "NCR-01",
    title: "lack of fusion in joint C1",
    affected: ["joint:C1", "ndt-report:RT-02"],
    requirement: "quality level C, acceptance level 2: no lack of fusion",
    found: "lack of fusion, 45 mm long, from 3110 mm to 3155 mm, on film 417-C1-2",
    foundBy: "N2",
    raised: "2026-03-06",
    pressureRelated: true,
    cause: causes.C1R1,
    containment: "place marked with paint, shell held in the welding bay, no branch set in",
    disposition: "rework",
    reason: "the weld can be restored to the drawing within a qualified procedure",
    correction:
      "ground out from outside, excavation tested by penetrant, rewelded to WPS-13 as C1R1; two further lengths radiographed in RT-03, free",
    correctedBy: "W03",
    approvals: agreed("2026-03-09", "welding coordinator", "M1"),
    verification: ["ndt-report:VT-04", "ndt-report:RT-03", "ndt-report:RT-05"],
    ...closing("2026-03-13"),
  },
  {
    id: "NCR-02",
    title: "linear indication at branch weld N05",
    affected: ["joint:N05", "ndt-report:MT-02"],
    requirement: "acceptance level 2X: no linear indication over 1.5 mm",
    found: "linear indication, 7 mm long, at the toe on the neck, 22 mm from the zero mark",
    foundBy: "N1",
    raised: "2026-03-24",
    pressureRelated: true,
    cause: causes.N05R1,
    containment: "neck tagged, rear tube plate not fitted before release",
    disposition: "rework",
    reason: "the weld can be restored to the drawing within a qualified procedure",
    correction:
      "ground out, excavation tested by penetrant, rewelded to WPS-13 as N05R1; rest of N05 and further lengths at N04 and N06 tested in MT-03, free",
    correctedBy: "W07",
    approvals: agreed("2026-03-24", "welding coordinator", "M1"),
    verification: ["ndt-report:VT-08", "ndt-report:MT-03"],
    ...closing("2026-03-27"),
  },
  {
    id: "NCR-03",
    title: "tube hole of the rear tube plate bored too wide",
    affected: ["part:P04"],
    requirement: "DRG-04: tube holes 51.5 mm ± 0.2 mm",
    found: "hole in row 7, place 4 of pass 3: 51.86 mm",
    foundBy: "D2",
    raised: "2026-03-06",
    pressureRelated: true,
    cause: "reamer set after regrinding without a trial bore",
    containment: "hole ringed with paint, plate not fitted before the decision",
    disposition: "use-as-is",
    reason:
      "least ligament 20.3 mm instead of 20.5 mm; the tube end closes a clearance of 0.86 mm and is still thinned within the procedure",
    correction: "none; the tube of this hole is expanded to the bore measured there",
    approvals: agreed("2026-03-10", "design", "R1"),
    concession: "DEV-01",
    verification: ["dimension-check:DIM-01", "deviation:DEV-01"],
    ...closing("2026-03-10"),
  },
];
