import { derivedFrom, fromMemory } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
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
    const begins = (layer: string, side: string | undefined) =>
      runs.filter((run) => run.layer === layer && run.side === side).sort((a, b) => a.day.from - b.day.from)[0];
    for (const side of new Set(runs.map((run) => run.side)))
      for (const [index, layer] of order.entries()) {
        // A seam welded in lengths has its second root after the first cap: the begin of each layer counts.
        const first = begins(layer, side);
        const before = order.slice(index + 1).flatMap((other) => begins(other, side) ?? []);
        const early = before.find((run) => first !== undefined && canPrecede(first.day, run.day) === "no");
        if (first === undefined || early === undefined) continue;
        yield {
          at: [early, "day"],
          accuses: [],
          message: `weld log ${log.name} has its ${early.layer} on ${early.day.text}, before its ${layer} on ${first.day.text}`,
          why: runs.map((one) => `${one.layer} ${one.day.text}`).join(", "),
          hint: "compare the times with the weld log sheet",
          related: [{ at: [first, "day"], message: `${layer} here` }],
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
      name: "in two lengths",
      given: { runs: [...logged("06:40", "07:00", "07:40").runs, { layer: "root", day: "2026-06-09T06:40+02:00" }] },
      objections: [],
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
  id: "both-sides-welded",
  title: "A joint designed to be welded from both sides has runs of both",
  basis: fromMemory("EN ISO 9606-1", "2017", "detail bs: welded from both sides"),
  kind: "joint",
  owner: "welding coordination",
  when: [
    { path: "detail", equals: "bs" },
    { path: "<weld-log:joint>.runs[].side", exists: true },
  ],
  severity: "nonconformity",
  inputs: {
    detail: text("detail"),
    runs: anyOf(things("<weld-log:joint>.runs[]", { side: optional(text("side")) })),
  },
  *check({ detail, runs }, joint) {
    const sides = [...new Set(runs.flatMap(({ side }) => side ?? []))];
    const [only] = sides;
    const [run] = runs;
    // A run that says no side may be of the other one.
    if (only === undefined || run === undefined || sides.length > 1) return;
    if (runs.some(({ side }) => side === undefined)) return;
    yield {
      at: [run, "side"],
      accuses: [],
      message: `joint ${joint.name} is welded from both sides by its design; its weld log has runs of the ${only} side alone`,
      why: `detail ${detail}; ${runs.length === 1 ? "1 run" : `${runs.length} runs`}`,
      hint: "enter the runs of the other side from the weld log sheet; if it was not welded, raise a nonconformity report",
    };
  },
  examples: [
    { name: "both", given: { detail: "bs", runs: [{ side: "first" }, { side: "second" }] }, objections: [] },
    { name: "one of them not said", given: { detail: "bs", runs: [{ side: "first" }, {}] }, objections: [] },
    {
      name: "one",
      given: { detail: "bs", runs: [{ side: "first" }, { side: "first" }] },
      objections: ["joint X-01 is welded from both sides by its design; its weld log has runs of the first side alone"],
    },
  ],
});

/** Share of the time that a single pass along the joint takes below which the times are asked about. */
const inTime = 0.8;
const hasTime = ({ text: said }: DateValue) => said.includes("T");

interface Timed {
  readonly layer: string;
  readonly day: DateValue;
  readonly finished: DateValue | undefined;
  readonly speed: Measure | undefined;
}

/** A layer that one welder began so shortly before the next, or its end, that a pass at its speed does not fit between. */
function tooFast(length: number, runs: readonly Timed[]) {
  const inOrder = [...runs].sort((a, b) => a.day.from - b.day.from);
  for (const [index, { layer, day, finished, speed }] of inOrder.entries()) {
    const then = [finished, inOrder[index + 1]?.day].flatMap((one) => one ?? []).sort((a, b) => a.from - b.from)[0];
    if (speed === undefined || then === undefined) continue;
    const minutes = (then.from - day.from) / 60_000;
    const needed = length / speed.value;
    // Two layers of one moment are one entry of the log, which says nothing of each.
    if (minutes > 0 && minutes < inTime * needed) return { layer, day, speed, minutes, needed };
  }
  return undefined;
}

export const runsHaveTime = rule({
  ...shared,
  id: "runs-have-time",
  title: "A weld log has time enough for a pass of each layer at its logged speed",
  basis: derivedFrom(
    "one pass takes the length over the travel speed; welders who share it divide it; asked about below four fifths of that",
  ),
  when: [
    { path: "runs[].finished", exists: true },
    { path: "runs[].travelSpeed", exists: true },
  ],
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
    // The day of a run is its last: over several days no begin is known.
    if (moments.some(({ day }) => day !== first.day)) return;
    const minutes = (last.from - first.from) / 60_000;
    const needed = runs.reduce(
      (sum, { speed, welders }) =>
        sum + (speed === undefined ? 0 : length.value / speed.value / Math.max(1, welders.length)),
      0,
    );
    const alone = runs.every(({ welders }) => welders.length === 1 && welders[0] === runs[0]?.welders[0]);
    const hasty = alone ? tooFast(length.value, runs) : undefined;
    if (hasty !== undefined && minutes >= inTime * needed) {
      yield {
        at: "runs",
        accuses: [],
        message: `weld log ${log.name} has its ${hasty.layer} begun at ${hasty.day.text}, and what follows ${hasty.minutes.toFixed(0)} min later; at ${hasty.speed.text} one pass along ${length.text} takes ${hasty.needed.toFixed(0)} min`,
        why: runs.map(({ layer, day, speed }) => `${layer} ${day.text}, ${speed?.text ?? "not stated"}`).join("; "),
        hint: "compare times, speeds and length with the weld log sheet, or answer this query",
      };
      return;
    }
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
      name: "the root alone too little",
      given: {
        ...timed("07:40", "08:40"),
        runs: [...timed("07:40", "08:40").runs.slice(0, 1), ...timed("07:45", "08:40").runs.slice(1)],
      },
      objections: [
        "weld log X-01 has its root begun at 2026-06-08T07:40+02:00, and what follows 5 min later; at 350 mm/min one pass along 3770 mm takes 11 min",
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
