import { fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, count, exists, list, optional, quantity, thing, things } from "../../model/input.ts";
import { holds, within, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const standard = (topic: string) => fromMemory("EN ISO 4126-1", undefined, topic);

/** Certificate and plate state two set pressures: that is a finding of its own, and nothing can be measured against either. */
const differ = (set: Measure, plate: Measure) => holds(set, "=", plate) === "no";

export const valveBench = rule({
  id: "valve-bench",
  title: "A safety valve opens at its set pressure on the bench",
  basis: standard("tolerance of the set pressure: 3 % or 0.1 bar, the greater"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "supplier",
  inputs: {
    set: quantity("setPressure", "bar"),
    plate: quantity("plate.setPressure", "bar"),
    lowest: quantity("calculation(valve-bench-limits).po", "bar"),
    highest: quantity("calculation(valve-bench-limits).pO", "bar"),
    readings: list(thing("bench.readings[]", { pop: quantity("pop", "bar") })),
  },
  *check({ set, plate, lowest, highest, readings }, valve) {
    if (differ(set, plate)) return;
    const tolerance = highest.value - set.value;
    const wide = readings.filter(({ pop }) => within(pop, lowest.value, highest.value) !== "yes");
    const [first] = wide;
    if (first !== undefined)
      yield {
        at: [first, "pop"],
        accuses: wide.map((one) => [one, "pop"] as const),
        message: `safety valve ${valve.name} opened at ${wide.map(({ pop }) => pop.text).join(" and ")}; set to ${set.text}, within ${Number(tolerance.toFixed(3))} bar`,
        why: `openings: ${readings.map(({ pop }) => pop.text).join(", ")}`,
        hint: "compare with the bench record; if it is true, have the valve set and tested again",
      };
  },
  examples: [
    { name: "on the upper limit, by share", given: bench("10 bar", ["10.3 bar", "10.0 bar"]), objections: [] },
    { name: "on the lower limit, by share", given: bench("10 bar", ["9.7 bar"]), objections: [] },
    {
      name: "over the upper limit",
      given: bench("10 bar", ["10.31 bar", "10.0 bar"]),
      objections: ["safety valve X-01 opened at 10.31 bar; set to 10 bar, within 0.3 bar"],
    },
    {
      name: "under the lower limit",
      given: bench("10 bar", ["9.69 bar"]),
      objections: ["safety valve X-01 opened at 9.69 bar; set to 10 bar, within 0.3 bar"],
    },
    { name: "on the least tolerance", given: bench("2 bar", ["2.1 bar"]), objections: [] },
    { name: "certificate and plate differ", given: { ...bench("10 bar", ["9 bar"]), plate: "9 bar" }, objections: [] },
    {
      name: "over the least tolerance",
      given: bench("2 bar", ["2.11 bar"]),
      objections: ["safety valve X-01 opened at 2.11 bar; set to 2 bar, within 0.1 bar"],
    },
  ],
});

/** Limits as they are computed for 10 bar and for 2 bar. */
function bench(set: "10 bar" | "2 bar", pops: readonly string[]) {
  const [lowest, highest] = set === "10 bar" ? ["9.7 bar", "10.3 bar"] : ["1.9 bar", "2.1 bar"];
  return { set, plate: set, lowest, highest, readings: pops.map((pop) => ({ pop })) };
}

export const valveReseat = rule({
  id: "valve-reseat",
  title: "A safety valve for gas or steam closes again within its blowdown",
  basis: standard("limits of the blowdown"),
  kind: "safety-valve",
  when: [
    { path: "medium.state", equals: ["gas", "steam"] },
    { path: "bench.readings[].reseat", exists: true },
  ],
  severity: "nonconformity",
  owner: "supplier",
  inputs: {
    set: quantity("setPressure", "bar"),
    plate: quantity("plate.setPressure", "bar"),
    lowest: quantity("calculation(valve-bench-limits).pc", "bar"),
    highest: quantity("calculation(valve-bench-limits).pC", "bar"),
    readings: anyOf(things("bench.readings[]", { reseat: optional(quantity("reseat", "bar")) })),
  },
  *check({ set, plate, lowest, highest, readings }, valve) {
    if (differ(set, plate)) return;
    const stated = readings.flatMap((one) => (one.reseat === undefined ? [] : [{ one, reseat: one.reseat }]));
    const wide = stated.filter(({ reseat }) => within(reseat, lowest.value, highest.value) !== "yes");
    const [first] = wide;
    if (first !== undefined)
      yield {
        at: [first.one, "reseat"],
        accuses: wide.map(({ one }) => [one, "reseat"] as const),
        message: `safety valve ${valve.name} closed at ${wide.map(({ reseat }) => reseat.text).join(" and ")}; set to ${set.text} it closes between ${Number(lowest.value.toFixed(3))} and ${Number(highest.value.toFixed(3))} bar`,
        why: `closings: ${stated.map(({ reseat }) => reseat.text).join(", ")}`,
        hint: "compare with the bench record; if it is true, have the blowdown ring set and the valve tested again",
      };
  },
  examples: [
    { name: "at the least blowdown", given: reseat("10 bar", ["9.8 bar"]), objections: [] },
    {
      name: "closing too early",
      given: reseat("10 bar", ["9.81 bar"]),
      objections: ["safety valve X-01 closed at 9.81 bar; set to 10 bar it closes between 8.5 and 9.8 bar"],
    },
    { name: "at the greatest blowdown", given: reseat("10 bar", ["8.5 bar"]), objections: [] },
    {
      name: "closing too late",
      given: reseat("10 bar", ["8.49 bar"]),
      objections: ["safety valve X-01 closed at 8.49 bar; set to 10 bar it closes between 8.5 and 9.8 bar"],
    },
    { name: "low pressure, by the difference", given: reseat("1 bar", ["0.7 bar"]), objections: [] },
    {
      name: "low pressure, closing too late",
      given: reseat("1 bar", ["0.69 bar"]),
      objections: ["safety valve X-01 closed at 0.69 bar; set to 1 bar it closes between 0.7 and 0.98 bar"],
    },
  ],
});

/** Limits as they are computed for 10 bar and for 1 bar. */
function reseat(set: "10 bar" | "1 bar", reseats: readonly string[]) {
  const [lowest, highest] = set === "10 bar" ? ["8.5 bar", "9.8 bar"] : ["0.7 bar", "0.98 bar"];
  return {
    set,
    plate: set,
    lowest,
    highest,
    readings: reseats.map((reseat) => ({ reseat })),
  };
}

export const valveReseatStated = rule({
  id: "valve-reseat-stated",
  title: "The bench record of a safety valve states where it closes, where the profile asks for it",
  basis: standard("limits of the blowdown"),
  kind: "safety-valve",
  when: [
    { path: "medium.state", equals: ["gas", "steam"] },
    { path: "profile.valveReseatStated", equals: "required" },
  ],
  severity: "gap",
  owner: "supplier",
  inputs: { readings: list(thing("bench.readings[]", { number: count("number"), reseat: exists("reseat") })) },
  *check({ readings }, valve) {
    const silent = readings.filter(({ reseat }) => !reseat);
    const [first] = silent;
    if (first !== undefined)
      yield {
        at: first,
        accuses: [],
        message: `the bench record of safety valve ${valve.name} does not say at what pressure it closed after opening ${silent.map(({ number }) => number).join(", ")}`,
        why: "without it the blowdown is not known",
        hint: "ask for the closing pressures, or name a profile whose certificates need not state them",
      };
  },
  examples: [
    { name: "stated", given: { readings: [{ number: 1, reseat: true }] }, objections: [] },
    {
      name: "not stated",
      given: {
        readings: [
          { number: 1, reseat: true },
          { number: 2, reseat: false },
        ],
      },
      objections: ["the bench record of safety valve X-01 does not say at what pressure it closed after opening 2"],
    },
  ],
});

export const valveReadings = rule({
  id: "valve-readings",
  title: "A safety valve is opened on the bench as often as the profile asks, in unbroken count",
  basis: ownChoice("one opening may be chance; a number left out may be one that went wrong"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "supplier",
  inputs: { numbers: list(count("bench.readings[].number")), least: quantity("profile.valveOpeningsLeast", "1") },
  *check({ numbers, least }, valve) {
    const unbroken = numbers.every((number, index) => number === index + 1);
    if (numbers.length < least.value || !unbroken)
      yield {
        at: "numbers",
        message: `safety valve ${valve.name} has openings ${numbers.join(", ")} on the bench; ${least.text} or more are counted from 1`,
        why: `${numbers.length} openings recorded`,
        hint: "enter every opening of the bench record, or have the valve tested again",
      };
  },
  examples: [
    { name: "three", given: { numbers: [1, 2, 3], least: "3" }, objections: [] },
    { name: "one of a new valve", given: { numbers: [1], least: "1" }, objections: [] },
    {
      name: "two",
      given: { numbers: [1, 2], least: "3" },
      objections: ["safety valve X-01 has openings 1, 2 on the bench; 3 or more are counted from 1"],
    },
    {
      name: "one left out",
      given: { numbers: [1, 2, 4], least: "1" },
      objections: ["safety valve X-01 has openings 1, 2, 4 on the bench; 1 or more are counted from 1"],
    },
  ],
});
