import { circumference, patterns, plateOfTube } from "./functions/tube-field.ts";
import { tubePullOutExamples } from "./tube-pull-out-examples.ts";
import { fromMemory, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const trd305 = fromMemory("TRD 305", undefined, "expanded tubes: load on the area of the joint");

export const tubePullOut = calculation({
  id: "tube-pull-out",
  scope: "tube-nests",
  title: "Pull of the plate on plain expanded tubes",
  basis: trd305,
  covers:
    "Load that the pressure puts on one plain tube in the middle of a field, against what its expanded joint may carry. Tubes at the edge of a field, stay tubes, welded tubes, and the loads of unequal expansion are not covered.",
  appliesTo: {
    kind: "part#tubeFields",
    when: [
      { path: "record.pressureBearing", equals: true },
      { path: "record.role", equals: "tube-plate" },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    pattern: { path: "pattern", unit: "1", means: "pattern of the holes", options: patterns },
    P: { path: "pitch", unit: "mm", means: "pitch of the holes", unsafe: "low" },
    dh: { path: "holeDiameter", unit: "mm", means: "diameter of the holes", display: "d_h" },
    do: { path: "tube.outsideDiameter", unit: "mm", means: "outside diameter of the tubes", display: "d_o" },
    et: {
      path: "tube.nominalThickness",
      unit: "mm",
      means: "nominal wall of the tubes",
      display: "e_t",
      unsafe: "high",
    },
    lw: { path: "expandedLength", unit: "mm", means: "expanded length", display: "l_w", unsafe: "high" },
    eP: { path: "record.nominalThickness", unit: "mm", means: "nominal thickness of the tube plate", display: "e_P" },
    n: { path: "tubes", unit: "1", means: "plain tubes in the field" },
    qmax: {
      path: "profile.tubeLoadMost",
      unit: "N/mm",
      means: "greatest pull for each millimetre of circumference",
      display: "q_max",
    },
    σw: {
      path: "profile.expandedJointStressMost",
      unit: "MPa",
      means: "greatest pull for each square millimetre of the joint",
      display: "σ_w",
    },
  },
  functions: [plateOfTube, circumference],
  steps: [
    {
      symbol: "A",
      unit: "mm²",
      means: "area of plate that pulls on one tube",
      formula: "plateOfTube(pattern, P, do)",
      round: { decimals: 0, direction: "up" },
    },
    { symbol: "F", unit: "N", means: "pull on one tube", formula: "p*A", round: { decimals: 0, direction: "up" } },
    {
      symbol: "q",
      unit: "N/mm",
      means: "pull for each millimetre of circumference",
      formula: "F / circumference(do)",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "lc",
      unit: "mm",
      means: "expanded length that counts: at most 40 mm",
      formula: "min(lw, '40 mm')",
      display: "l_c",
    },
    {
      symbol: "Aw",
      unit: "mm²",
      means: "area of the expanded joint: twice the wall, at most a tenth of the diameter, times the length",
      formula: "min(2*et*lc, 0.1*do*lc)",
      display: "A_w",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "Fw",
      unit: "N",
      means: "pull the expanded joint may carry",
      formula: "σw*Aw",
      display: "F_w",
      round: { decimals: 0, direction: "down" },
    },
  ],
  limits: [
    {
      left: "n",
      relation: ">=",
      right: "1",
      means: "the field has plain tubes",
      wrong: "the field has {left} plain tubes, below {right}",
    },
    { left: "dh", relation: ">=", right: "do", means: "the tubes pass through their holes" },
    {
      left: "dh",
      relation: "<=",
      right: "do + '2 mm'",
      means: "the holes belong to these tubes: at most 2 mm wider",
      wrong: "the holes are {left} wide, more than 2 mm wider than the tubes of {do}",
      basis: ownChoice("holes of expanded tubes are less than 1 mm wider; more means that another tube was named"),
    },
    { left: "P", relation: ">", right: "dh", means: "plate is left between the holes" },
    {
      left: "do",
      relation: ">",
      right: "2*et",
      means: "the walls leave a bore",
      wrong: "the outside diameter is {left}; it must be above twice the wall, {right}",
    },
    {
      left: "lw",
      relation: ">=",
      right: "'12 mm'",
      means: "the joint is expanded over at least 12 mm",
      basis: trd305,
    },
    { left: "lw", relation: "<=", right: "eP", means: "the tubes are expanded inside the plate" },
  ],
  accept: [
    {
      left: "q",
      relation: "<=",
      right: "qmax",
      means: "the pull on the circumference is at most what a plain expanded tube may take",
      accuses: "P",
    },
    {
      left: "F",
      relation: "<=",
      right: "Fw",
      means: "the pull on the tube is at most what its expanded joint may carry",
      accuses: "lw",
    },
  ],
  compared: [
    { symbol: "F", unsafe: "low" },
    { symbol: "q", unsafe: "low" },
    { symbol: "Fw", unsafe: "high" },
  ],
  examples: tubePullOutExamples,
});
