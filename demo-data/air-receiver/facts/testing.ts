import type { NdtReport, NonconformityReport } from "../../generated/records.ts";
import { filmsOf, report, whole } from "../../order/making/reports.ts";

const film = filmsOf("423");

export const ndtReports: readonly NdtReport[] = [
  report("VT-01", "VT", "2026-05-29T09:00", [whole("L1", "1125 mm"), whole("L2", "1125 mm")]),
  report("VT-02", "VT", "2026-06-04T09:30", [whole("C1", "3745 mm")]),
  report("VT-03", "VT", "2026-06-11T06:30", [
    whole("C2", "3745 mm"),
    whole("C3", "3745 mm"),
    whole("N01", "279 mm"),
    whole("N02", "279 mm"),
  ]),
  report("VT-04", "VT", "2026-06-15T08:30", [
    whole("N03", "189 mm"),
    whole("N04", "106 mm"),
    whole("N05", "106 mm"),
    whole("N06", "1018 mm"),
    { row: "C2R1", joint: "C2", from: "2090 mm", to: "2260 mm", length: "170 mm", result: "accepted", repair: "C2R1" },
  ]),
  report("RT-01", "RT", "2026-06-02T08:40", [
    film("L1", 1, 0, 300, ["2.6", "3.1"]),
    film("L2", 1, 825, 1125, ["2.5", "3.0"], {
      indications: [{ indication: "1", type: "2011 gas pore", at: "948 mm", size: "0.8 mm", verdict: "accepted" }],
    }),
  ]),
  report("RT-02", "RT", "2026-06-05T11:00", [film("C1", 1, 0, 400, ["2.6", "3.2"])]),
  report("RT-03", "RT", "2026-06-11T08:00", [
    film("C2", 1, 2000, 2400, ["2.5", "3.1"], {
      result: "rejected",
      indications: [
        { indication: "1", type: "401 lack of fusion", at: "2140 mm", length: "70 mm", verdict: "rejected" },
      ],
    }),
  ]),
  report("RT-04", "RT", "2026-06-12T06:30", [
    film("C2", 2, 0, 480, ["2.6", "3.1"]),
    film("C2", 3, 2800, 3280, ["2.7", "3.2"]),
    film("C3", 1, 0, 400, ["2.5", "3.0"]),
  ]),
  report("RT-05", "RT", "2026-06-16T08:30", [
    film("C2", 4, 2040, 2310, ["2.6", "3.1"], { film: "423-C2R1-1", repair: "C2R1" }),
  ]),
  report("PT-01", "PT", "2026-06-12T12:10", [
    { row: "C2R1", joint: "C2", from: "2130 mm", to: "2220 mm", length: "90 mm", result: "accepted" },
  ]),
  report("MT-01", "MT", "2026-06-15T10:00", [whole("N01", "279 mm"), whole("N02", "279 mm"), whole("N03", "189 mm")]),
  report("PT-02", "PT", "2026-06-15T11:10", [whole("N04", "106 mm"), whole("N05", "106 mm")]),
  report("MT-02", "MT", "2026-06-15T13:20", [
    {
      ...whole("N06", "1018 mm"),
      indications: [
        { indication: "1", type: "rounded, at the toe", at: "310 mm", size: "1.2 mm", verdict: "accepted" },
      ],
    },
  ]),
];

export const nonconformities: readonly NonconformityReport[] = [
  {
    id: "NCR-01",
    title: "lack of fusion in joint C2",
    state: "closed",
    affected: ["joint:C2", "ndt-report:RT-03"],
    requirement: "quality level C, acceptance level 2: no lack of fusion",
    found: "lack of fusion, 70 mm long, from 2140 mm to 2210 mm, on film 423-C2-1",
    foundBy: "N2",
    raised: "2026-06-11",
    pressureRelated: true,
    cause: "start of the second root length not ground before the fill was laid over it",
    containment: "place marked with paint, vessel held in the welding bay",
    disposition: "rework",
    reason: "the weld can be restored to the drawing within the qualified procedure",
    correction: "ground out from outside, excavation tested by penetrant, rewelded to WPS-09 as C2R1",
    correctedBy: "W07",
    approvals: [
      { role: "welding coordinator", person: "M1", date: "2026-06-12" },
      { role: "inspection body", person: "E1", date: "2026-06-12" },
    ],
    verification: ["ndt-report:RT-05", "ndt-report:VT-04"],
    closedBy: "D2",
    closed: "2026-06-17",
    signatures: [{ role: "quality control", person: "D2", date: "2026-06-17" }],
  },
];
