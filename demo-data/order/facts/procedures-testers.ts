import { procedure, type Approval, type ProcedureText } from "./procedure.ts";

/** The testers' yearly review of their procedures. */
export const review: Approval = {
  prepared: "N1",
  checked: "N2",
  approved: "N3",
  date: "2026-01-12",
  on: "2026-01-16",
  reason: "yearly review",
};

export const testerProcedures: readonly ProcedureText[] = [
  {
    record: procedure("PRC-VT", "ndt", "GT-P-01", "Visual testing of fusion welds", "4", review, "VT"),
    paragraphs: [
      ["Scope", "All welds of ferritic vessels, both sides where accessible, over the full length, after cleaning."],
      [
        "Conditions",
        "At least 500 lx on the surface, eye not farther than 600 mm, angle not below 30°. Weld gauge for reinforcement, undercut and throat.",
      ],
      ["Assessment", "Quality level stated on the weld map; the report names each joint with its length."],
      ["Personnel", "Certified for method VT at level 2, near vision tested within twelve months."],
    ],
  },
  {
    record: procedure(
      "PRC-RT",
      "ndt",
      "GT-P-02",
      "Radiographic testing of butt welds, X-ray and film",
      "3",
      review,
      "RT",
    ),
    paragraphs: [
      [
        "Scope",
        "Butt welds of 5 mm to 20 mm in ferritic steel, single wall, film outside. Pipes up to DN 100 and their flanges through two walls, film outside.",
      ],
      [
        "Technique",
        "Class B. Film class C4 or better, lead screens 0.02 mm. Density 2.3 to 4.0 in the weld. Wire indicator on each film, on the source side; through two walls on the film side, marked F.",
      ],
      [
        "Wire to be seen",
        "Image quality B. Single wall, by its nominal thickness: to 6 mm W16, over 6 mm to 8 mm W15, over 8 mm to 12 mm W14, over 12 mm to 20 mm W13. Two walls, by the steel the rays pass: over 6 mm to 12 mm W15, over 12 mm to 18 mm W14, over 18 mm to 30 mm W13.",
      ],
      [
        "Hall",
        "Exposures before the shift, after it or between two welds. Nobody welds in the hall and everyone is behind the barrier.",
      ],
      [
        "Place",
        "Films are numbered from the zero mark of the joint, clockwise seen from end 1; every crossing of seams lies on a film.",
      ],
      [
        "Assessment",
        "Quality level C: acceptance level 2. A rejected film is followed by two further lengths of the same welder.",
      ],
    ],
  },
  {
    record: procedure("PRC-MT", "ndt", "GT-P-03", "Magnetic particle testing of ferritic welds", "3", review, "MT"),
    paragraphs: [
      ["Scope", "Fillet and branch welds of ferritic steel, with 20 mm of parent metal each side."],
      [
        "Technique",
        "Yoke, alternating current, two directions at right angles, wet black ink on white contrast paint, field 2 kA/m to 6 kA/m.",
      ],
      ["Waiting time", "Not before 16 h after the last run."],
      ["Assessment", "Acceptance level 2X. Every linear indication longer than 1.5 mm is recorded."],
    ],
  },
  {
    record: procedure("PRC-PT", "ndt", "GT-P-04", "Penetrant testing, visible dye", "2", review, "PT"),
    paragraphs: [
      ["Scope", "Excavations before repair welding, and surfaces a yoke cannot reach."],
      [
        "Technique",
        "Red dye, solvent removable, developer from the can. Surface 10 °C to 50 °C, penetration 15 min, development 20 min.",
      ],
      ["Assessment", "An excavation must be free of any indication before it is welded."],
    ],
  },
];
