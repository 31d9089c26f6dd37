import { derivedFrom, excerptSeen, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const shell = { Di: 2400, es: 14.95, f: 137.8, p: 1.3 };

export const unreinforcedOpening = calculation({
  id: "unreinforced-opening",
  title: "Opening of a shell without a branch",
  basis: fromMemory("EN 12953-3", undefined, "openings in cylindrical shells, pressure area"),
  covers:
    "Greatest single opening that a cylindrical shell carries without reinforcement, as an opening into which nothing is welded that could count. Welds across the opening, and loads of pipes are not covered.",
  appliesTo: {
    kind: "part#openings",
    when: [
      { path: "record.pressureBearing", equals: true },
      { path: "record.role", equals: "shell-course" },
      { path: "branch", exists: false },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    Di: {
      path: "record.calculation(cylindrical-shell).Dc",
      unit: "mm",
      means: "inside diameter of the shell, corroded",
      display: "D_i",
      unsafe: "low",
    },
    es: {
      path: "record.calculation(cylindrical-shell).ea",
      unit: "mm",
      means: "analysis thickness of the shell",
      display: "e_s",
      unsafe: "high",
    },
    f: {
      path: "record.calculation(design-stress).f",
      unit: "MPa",
      means: "design stress of the shell",
      unsafe: "high",
    },
    d: { path: "axialWidth", unit: "mm", means: "width of the opening along the axis of the shell", unsafe: "low" },
  },
  owes: [owedBy("design", "design-approved", "d")],
  steps: [
    {
      symbol: "ls",
      unit: "mm",
      means: "length of shell that carries",
      formula: "sqrt((Di + es)*es)",
      display: "l_s",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "vA",
      unit: "1",
      means: "efficiency of the shell at the opening",
      formula: "(Di + es)/(Di*(1 + d/(2*ls)) + es)",
      display: "v_A",
      round: { decimals: 3, direction: "down" },
      basis: derivedFrom("pressure area without a branch, against the stress of the whole shell"),
    },
    {
      symbol: "vreq",
      unit: "1",
      means: "efficiency the pressure asks for",
      formula: "p*(Di + es)/(2*f*es)",
      display: "v_req",
      round: { decimals: 3, direction: "up" },
    },
    {
      symbol: "dA",
      unit: "mm",
      means: "greatest opening by that efficiency",
      formula: "2*ls*(Di + es)/Di*(1/vreq - 1)",
      display: "d_A",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "dmax",
      unit: "mm",
      means: "greatest opening without reinforcement",
      formula: "min(dA, 2.5*es + '70 mm')",
      display: "d_max",
      round: { decimals: 1, direction: "down" },
      basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 366: compensation above 2.5·t + 70 mm"),
    },
  ],
  limits: [],
  accept: [
    {
      left: "d",
      relation: "<=",
      right: "dmax",
      means: "the opening is at most the greatest one without reinforcement",
      accuses: "d",
    },
  ],
  compared: [
    { symbol: "vA", unsafe: "high" },
    { symbol: "vreq", unsafe: "low" },
    { symbol: "dmax", unsafe: "high" },
  ],
  examples: [
    {
      source: "worked by hand: 2.5·14.95 + 70 decides; 2414.95/(2400·(1 + 100/(2·190.0092)) + 14.95)",
      class: "constructed",
      given: { ...shell, d: 100 },
      expect: { ls: 190.009217, vA: 0.792697, vreq: 0.761958, dmax: 107.375 },
      within: 0.000001,
    },
    {
      source: "worked by hand: the efficiency decides, at a stress for which the shell is barely thick enough",
      class: "constructed",
      given: { ...shell, f: 106, d: 4 },
      expect: { vreq: 0.990546, dA: 3.64976, dmax: 3.64976 },
      within: 0.00001,
    },
    {
      source: "constructed: exactly as wide as permitted",
      class: "constructed",
      given: { ...shell, d: 107.375 },
      expect: { dmax: 107.375 },
      within: 1e-9,
    },
  ],
});
