import { fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things, type Inputs, type Thing } from "../../model/input.ts";
import { atLeast, atMost, holds, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { span } from "../welding/thickness-range.ts";

const window = {
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
type Window = Thing<typeof window>;

/** Words that say which layer a run of a procedure is. */
const words: Readonly<Record<string, RegExp>> = {
  root: /root/iu,
  fill: /fill/iu,
  cap: /cap|cover|final/iu,
  full: /single|full/iu,
};

/** Windows of a procedure for a layer: those that name it, else all of the process. */
function windowsFor(all: readonly Window[], process: string, layer: string): readonly Window[] {
  const own = all.filter((one) => one.process === undefined || one.process === process);
  const word = words[layer];
  const layered = own.filter(({ name }) => word?.test(name) === true);
  return layered.length > 0 ? layered : own;
}

interface Reading {
  readonly field: "current" | "voltage" | "speed";
  readonly title: string;
  readonly value: Measure | undefined;
  readonly from: (one: Window) => Measure | undefined;
  readonly to: (one: Window) => Measure | undefined;
}

const isOutside = ({ value, from, to }: Reading, one: Window): boolean => {
  if (value === undefined) return false;
  const [low, high] = [from(one), to(one)];
  return (low !== undefined && atLeast(value, low) !== "yes") || (high !== undefined && atMost(value, high) !== "yes");
};

const isUnlimited = ({ value, from, to }: Reading, one: Window): boolean =>
  value !== undefined && from(one) === undefined && to(one) === undefined;

export const runInWindow = rule({
  id: "run-in-window",
  title:
    "A run is welded within one window of its procedure: current, voltage, travel speed and size of the filler, of the runs that name its layer, else of its process",
  basis: fromMemory("EN ISO 15609-1", "2019", "electrical parameters and travel speed of each run"),
  kind: "weld-log#runs",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    layer: text("layer"),
    process: text("process"),
    current: optional(quantity("current", "A")),
    voltage: optional(quantity("voltage", "V")),
    speed: optional(quantity("travelSpeed", "mm/min")),
    batches: anyOf(things("batches[]", { type: text("type"), diameter: optional(quantity("diameter", "mm")) })),
    procedure: thing("record.weldingProcedure", { windows: anyOf(things("runs[]", window)) }),
  },
  *check({ layer, process, current, voltage, speed, batches, procedure }, run) {
    const windows = windowsFor(procedure.windows, process, layer);
    const readings: readonly Reading[] = [
      {
        field: "current",
        title: "welding current",
        value: current,
        from: (one) => one.currentFrom,
        to: (one) => one.currentTo,
      },
      {
        field: "voltage",
        title: "arc voltage",
        value: voltage,
        from: (one) => one.voltageFrom,
        to: (one) => one.voltageTo,
      },
      { field: "speed", title: "travel speed", value: speed, from: (one) => one.speedFrom, to: (one) => one.speedTo },
    ];
    const measured = readings.filter(({ value }) => value !== undefined);
    if (measured.length > 0 && windows.length === 0) {
      yield {
        at: "process",
        on: procedure,
        accuses: [],
        name: `silent ${process}`,
        unsure: true,
        message: `${procedure.$.name} states no current, voltage or travel speed for process ${process}`,
        why: `measured for ${run.name}: ${measured.map(({ title, value }) => `${title} ${value?.text ?? ""}`).join(", ")}`,
        hint: "enter the runs of the procedure; if it states none, have it revised",
      };
      return;
    }
    // All that was measured must lie in one window: the one that is missed least says what is wrong.
    const outside = windows.map((one) => ({ one, far: measured.filter((reading) => isOutside(reading, one)) }));
    const [nearest] = [...outside].sort((a, b) => a.far.length - b.far.length);
    if (nearest === undefined) return;
    for (const { field, title, value, from, to } of nearest.far)
      yield {
        at: field,
        accuses: [field],
        name: field,
        message: `the ${title} of ${run.name} is ${value?.text ?? ""}; ${procedure.$.name} permits ${span(from(nearest.one), to(nearest.one))}`,
        why: `run "${nearest.one.name}" of the procedure`,
        hint: "compare with the weld log sheet; if it is true, have the weld judged by the welding coordinator and raise a nonconformity report",
        related: [{ at: nearest.one, message: "window stated here" }],
      };
    for (const reading of measured.filter((one) => isUnlimited(one, nearest.one)))
      yield {
        at: nearest.one,
        on: procedure,
        accuses: [],
        name: `no ${reading.field} ${nearest.one.name}`,
        unsure: true,
        message: `${procedure.$.name} states no ${reading.title} for run "${nearest.one.name}"`,
        why: `measured for ${run.name}: ${reading.value?.text ?? ""}`,
        hint: "enter the range from the procedure; if it states none, have it revised",
      };
    const sizes = windows.flatMap(({ diameter }) => diameter ?? []);
    for (const batch of batches) {
      const { diameter } = batch;
      if (diameter === undefined || sizes.length === 0 || sizes.some((one) => holds(diameter, "=", one) !== "no"))
        continue;
      yield {
        at: [batch, "diameter"],
        on: batch,
        accuses: [[batch, "diameter"]],
        name: "size",
        message: `batch ${batch.$.name} is ${diameter.text} thick; ${procedure.$.name} names ${[...new Set(sizes.map((one) => one.text))].join(", ")} for this layer`,
        why: `used in ${run.name}`,
        hint: "correct the batch in the weld log, or have the other size approved",
      };
    }
  },
  examples: [
    {
      name: "on the ends of its window",
      given: made({ current: "130 A", voltage: "21 V", speed: "190 mm/min" }),
      objections: [],
    },
    {
      name: "above the current",
      given: made({ current: "166 A" }),
      objections: ["the welding current of X-01 is 166 A; WPS-03 revision 2 permits 130 A to 165 A"],
    },
    {
      name: "root welded with the values of the fill",
      given: made({ current: "236 A", voltage: "27 V", speed: "280 mm/min" }),
      objections: [
        "the welding current of X-01 is 236 A; WPS-03 revision 2 permits 130 A to 165 A",
        "the arc voltage of X-01 is 27 V; WPS-03 revision 2 permits 18 V to 21 V",
        "the travel speed of X-01 is 280 mm/min; WPS-03 revision 2 permits 140 mm/min to 190 mm/min",
      ],
    },
    {
      name: "a layer the procedure does not name: any window of the process",
      given: made({ layer: "full", current: "236 A" }),
      objections: [],
    },
    {
      name: "each value in another window",
      given: made({ layer: "full", current: "236 A", voltage: "20 V" }),
      objections: ["the welding current of X-01 is 236 A; WPS-03 revision 2 permits 130 A to 165 A"],
    },
    { name: "nothing measured", given: made({}), objections: [] },
    {
      name: "no window at all",
      given: { ...made({ current: "150 A" }), procedure: { $: "WPS-03 revision 2" } },
      objections: ["WPS-03 revision 2 states no current, voltage or travel speed for process 135"],
    },
    {
      name: "a wire of another size",
      given: made({}, { $: "B-1", type: "wire", diameter: "1.0 mm" }),
      objections: ["batch B-1 is 1.0 mm thick; WPS-03 revision 2 names 1.2 mm for this layer"],
    },
    {
      name: "the wire it names, and gas",
      given: made({}, { type: "wire", diameter: "1.2 mm" }, { type: "shielding gas" }),
      objections: [],
    },
  ],
});

function made(own: Readonly<Record<string, string>>, ...batches: readonly Readonly<Record<string, string>>[]) {
  const ends = (name: string, [from, to]: readonly [string, string]) => ({ [`${name}From`]: from, [`${name}To`]: to });
  return {
    layer: "root",
    process: "135",
    ...own,
    batches,
    procedure: {
      $: "WPS-03 revision 2",
      windows: [
        {
          name: "root",
          process: "135",
          diameter: "1.2 mm",
          ...ends("current", ["130 A", "165 A"]),
          ...ends("voltage", ["18 V", "21 V"]),
          ...ends("speed", ["140 mm/min", "190 mm/min"]),
        },
        {
          name: "fill",
          process: "135",
          diameter: "1.2 mm",
          ...ends("current", ["215 A", "255 A"]),
          ...ends("voltage", ["25 V", "29 V"]),
          ...ends("speed", ["250 mm/min", "330 mm/min"]),
        },
      ],
    },
  };
}

/** A weld of one run is logged as one, and a weld of several runs as several. */
export const runLayers = rule({
  id: "run-layers",
  title: "A single-run weld is logged as one full run, a multi-run weld in layers",
  basis: ownChoice("the detail of a weld says how many runs it has; a log that says otherwise is another weld"),
  kind: "weld-log",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { layers: list(text("runs[].layer")), joint: thing("joint", { detail: text("detail") }) },
  *check({ layers, joint }, log) {
    const wrong =
      joint.detail === "sl" ? layers.some((one) => one !== "full") : joint.detail === "ml" && layers.length === 1;
    if (wrong)
      yield {
        at: "layers",
        message: `weld log ${log.name} has ${layers.join(", ")}; joint ${joint.$.name} is a ${joint.detail === "sl" ? "single-run" : "multi-run"} weld`,
        why: "the procedure test for the one does not cover the other",
        hint: "correct the layers of the log, or the detail of the joint",
        related: [{ at: [joint, "detail"], message: "detail of the joint" }],
      };
  },
  examples: [
    { name: "one run", given: { layers: ["full"], joint: { detail: "sl" } }, objections: [] },
    { name: "a butt weld in one run", given: { layers: ["full"], joint: { detail: "ss nb" } }, objections: [] },
    { name: "layers", given: { layers: ["root", "cap"], joint: { detail: "ml" } }, objections: [] },
    {
      name: "layers of a single-run weld",
      given: { layers: ["root", "cap"], joint: { $: "A5", detail: "sl" } },
      objections: ["weld log X-01 has root, cap; joint A5 is a single-run weld"],
    },
    {
      name: "one run of a multi-run weld",
      given: { layers: ["full"], joint: { $: "S11", detail: "ml" } },
      objections: ["weld log X-01 has full; joint S11 is a multi-run weld"],
    },
  ],
});
