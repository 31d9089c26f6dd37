import type { NdtReport } from "../../generated/records.ts";
import { lengthOf, report, stretch, type Row, type When } from "./test-report.ts";

/** Every joint over its whole length. */
const seen = (id: string, when: When, joints: readonly string[], ...repaired: readonly Row[]): NdtReport =>
  report(id, "VT", when, [...joints.map((joint) => stretch(joint, 0, lengthOf(joint))), ...repaired]);

const again = (repair: string, joint: string, from: number, to: number): Row =>
  stretch(joint, from, to, { row: repair, repair });

const numbered = (letter: string, ...numbers: readonly number[]) =>
  numbers.map((number) => `${letter}${String(number).padStart(2, "0")}`);

/** Visual tests, grouped by the day the tester was in the shop. */
export const visualReports: readonly NdtReport[] = [
  seen("VT-01", ["2026-03-03", "09:00"], ["L1", "L2"]),
  seen("VT-02", ["2026-03-05", "08:30"], ["C1"]),
  seen("VT-03", ["2026-03-09", "09:10"], numbered("F", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13)),
  seen("VT-04", ["2026-03-11", "09:00"], ["FS1", "FS2", "WL1"], again("C1R1", "C1", 3050, 3220)),
  seen("VT-05", ["2026-03-17", "09:20"], ["FC1", "FC2", "K3", "K4", "N01", "N02", "N03"]),
  seen("VT-06", ["2026-03-19", "08:10"], ["K2", "K5", ...numbered("N", 10, 11, 12, 13)]),
  seen("VT-07", ["2026-03-24", "08:00"], ["K1", "M01", ...numbered("N", 4, 5, 6, 7, 8, 9)]),
  seen("VT-08", ["2026-03-26", "08:20"], ["E1"], again("N05R1", "N05", 5, 50)),
  seen("VT-09", ["2026-04-07", "08:10"], ["E2", "K6"]),
  seen("VT-10", ["2026-04-14", "08:10"], ["S11", "S12", "S13", "S21", "S22", "S23", "S31", "S32"]),
  seen("VT-11", ["2026-04-20", "13:40"], ["A1", "A2", "A3", "A4", "A5"]),
];
