import { excerptSeen } from "../model/basis.ts";
import type { Grade } from "./grade.ts";

const card = (part: string) => excerptSeen("EN 10273", `${part}, as repeated on a technical card of the grade`, "2007");

/** Bars: EN 10273, hot-rolled weldable steel bars for pressure purposes at elevated temperatures. Tested lengthwise. */
export const en10273: readonly Grade[] = [
  {
    standard: "EN 10273",
    edition: "2007",
    name: "P235GH",
    number: "1.0345",
    group: "1.1",
    delivery: ["+N"],
    chemistry: {
      basis: card("cast analysis"),
      limits: [
        ["C", "most", "0.16 %"],
        ["Si", "most", "0.35 %"],
        ["Mn", "least", "0.4 %"],
        ["Mn", "most", "1.2 %"],
        ["P", "most", "0.03 %"],
        ["S", "most", "0.025 %"],
        ["Cu", "most", "0.3 %"],
        ["Al", "least", "0.02 %"],
        ["Cr", "most", "0.3 %"],
        ["Mo", "most", "0.08 %"],
        ["Nb", "most", "0.01 %"],
        ["Ni", "most", "0.3 %"],
        ["Ti", "most", "0.03 %"],
        ["V", "most", "0.02 %"],
        ["Cr+Cu+Mo+Ni", "most", "0.70 %"],
      ],
    },
    strength: {
      basis: card("mechanical properties at room temperature"),
      bands: [
        { over: 0, upTo: 16, yieldStrength: 235, tensileStrength: [360, 480], elongation: { longitudinal: "25 %" } },
        { over: 16, upTo: 40, yieldStrength: 225, tensileStrength: [360, 480], elongation: { longitudinal: "25 %" } },
        { over: 40, upTo: 60, yieldStrength: 215, tensileStrength: [360, 480], elongation: { longitudinal: "25 %" } },
        { over: 60, upTo: 100, yieldStrength: 200, tensileStrength: [360, 480], elongation: { longitudinal: "24 %" } },
        { over: 100, upTo: 150, yieldStrength: 185, tensileStrength: [350, 480], elongation: { longitudinal: "24 %" } },
      ],
    },
    proofStrength: {
      basis: card("minimum proof strength at elevated temperature"),
      temperatures: [50, 100, 150, 200, 250, 300, 350, 400],
      bands: [
        { over: 0, upTo: 16, values: [227, 214, 198, 182, 167, 153, 142, 133] },
        { over: 16, upTo: 40, values: [218, 205, 190, 174, 160, 147, 136, 128] },
        { over: 40, upTo: 60, values: [208, 196, 181, 167, 153, 140, 130, 122] },
        { over: 60, upTo: 100, values: [193, 182, 169, 155, 142, 130, 121, 114] },
        { over: 100, upTo: 150, values: [179, 168, 156, 143, 131, 121, 112, 105] },
      ],
    },
  },
];
