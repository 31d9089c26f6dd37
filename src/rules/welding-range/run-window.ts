import { fromMemory } from "../../model/basis.ts";
import { anyOf, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { span } from "../welding/thickness-range.ts";
import { fields, measured, outside, permitted, titles, window, windowsFor, type Field } from "./windows.ts";

const ids = {
  current: "run-current-in-window",
  voltage: "run-voltage-in-window",
  speed: "run-travel-speed-in-window",
} as const;

/** All that was measured must lie in one window: the one that is missed least says what is wrong. */
const inWindow = (field: Field) =>
  rule({
    id: ids[field],
    title: `The ${titles[field]} of a run lies within the window of its procedure that all its values fit best: of the runs that name its layer, else of its process`,
    basis: fromMemory("EN ISO 15609-1", "2019", "electrical parameters and travel speed of each run"),
    kind: "weld-log#runs",
    when: [{ path: measured[field].path, exists: true }],
    severity: "nonconformity",
    owner: "welding coordination",
    inputs: {
      layer: text("layer"),
      process: text("process"),
      ...measured,
      procedure: thing("record.weldingProcedure", { windows: anyOf(things("runs[]", window)) }),
    },
    *check(values, run) {
      const { layer, process, procedure } = values;
      const value = values[field];
      if (value === undefined) return;
      const windows = windowsFor(procedure.windows, process, layer);
      const [nearest] = [...windows].sort((a, b) => outside(values, a).length - outside(values, b).length);
      const [from, to] = nearest === undefined ? [] : permitted(nearest, field);
      if (nearest !== undefined && outside(values, nearest).includes(field))
        yield {
          at: field,
          accuses: [field],
          message: `the ${titles[field]} of ${run.name} is ${value.text}; ${procedure.$.name} permits ${span(from, to)}`,
          why: `run "${nearest.name}" of the procedure`,
          hint: "compare with the weld log sheet; if it is true, have the weld judged by the welding coordinator and raise a nonconformity report",
          related: [{ at: nearest, message: "window stated here" }],
        };
      else if (from === undefined && to === undefined)
        yield {
          at: nearest ?? "process",
          on: procedure,
          accuses: [],
          name: nearest === undefined ? `silent ${process}` : `silent ${nearest.name}`,
          unsure: true,
          message: `${procedure.$.name} states no ${titles[field]} for ${nearest === undefined ? `process ${process}` : `run "${nearest.name}"`}`,
          why: `measured for ${run.name}: ${value.text}`,
          hint: "enter the range from the procedure; if it states none, have it revised",
        };
    },
    examples: examples[field],
  });

const onEnds = { current: "130 A", voltage: "21 V", speed: "190 mm/min" };
const asFill = { current: "236 A", voltage: "27 V", speed: "280 mm/min" };
const fits = (field: Field) => [
  { name: "on the ends of its window", given: made(onEnds), objections: [] },
  {
    name: "no window at all",
    given: { ...made(onEnds), procedure: { $: "WPS-03 revision 2" } },
    objections: [`WPS-03 revision 2 states no ${titles[field]} for process 135`],
  },
  {
    name: "a window that does not name it",
    given: { ...made(onEnds), procedure: { $: "WPS-03 revision 2", windows: [{ name: "root" }] } },
    objections: [`WPS-03 revision 2 states no ${titles[field]} for run "root"`],
  },
];
const examples = {
  current: [
    ...fits("current"),
    {
      name: "above it",
      given: made({ current: "166 A" }),
      objections: ["the welding current of X-01 is 166 A; WPS-03 revision 2 permits 130 A to 165 A"],
    },
    {
      name: "root welded with the values of the fill",
      given: made(asFill),
      objections: ["the welding current of X-01 is 236 A; WPS-03 revision 2 permits 130 A to 165 A"],
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
  ],
  voltage: [
    ...fits("voltage"),
    {
      name: "root welded with the values of the fill",
      given: made(asFill),
      objections: ["the arc voltage of X-01 is 27 V; WPS-03 revision 2 permits 18 V to 21 V"],
    },
  ],
  speed: [
    ...fits("speed"),
    {
      name: "root welded with the values of the fill",
      given: made(asFill),
      objections: ["the travel speed of X-01 is 280 mm/min; WPS-03 revision 2 permits 140 mm/min to 190 mm/min"],
    },
  ],
};

export const runsInWindow: readonly Rule[] = fields.map(inWindow);

function made(own: Readonly<Record<string, string>>) {
  const ends = (name: string, [from, to]: readonly [string, string]) => ({ [`${name}From`]: from, [`${name}To`]: to });
  return {
    layer: "root",
    process: "135",
    ...own,
    procedure: {
      $: "WPS-03 revision 2",
      windows: [
        {
          name: "root",
          process: "135",
          ...ends("current", ["130 A", "165 A"]),
          ...ends("voltage", ["18 V", "21 V"]),
          ...ends("speed", ["140 mm/min", "190 mm/min"]),
        },
        {
          name: "fill",
          process: "135",
          ...ends("current", ["215 A", "255 A"]),
          ...ends("voltage", ["25 V", "29 V"]),
          ...ends("speed", ["250 mm/min", "330 mm/min"]),
        },
      ],
    },
  };
}
