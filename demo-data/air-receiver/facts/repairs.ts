import type { ProductionTest, Repair } from "../../generated/records.ts";

/** The repair of joint C2, after film 1 of report RT-03 was rejected. */
export const repairs: readonly Repair[] = [
  {
    id: "C2R1",
    joint: "C2",
    rejected: "RT-03#C2-1",
    cycle: 1,
    cause: "start of the second root length not ground before the fill was laid over it",
    from: "2140 mm",
    to: "2210 mm",
    depth: "5.0 mm",
    weldingProcedure: "WPS-09@1",
    process: "141",
    welders: ["W07"],
    batches: ["B-2219", "B-2231"],
    date: "2026-06-12T13:20+02:00",
    excavationTest: "PT-01",
    nonconformity: "NCR-01",
    signatures: [
      { role: "welder", person: "W07", date: "2026-06-12" },
      { role: "welding coordinator", person: "M1", date: "2026-06-12" },
    ],
  },
];

/** The test plate was welded as a run-out of L1 and L2, by the same welder from the same batches. */
export const productionTests: readonly ProductionTest[] = [
  {
    id: "TP-01",
    mark: "423 TP1",
    joints: ["L1", "L2"],
    weldingProcedure: "WPS-03@2",
    welders: ["W03"],
    certificateRows: ["CRT-003#84713", "CRT-003#84721"],
    welded: "2026-05-28",
    laboratory: "LARKMETRIC",
    report: "LK-26-0881",
    date: "2026-06-15",
    tensile: [
      {
        test: "T1",
        direction: "transverse",
        temperature: "20 °C",
        tensileStrength: "466 MPa",
        breakLocation: "parent metal",
      },
    ],
    impact: [
      {
        test: "I1",
        location: "weld metal",
        temperature: "-10 °C",
        specimenWidth: "7.5 mm",
        values: ["71 J", "66 J", "73 J"],
        mean: "70 J",
      },
      {
        test: "I2",
        location: "heat affected zone",
        temperature: "-10 °C",
        specimenWidth: "7.5 mm",
        values: ["84 J", "79 J", "80 J"],
        mean: "81 J",
      },
    ],
    otherTests: [
      { test: "bend, face and root", requirement: "180°, no opening over 3 mm", result: "accepted" },
      { test: "macro section", requirement: "full penetration, no crack", result: "accepted" },
    ],
    result: "accepted",
    signatures: [{ role: "laboratory", person: "L1", date: "2026-06-15" }],
  },
];
