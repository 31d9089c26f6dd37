import type { WeldLog } from "../../generated/records.ts";
import { logOf, type Log } from "../../order/making/weld-logs.ts";

const shell = { procedure: "WPS-03@2", process: "135" } as const;
const branch = { procedure: "WPS-05@1", process: "141", welder: "W03" } as const;

/**
 * One clamp meter serves one welder at a time, and while a round seam turns under the torch nobody welds elsewhere on the
 * vessel. Films are exposed before the shift or between two welds: then nobody welds in the hall.
 */
export const weldLogs: readonly WeldLog[] = (
  [
    {
      ...shell,
      joint: "L1",
      welder: "W03",
      day: "2026-05-27",
      from: "08:10",
      to: "11:40",
      gap: "2.5 mm",
      offset: "0.4 mm",
      runs: [
        ["root", 150, 19.6, 158],
        ["fill", 236, 27.4, 282, 148],
        ["cap", 238, 27.6, 276, 171],
      ],
    },
    {
      ...shell,
      joint: "L2",
      welder: "W03",
      day: "2026-05-28",
      from: "08:05",
      to: "11:30",
      gap: "2.5 mm",
      offset: "0.5 mm",
      runs: [
        ["root", 152, 19.8, 155],
        ["fill", 240, 27.5, 275, 152],
        ["cap", 242, 27.8, 271, 176],
      ],
    },
    {
      ...shell,
      joint: "C1",
      welder: "W03",
      day: "2026-06-03",
      from: "07:30",
      to: "14:50",
      gap: "2.6 mm",
      offset: "0.7 mm",
      runs: [
        ["root", 151, 19.7, 157],
        ["fill", 238, 27.5, 286, 161],
        ["cap", 235, 27.4, 297, 182],
      ],
    },
    {
      ...shell,
      joint: "C2",
      welder: "W07",
      day: "2026-06-09",
      from: "07:40",
      to: "15:20",
      gap: "2.4 mm",
      offset: "0.8 mm",
      runs: [
        ["root", 150, 19.8, 155],
        ["fill", 236, 27.3, 286, 158],
        ["cap", 238, 27.4, 282, 184],
      ],
    },
    {
      ...shell,
      joint: "C3",
      welder: "W07",
      day: "2026-06-10",
      from: "07:35",
      to: "15:05",
      gap: "2.5 mm",
      offset: "0.6 mm",
      runs: [
        ["root", 152, 19.9, 153],
        ["fill", 234, 27.2, 286, 163],
        ["cap", 240, 27.6, 274, 187],
      ],
    },
    {
      ...branch,
      joint: "N01",
      day: "2026-06-08",
      from: "08:00",
      to: "10:20",
      gap: "2.0 mm",
      offset: "0.3 mm",
      runs: [
        ["root", 124, 12.6, 64],
        ["fill", 150, 13.4, 62, 132],
        ["cap", 148, 13.5, 64, 158],
      ],
    },
    {
      ...branch,
      joint: "N02",
      day: "2026-06-08",
      from: "12:30",
      to: "14:45",
      gap: "2.0 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 126, 12.6, 60],
        ["fill", 150, 13.5, 64, 128],
        ["cap", 152, 13.6, 62, 155],
      ],
    },
    {
      ...branch,
      joint: "N03",
      day: "2026-06-11",
      from: "08:50",
      to: "10:25",
      gap: "2.0 mm",
      offset: "0.3 mm",
      runs: [
        ["root", 124, 12.5, 61],
        ["fill", 146, 13.3, 63, 141],
        ["cap", 149, 13.4, 61, 162],
      ],
    },
    {
      ...branch,
      joint: "N04",
      day: "2026-06-11",
      from: "12:30",
      to: "13:45",
      gap: "1.8 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 118, 12.2, 60],
        ["fill", 138, 12.9, 61, 137],
        ["cap", 140, 13.0, 62, 150],
      ],
    },
    {
      ...branch,
      joint: "N05",
      day: "2026-06-11",
      from: "14:00",
      to: "15:15",
      gap: "1.8 mm",
      offset: "0.2 mm",
      runs: [
        ["root", 120, 12.3, 58],
        ["fill", 139, 12.9, 60, 135],
        ["cap", 141, 13.1, 56, 154],
      ],
    },
    {
      joint: "N06",
      procedure: "WPS-04@1",
      process: "135",
      welder: "W03",
      day: "2026-06-12",
      from: "07:50",
      to: "11:10",
      gap: "2.6 mm",
      offset: "0.5 mm",
      runs: [
        ["root", 154, 19.8, 157],
        ["fill", 238, 27.5, 290, 166],
        ["cap", 242, 27.9, 270, 189],
      ],
    },
  ] satisfies readonly Log[]
).map(logOf);
