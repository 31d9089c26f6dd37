import { optional, quantity, text, type Inputs, type Thing } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";

export const window = {
  name: text("run"),
  process: optional(text("process")),
  diameter: optional(quantity("fillerDiameter", "mm")),
  currentFrom: optional(quantity("current.minimum", "A")),
  currentTo: optional(quantity("current.maximum", "A")),
  voltageFrom: optional(quantity("voltage.minimum", "V")),
  voltageTo: optional(quantity("voltage.maximum", "V")),
  speedFrom: optional(quantity("travelSpeed.minimum", "mm/min")),
  speedTo: optional(quantity("travelSpeed.maximum", "mm/min")),
} satisfies Inputs;
export type Window = Thing<typeof window>;

/** Words that say which layer a run of a procedure is. */
const words: Readonly<Record<string, RegExp>> = {
  root: /root/iu,
  fill: /fill/iu,
  cap: /cap|cover|final/iu,
  full: /single|full/iu,
};

/** Runs of a procedure for a layer: those that name it, else all of the process. */
export function windowsFor<Run extends Pick<Window, "name" | "process">>(
  all: readonly Run[],
  process: string,
  layer?: string,
): readonly Run[] {
  const own = all.filter((one) => one.process === undefined || one.process === process);
  const word = layer === undefined ? undefined : words[layer];
  const layered = own.filter(({ name }) => word?.test(name) === true);
  return layered.length > 0 ? layered : own;
}

/** Values of a run as they were measured. */
export const measured = {
  current: optional(quantity("current", "A")),
  voltage: optional(quantity("voltage", "V")),
  speed: optional(quantity("travelSpeed", "mm/min")),
} satisfies Inputs;
export type Field = keyof typeof measured;
export type Measured = Readonly<Partial<Record<Field, Measure | undefined>>>;

export const fields = ["current", "voltage", "speed"] as const satisfies readonly Field[];
/** As sentences call them. */
export const titles: Readonly<Record<Field, string>> = {
  current: "welding current",
  voltage: "arc voltage",
  speed: "travel speed",
};

/** What a window permits of a value. */
export function permitted(one: Window, field: Field): readonly [from: Measure | undefined, to: Measure | undefined] {
  switch (field) {
    case "current":
      return [one.currentFrom, one.currentTo];
    case "voltage":
      return [one.voltageFrom, one.voltageTo];
    case "speed":
      return [one.speedFrom, one.speedTo];
  }
}

/** What was measured and lies outside of a window. */
export const outside = (values: Measured, one: Window): readonly Field[] =>
  fields.filter((field) => {
    const value = values[field];
    const [low, high] = permitted(one, field);
    return (
      value !== undefined &&
      ((low !== undefined && atLeast(value, low) !== "yes") || (high !== undefined && atMost(value, high) !== "yes"))
    );
  });
