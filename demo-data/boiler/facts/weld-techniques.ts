import type { WeldLog } from "../../generated/records.ts";

export type Layer = NonNullable<WeldLog["runs"]>[number]["layer"];
export type Process = "121" | "135" | "141";
export type Range = readonly [minimum: number, maximum: number];

/** Current in A, voltage in V and travel speed in mm/min that a procedure permits in one layer. */
export interface Window {
  readonly layer: Layer;
  readonly process: Process;
  readonly filler: "4.0 mm" | "1.2 mm" | "2.4 mm";
  readonly current: Range;
  readonly voltage: Range;
  readonly speed: Range;
}

const window =
  (process: Process, filler: Window["filler"]) =>
  (layer: Layer, current: Range, voltage: Range, speed: Range): Window => ({
    layer,
    process,
    filler,
    current,
    voltage,
    speed,
  });

const arc = window("121", "4.0 mm");
const active = window("135", "1.2 mm");
const tungsten = window("141", "2.4 mm");

/** Runs of each procedure: what its sheet permits is what the log is kept to. */
export const windows: Readonly<Record<string, readonly Window[]>> = {
  "WPS-11": [
    arc("root", [520, 600], [30, 33], [480, 560]),
    arc("fill", [580, 660], [31, 34], [480, 560]),
    arc("cap", [580, 660], [31, 34], [480, 560]),
  ],
  "WPS-12": [
    active("root", [140, 170], [19, 21], [140, 180]),
    active("fill", [220, 260], [26, 29], [260, 340]),
    active("cap", [220, 260], [26, 29], [260, 340]),
  ],
  "WPS-13": [
    active("root", [140, 170], [19, 21], [140, 180]),
    active("cap", [200, 240], [25, 28], [240, 320]),
    tungsten("full", [110, 150], [11, 15], [55, 90]),
  ],
  "WPS-14": [
    active("root", [140, 170], [19, 21], [140, 180]),
    active("fill", [200, 240], [25, 28], [240, 320]),
    active("cap", [200, 240], [25, 28], [240, 320]),
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
    active("root", [220, 260], [25, 29], [300, 400]),
    active("fill", [220, 260], [25, 29], [300, 400]),
    active("cap", [220, 260], [25, 29], [300, 400]),
  ],
  "WPS-18": [
    active("full", [160, 200], [20, 24], [380, 480]),
    active("root", [220, 260], [25, 29], [300, 400]),
    active("cap", [220, 260], [25, 29], [300, 400]),
  ],
  "WPS-19": [tungsten("root", [90, 120], [10, 13], [55, 80]), tungsten("cap", [100, 135], [11, 14], [60, 90])],
};

/** Where a procedure permits what, by the number of the procedure without its revision. */
export function windowsOf(procedure: string): readonly Window[] {
  const found = windows[procedure.split("@")[0] ?? ""];
  if (found === undefined) throw new Error(`the facts know no runs of ${procedure}`);
  return found;
}
