import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { firstFew } from "../shared/words.ts";

const order = ownChoice("marked, cut, fitted, welded: each needs what comes before it");

export const markBeforeCut = rule({
  id: "mark-before-cut",
  title: "A mark is transferred before the piece is cut",
  basis: commonPractice("identification is carried over before a cut parts it from the piece"),
  kind: "piece-mark",
  severity: "nonconformity",
  owner: "shop",
  inputs: { cut: date("cut"), transfers: list(date("transfers[].date")) },
  *check({ cut, transfers }, mark) {
    if (transfers.every((one) => canPrecede(one, cut) === "no"))
      yield {
        at: "cut",
        accuses: ["cut", "transfers"],
        message: `piece ${mark.name} was cut on ${cut.text}, before its mark was transferred`,
        why: `transferred on ${transfers.map((one) => one.text).join(", ")}`,
        hint: "correct the wrong date; else have the identity of the piece proved and recorded as a nonconformity",
      };
  },
  examples: [
    { name: "on the same day", given: { cut: "2026-03-02", transfers: ["2026-03-02"] }, objections: [] },
    {
      name: "once before, once after forming",
      given: { cut: "2026-03-02", transfers: ["2026-03-01", "2026-03-09"] },
      objections: [],
    },
    {
      name: "a day later",
      given: { cut: "2026-03-02", transfers: ["2026-03-03"] },
      objections: ["piece X-01 was cut on 2026-03-02, before its mark was transferred"],
    },
  ],
});

export const fitUpAfterCut = rule({
  id: "fit-up-after-cut",
  title: "A joint is fitted after its pieces were cut",
  basis: order,
  kind: "weld-log",
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    fitted: date("fitUp.date"),
    pieces: anyOf(things("joint.parts[].<piece-mark:part>", { cut: date("cut") })),
  },
  *check({ fitted, pieces }, log) {
    // A part may be of several pieces, of which one was fitted here: only a part without any piece in time is wrong.
    const [first] = pieces;
    if (first !== undefined && pieces.every(({ cut }) => canPrecede(cut, fitted) === "no"))
      yield {
        at: "fitted",
        message: `weld log ${log.name} has the joint fitted on ${fitted.text}, before any of its pieces was cut`,
        why: pieces.map(({ $, cut }) => `${$.name} cut on ${cut.text}`).join("; "),
        hint: "correct the wrong date against the weld log sheet and the cutting list",
        related: [{ at: [first, "cut"], message: `cut on ${first.cut.text}` }],
      };
  },
  examples: [
    { name: "on the same day", given: { fitted: "2026-03-02", pieces: [{ cut: "2026-03-02" }] }, objections: [] },
    {
      name: "one of two pieces of a part in time",
      given: { fitted: "2026-03-02", pieces: [{ cut: "2026-03-01" }, { cut: "2026-03-09" }] },
      objections: [],
    },
    {
      name: "a day before",
      given: { fitted: "2026-03-01", pieces: [{ $: "M-1", cut: "2026-03-02" }] },
      objections: ["weld log X-01 has the joint fitted on 2026-03-01, before any of its pieces was cut"],
    },
  ],
});

export const weldAfterFitUp = rule({
  id: "weld-after-fit-up",
  title: "A joint is welded after it was fitted",
  basis: order,
  kind: "weld-log",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { fitted: date("fitUp.date"), runs: list(thing("runs[]", { day: date("date") })) },
  *check({ fitted, runs }, log) {
    const early = runs.filter(({ day }) => canPrecede(fitted, day) === "no");
    if (early.length > 0)
      yield {
        at: "fitted",
        accuses: ["fitted", ...early.map((one) => [one, "day"] as const)],
        message: `weld log ${log.name} has the joint fitted on ${fitted.text}, after it was welded`,
        why: `welded earlier: ${early.map(({ $, day }) => `${$.name} on ${day.text}`).join("; ")}`,
        hint: "compare with the weld log sheet; if it is so, raise a nonconformity report: what was welded unfitted is judged",
      };
  },
  examples: [
    { name: "on the same day", given: { fitted: "2026-03-02", runs: [{ day: "2026-03-02" }] }, objections: [] },
    {
      name: "the root a day before",
      given: { fitted: "2026-03-02", runs: [{ $: "WL-1#root", day: "2026-03-01" }, { day: "2026-03-03" }] },
      objections: ["weld log X-01 has the joint fitted on 2026-03-02, after it was welded"],
    },
  ],
});

export const batchUsable = rule({
  id: "batch-usable",
  title: "A batch of consumables is used while it is usable",
  basis: commonPractice("limited life of fluxes, coated electrodes and cored wires"),
  kind: "consumable-batch",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    until: optional(date("usableUntil")),
    runs: anyOf(things("<weld-log:runs[].batches[]>", { day: date("date") })),
    repairs: anyOf(things("<repair:batches[]>", { day: date("date") })),
  },
  *check({ until, runs, repairs }, batch) {
    if (until === undefined) return;
    const late = [...runs, ...repairs].filter(({ day }) => canPrecede(day, until) === "no");
    if (late.length > 0)
      yield {
        at: "until",
        message: `batch ${batch.name} was usable until ${until.text}, and used on ${[...new Set(late.map(({ day }) => day.text))].sort().join(", ")}`,
        why: firstFew(late.map(({ $ }) => $.name)),
        hint: "correct the batch or the date; else have the welds judged by the welding coordinator",
        related: late.map((one) => ({ at: one, message: `used in ${one.$.name}` })),
      };
  },
  examples: [
    { name: "on its last day", given: { until: "2026-06-30", runs: [{ day: "2026-06-30" }] }, objections: [] },
    { name: "without an end", given: { runs: [{ day: "2026-06-30" }] }, objections: [] },
    {
      name: "a day later",
      given: { until: "2026-06-30", runs: [{ $: "WL-1#cap", day: "2026-07-01" }] },
      objections: ["batch X-01 was usable until 2026-06-30, and used on 2026-07-01"],
    },
  ],
});
