import { derivedFrom, fromMemory } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { atMost, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);
const standard = (topic: string) => fromMemory("EN ISO 4126-1", undefined, topic);

export const valveSetPressure = rule({
  id: "valve-set-pressure",
  title: "A safety valve opens at or below the maximum allowable pressure",
  basis: directive("Annex I, protection against exceeding the allowable limits"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "design",
  inputs: {
    set: quantity("setPressure", "bar"),
    most: quantity("equipment.limits.maximumAllowablePressure", "bar"),
    later: quantity("equipment.calculation(valve-settings).pl", "bar"),
    others: anyOf(things("equipment.<safety-valve:equipment>", { set: quantity("setPressure", "bar") })),
  },
  *check({ set, most, later, others }, valve) {
    const first = atMost(set, most);
    const led = others.some((other) => other.$.id !== valve.id && atMost(other.set, most) === "yes");
    const answer = first === "no" && led ? atMost(set, later.value) : first;
    if (answer !== "yes")
      yield {
        at: "set",
        message: `safety valve ${valve.name} is set to ${set.text}; the maximum allowable pressure is ${most.text}`,
        why:
          led && later.value > most.value
            ? `behind a valve that opens at or below the limit, ${Number(later.value.toPrecision(6))} bar are allowed`
            : "the first valve opens before the limit is exceeded",
        hint: "compare with the bench record and the plate; have the valve set again if it is true",
        unsure: answer === "unsure",
        related: [{ at: "most", message: `${most.text} here` }],
      };
  },
  examples: [
    { name: "at the limit", given: { set: "11 bar", most: "11.0 bar", later: "11 bar" }, objections: [] },
    {
      name: "the second of two, as far above as the design standard allows",
      given: { set: "10.3 bar", most: "10 bar", later: "10.3 bar", others: [{ $: "X-02", set: "10 bar" }] },
      objections: [],
    },
    {
      name: "the second of two, further above",
      given: { set: "10.4 bar", most: "10 bar", later: "10.3 bar", others: [{ $: "X-02", set: "10 bar" }] },
      objections: ["safety valve X-01 is set to 10.4 bar; the maximum allowable pressure is 10 bar"],
    },
    {
      name: "both above",
      given: { set: "10.2 bar", most: "10 bar", later: "10.3 bar", others: [{ $: "X-02", set: "10.1 bar" }] },
      objections: ["safety valve X-01 is set to 10.2 bar; the maximum allowable pressure is 10 bar"],
    },
    {
      name: "above it",
      given: { set: "11.1 bar", most: "11.0 bar", later: "11 bar" },
      objections: ["safety valve X-01 is set to 11.1 bar; the maximum allowable pressure is 11.0 bar"],
    },
  ],
});

export const valvePlate = rule({
  id: "valve-plate",
  title: "The plate of a safety valve says what its certificate says",
  basis: standard("marking of safety valves"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    serial: text("serial"),
    set: quantity("setPressure", "bar"),
    capacity: quantity("certifiedCapacity", "kg/h"),
    plateSerial: text("plate.serial"),
    plateSet: quantity("plate.setPressure", "bar"),
    plateCapacity: quantity("plate.capacity", "kg/h"),
  },
  *check({ serial, set, capacity, plateSerial, plateSet, plateCapacity }, valve) {
    const differs = (
      at: "plateSerial" | "plateSet" | "plateCapacity",
      other: "serial" | "set" | "capacity",
      what: string,
      plate: string,
      own: string,
    ) => ({
      at,
      name: other,
      accuses: [at, other],
      message: `the plate of safety valve ${valve.name} states ${what} ${plate}; its certificate states ${own}`,
      why: "two papers of one valve",
      hint: "look at the plate: correct the slip, or find out whether the valve was exchanged",
      related: [{ at: other, message: `${own} here` }],
    });
    if (plateSerial !== serial) yield differs("plateSerial", "serial", "serial", plateSerial, serial);
    if (holds(plateSet, "=", set) !== "yes") yield differs("plateSet", "set", "set pressure", plateSet.text, set.text);
    if (holds(plateCapacity, "=", capacity) !== "yes")
      yield differs("plateCapacity", "capacity", "capacity", plateCapacity.text, capacity.text);
  },
  examples: [
    { name: "the same", given: plate({}), objections: [] },
    { name: "the same in another unit", given: plate({ plateSet: "1.1 MPa" }), objections: [] },
    {
      name: "another serial",
      given: plate({ plateSerial: "88215" }),
      objections: ["the plate of safety valve X-01 states serial 88215; its certificate states 88214"],
    },
    {
      name: "another set pressure",
      given: plate({ plateSet: "10 bar" }),
      objections: ["the plate of safety valve X-01 states set pressure 10 bar; its certificate states 11 bar"],
    },
    {
      name: "another capacity",
      given: plate({ plateCapacity: "1700 kg/h" }),
      objections: ["the plate of safety valve X-01 states capacity 1700 kg/h; its certificate states 1710 kg/h"],
    },
  ],
});

function plate(changes: Readonly<Record<string, string>>) {
  return {
    serial: "88214",
    set: "11 bar",
    capacity: "1710 kg/h",
    plateSerial: "88214",
    plateSet: "11.0 bar",
    plateCapacity: "1710 kg/h",
    ...changes,
  };
}

export const valveArea = rule({
  id: "valve-area",
  title: "The flow area of a safety valve is that of its flow diameter",
  basis: derivedFrom("area of a circle; each figure may be rounded by half a unit of its last digit"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "supplier",
  inputs: { diameter: optional(quantity("flowDiameter", "mm")), area: quantity("flowArea", "mm²") },
  *check({ diameter, area }, valve) {
    if (diameter === undefined) return;
    const circle = (d: number) => (Math.PI * d * d) / 4;
    const low = circle(diameter.low - diameter.halfUnit) - area.halfUnit;
    const high = circle(diameter.high + diameter.halfUnit) + area.halfUnit;
    if (area.value < low || area.value > high)
      yield {
        at: "area",
        accuses: ["area", "diameter"],
        message: `safety valve ${valve.name} has a flow area of ${area.text}; ${diameter.text} give ${circle(diameter.value).toFixed(1)} mm²`,
        why: `π·d²/4 with d = ${diameter.text}`,
        hint: "compare both with the certificate and correct the wrong one",
      };
  },
  examples: [
    { name: "the area of the circle", given: { diameter: "20.0 mm", area: "314 mm²" }, objections: [] },
    { name: "no diameter stated", given: { area: "254 mm²" }, objections: [] },
    {
      name: "another area",
      given: { diameter: "20.0 mm", area: "324 mm²" },
      objections: ["safety valve X-01 has a flow area of 324 mm²; 20.0 mm give 314.2 mm²"],
    },
    {
      name: "a smaller area",
      given: { diameter: "20.0 mm", area: "304 mm²" },
      objections: ["safety valve X-01 has a flow area of 304 mm²; 20.0 mm give 314.2 mm²"],
    },
  ],
});

export const valveCategory = rule({
  id: "valve-category",
  title: "A safety valve is of category IV, or of that of the equipment it is made for",
  basis: directive("Annex II: safety accessories"),
  kind: "safety-valve",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { own: text("category"), equipment: optional(text("equipment.directive.category")) },
  *check({ own, equipment }, valve) {
    if (own !== "IV" && equipment !== undefined && own !== equipment)
      yield {
        at: "own",
        message: `safety valve ${valve.name} is of category ${own}; the equipment is of category ${equipment}`,
        why: "a safety accessory is of category IV unless it is made for one equipment; then it is of the category of that",
        hint: "compare with the valve's declaration; ask for a valve of the right category if it is true",
      };
  },
  examples: [
    { name: "category IV", given: { own: "IV", equipment: "III" }, objections: [] },
    { name: "that of the equipment", given: { own: "III", equipment: "III" }, objections: [] },
    {
      name: "a lower one",
      given: { own: "II", equipment: "III" },
      objections: ["safety valve X-01 is of category II; the equipment is of category III"],
    },
  ],
});
