import type { WeldLog } from "../../generated/records.ts";
import { logOf, type Log } from "../../order/making/weld-logs.ts";

const shell = { procedure: "WPS-10@1", process: "135", welder: "W03" } as const;
const branch = { procedure: "WPS-05@1", process: "141", welder: "W03" } as const;

/** One welder, at hours at which the receiver needed neither him nor the clamp meter. */
export const weldLogs: readonly WeldLog[] = (
  [
    {
      ...shell,
      joint: "L1",
      day: "2026-05-29",
      from: "08:20",
      to: "09:30",
      gap: "2.5 mm",
      offset: "0.3 mm",
      runs: [
        ["root", 149, 19.6, 157],
        ["fill", 234, 27.3, 284, 139],
        ["cap", 237, 27.5, 279, 163],
      ],
    },
    {
      ...shell,
      joint: "C1",
      day: "2026-06-04",
      from: "08:05",
      to: "10:50",
      gap: "2.4 mm",
      offset: "0.5 mm",
      runs: [
        ["root", 150, 19.7, 156],
        ["fill", 236, 27.4, 287, 168],
        ["cap", 234, 27.3, 293, 191],
      ],
    },
    {
      ...shell,
      joint: "C2",
      day: "2026-06-05",
      from: "08:00",
      to: "10:40",
      gap: "2.5 mm",
      offset: "0.4 mm",
      runs: [
        ["root", 151, 19.8, 154],
        ["fill", 235, 27.3, 285, 172],
        ["cap", 238, 27.5, 281, 194],
      ],
    },
    {
      ...branch,
      joint: "N01",
      day: "2026-06-05",
      from: "12:30",
      to: "13:40",
      gap: "1.8 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 119, 12.2, 59],
        ["fill", 138, 12.9, 60, 138],
        ["cap", 140, 13.0, 61, 152],
      ],
    },
    {
      ...branch,
      joint: "N02",
      day: "2026-06-05",
      from: "14:00",
      to: "15:10",
      gap: "1.9 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 118, 12.3, 60],
        ["fill", 139, 12.9, 61, 141],
        ["cap", 141, 13.0, 60, 155],
      ],
    },
    {
      ...branch,
      joint: "N03",
      day: "2026-06-08",
      from: "10:50",
      to: "11:55",
      gap: "1.8 mm",
      offset: "0.3 mm",
      runs: [
        ["root", 120, 12.3, 59],
        ["fill", 140, 13.0, 61, 136],
        ["cap", 139, 13.0, 58, 151],
      ],
    },
    {
      ...branch,
      joint: "N04",
      day: "2026-06-08",
      from: "14:55",
      to: "16:05",
      gap: "1.8 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 119, 12.2, 58],
        ["fill", 138, 12.9, 59, 140],
        ["cap", 140, 13.1, 57, 157],
      ],
    },
  ] satisfies readonly Log[]
).map(logOf);
