import { fromMemory } from "../model/basis.ts";
import type { Grade } from "./grade.ts";

/** Structural steel of attachments: EN 10025-2. It is no pressure steel; proof strengths at temperature are not known here. */
export const en10025: readonly Grade[] = [
  {
    standard: "EN 10025-2",
    edition: "2019",
    name: "S235JR",
    number: "1.0038",
    group: "1.1",
    delivery: ["+AR", "+N"],
    chemistry: {
      basis: fromMemory("EN 10025-2", "2019", "table of ladle analysis, nominal thickness up to 40 mm"),
      limits: [
        ["C", "most", "0.17 %"],
        ["Mn", "most", "1.4 %"],
        ["P", "most", "0.035 %"],
        ["S", "most", "0.035 %"],
        ["N", "most", "0.012 %"],
        ["Cu", "most", "0.55 %"],
      ],
    },
    strength: {
      basis: fromMemory("EN 10025-2", "2019", "table of mechanical properties at room temperature, flat products"),
      bands: [
        {
          over: 3,
          upTo: 16,
          yieldStrength: 235,
          tensileStrength: [360, 510],
          elongation: { longitudinal: "26 %", transverse: "24 %" },
        },
        {
          over: 16,
          upTo: 40,
          yieldStrength: 225,
          tensileStrength: [360, 510],
          elongation: { longitudinal: "26 %", transverse: "24 %" },
        },
      ],
    },
    impact: {
      basis: fromMemory("EN 10025-2", "2019", "table of impact energy"),
      rows: [{ temperature: 20, direction: "longitudinal", energy: 27 }],
    },
  },
];
