import { fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, flag, optional, quantity, table, text, things } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);

export const nameplateMark = rule({
  id: "nameplate-mark",
  title: "A nameplate bears the mark and the number of the body that the category asks for",
  basis: directive("CE marking and number of the body that takes part in the production"),
  kind: "nameplate",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    mark: flag("ceMark"),
    number: optional(text("bodyNumber")),
    module: optional(text("equipment.directive.module")),
    inScope: flag("equipment.directive.inScope"),
    category: optional(text("equipment.directive.category")),
    body: table("module-body"),
  },
  *check({ mark, number, module, inScope, category, body }, plate) {
    const marked = inScope && category !== "sound engineering practice";
    const fault =
      mark !== marked
        ? (["mark", marked ? "bears no CE mark" : "bears a CE mark that the equipment must not have"] as const)
        : marked && module !== undefined && (body(module).text("body") === "yes") !== (number !== undefined)
          ? ([
              number === undefined ? "mark" : "number",
              number === undefined
                ? `bears no number of an inspection body; module ${module} has one`
                : `bears number ${number}; module ${module} has no inspection body`,
            ] as const)
          : undefined;
    if (fault !== undefined)
      yield {
        at: fault[0],
        message: `nameplate ${plate.name} ${fault[1]}`,
        why: inScope
          ? `category ${category ?? "not stated"}, module ${module ?? "not stated"}`
          : "the equipment is outside the directive",
        hint: "compare with the photograph of the plate; have the plate changed if it is true",
      };
  },
  examples: [
    {
      name: "mark and number",
      given: { mark: true, number: "0000", module: "B+F", inScope: true, category: "IV" },
      objections: [],
    },
    {
      name: "mark without number, by module A",
      given: { mark: true, module: "A", inScope: true, category: "I" },
      objections: [],
    },
    { name: "outside the directive", given: { mark: false, inScope: false }, objections: [] },
    {
      name: "no mark",
      given: { mark: false, number: "0000", module: "B+F", inScope: true, category: "IV" },
      objections: ["nameplate X-01 bears no CE mark"],
    },
    {
      name: "no number",
      given: { mark: true, module: "B+F", inScope: true, category: "IV" },
      objections: ["nameplate X-01 bears no number of an inspection body; module B+F has one"],
    },
    {
      name: "a number too much",
      given: { mark: true, number: "0000", module: "A", inScope: true, category: "I" },
      objections: ["nameplate X-01 bears number 0000; module A has no inspection body"],
    },
    {
      name: "a mark too much",
      given: { mark: true, inScope: true, category: "sound engineering practice" },
      objections: ["nameplate X-01 bears a CE mark that the equipment must not have"],
    },
  ],
});

export const nameplateValve = rule({
  id: "nameplate-set-pressure",
  title: "The set pressure on the nameplate is the lowest of the safety valves",
  when: [
    { path: "setPressure", exists: true },
    { path: "equipment.<safety-valve:equipment>", exists: true },
  ],
  basis: ownChoice("the plate tells who operates the equipment when it blows"),
  kind: "nameplate",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    set: optional(quantity("setPressure", "bar")),
    valves: anyOf(things("equipment.<safety-valve:equipment>", { set: quantity("setPressure", "bar") })),
  },
  *check({ set, valves }, plate) {
    const [lowest] = [...valves].sort((a, b) => a.set.low - b.set.low);
    if (set !== undefined && lowest !== undefined && holds(set, "=", lowest.set) === "no")
      yield {
        at: "set",
        message: `nameplate ${plate.name} states a set pressure of ${set.text}; safety valve ${lowest.$.name} is set to ${lowest.set.text}`,
        why: valves.map(({ $, set: own }) => `${$.name}: ${own.text}`).join("; "),
        hint: "compare with the photograph of the plate and with the bench record",
        related: [{ at: [lowest, "set"], message: `set to ${lowest.set.text}` }],
      };
  },
  examples: [
    { name: "the same", given: { set: "11 bar", valves: [{ set: "11.0 bar" }] }, objections: [] },
    {
      name: "the lowest of two",
      given: { set: "11 bar", valves: [{ set: "11.3 bar" }, { set: "11 bar" }] },
      objections: [],
    },
    { name: "not stated on the plate", given: { valves: [{ set: "11 bar" }] }, objections: [] },
    {
      name: "another",
      given: { set: "10 bar", valves: [{ $: "SV-01", set: "11 bar" }] },
      objections: ["nameplate X-01 states a set pressure of 10 bar; safety valve SV-01 is set to 11 bar"],
    },
  ],
});
