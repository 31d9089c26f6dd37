import type { WeldLog } from "../../generated/records.ts";

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
    instruments: ["WM-02", "TH-06"],
  };
}

export interface Log {
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

/** The log of a joint that one welder finished in a day. */
export const logOf = ({ joint, procedure, process, welder, day, from, to, gap, offset, runs }: Log): WeldLog => ({
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
