import type { NdtReport } from "../../../src/generated/records.ts";
import { filmsOf, report, whole } from "../../order/making/reports.ts";
import { joints, stamp } from "./vessel.ts";

const film = filmsOf(stamp);
const lengthOf = (id: string) => joints.find((joint) => joint.id === id)?.length ?? "";
const all = (...ids: readonly string[]) => ids.map((id) => whole(id, lengthOf(id)));

/** L1 is shorter than a film; the films of the circumferential seams lie across its ends. */
export const ndtReports: readonly NdtReport[] = [
  report("VT-01", "VT", "2026-06-10T13:00", all("L1", "C1", "C2", "N01", "N02", "N03", "N04")),
  report("RT-01", "RT", "2026-06-11T10:30", [
    film("L1", 1, 0, 245, ["2.6", "3.1"]),
    film("C1", 1, 290, 530, ["2.5", "3.0"]),
    film("C2", 1, 290, 530, ["2.6", "3.2"]),
  ]),
  report("PT-01", "PT", "2026-06-10T15:00", all("N01", "N02", "N03", "N04")),
];
