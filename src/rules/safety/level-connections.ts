import { fromMemory } from "../../model/basis.ts";
import { anyOf, flag, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf, steamEquipment } from "../../requirements/boiler-conditions.ts";

export const indicatorsApart = rule({
  id: "level-indicators-apart",
  scope: "steam",
  title: "Water level indicators are mounted on branches of their own",
  basis: fromMemory("EN 12953-6", undefined, "two water level indicators, each with its own connection"),
  kind: "equipment",
  when: [steamEquipment, { path: '<fitting:equipment>[sort="water-level-indicator"].branch', exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    indicators: anyOf(
      things('<fitting:equipment>[sort="water-level-indicator"]', { branch: optional(text("branch")) }),
    ),
  },
  *check({ indicators }) {
    const seen = new Map<string, (typeof indicators)[number]>();
    for (const one of indicators) {
      const { branch } = one;
      if (branch === undefined) continue;
      const before = seen.get(branch);
      seen.set(branch, before ?? one);
      if (before !== undefined)
        yield {
          at: [one, "branch"],
          name: `${before.$.id} ${one.$.id}`,
          message: `water level indicators ${before.$.name} and ${one.$.name} are both mounted on ${branch}`,
          why: "what blocks one connection blinds both",
          hint: "compare with the arrangement drawing: correct the branch, or give one of them a branch of its own",
          related: [{ at: [before, "branch"], message: `${branch} here` }],
        };
    }
  },
  examples: [
    { name: "each on its own", given: { indicators: [on("LG-1", "P23"), on("LG-2", "P24")] }, objections: [] },
    {
      name: "both on one",
      given: { indicators: [on("LG-1", "P23"), on("LG-2", "P23")] },
      objections: ["water level indicators LG-1 and LG-2 are both mounted on P23"],
    },
  ],
});

function on(name: string, branch: string) {
  return { $: name, branch };
}

export const indicatorConnections = rule({
  id: "level-indicator-connections",
  title: "A water level indicator has two connections, one to the steam and one to the water",
  basis: fromMemory("EN 12953-6", undefined, "water level indicators: connections to steam and to water"),
  kind: "fitting",
  when: [fittingOf("water-level-indicator"), { path: "branch", exists: true }, { path: "waterBranch", exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: { steam: text("branch"), water: text("waterBranch") },
  *check({ steam, water }, fitting) {
    if (steam === water)
      yield {
        at: "water",
        name: "same",
        message: `both connections of water level indicator ${fitting.name} are on ${steam}`,
        why: "a glass with one connection shows no level",
        hint: "compare with the arrangement drawing and name the branch of each end",
        related: [{ at: "steam", message: `${steam} here` }],
      };
  },
  examples: [
    {
      name: "two",
      given: { steam: "P23", water: "P48" },
      objections: [],
    },
    {
      name: "one branch twice",
      given: { steam: "P23", water: "P23" },
      objections: ["both connections of water level indicator X-01 are on P23"],
    },
  ],
});

export const limiterWatchesItself = rule({
  id: "low-water-limiter-watches-itself",
  title: "A low-water limiter watches itself for faults",
  basis: fromMemory("EN 12953-9", undefined, "self-monitoring water level limiters"),
  kind: "fitting",
  when: [fittingOf("low-water-limiter"), { path: "selfMonitoring", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { watches: flag("selfMonitoring") },
  *check({ watches }, fitting) {
    if (!watches)
      yield {
        at: "watches",
        message: `low-water limiter ${fitting.name} does not watch itself`,
        why: "a boiler watched from afar relies on a limiter that finds its own faults",
        hint: "compare with its type examination; correct the record, or exchange the limiter",
      };
  },
  examples: [
    { name: "it does", given: { watches: true }, objections: [] },
    { name: "it does not", given: { watches: false }, objections: ["low-water limiter X-01 does not watch itself"] },
  ],
});
