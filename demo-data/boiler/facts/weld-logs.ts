import type { Joint, WeldLog } from "../../generated/records.ts";
import { at, clock, minutes } from "./calendar.ts";
import { laterWire } from "./consumables.ts";
import { setOf } from "./instruments.ts";
import { joints } from "./joints.ts";
import { spread } from "../../shop/spread.ts";
import { lastSession, schedule, type Welding } from "./weld-schedule.ts";
import { windowsOf, type Layer, type Process, type Range, type Window } from "./weld-techniques.ts";

type Run = NonNullable<WeldLog["runs"]>[number];

/** Share of the arc energy that enters the work, as the procedures count it. */
const efficiency: Readonly<Record<Process, number>> = { "121": 1, "135": 0.8, "141": 0.6 };

/** Batches a process was fed from on a day. */
function batchesOf(process: Process, day: string): string[] {
  if (process === "121") return ["B-2131", "B-2132"];
  if (process === "141") return ["B-2134", "B-2136"];
  return [day >= laterWire.from ? laterWire.batch : "B-2133", "B-2135"];
}

/** Layers a joint takes: a thin fillet is one run, plates up to a bead on each side take no fill. */
function layersOf({ detail, depositedThickness = "" }: Joint, process: Process): readonly Layer[] {
  if (detail === "sl") return ["full"];
  if (detail === "ml") return ["root", "cap"];
  const size = Number.parseFloat(depositedThickness);
  const filled = process === "121" ? size > 14 : size > 6;
  return filled ? ["root", "fill", "cap"] : ["root", "cap"];
}

/** A reading in the middle part of what the procedure permits. */
const within = ([least, most]: Range, share: number): number => least + (most - least) * share;

interface Moment {
  readonly start: string;
  readonly finished: string | undefined;
}

/** When each layer was begun, and when the joint was finished; a second session holds the last layer alone. */
function moments(welding: Welding, layers: readonly Layer[]): readonly Moment[] {
  const [first] = welding.sessions;
  const last = lastSession(welding);
  if (first === undefined) return [];
  const shared = first === last ? layers.length : layers.length - 1;
  const step = (minutes(first.to) - minutes(first.from)) / shared;
  return layers.map((_, index) => {
    const ends = index === layers.length - 1;
    const start =
      index < shared
        ? at(first.day, clock(5 * Math.round((minutes(first.from) + index * step) / 5)))
        : at(last.day, last.from);
    return { start, finished: ends ? at(last.day, last.to) : undefined };
  });
}

/** What each layer fills of a joint, in mm: a root and a cap of 4, and the rest between. */
function depositOf({ depositedThickness = "" }: Joint, layer: Layer): string {
  const size = Number.parseFloat(depositedThickness);
  return `${(layer === "fill" ? size - 8 : 4).toFixed(1)} mm`;
}

/** One layer as it was logged; the heat input follows from the rounded readings beside it. */
function runOf(joint: Joint, welding: Welding, layer: Window, { start, finished }: Moment): Run {
  const share = (reading: string) => spread(`${joint.id} ${layer.layer} ${reading}`, 0.3, 0.7);
  const current = Math.round(within(layer.current, share("current")));
  const voltage = within(layer.voltage, share("voltage")).toFixed(1);
  const speed = Math.round(within(layer.speed, share("speed")));
  const heat = (efficiency[layer.process] * Number(voltage) * current * 60) / (1000 * speed);
  const heated = joint.weldingProcedure === "WPS-17@1";
  const preheat = Math.round(heated ? spread(joint.id, 54, 68) : spread(joint.id, 16, 21));
  const interpass = Math.round(spread(`${joint.id} ${layer.layer} interpass`, 118, 188));
  return {
    layer: layer.layer,
    process: layer.process,
    ...(joint.positions?.[0] !== undefined && { position: joint.positions[0] }),
    welders: [...welding.welders],
    date: start,
    ...(finished !== undefined && { finished }),
    batches: batchesOf(layer.process, start.slice(0, 10)),
    ...(welding.welders.length > 1 && { depositedThickness: depositOf(joint, layer.layer) }),
    preheat: `${preheat} °C`,
    ...(layer.layer !== "root" && layer.layer !== "full" && { interpass: `${interpass} °C` }),
    current: `${current} A`,
    voltage: `${voltage} V`,
    travelSpeed: `${speed} mm/min`,
    heatInput: `${heat.toFixed(2)} kJ/mm`,
    instruments: [...new Set(welding.welders.flatMap(setOf))].sort((one, other) => other.localeCompare(one)),
  };
}

/** Gap of the joint as fitted, in mm: seams are closed, what is welded from one side stands open. */
function gapOf({ id, type }: Joint, process: Process): number {
  if (type === "fillet" || type === "attachment") return spread(`${id} gap`, 0, 0.8);
  return process === "121" ? spread(`${id} gap`, 0.2, 0.8) : spread(`${id} gap`, 1.8, 2.9);
}

function logOf(joint: Joint): WeldLog {
  const { id, weldingProcedure = "" } = joint;
  const welding = schedule.find((one) => one.joint === id);
  if (welding === undefined) throw new Error(`nobody welded joint ${id}`);
  const windows = windowsOf(weldingProcedure);
  const process = windows[0]?.process ?? "135";
  const layers = layersOf(joint, process);
  const times = moments(welding, layers);
  const day = welding.sessions[0]?.day ?? "";
  const last = lastSession(welding).day;
  const operated = process === "121";
  return {
    id: `WL-${id}`,
    joint: id,
    weldingProcedure,
    fitUp: {
      date: day,
      by: "M1",
      accepted: true,
      gap: `${gapOf(joint, process).toFixed(1)} mm`,
      ...(joint.type === "butt" && { offset: `${spread(`${id} offset`, 0.2, 0.8).toFixed(1)} mm` }),
    },
    runs: layers.flatMap((layer, index) => {
      const window = windows.find((one) => one.layer === layer);
      const moment = times[index];
      return window === undefined || moment === undefined ? [] : [runOf(joint, welding, window, moment)];
    }),
    signatures: [
      ...welding.welders.map((person) => ({
        ...(welding.welders.length > 1 && { row: `welder ${person}` }),
        role: operated ? ("welding operator" as const) : ("welder" as const),
        person,
        date: last,
      })),
      { role: "welding coordinator", person: "M1", date: last },
    ],
  };
}

/** The log of every joint, in the order of the weld map. */
export const weldLogs: readonly WeldLog[] = joints.map(logOf);
