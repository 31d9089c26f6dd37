import type { WeldLog } from "../../generated/records.ts";

export type Layer = NonNullable<WeldLog["runs"]>[number]["layer"];
export type Process = "121" | "135" | "141";
export type Range = readonly [minimum: number, maximum: number];

/** Current in A, voltage in V and travel speed in mm/min that a procedure permits in one layer. */
export interface Window {
  readonly layer: Layer;
  readonly process: Process;
  /** How drops go over, of gas metal arc processes. */
  readonly transferMode?: "dip" | "spray";
  readonly filler: "4.0 mm" | "1.2 mm" | "2.4 mm";
  readonly current: Range;
  readonly voltage: Range;
  readonly speed: Range;
}

const window =
  (process: Process, filler: Window["filler"], transferMode?: Window["transferMode"]) =>
  (layer: Layer, current: Range, voltage: Range, speed: Range): Window => ({
    layer,
    process,
    ...(transferMode !== undefined && { transferMode }),
    filler,
    current,
    voltage,
    speed,
  });

const arc = window("121", "4.0 mm");
const short = window("135", "1.2 mm", "dip");
const spray = window("135", "1.2 mm", "spray");
const tungsten = window("141", "2.4 mm");

/** Runs of each procedure: what its sheet permits is what the log is kept to. */
export const windows: Readonly<Record<string, readonly Window[]>> = {
  "WPS-11": [
    arc("root", [520, 600], [30, 33], [480, 560]),
    arc("fill", [580, 660], [31, 34], [480, 560]),
    arc("cap", [580, 660], [31, 34], [480, 560]),
  ],
  "WPS-12": [
    short("root", [140, 170], [19, 21], [140, 180]),
    spray("fill", [220, 260], [26, 29], [260, 340]),
    spray("cap", [220, 260], [26, 29], [260, 340]),
  ],
  "WPS-13": [
    short("root", [140, 170], [19, 21], [140, 180]),
    spray("cap", [220, 260], [25, 28], [260, 340]),
    tungsten("full", [110, 150], [11, 15], [55, 90]),
  ],
  "WPS-14": [
    short("root", [140, 170], [19, 21], [140, 180]),
    spray("fill", [220, 260], [25, 28], [260, 340]),
    spray("cap", [220, 260], [25, 28], [260, 340]),
  ],
  "WPS-15": [
    tungsten("root", [110, 140], [11, 14], [55, 80]),
    tungsten("fill", [130, 165], [12, 15], [60, 90]),
    tungsten("cap", [130, 165], [12, 15], [60, 90]),
  ],
  "WPS-16": [
    tungsten("root", [80, 120], [10, 13], [50, 80]),
    tungsten("fill", [100, 140], [11, 14], [60, 90]),
    tungsten("cap", [100, 140], [11, 14], [60, 90]),
  ],
  "WPS-17": [
    spray("root", [220, 260], [25, 29], [300, 400]),
    spray("fill", [220, 260], [25, 29], [300, 400]),
    spray("cap", [220, 260], [25, 29], [300, 400]),
  ],
  "WPS-18": [
    spray("full", [220, 250], [25, 28], [480, 620]),
    spray("root", [220, 260], [25, 29], [300, 400]),
    spray("cap", [220, 260], [25, 29], [300, 400]),
  ],
  "WPS-19": [tungsten("root", [90, 120], [10, 13], [55, 80]), tungsten("cap", [100, 135], [11, 14], [60, 90])],
};

/** Where a procedure permits what, by the number of the procedure without its revision. */
export function windowsOf(procedure: string): readonly Window[] {
  const found = windows[procedure.split("@")[0] ?? ""];
  if (found === undefined) throw new Error(`the facts know no runs of ${procedure}`);
  return found;
}
