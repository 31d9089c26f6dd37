import { fromPiece } from "./pieces.ts";
import { applied, ends, limit } from "./side.ts";
import { by, inTest, noJoint, none, ofJoint, unprinted, type Variable } from "./variable.ts";

const byHeat = none("the heat input is what the test limits");

/** The heat a weld is made with, before it and after it. */
export const heatVariables: readonly Variable[] = [
  ...(["current", "voltage", "travel-speed"] as const).map((id): Variable => ({
    id,
    title: id === "current" ? "welding current" : id === "voltage" ? "arc voltage" : "travel speed",
    cells: {
      "test piece to range": byHeat,
      "range to procedure": byHeat,
      "procedure to joint": noJoint,
      "procedure to run": by(`run-${id}-in-window`),
    },
  })),
  {
    id: "heat-input",
    title: "heat input",
    piece: fromPiece.heatInput,
    printed: ends("range.heatInput", "kJ/mm"),
    procedure: ends("heatInput", "kJ/mm"),
    mustState: "heatInput",
    cells: { "procedure to joint": noJoint, "procedure to run": by("heat-input") },
    examples: {
      piece: { ...inTest, heatInput: "1.00 kJ/mm", impact: true, hardness: true },
      held: ["0.75 kJ/mm", "1.25 kJ/mm"],
      inside: ["0.75 kJ/mm", "1.25 kJ/mm"],
      outside: ["0.80 kJ/mm", "1.30 kJ/mm"],
      said: "0.80 kJ/mm to 1.30 kJ/mm",
      range: "0.75 kJ/mm to 1.25 kJ/mm",
    },
  },
  {
    id: "preheat",
    title: "preheat temperature",
    piece: fromPiece.preheat,
    printed: limit("range.preheat", "°C", "from"),
    procedure: limit("preheat", "°C", "from", true),
    remedy:
      "name the qualification that covers it, or raise the preheat of the procedure; what was welded colder is judged on a nonconformity report",
    cells: { "procedure to joint": noJoint, "procedure to run": by("run-temperatures") },
    examples: {
      piece: { ...inTest, preheat: "100 °C" },
      held: ["100 °C"],
      inside: ["120 °C"],
      outside: ["20 °C"],
      said: "from 20 °C",
      range: "from 100 °C",
    },
  },
  {
    id: "interpass",
    title: "interpass temperature",
    piece: fromPiece.interpass,
    printed: limit("range.interpass", "°C", "to"),
    procedure: limit("interpass", "°C", "to", true),
    cells: { "procedure to joint": noJoint, "procedure to run": by("run-temperatures") },
    examples: {
      piece: { ...inTest, interpass: "220 °C" },
      held: ["220 °C"],
      inside: ["200 °C"],
      outside: ["250 °C"],
      said: "up to 250 °C",
      range: "up to 220 °C",
    },
  },
  {
    id: "post-heating",
    title: "post-heating",
    cells: {
      "test piece to range": none("neither records nor procedures state a hydrogen release treatment"),
      "range to procedure": none("neither records nor procedures state a hydrogen release treatment"),
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not state a hydrogen release treatment"),
    },
  },
  {
    id: "heat-treatment",
    title: "heat treatment after welding",
    piece: fromPiece.heatTreatment,
    procedure: applied("postWeldHeatTreatment", true),
    remedy:
      "name the qualification that was tested so; what was welded and treated otherwise is judged on a nonconformity report",
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": by("heat-treatment-planned"),
      "procedure to run": ofJoint,
    },
    examples: {
      piece: { heatTreated: false },
      held: ["not applied"],
      inside: ["not applied"],
      outside: ["applied"],
      said: "applied",
      range: "not applied",
    },
  },
];
