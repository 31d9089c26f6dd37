import type { NdtReport } from "../../generated/records.ts";
import { lengthOf, report, spots, stretch, type Row, type Rows, type When } from "./test-report.ts";

const tested = (id: string, method: "MT" | "UT", when: When, joints: readonly string[], ...more: Rows): NdtReport =>
  report(id, method, when, [...joints.flatMap((joint) => spots(joint, method)), ...more]);

/** Beside the tested spot of a branch: the length tested further after a rejection. */
const further = (joint: string, from: number, to: number): Row =>
  stretch(joint, from, to, { row: `${joint}, further length` });

/** Ultrasonic tests of the corner joints, not before the day after the weld. */
export const ultrasonicReports: readonly NdtReport[] = [
  tested("UT-01", "UT", ["2026-03-19", "09:40"], ["K2", "K3", "K4", "K5"]),
  tested("UT-02", "UT", ["2026-03-26", "09:30"], ["K1", "E1"]),
  tested("UT-03", "UT", ["2026-04-07", "09:40"], ["E2", "K6"]),
];

const crack: Partial<Row> = {
  result: "rejected",
  indications: [
    { indication: "1", type: "linear, at the toe on the neck", at: "22 mm", length: "7 mm", verdict: "rejected" },
  ],
};
const smallBranches = ["N04", "N06", "N07", "N08", "N09"];

/** Magnetic particle tests; after the rejection at N05 its rest and two further lengths of the same welder. */
export const magneticReports: readonly NdtReport[] = [
  tested("MT-01", "MT", ["2026-03-19", "13:00"], ["N01", "N02", "N03", "N10", "N11", "N12", "N13"]),
  tested(
    "MT-02",
    "MT",
    ["2026-03-24", "09:30"],
    ["M01", ...smallBranches],
    ...spots("N05", "MT").map((row) => ({ ...row, ...crack })),
  ),
  report(
    "MT-03",
    "MT",
    ["2026-03-26", "13:10"],
    [
      stretch("N05", 5, 50, { row: "N05R1", repair: "N05R1" }),
      further("N05", 50, lengthOf("N05")),
      further("N04", 70, 110),
      further("N06", 50, 80),
    ],
  ),
  tested("MT-04", "MT", ["2026-04-14", "10:00"], ["S11", "S12", "S13", "S21", "S22", "S23", "S31", "S32"]),
  tested("MT-05", "MT", ["2026-04-21", "10:30"], ["A1", "A2", "A3", "A4", "A5"]),
];

const excavation = (id: string, when: When, repair: string, joint: string, from: number, to: number): NdtReport =>
  report(id, "PT", when, [stretch(joint, from, to, { row: repair })]);

/** Penetrant tests of the two excavations, before they were welded. */
export const penetrantReports: readonly NdtReport[] = [
  excavation("PT-01", ["2026-03-10", "11:20"], "C1R1", "C1", 3090, 3180),
  excavation("PT-02", ["2026-03-25", "09:20"], "N05R1", "N05", 12, 40),
];
