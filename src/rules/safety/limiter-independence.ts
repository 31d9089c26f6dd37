import { fromMemory } from "../../model/basis.ts";
import { anyOf, text, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { steamEquipment } from "../../requirements/boiler-conditions.ts";
import { owedBy } from "../../model/owes.ts";

const ofSort = (sort: string) => `<fitting:equipment>[sort="${sort}"]`;
const chain = { sensor: text("sensor"), switchingUnit: text("switchingUnit") } as const;
const own = { ...chain, branch: text("branch"), circuit: text("circuit") } as const;

const called = {
  sensor: "sensing element",
  switchingUnit: "switching unit",
  branch: "connection to the boiler",
  circuit: "safety circuit",
} as const;
const parts = ["sensor", "branch", "switchingUnit", "circuit"] as const;
/** Marks are compared as people read them: case and spaces tell nothing apart. */
const alike = (a: string, b: string): boolean => plain(a) === plain(b);
const plain = (mark: string): string => mark.toLowerCase().replaceAll(/\s+/g, " ").trim();

export const lowLimitersIndependent = rule({
  id: "low-water-limiters-independent",
  scope: "steam",
  title: "Low-water limiters share no sensing element, connection, switching unit or safety circuit",
  basis: fromMemory("EN 12953-6", undefined, "two low-water limiters, each independent of the other"),
  kind: "equipment",
  when: [steamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: { limiters: anyOf(things(ofSort("low-water-limiter"), own)) },
  owes: [owedBy("quality", "final-inspection", "limiters.branch", "limiters.circuit")],
  *check({ limiters }) {
    for (const [first, second] of pairsOf(limiters)) {
      const shared = parts.filter((part) => alike(first[part], second[part]));
      const [one] = shared;
      if (one === undefined) continue;
      yield {
        at: [second, one],
        name: `${first.$.id} ${second.$.id}`,
        message: `low-water limiters ${first.$.name} and ${second.$.name} share their ${shared.map((part) => called[part]).join(" and their ")}`,
        why: shared.map((part) => `${called[part]} ${first[part]} and ${second[part]}`).join("; "),
        hint: "correct the mark if it was copied wrongly; else have one of them separated: a single failure takes both",
        related: [{ at: [first, one], message: `${first[one]} here` }],
      };
    }
  },
  examples: [
    { name: "nothing shared", given: { limiters: [limiter("A"), limiter("B")] }, objections: [] },
    { name: "one only", given: { limiters: [limiter("A")] }, objections: [] },
    {
      name: "one circuit",
      given: { limiters: [limiter("A"), limiter("B", { circuit: "KA" })] },
      objections: ["low-water limiters LA and LB share their safety circuit"],
    },
    {
      name: "one electrode on one branch, spelled apart",
      given: { limiters: [limiter("A"), limiter("B", { sensor: "ea", branch: "NA" })] },
      objections: ["low-water limiters LA and LB share their sensing element and their connection to the boiler"],
    },
    {
      name: "the third shares a switching unit with the first",
      given: { limiters: [limiter("A"), limiter("B"), limiter("C", { switchingUnit: "UA" })] },
      objections: ["low-water limiters LA and LC share their switching unit"],
    },
  ],
});

export const limitersApartFromControl = rule({
  id: "limiters-apart-from-control",
  scope: "steam",
  title: "A limiter of level or pressure has a sensing element and a switching unit that control nothing",
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, safety accessories: independent of other functions"),
  kind: "equipment",
  when: [steamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    low: anyOf(things(ofSort("low-water-limiter"), chain)),
    high: anyOf(things(ofSort("high-water-limiter"), chain)),
    pressure: anyOf(things(ofSort("pressure-limiter"), chain)),
    level: anyOf(things(ofSort("level-controller"), chain)),
    controllers: anyOf(things(ofSort("pressure-controller"), chain)),
  },
  owes: [
    owedBy(
      "quality",
      "final-inspection",
      "low.sensor",
      "low.switchingUnit",
      "high.sensor",
      "high.switchingUnit",
      "pressure.sensor",
      "pressure.switchingUnit",
      "level.sensor",
      "level.switchingUnit",
      "controllers.sensor",
      "controllers.switchingUnit",
    ),
  ],
  *check({ low, high, pressure, level, controllers }) {
    for (const limit of [...low, ...high, ...pressure])
      for (const control of [...level, ...controllers]) {
        const shared = (["sensor", "switchingUnit"] as const).filter((part) => alike(limit[part], control[part]));
        const [one] = shared;
        if (one === undefined) continue;
        yield {
          at: [limit, one],
          name: `${limit.$.id} ${control.$.id}`,
          message: `limiter ${limit.$.name} shares its ${shared.map((part) => called[part]).join(" and its ")} with controller ${control.$.name}`,
          why: shared.map((part) => `${called[part]} ${limit[part]} and ${control[part]}`).join("; "),
          hint: "correct the mark if it was copied wrongly; else have the limiter given its own: a failed control must not blind it",
          related: [{ at: [control, one], message: `${control[one]} here` }],
        };
      }
  },
  examples: [
    { name: "nothing shared", given: { low: [chained("A")], level: [chained("C")] }, objections: [] },
    { name: "no controller", given: { low: [chained("A")] }, objections: [] },
    {
      name: "the electrode that controls",
      given: { low: [chained("A"), chained("B")], level: [chained("C", { sensor: "EB" })] },
      objections: ["limiter LB shares its sensing element with controller LC"],
    },
    {
      name: "the transmitter that controls",
      given: { pressure: [chained("P")], controllers: [chained("C", { sensor: "EP", switchingUnit: "UP" })] },
      objections: ["limiter LP shares its sensing element and its switching unit with controller LC"],
    },
  ],
});

function pairsOf<T extends Thing<typeof own>>(all: readonly T[]): readonly (readonly [T, T])[] {
  return all.flatMap((first, index) => all.slice(index + 1).map((second) => [first, second] as const));
}

/** What tells the measuring chain of a limiter or controller from another's. */
function chained(mark: string, changes: Readonly<Record<string, string>> = {}) {
  return { $: `L${mark}`, sensor: `E${mark}`, switchingUnit: `U${mark}`, ...changes };
}

function limiter(mark: string, changes: Readonly<Record<string, string>> = {}) {
  return { ...chained(mark), branch: `N${mark}`, circuit: `K${mark}`, ...changes };
}
