import { derivedFrom, fromMemory } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "weld-log", owner: "welding coordination" } as const;
const order = ["root", "fill", "cap"];

export const runsInOrder = rule({
  ...shared,
  id: "runs-in-order",
  title: "A weld is filled after its root and capped last, on each side",
  basis: derivedFrom("each layer lies on the one before"),
  severity: "nonconformity",
  inputs: {
    runs: list(thing("runs[]", { layer: text("layer"), day: date("date"), side: optional(text("side")) })),
  },
  *check({ runs }, log) {
    for (const run of runs) {
      const later = runs.find(
        (one) =>
          one.side === run.side &&
          order.indexOf(one.layer) > order.indexOf(run.layer) &&
          order.includes(run.layer) &&
          canPrecede(run.day, one.day) === "no",
      );
      if (later === undefined) continue;
      yield {
        at: [later, "day"],
        accuses: [],
        message: `weld log ${log.name} has its ${later.layer} on ${later.day.text}, before its ${run.layer} on ${run.day.text}`,
        why: runs.map((one) => `${one.layer} ${one.day.text}`).join(", "),
        hint: "compare the times with the weld log sheet",
        related: [{ at: [run, "day"], message: `${run.layer} here` }],
      };
      return;
    }
  },
  examples: [
    { name: "root, fill, cap", given: logged("06:40", "07:00", "07:40"), objections: [] },
    {
      name: "capped before it was filled",
      given: logged("06:40", "07:00", "06:10"),
      objections: ["weld log X-01 has its cap on 2026-06-08T06:10+02:00, before its root on 2026-06-08T06:40+02:00"],
    },
    {
      name: "days alone",
      given: {
        runs: [
          { layer: "root", day: "2026-06-08" },
          { layer: "cap", day: "2026-06-08" },
        ],
      },
      objections: [],
    },
  ],
});

function logged(...times: readonly string[]) {
  return { runs: times.map((time, index) => ({ layer: order[index] ?? "cap", day: `2026-06-08T${time}+02:00` })) };
}

export const bothSidesWelded = rule({
  ...shared,
  id: "both-sides-welded",
  title: "A joint designed to be welded from both sides has runs of both",
  basis: fromMemory("EN ISO 9606-1", "2017", "detail bs: welded from both sides"),
  when: [
    { path: "joint.detail", equals: "bs" },
    { path: "runs[].side", exists: true },
  ],
  severity: "nonconformity",
  inputs: {
    sides: anyOf(list(text("runs[].side"))),
    joint: thing("joint", { detail: text("detail") }),
  },
  *check({ sides, joint }, log) {
    const [only, other] = [...new Set(sides)];
    if (only === undefined || other !== undefined) return;
    yield {
      at: "sides",
      accuses: [],
      message: `joint ${joint.$.name} is welded from both sides by its design; weld log ${log.name} has runs of the ${only} side alone`,
      why: `detail ${joint.detail}; ${sides.length === 1 ? "1 run" : `${sides.length} runs`}`,
      hint: "enter the runs of the other side from the weld log sheet; if it was not welded, raise a nonconformity report",
    };
  },
  examples: [
    { name: "both", given: { sides: ["first", "second"], joint: { detail: "bs" } }, objections: [] },
    {
      name: "one",
      given: { sides: ["first", "first"], joint: { $: "L1", detail: "bs" } },
      objections: ["joint L1 is welded from both sides by its design; weld log X-01 has runs of the first side alone"],
    },
  ],
});

/** Share of the time that a single pass along the joint takes below which the times are asked about. */
const inTime = 0.8;
const hasTime = ({ text: said }: DateValue) => said.includes("T");

export const runsHaveTime = rule({
  ...shared,
  id: "runs-have-time",
  title: "A weld log has time enough for a pass of each layer at its logged speed",
  basis: derivedFrom("one pass takes the length over the travel speed; welders who share it divide it"),
  severity: "query",
  inputs: {
    length: quantity("joint.length", "mm"),
    runs: list(
      thing("runs[]", {
        layer: text("layer"),
        day: date("date"),
        finished: optional(date("finished")),
        speed: optional(quantity("travelSpeed", "mm/min")),
        welders: anyOf(list(text("welders[]"))),
      }),
    ),
  },
  *check({ length, runs }, log) {
    const moments = runs.flatMap(({ day, finished }) => [day, ...(finished === undefined ? [] : [finished])]);
    const last = runs.findLast(({ finished }) => finished !== undefined)?.finished;
    const first = [...moments].sort((a, b) => a.from - b.from)[0];
    if (first === undefined || last === undefined || !moments.every(hasTime)) return;
    const minutes = (last.from - first.from) / 60_000;
    const needed = runs.reduce(
      (sum, { speed, welders }) =>
        sum + (speed === undefined ? 0 : length.value / speed.value / Math.max(1, welders.length)),
      0,
    );
    if (minutes <= 0 || minutes >= inTime * needed) return;
    yield {
      at: "runs",
      accuses: [],
      message: `weld log ${log.name} takes ${minutes.toFixed(0)} min from begin to end; at its speeds one pass of each layer along ${length.text} takes ${needed.toFixed(0)} min`,
      why: `${first.text} to ${last.text}; ${runs.map(({ layer, speed }) => `${layer} ${speed?.text ?? "not stated"}`).join(", ")}`,
      hint: "compare times, speeds and length with the weld log sheet, or answer this query",
    };
  },
  examples: [
    { name: "time enough", given: timed("07:40", "08:40"), objections: [] },
    {
      name: "too little",
      given: timed("07:40", "07:50"),
      objections: [
        "weld log X-01 takes 10 min from begin to end; at its speeds one pass of each layer along 3770 mm takes 22 min",
      ],
    },
    {
      name: "days alone",
      given: { ...timed("07:40", "07:50"), runs: [{ layer: "cap", day: "2026-06-08" }] },
      objections: [],
    },
  ],
});

function timed(from: string, to: string) {
  const at = (time: string) => `2026-06-08T${time}+02:00`;
  const run = { day: at(from), speed: "350 mm/min", welders: ["W03"] };
  return {
    length: "3770 mm",
    runs: [
      { layer: "root", ...run },
      { layer: "cap", ...run, finished: at(to) },
    ],
  };
}
