import { categories, gasCategory, heatedCategory, states } from "./functions/category.ts";
import { excerptSeen, fromMemory } from "../model/basis.ts";
import { calculation, type Acceptance, type CalculationInput } from "../model/calculation.ts";

const directive = "Directive 2014/68/EU";

const PS: CalculationInput = {
  path: "limits.maximumAllowablePressure",
  unit: "bar",
  means: "maximum allowable pressure",
  display: "P_S",
  unsafe: "low",
};
const V: CalculationInput = { path: "volume", unit: "l", means: "volume", unsafe: "low" };
const declared: CalculationInput = {
  path: "directive.category",
  unit: "1",
  means: "declared category",
  display: "cat_declared",
  options: categories,
  unsafe: "high",
};
const notLower: Acceptance = {
  left: "declared",
  relation: ">=",
  right: "cat",
  means: "the declared category is not lower than the one from pressure and volume",
  accuses: "declared",
};

/** Vessels for gas, not heated: Annex II table 2. */
export const equipmentCategory = calculation({
  id: "equipment-category",
  scope: "gas",
  title: "Category of a vessel for gas",
  basis: fromMemory(directive, undefined, "Annex II, table 2"),
  covers:
    "Category of a vessel for a gas or vapour of fluid group 2 from pressure and volume. A higher category may be declared, a lower one not. Group 1, liquids, piping, and assemblies are not covered; nor are two corners of the table where its drawing must be read: PS at most 4 bar with PS·V over 3000 bar·l, and PS below 1 bar with V over 1000 l.",
  appliesTo: {
    kind: "equipment",
    when: [
      { path: "directive.inScope", equals: true },
      { path: "fluid.state", equals: "gas" },
    ],
  },
  inputs: {
    PS,
    V,
    group: { path: "fluid.group", unit: "1", means: "fluid group", unsafe: "high" },
    state: { path: "fluid.state", unit: "1", means: "state of the fluid", options: states },
    declared,
  },
  functions: [gasCategory],
  steps: [
    { symbol: "PSV", unit: "bar·l", means: "pressure times volume", formula: "PS*V", display: "PS·V_" },
    {
      symbol: "cat",
      unit: "1",
      means: "category from pressure and volume",
      formula: "gasCategory(PS, V, group, state)",
      options: categories,
    },
  ],
  limits: [
    { left: "PS", relation: ">", right: "'0.5 bar'", means: "the pressure is above 0.5 bar, within the directive" },
  ],
  accept: [notLower],
  compared: [{ symbol: "cat", unsafe: "low" }],
  examples: [
    {
      source: "worked by hand: 11·2000 = 22 000 bar·l, over 3000; declared as found",
      class: "constructed",
      given: { PS: 11, V: 2000, group: 2, state: 1, declared: 4 },
      expect: { PSV: 22000, cat: 4 },
      within: 0,
    },
    {
      source: "worked by hand: 10·100 = 1000 bar·l, at most 1000; a higher category declared",
      class: "constructed",
      given: { PS: 10, V: 100, group: 2, state: 1, declared: 3 },
      expect: { cat: 2 },
      within: 0,
    },
    {
      source: "worked by hand: 10·300 = 3000 bar·l, at most 3000; declared a category too low",
      class: "constructed",
      given: { PS: 10, V: 300, group: 2, state: 1, declared: 2 },
      expect: { cat: 3 },
      within: 0,
    },
    {
      source: "constructed: at 0.5 bar outside the directive",
      class: "constructed",
      given: { PS: 0.5, V: 300, group: 2, state: 1, declared: 0 },
      expect: { cat: 0 },
      within: 0,
      outside: ["the pressure is above 0.5 bar, within the directive"],
    },
  ],
});

/** Fired or otherwise heated equipment for steam: Annex II table 5. */
export const heatedEquipmentCategory = calculation({
  id: "heated-equipment-category",
  scope: "steam",
  title: "Category of heated equipment for steam",
  basis: excerptSeen(directive, "Annex II, table 5, bands as others repeat them, the drawing itself not seen"),
  covers:
    "Category of fired or otherwise heated equipment for steam or superheated water above 110 °C from pressure and volume. A higher category may be declared, a lower one not. Vessels for steam that are not heated fall under table 2 and come out too high here, never too low.",
  appliesTo: {
    kind: "equipment",
    when: [
      { path: "directive.inScope", equals: true },
      { path: "fluid.state", equals: "steam" },
    ],
  },
  inputs: {
    PS,
    V,
    TS: {
      path: "limits.maximumAllowableTemperature",
      unit: "°C",
      means: "maximum allowable temperature",
      display: "T_S",
    },
    declared,
  },
  functions: [heatedCategory],
  steps: [
    { symbol: "PSV", unit: "bar·l", means: "pressure times volume", formula: "PS*V", display: "PS·V_" },
    {
      symbol: "cat",
      unit: "1",
      means: "category from pressure and volume",
      formula: "heatedCategory(PS, V)",
      options: categories,
    },
  ],
  limits: [
    { left: "PS", relation: ">", right: "'0.5 bar'", means: "the pressure is above 0.5 bar, within the directive" },
    { left: "TS", relation: ">", right: "'110 °C'", means: "the temperature is above 110 °C, within table 5" },
  ],
  accept: [notLower],
  compared: [{ symbol: "cat", unsafe: "low" }],
  examples: [
    {
      source: "worked by hand: 13·8000 bar·l and over 1000 l",
      class: "constructed",
      given: { PS: 13, V: 8000, TS: 195, declared: 4 },
      expect: { cat: 4 },
      within: 0,
    },
    {
      source: "worked by hand: 10·200 = 2000 bar·l; declared a category too low",
      class: "constructed",
      given: { PS: 10, V: 200, TS: 185, declared: 2 },
      expect: { cat: 3 },
      within: 0,
    },
    {
      source: "constructed: at 0.5 bar outside the directive",
      class: "constructed",
      given: { PS: 0.5, V: 200, TS: 111, declared: 0 },
      expect: { cat: 0 },
      within: 0,
      outside: ["the pressure is above 0.5 bar, within the directive"],
    },
    {
      source: "constructed: at 110 °C another table holds",
      class: "constructed",
      given: { PS: 1, V: 200, TS: 110, declared: 2 },
      expect: { cat: 2 },
      within: 0,
      outside: ["the temperature is above 110 °C, within table 5"],
    },
  ],
});
