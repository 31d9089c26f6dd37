import { commonPractice } from "../../model/basis.ts";
import { anyOf, optional, quantity, things, type Thing } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf, onSteamEquipment } from "../../requirements/boiler-conditions.ts";
import { brokenBound, type Bound } from "../shared/bounds.ts";
import { owedBy } from "../../model/owes.ts";

const ofBoiler = (name: string) => quantity(`equipment.levels.${name}`, "mm");
const trial = { level: optional(quantity("level", "mm")) };
const trials = anyOf(things("functionTests[]", trial));
const why = "levels are measured upward from the lowest point of the shell";
const hint = "compare with the arrangement drawing; correct the figure, or have the fitting set again and tried";

interface Limiter<N extends string> {
  readonly level: Measure;
  readonly levels: Readonly<Record<N, Measure>>;
  readonly tried: readonly Thing<typeof trial>[];
}

/** Where a limiter is set, and where it acted each time it was tried, against the levels that bound it. */
function* setAndTried<N extends string>(
  name: string,
  acted: string,
  { level, levels, tried }: Limiter<N>,
  set: readonly Bound<N>[],
  bounds: readonly Bound<N>[],
) {
  const broken = brokenBound(level, levels, set);
  if (broken !== undefined)
    yield {
      at: "level" as const,
      message: `${name} is set to ${broken.said}`,
      why,
      hint,
      unsure: broken.unsure,
      related: [{ at: broken.name, message: `${levels[broken.name].text} here` }],
    };
  for (const one of tried) {
    const late = one.level === undefined ? undefined : brokenBound(one.level, levels, bounds);
    if (late !== undefined)
      yield {
        at: [one, "level"] as const,
        name: one.$.id,
        message: `${name} ${acted} at ${late.said}`,
        why,
        hint,
        unsure: late.unsure,
        related: [{ at: late.name, message: `${levels[late.name].text} here` }],
      };
  }
}

export const lowLimiterLevel = rule({
  id: "low-water-limiter-level",
  scope: "shell-boilers",
  title: "A low-water limiter cuts the heat where the design says, above the lowest permissible level",
  basis: commonPractice("the heat is cut before heated surfaces lose their water, and not in normal operation"),
  kind: "fitting",
  when: [fittingOf("low-water-limiter"), onSteamEquipment],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    level: quantity("switchLevel", "mm"),
    lowest: ofBoiler("lowestPermissible"),
    normal: ofBoiler("normal"),
    design: ofBoiler("limiter"),
    trials,
  },
  owes: [owedBy("quality", "final-inspection", "level")],
  *check({ level, trials: tried, ...levels }, fitting) {
    const lowest = [">=", "lowest", "the lowest permissible water level"] as const;
    const set = [
      lowest,
      ["<", "normal", "the normal water level"],
      ["=", "design", "the level of the design"],
    ] as const;
    yield* setAndTried(`low-water limiter ${fitting.name}`, "cut the heat", { level, levels, tried }, set, [lowest]);
  },
  examples: [
    { name: "as designed", given: low({}), objections: [] },
    { name: "at the lowest level", given: low({ level: "1460 mm", design: "1460 mm" }), objections: [] },
    {
      name: "a millimetre too low",
      given: low({ level: "1459 mm" }),
      objections: ["low-water limiter X-01 is set to 1459 mm, below the lowest permissible water level, 1460 mm"],
    },
    {
      name: "at the normal level",
      given: low({ level: "1482 mm" }),
      objections: ["low-water limiter X-01 is set to 1482 mm, not below the normal water level, 1482 mm"],
    },
    {
      name: "not where the design has it",
      given: low({ level: "1470 mm" }),
      objections: ["low-water limiter X-01 is set to 1470 mm, not at the level of the design, 1465 mm"],
    },
    { name: "tried at the lowest level", given: { ...low({}), trials: [{ level: "1460 mm" }] }, objections: [] },
    { name: "tried without a figure", given: { ...low({}), trials: [{}] }, objections: [] },
    {
      name: "tried too late",
      given: { ...low({}), trials: [{ level: "1466 mm" }, { level: "1455 mm" }] },
      objections: ["low-water limiter X-01 cut the heat at 1455 mm, below the lowest permissible water level, 1460 mm"],
    },
  ],
});

function low(changes: Readonly<Record<string, string>>) {
  return { level: "1465 mm", lowest: "1460 mm", normal: "1482 mm", design: "1465 mm", ...changes };
}

export const highLimiterLevel = rule({
  id: "high-water-limiter-level",
  scope: "shell-boilers",
  title: "A high-water limiter acts above the normal level, before water comes near the steam take-off",
  basis: commonPractice("water is kept out of the steam, and normal operation is not disturbed"),
  kind: "fitting",
  when: [fittingOf("high-water-limiter"), onSteamEquipment],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    level: quantity("switchLevel", "mm"),
    normal: ofBoiler("normal"),
    highest: ofBoiler("highest"),
    takeOff: ofBoiler("steamTakeOff"),
    trials,
  },
  owes: [owedBy("quality", "final-inspection", "level")],
  *check({ level, trials: tried, ...levels }, fitting) {
    const upper = [
      ["<=", "highest", "the highest permissible water level"],
      ["<", "takeOff", "the steam take-off"],
    ] as const;
    const set = [[">", "normal", "the normal water level"], ...upper] as const;
    yield* setAndTried(`high-water limiter ${fitting.name}`, "acted", { level, levels, tried }, set, upper);
  },
  examples: [
    { name: "at the highest level", given: high({}), objections: [] },
    { name: "just above the normal level", given: high({ level: "1483 mm" }), objections: [] },
    {
      name: "at the normal level",
      given: high({ level: "1482 mm" }),
      objections: ["high-water limiter X-01 is set to 1482 mm, not above the normal water level, 1482 mm"],
    },
    {
      name: "above the highest level",
      given: high({ level: "1531 mm" }),
      objections: ["high-water limiter X-01 is set to 1531 mm, above the highest permissible water level, 1530 mm"],
    },
    {
      name: "in the steam take-off",
      given: high({ level: "1880 mm", highest: "1880 mm" }),
      objections: ["high-water limiter X-01 is set to 1880 mm, not below the steam take-off, 1880 mm"],
    },
    { name: "tried at the highest level", given: { ...high({}), trials: [{ level: "1530 mm" }, {}] }, objections: [] },
    {
      name: "tried too late",
      given: { ...high({}), trials: [{ level: "1540 mm" }] },
      objections: ["high-water limiter X-01 acted at 1540 mm, above the highest permissible water level, 1530 mm"],
    },
  ],
});

function high(changes: Readonly<Record<string, string>>) {
  return { level: "1530 mm", normal: "1482 mm", highest: "1530 mm", takeOff: "1880 mm", ...changes };
}
