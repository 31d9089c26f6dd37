import { fromMemory } from "../../model/basis.ts";
import { anyOf, date, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { modesOf, transferOfRun } from "../welding-range/transfer.ts";
import { depositedBy, runOfLog } from "./deposited.ts";
import { laid, pipes, run, twoModes } from "./welder-examples.ts";
import { fillerBatch, joint, months, objectionsTo, weldAt, welder } from "./welder-fault.ts";
import { welderRanges } from "./welder-range.ts";
import { periodsOf } from "./welder-validity.ts";
import { owedBy } from "../../model/owes.ts";

export const welderQualified = rule({
  id: "welder-qualified",
  title:
    "A weld is made by a welder qualified for it on that day: by what all his runs of the process deposited on that side; where they do not state it, by the joint's thickness as stated, for the upper end of his range only",
  basis: fromMemory("EN ISO 9606-1", "2017", "ranges of qualification and period of validity; operators: EN ISO 14732"),
  kind: "weld-log#runs",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    ...welderRanges,
    day: date("date"),
    process: text("process"),
    layer: text("layer"),
    position: optional(text("position")),
    side: optional(text("side")),
    runs: list(thing("record.runs[]", runOfLog)),
    fillers: anyOf(list(text("batches[].fillerGroup"))),
    batches: anyOf(things("batches[]", fillerBatch)),
    transferModes: anyOf(list(text("record.weldingProcedure.transferModes[]"))),
    windows: anyOf(things("record.weldingProcedure.runs[]", transferOfRun)),
    welders: list(thing("welders[]", welder)),
    joint: thing("record.joint", joint),
  },
  owes: [owedBy("welding coordination", "welding", "welders.qualifications")],
  *check(values) {
    const { day, process, layer, position, side, runs, fillers, welders, joint: at } = values;
    const over = layer === "fill" || layer === "cap";
    const used = { batches: values.batches, transferModes: modesOf(values) };
    const weldOf = (welder: string) =>
      weldAt(at, process, depositedBy(runs, welder, process, side), over, fillers, used);
    for (const objection of objectionsTo(
      welders,
      (who) => weldOf(who.$.id),
      position === undefined ? at.positions : [position],
      day,
      periodsOf(values),
      values,
    ))
      yield { ...objection, at: "day", related: [{ at: "welders", message: `joint ${at.$.name}, ${layer}` }] };
  },
  examples: [
    { name: "on the last day of the first half-year", given: run({}), objections: [] },
    {
      name: "a day later, not confirmed",
      given: run({ day: "2026-07-16" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-07-16"],
    },
    {
      name: "confirmed on the last day of the half-year",
      given: run({ day: "2026-07-16" }, { confirmations: ["2026-07-15"] }),
      objections: [],
    },
    {
      name: "confirmed a day late, which revives nothing",
      given: run({ day: "2026-08-01" }, { confirmations: ["2026-07-16"] }),
      objections: ["welder W07 was not qualified for process 135 on 2026-08-01"],
    },
    { name: "on the day of the test", given: run({ day: "2026-01-15" }), objections: [] },
    {
      name: "a day before the test",
      given: run({ day: "2026-01-14" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-01-14"],
    },
    { name: "on the printed last day", given: run({ day: "2026-03-31" }, { validTo: "2026-03-31" }), objections: [] },
    {
      name: "after the printed last day",
      given: run({ day: "2026-04-01" }, { validTo: "2026-03-31" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-04-01"],
    },
    { name: "twice the tested thickness", given: run({ deposited: "16.0 mm" }), objections: [] },
    {
      name: "thicker",
      given: run({ deposited: "16.1 mm" }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 16.1 mm, position PA"],
    },
    {
      name: "tested at 12 mm: no upper end",
      given: run({ deposited: "40 mm" }, { thickness: "12.0 mm" }),
      objections: [],
    },
    {
      name: "root and cap each under 3 mm, together 5.6 mm",
      given: { ...run({}), runs: laid(["root", "3.0 mm"], ["cap", "2.6 mm"]) },
      objections: [],
    },
    {
      name: "three layers, each within the range and together beyond it",
      given: { ...run({}), runs: laid(["root", "5.0 mm"], ["fill", "6.0 mm"], ["cap", "6.0 mm"]) },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 17.0 mm, position PA"],
    },
    {
      name: "together below the range",
      given: { ...run({}), runs: laid(["root", "1.5 mm"], ["cap", "1.4 mm"]) },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 2.9 mm, position PA"],
    },
    {
      name: "what another welder, another process and the other side deposited is not his",
      given: {
        ...run({}),
        runs: [
          ...laid(["root", "8.0 mm"]),
          { layer: "fill", process: "135", welders: ["W03"], deposited: "9.0 mm" },
          { layer: "cap", process: "141", welders: ["W07"], deposited: "9.0 mm" },
          { layer: "cap", process: "135", side: "second", welders: ["W07"], deposited: "9.0 mm" },
        ],
      },
      objections: [],
    },
    {
      name: "nothing stated: the joint's 8 mm count for the upper end",
      given: { ...run({}, { thickness: "3.9 mm" }), runs: laid(["root", undefined]) },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm as stated, position PA"],
    },
    {
      name: "nothing stated in a joint of 2 mm: no lower end can be judged",
      given: {
        ...run({}),
        runs: laid(["root", undefined]),
        joint: { $: "L1", detail: "bs", positions: ["PA"], thicknesses: ["2.0 mm", "2.0 mm"] },
      },
      objections: [],
    },
    {
      name: "tested on plate: a large pipe lying flat is covered",
      given: { ...run({}), joint: pipes("600 mm") },
      objections: [],
    },
    {
      name: "tested on pipe in two positions: a pipe of that diameter",
      given: {
        ...run({}, { product: "pipe", outsideDiameter: "60.3 mm", positions: ["PC", "PH"] }),
        joint: pipes("60.3 mm"),
      },
      objections: [],
    },
    { name: "the sister process", given: run({ process: "138" }), objections: [] },
    {
      name: "another process",
      given: run({ process: "141" }),
      objections: ["welder W07 holds no qualification for process 141, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "a position the test does not cover",
      given: run({ position: "PC" }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PC"],
    },
    {
      name: "a short arc, tested with spray",
      given: { ...run({}, { transferModes: ["spray"] }), transferModes: ["dip"] },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "spray, tested with short arcs",
      given: { ...run({}, { transferModes: ["dip"] }), transferModes: ["spray"] },
      objections: [],
    },
    {
      name: "a root by a short arc in a procedure that fills by spray, tested with spray",
      given: { ...run({}, { transferModes: ["spray"] }), ...twoModes() },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "a cap by spray over it, tested with spray",
      given: { ...run({}, { transferModes: ["spray"] }), ...twoModes(), layer: "cap" },
      objections: [],
    },
    {
      name: "spray, of which the certificate says nothing",
      given: { ...run({}), transferModes: ["spray"] },
      objections: [],
    },
    {
      name: "basic electrodes, tested with rutile ones",
      given: {
        ...run({}, { fillerType: "R" }),
        batches: [{ type: "covered electrode", designation: "E 42 4 B 42 H5" }],
      },
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "solid wire with its gas",
      given: {
        ...run({}, { fillerType: "M" }),
        batches: [
          { type: "wire", designation: "G 42 4 M21 3Si1" },
          { type: "shielding gas", designation: "M21" },
        ],
      },
      objections: [],
    },
    {
      name: "a detail the certificate does not print",
      given: run({}, { printedDetails: ["ss nb"] }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "round a fixed pipe, tested upwards",
      given: run({ position: "PH" }, { positions: ["PH"], product: "pipe", outsideDiameter: "60.3 mm" }),
      objections: [],
    },
  ],
});
