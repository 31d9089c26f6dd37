import type { WeldLog } from "../../../src/generated/records.ts";

type Run = NonNullable<WeldLog["runs"]>[number];
type Process = "135" | "141";

/** Share of the arc energy that enters the work, as the procedures count it. */
const efficiency: Readonly<Record<Process, number>> = { "135": 0.8, "141": 0.6 };
const supplied: Readonly<Record<Process, readonly string[]>> = {
  "135": ["B-2217", "B-2230"],
  "141": ["B-2219", "B-2231"],
};

/** Layer, current in A, voltage in V, travel speed in mm/min, highest interpass temperature in °C. */
type Measured = readonly [
  layer: "root" | "fill" | "cap",
  current: number,
  voltage: number,
  speed: number,
  interpass?: number,
];

function runOf(
  process: Process,
  welder: string,
  date: string,
  finished: string,
  measured: Measured,
  last: boolean,
): Run {
  const [layer, current, voltage, speed, interpass] = measured;
  const heat = (efficiency[process] * voltage * current * 60) / (1000 * speed);
  return {
    layer,
    process,
    position: "PA",
    welders: [welder],
    date,
    ...(last && { finished }),
    batches: [...supplied[process]],
    preheat: "18 °C",
    ...(interpass !== undefined && { interpass: `${interpass} °C` }),
    current: `${current} A`,
    voltage: `${voltage.toFixed(1)} V`,
    travelSpeed: `${speed} mm/min`,
    heatInput: `${heat.toFixed(2)} kJ/mm`,
    instruments: ["WM-02"],
  };
}

interface Log {
  readonly joint: string;
  readonly procedure: string;
  readonly process: Process;
  readonly welder: string;
  readonly day: string;
  readonly from: string;
  readonly to: string;
  readonly gap: string;
  readonly offset: string;
  readonly runs: readonly Measured[];
}

const logOf = ({ joint, procedure, process, welder, day, from, to, gap, offset, runs }: Log): WeldLog => ({
  id: `WL-${joint}`,
  joint,
  weldingProcedure: procedure,
  fitUp: { date: day, by: "M1", accepted: true, gap, offset },
  runs: runs.map((measured, index) =>
    runOf(process, welder, `${day}T${from}+02:00`, `${day}T${to}+02:00`, measured, index === runs.length - 1),
  ),
  signatures: [
    { role: "welder", person: welder, date: day },
    { role: "welding coordinator", person: "M1", date: day },
  ],
});

const shell = { procedure: "WPS-03@2", process: "135" } as const;
const branch = { procedure: "WPS-05@1", process: "141", welder: "W03" } as const;

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
      day: "2026-06-10",
      from: "08:10",
      to: "09:50",
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
      day: "2026-06-10",
      from: "12:45",
      to: "14:00",
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
      from: "08:20",
      to: "09:35",
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
