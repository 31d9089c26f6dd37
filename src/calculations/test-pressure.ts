import { lowestRatio, stressOfPart } from "./functions/parts.ts";
import { excerptSeen, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const annex = excerptSeen("Directive 2014/68/EU", "Annex I, 7.4, hydrostatic test pressure");
const part = (f20: number, f: number) => ({ f20: `${f20} MPa`, f: `${f} MPa` });

export const testPressure = calculation({
  id: "test-pressure",
  title: "Hydrostatic test pressure",
  basis: annex,
  covers:
    "Least pressure of the hydrostatic proof test, counted at the top of the equipment, and the specified test pressure against it. Main pressure parts are the shell courses and dished ends; flat plates, stays, tubes, parts heated by gas, flanges, bolting and fittings do not enter the ratio: one more part could only lower it.",
  appliesTo: { kind: "equipment" },
  inputs: {
    PS: {
      path: "limits.maximumAllowablePressure",
      unit: "bar",
      means: "maximum allowable pressure",
      unsafe: "low",
      display: "P_S",
    },
    courses: {
      path: 'book.part[role="shell-course"][pressureBearing="true"]',
      unit: "rows",
      means: "shell courses with their design stresses",
      rows: stressOfPart,
    },
    ends: {
      path: 'book.part[role="end"][pressureBearing="true"]',
      unit: "rows",
      means: "dished ends with their design stresses, where there are any",
      need: "any",
      rows: stressOfPart,
    },
    PTs: { path: "testPressure", unit: "bar", means: "specified test pressure", display: "P_T,spec" },
    kP: {
      path: "profile.testFactorPressure",
      unit: "1",
      means: "factor on the maximum allowable pressure",
      display: "k_P",
    },
    kf: {
      path: "profile.testFactorStress",
      unit: "1",
      means: "factor on the pressure with the stress ratio",
      display: "k_f",
    },
    kU: {
      path: "profile.testUpperFactor",
      unit: "1",
      means: "highest share of the required test pressure",
      display: "k_U",
    },
  },
  functions: [lowestRatio],
  steps: [
    {
      symbol: "q",
      unit: "1",
      means: "lowest ratio f20/f of the main pressure parts",
      formula: "lowestRatio(courses, ends)",
      round: { decimals: 4, direction: "up" },
    },
    {
      symbol: "PT",
      unit: "bar",
      means: "required test pressure",
      formula: "max(kP*PS, kf*PS*q)",
      display: "P_T",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "PTu",
      unit: "bar",
      means: "highest test pressure",
      formula: "kU*PT",
      display: "P_T,max",
      round: { decimals: 2, direction: "down" },
    },
  ],
  limits: [
    {
      left: "q",
      relation: ">=",
      right: "1",
      means: "no main part is stronger at the calculation temperature than at 20 °C",
      basis: ownChoice("a ratio below 1 means that a strength was entered wrongly"),
    },
  ],
  accept: [
    {
      left: "PTs",
      relation: ">=",
      right: "PT",
      means: "the specified test pressure is at least the required one",
      accuses: "PTs",
    },
    {
      left: "PTs",
      relation: "<=",
      right: "PTu",
      means: "the specified test pressure does not exceed the highest one",
      accuses: "PTs",
      basis: ownChoice("a test is kept within 6 % above what is required, so that it proves without harming"),
    },
  ],
  compared: [
    { symbol: "q", unsafe: "low" },
    { symbol: "PT", unsafe: "low" },
  ],
  adopted: "PTs",
  examples: [
    {
      source: "worked by hand: 1.25·13·170/137.8 against 1.43·13; the stress ratio governs",
      class: "constructed",
      given: { PS: 13, courses: [part(170, 137.8)], ends: [part(170, 130)], PTs: 20.1, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { q: 1.233672, PT: 20.04717, PTu: 21.25 },
      within: 0.000001,
    },
    {
      source: "worked by hand: equal stresses, 1.43·10 governs; specified exactly as required",
      class: "constructed",
      given: { PS: 10, courses: [part(170, 170)], ends: [part(170, 150)], PTs: 14.3, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { q: 1, PT: 14.3, PTu: 15.158 },
      within: 1e-9,
    },
    {
      source: "worked by hand: flat ends only; shell of P265GH at 184.12 °C, 1.25·10·(410/2.4)/(210.7168/1.5)",
      class: "constructed",
      given: { PS: 10, courses: [part(170.833333, 140.477867)], ends: [], PTs: 15.3, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { q: 1.216087, PT: 15.20109 },
      within: 0.000001,
    },
    {
      source: "constructed: a tenth of a bar too little",
      class: "constructed",
      given: { PS: 10, courses: [part(170, 170)], ends: [part(170, 170)], PTs: 14.2, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { PT: 14.3 },
      within: 1e-9,
    },
    {
      source: "constructed: above the highest test pressure",
      class: "constructed",
      given: { PS: 10, courses: [part(170, 170)], ends: [part(170, 170)], PTs: 15.2, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { PTu: 15.158 },
      within: 1e-9,
    },
    {
      source: "constructed: stronger hot than cold",
      class: "constructed",
      given: { PS: 10, courses: [part(150, 170)], ends: [part(170, 170)], PTs: 14.3, kP: 1.43, kf: 1.25, kU: 1.06 },
      expect: { q: 0.882353 },
      within: 0.000001,
      outside: ["no main part is stronger at the calculation temperature than at 20 °C"],
    },
  ],
});
