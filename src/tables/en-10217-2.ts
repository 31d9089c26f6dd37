import { fromMemory } from "../model/basis.ts";
import type { Grade } from "./grade.ts";

/** Electric-welded tubes: EN 10217-2, steels with properties at elevated temperature. */
export const en10217: readonly Grade[] = [
  {
    standard: "EN 10217-2",
    edition: "2019",
    name: "P195GH",
    number: "1.0348",
    group: "1.1",
    delivery: ["+N"],
    chemistry: {
      basis: fromMemory("EN 10217-2", "2019", "table of cast analysis, sulphur of the editions from 2013"),
      limits: [
        ["C", "most", "0.13 %"],
        ["Si", "most", "0.35 %"],
        ["Mn", "most", "0.7 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.01 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
        ["Al", "least", "0.02 %"],
        ["Nb", "most", "0.01 %", "if added"],
        ["Ti", "most", "0.04 %", "if added"],
        ["V", "most", "0.02 %", "if added"],
        ["Cr+Cu+Mo+Ni", "most", "0.70 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10217-2", "2019", "table of mechanical properties at room temperature"),
      bands: [
        {
          over: 0,
          upTo: 16,
          yieldStrength: 195,
          tensileStrength: [320, 440],
          elongation: { longitudinal: "27 %", transverse: "25 %" },
        },
      ],
    },
    proofStrength: {
      basis: fromMemory("EN 10217-2", "2019", "table of minimum proof strength at elevated temperature"),
      temperatures: [100, 150, 200, 250, 300, 350, 400],
      bands: [{ over: 0, upTo: 16, values: [175, 165, 150, 130, 113, 102, 94] }],
    },
    impact: {
      basis: fromMemory("EN 10217-2", "2019", "table of impact energy"),
      rows: [
        { temperature: 0, direction: "longitudinal", energy: 40 },
        { temperature: -10, direction: "longitudinal", energy: 28 },
        { temperature: 0, direction: "transverse", energy: 27 },
      ],
    },
  },
  {
    standard: "EN 10217-2",
    edition: "2019",
    name: "P235GH",
    number: "1.0345",
    group: "1.1",
    delivery: ["+N"],
    chemistry: {
      basis: fromMemory("EN 10217-2", "2019", "table of cast analysis, sulphur of the editions from 2013"),
      limits: [
        ["C", "most", "0.16 %"],
        ["Si", "most", "0.35 %"],
        ["Mn", "most", "1.2 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.01 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
        ["Al", "least", "0.02 %"],
        ["Nb", "most", "0.01 %", "if added"],
        ["Ti", "most", "0.04 %", "if added"],
        ["V", "most", "0.02 %", "if added"],
        ["Cr+Cu+Mo+Ni", "most", "0.70 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10217-2", "2019", "table of mechanical properties at room temperature"),
      bands: [
        {
          over: 0,
          upTo: 16,
          yieldStrength: 235,
          tensileStrength: [360, 500],
          elongation: { longitudinal: "25 %", transverse: "23 %" },
        },
      ],
    },
    proofStrength: {
      basis: fromMemory("EN 10217-2", "2019", "table of minimum proof strength at elevated temperature"),
      temperatures: [100, 150, 200, 250, 300, 350, 400],
      bands: [{ over: 0, upTo: 16, values: [198, 187, 170, 150, 132, 120, 112] }],
    },
    impact: {
      basis: fromMemory("EN 10217-2", "2019", "table of impact energy"),
      rows: [
        { temperature: 0, direction: "longitudinal", energy: 40 },
        { temperature: -10, direction: "longitudinal", energy: 28 },
        { temperature: 0, direction: "transverse", energy: 27 },
      ],
    },
  },
  {
    standard: "EN 10217-2",
    edition: "2019",
    name: "P265GH",
    number: "1.0425",
    group: "1.1",
    delivery: ["+N"],
    chemistry: {
      basis: fromMemory("EN 10217-2", "2019", "table of cast analysis, sulphur of the editions from 2013"),
      limits: [
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.4 %"],
        ["Mn", "most", "1.4 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.01 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Ni", "most", "0.3 %"],
        ["Al", "least", "0.02 %"],
        ["Nb", "most", "0.01 %", "if added"],
        ["Ti", "most", "0.04 %", "if added"],
        ["V", "most", "0.02 %", "if added"],
        ["Cr+Cu+Mo+Ni", "most", "0.70 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10217-2", "2019", "table of mechanical properties at room temperature"),
      bands: [
        {
          over: 0,
          upTo: 16,
          yieldStrength: 265,
          tensileStrength: [410, 570],
          elongation: { longitudinal: "23 %", transverse: "21 %" },
        },
      ],
    },
    proofStrength: {
      basis: fromMemory("EN 10217-2", "2019", "table of minimum proof strength at elevated temperature"),
      temperatures: [100, 150, 200, 250, 300, 350, 400],
      bands: [{ over: 0, upTo: 16, values: [226, 213, 192, 171, 154, 141, 134] }],
    },
    impact: {
      basis: fromMemory("EN 10217-2", "2019", "table of impact energy"),
      rows: [
        { temperature: 0, direction: "longitudinal", energy: 40 },
        { temperature: -10, direction: "longitudinal", energy: 28 },
        { temperature: 0, direction: "transverse", energy: 27 },
      ],
    },
  },
  {
    standard: "EN 10217-2",
    edition: "2019",
    name: "16Mo3",
    number: "1.5415",
    group: "1.2",
    delivery: ["+N"],
    chemistry: {
      basis: fromMemory("EN 10217-2", "2019", "table of cast analysis, sulphur of the editions from 2013"),
      limits: [
        ["C", "least", "0.12 %"],
        ["C", "most", "0.2 %"],
        ["Si", "most", "0.35 %"],
        ["Mn", "least", "0.4 %"],
        ["Mn", "most", "0.9 %"],
        ["P", "most", "0.025 %"],
        ["S", "most", "0.01 %"],
        ["Cr", "most", "0.3 %"],
        ["Cu", "most", "0.3 %"],
        ["Mo", "least", "0.25 %"],
        ["Mo", "most", "0.35 %"],
        ["Ni", "most", "0.3 %"],
        ["Al", "most", "0.04 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10217-2", "2019", "table of mechanical properties at room temperature"),
      bands: [
        {
          over: 0,
          upTo: 16,
          yieldStrength: 280,
          tensileStrength: [450, 600],
          elongation: { longitudinal: "22 %", transverse: "20 %" },
        },
      ],
    },
    proofStrength: {
      basis: fromMemory("EN 10217-2", "2019", "table of minimum proof strength at elevated temperature"),
      temperatures: [100, 150, 200, 250, 300, 350, 400, 450, 500],
      bands: [{ over: 0, upTo: 16, values: [243, 237, 224, 205, 173, 159, 156, 150, 146] }],
    },
    impact: {
      basis: fromMemory("EN 10217-2", "2019", "table of impact energy"),
      rows: [
        { temperature: 20, direction: "longitudinal", energy: 40 },
        { temperature: 20, direction: "transverse", energy: 27 },
      ],
    },
  },
];
