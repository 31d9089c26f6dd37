import { fromMemory } from "../model/basis.ts";
import type { Grade } from "./grade.ts";

/** Forgings: EN 10222-2. Proof strengths at temperature are not known here: a look-up finds no row. */
export const en10222: readonly Grade[] = [
  {
    standard: "EN 10222-2",
    edition: "2017",
    name: "P245GH",
    number: "1.0352",
    group: "1.1",
    delivery: ["+N", "+NT"],
    chemistry: {
      basis: fromMemory("EN 10222-2", "2017", "table of cast analysis"),
      limits: [
        ["C", "least", "0.08 %"],
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.4 %"],
        ["Mn", "least", "0.5 %"],
        ["Mn", "most", "1.3 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.015 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10222-2", "2017", "table of mechanical properties at room temperature"),
      bands: [
        { over: 0, upTo: 35, yieldStrength: 245, tensileStrength: [410, 530], elongation: { longitudinal: "25 %" } },
        { over: 35, upTo: 160, yieldStrength: 220, tensileStrength: [410, 530], elongation: { longitudinal: "25 %" } },
      ],
    },
  },
  {
    standard: "EN 10222-2",
    edition: "2017",
    name: "P280GH",
    number: "1.0426",
    group: "1.2",
    delivery: ["+N", "+NT"],
    chemistry: {
      basis: fromMemory("EN 10222-2", "2017", "table of cast analysis"),
      limits: [
        ["C", "least", "0.08 %"],
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.4 %"],
        ["Mn", "least", "0.9 %"],
        ["Mn", "most", "1.5 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.015 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10222-2", "2017", "table of mechanical properties at room temperature"),
      bands: [
        { over: 0, upTo: 35, yieldStrength: 280, tensileStrength: [460, 580], elongation: { longitudinal: "23 %" } },
        { over: 35, upTo: 160, yieldStrength: 255, tensileStrength: [460, 580], elongation: { longitudinal: "23 %" } },
      ],
    },
  },
  {
    standard: "EN 10222-2",
    edition: "2017",
    name: "P305GH",
    number: "1.0436",
    group: "1.2",
    delivery: ["+N", "+NT"],
    chemistry: {
      basis: fromMemory("EN 10222-2", "2017", "table of cast analysis"),
      limits: [
        ["C", "least", "0.15 %"],
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.4 %"],
        ["Mn", "least", "0.9 %"],
        ["Mn", "most", "1.6 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.015 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10222-2", "2017", "table of mechanical properties at room temperature"),
      bands: [
        { over: 0, upTo: 35, yieldStrength: 305, tensileStrength: [490, 610], elongation: { longitudinal: "22 %" } },
        { over: 35, upTo: 160, yieldStrength: 280, tensileStrength: [490, 610], elongation: { longitudinal: "22 %" } },
      ],
    },
  },
  {
    standard: "EN 10222-2",
    edition: "2017",
    name: "16Mo3",
    number: "1.5415",
    group: "1.2",
    delivery: ["+N", "+NT"],
    chemistry: {
      basis: fromMemory("EN 10222-2", "2017", "table of cast analysis"),
      limits: [
        ["C", "least", "0.12 %"],
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.35 %"],
        ["Mn", "least", "0.4 %"],
        ["Mn", "most", "0.9 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.015 %"],
        ["N", "most", "0.012 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "least", "0.25 %"],
        ["Mo", "most", "0.35 %"],
        ["Ni", "most", "0.3 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10222-2", "2017", "table of mechanical properties at room temperature"),
      bands: [
        { over: 0, upTo: 35, yieldStrength: 295, tensileStrength: [440, 570], elongation: { longitudinal: "23 %" } },
        { over: 35, upTo: 70, yieldStrength: 285, tensileStrength: [440, 570], elongation: { longitudinal: "23 %" } },
      ],
    },
  },
];
