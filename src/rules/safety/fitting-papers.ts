import { commonPractice, fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, quantity, text, thing, things } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf } from "../../requirements/boiler-conditions.ts";

/** Fittings that no pressure of the equipment acts upon. */
const outside = ["burner", "gas-train", "control-panel", "explosion-door", "feed-pump"];
const specific = ["3.1", "3.2"];

export const fittingCertified = rule({
  id: "fitting-certificate-type",
  title: "The material of a fitting under pressure is certified with results of its own",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I, 4.3: certificate of specific product control for main pressure-bearing parts of categories II, III and IV",
  ),
  kind: "fitting",
  when: [
    { path: "certificate.type", exists: true },
    { path: "equipment.directive.category", exists: true },
    { path: "equipment.directive.category", equals: ["II", "III", "IV"] },
  ],
  severity: "query",
  owner: "supplier",
  inputs: {
    type: text("certificate.type"),
    sort: text("sort"),
    category: optional(text("equipment.directive.category")),
  },
  *check({ type, sort, category }, fitting) {
    if (category === undefined || outside.includes(sort) || specific.includes(type)) return;
    yield {
      at: "type",
      accuses: [],
      message: `fitting ${fitting.name} has a certificate of type ${type}; it bears the pressure of equipment of category ${category}`,
      why: `a certificate of type ${type} states no results of the product itself`,
      hint: "ask its maker for a certificate of type 3.1, or answer this query with what shows its body to be sound",
    };
  },
  examples: [
    { name: "3.1", given: { type: "3.1", sort: "main-stop-valve", category: "IV" }, objections: [] },
    { name: "a burner", given: { type: "2.1", sort: "burner", category: "IV" }, objections: [] },
    {
      name: "2.2",
      given: { type: "2.2", sort: "main-stop-valve", category: "IV" },
      objections: ["fitting X-01 has a certificate of type 2.2; it bears the pressure of equipment of category IV"],
    },
  ],
});

export const fittingCertifiedFirst = rule({
  id: "fitting-certified-first",
  title: "A fitting was certified before it was tried on the equipment",
  basis: commonPractice("a fitting comes with its certificate, and is mounted and tried with it"),
  kind: "fitting",
  when: [
    { path: "certificate.date", exists: true },
    { path: "functionTests[].date", exists: true },
  ],
  severity: "query",
  owner: "quality",
  inputs: {
    certified: date("certificate.date"),
    trials: anyOf(things("functionTests[]", { day: date("date") })),
  },
  *check({ certified, trials }, fitting) {
    const early = trials.filter(({ day }) => canPrecede(certified, day) === "no");
    const [first] = early;
    if (first === undefined) return;
    yield {
      at: "certified",
      accuses: ["certified"],
      message: `the certificate of fitting ${fitting.name} is of ${certified.text}; it was tried on ${first.day.text}`,
      why: "it was mounted before anybody had certified it",
      hint: "compare both days with the papers; if it was so, answer this query with what was certified later",
      related: early.map((one) => ({ at: [one, "day"] as const, message: `tried on ${one.day.text}` })),
    };
  },
  examples: [
    { name: "before", given: { certified: "2026-03-17", trials: [{ day: "2026-06-25" }] }, objections: [] },
    {
      name: "after",
      given: { certified: "2026-07-17", trials: [{ day: "2026-06-25" }] },
      objections: ["the certificate of fitting X-01 is of 2026-07-17; it was tried on 2026-06-25"],
    },
  ],
});

export const fittingDeclared = rule({
  id: "fitting-declaration-type",
  title: "What declares a fitting is a declaration of its supplier",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "EU declaration of conformity, which accompanies pressure equipment",
  ),
  kind: "fitting",
  when: [{ path: "declaration", exists: true }],
  severity: "nonconformity",
  owner: "document control",
  inputs: { named: text("declaration"), document: thing("declaration", { type: text("type") }) },
  *check({ document }, fitting) {
    if (document.type === "supplier-declaration") return;
    yield {
      at: "named",
      accuses: ["named"],
      message: `fitting ${fitting.name} names document ${document.$.name} as its declaration, which is of type "${document.type}"`,
      why: 'a declaration of the supplier is of type "supplier-declaration"',
      hint: "name the declaration of its supplier, or correct the type of the document",
      related: [{ at: [document, "type"], message: document.type }],
    };
  },
  examples: [
    {
      name: "a declaration",
      given: { named: "DOC-11", document: { $: "DOC-11", type: "supplier-declaration" } },
      objections: [],
    },
    {
      name: "a letter",
      given: { named: "DOC-12", document: { $: "DOC-12", type: "correspondence" } },
      objections: ['fitting X-01 names document DOC-12 as its declaration, which is of type "correspondence"'],
    },
  ],
});

export const limiterTemperature = rule({
  id: "temperature-limiter-setting",
  title: "A temperature limiter cuts the heat at the maximum allowable temperature, or below",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I: devices that monitor temperature respond in good time",
  ),
  kind: "fitting",
  when: [fittingOf("temperature-limiter"), { path: "settingTemperature", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    setting: quantity("settingTemperature", "°C"),
    most: quantity("equipment.limits.maximumAllowableTemperature", "°C"),
  },
  *check({ setting, most }, fitting) {
    const answer = holds(setting, "<=", most);
    if (answer === "yes") return;
    yield {
      at: "setting",
      message: `temperature limiter ${fitting.name} cuts the heat at ${setting.text}, above the maximum allowable temperature, ${most.text}`,
      why: "the equipment would be hotter than it is designed for before anything acts",
      hint: "compare with the record of the setting and correct the wrong figure, or have the limiter set again",
      unsure: answer === "unsure",
      related: [{ at: "most", message: `${most.text} here` }],
    };
  },
  examples: [
    { name: "at it", given: { setting: "110 °C", most: "110 °C" }, objections: [] },
    {
      name: "above",
      given: { setting: "120 °C", most: "110 °C" },
      objections: ["temperature limiter X-01 cuts the heat at 120 °C, above the maximum allowable temperature, 110 °C"],
    },
  ],
});
