import type { Procedure } from "../../../src/generated/records.ts";

type Type = Procedure["type"];

/** What a procedure says, for its paper; the record states only that it exists and is approved. */
export interface ProcedureText {
  readonly record: Procedure;
  readonly paragraphs: readonly (readonly [string, string])[];
}

interface Approval {
  readonly prepared: string;
  readonly checked?: string;
  readonly approved: string;
  readonly date: string;
  readonly on: string;
  readonly reason: string;
}

const procedure = (
  id: string,
  type: Type,
  number: string,
  title: string,
  revision: string,
  { prepared, checked, approved, date, on, reason }: Approval,
  method?: Procedure["method"],
): Procedure => ({
  id,
  type,
  ...(method !== undefined && { method }),
  title,
  number,
  revisions: [
    {
      revision,
      date,
      status: "for-construction",
      reason,
      preparedBy: prepared,
      ...(checked !== undefined && { checkedBy: checked }),
      approvedBy: approved,
      approved: on,
      sheets: 1,
    },
  ],
});

const ndt = (date: string, on: string, reason = "yearly review"): Approval => ({
  prepared: "N1",
  checked: "N2",
  approved: "N3",
  date,
  on,
  reason,
});
const shop = (date: string, on: string, reason = "yearly review"): Approval => ({
  prepared: "D2",
  checked: "M1",
  approved: "R1",
  date,
  on,
  reason,
});

export const procedures: readonly ProcedureText[] = [
  {
    record: procedure(
      "PRC-VT",
      "ndt",
      "GT-P-01",
      "Visual testing of fusion welds",
      "4",
      ndt("2026-01-12", "2026-01-16"),
      "VT",
    ),
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
      ndt("2026-01-12", "2026-01-16"),
      "RT",
    ),
    paragraphs: [
      ["Scope", "Butt welds of 5 mm to 20 mm in ferritic steel, single wall, film outside."],
      [
        "Technique",
        "Class B. Film class C4 or better, lead screens 0.02 mm. Density 2.3 to 4.0 in the weld. Wire indicator on the source side, each film.",
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
    record: procedure(
      "PRC-MT",
      "ndt",
      "GT-P-03",
      "Magnetic particle testing of ferritic welds",
      "3",
      ndt("2026-01-12", "2026-01-16"),
      "MT",
    ),
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
    record: procedure(
      "PRC-PT",
      "ndt",
      "GT-P-04",
      "Penetrant testing, visible dye",
      "2",
      ndt("2026-01-12", "2026-01-16"),
      "PT",
    ),
    paragraphs: [
      ["Scope", "Excavations before repair welding, and surfaces a yoke cannot reach."],
      [
        "Technique",
        "Red dye, solvent removable, developer from the can. Surface 10 °C to 50 °C, penetration 15 min, development 20 min.",
      ],
      ["Assessment", "An excavation must be free of any indication before it is welded."],
    ],
  },
  {
    record: procedure(
      "PRC-MARK",
      "marking",
      "TB-QP-04",
      "Marking and transfer of marks",
      "6",
      shop("2026-01-26", "2026-01-30"),
    ),
    paragraphs: [
      ["Scope", "Every piece of a pressure part, from receipt to assembly."],
      [
        "Transfer",
        "The mark is stamped on the piece before it is cut off, by a person with stamp authority, low-stress stamps, 6 mm.",
      ],
      ["Record", "The marking list shows the mill's piece number, the new mark, who stamped and who looked on."],
    ],
  },
  {
    record: procedure("PRC-FORM", "forming", "BE-W-12", "Cold forming of dished ends and normalising", "3", {
      prepared: "F1",
      approved: "D2",
      date: "2026-02-09",
      on: "2026-02-20",
      reason: "order TQ-PO-2231",
    }),
    paragraphs: [
      ["Scope", "Ends of P265GH up to 20 mm, crown and knuckle pressed and spun cold from one blank."],
      ["Heat treatment", "Normalising after forming: 890 °C to 950 °C for at least 30 min, cooling in still air."],
      [
        "After it",
        "Thickness of crown, knuckle and straight flange; both surfaces of the knuckle by magnetic particles.",
      ],
    ],
  },
  {
    record: procedure(
      "PRC-DIM",
      "dimensions",
      "TB-QP-06",
      "Dimension checks of vessels",
      "5",
      shop("2026-01-26", "2026-01-30"),
    ),
    paragraphs: [
      ["Scope", "Roundness, peaking, offset of edges, length, place and tilt of nozzles."],
      [
        "Roundness",
        "Four diameters at each station, 45° apart; greatest less smallest at most 1.0 % of the nominal diameter.",
      ],
      ["Record", "Nominal, limits and every reading, with the instrument used."],
    ],
  },
  {
    record: procedure(
      "PRC-HYD",
      "pressure-test",
      "TB-QP-09",
      "Hydrostatic test",
      "4",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      [
        "Before",
        "All welding, repairs and tests are finished and the nonconformity reports closed. Surfaces bare and dry. Two gauges, 1.5 to 4 times the test pressure, calibrated within six months.",
      ],
      [
        "Water",
        "Clean, not colder than 10 °C, vented at the highest point, left to take the temperature of the steel.",
      ],
      [
        "Pressure",
        "To half the test pressure, then in steps of a tenth, to the test pressure; hold at least 30 min with the pump cut off; readings of both gauges at least every 5 min.",
      ],
      ["Examination", "At the maximum allowable pressure: every weld is looked at. No leak, no lasting deformation."],
    ],
  },
  {
    record: procedure(
      "PRC-CLEAN",
      "cleaning",
      "TB-QP-11",
      "Cleaning and drying before coating",
      "2",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      ["Scope", "Inside of vessels for compressed air, after the hydrostatic test."],
      ["Work", "Emptied, dried with warm air to below 50 % relative humidity, spatter ground off, blasted to Sa 2½."],
    ],
  },
  {
    record: procedure(
      "PRC-COAT",
      "coating",
      "TB-QP-12",
      "Internal coating of receivers",
      "1",
      shop("2026-04-13", "2026-04-20", "order PW-1187"),
    ),
    paragraphs: [
      ["System", "Two coats of epoxy for compressed air up to 80 °C, 125 µm dry film each, grey then white."],
      [
        "Conditions",
        "Steel at least 3 K above the dew point, 10 °C to 35 °C, first coat within 4 h after blasting, second after 16 h to 72 h.",
      ],
      [
        "Inspection",
        "Dry film 200 µm to 400 µm, at least ten readings in each zone; pores by the wet sponge method, none permitted.",
      ],
    ],
  },
  {
    record: procedure("PRC-SV", "set-pressure", "HV-WI-31", "Setting and sealing of safety valves", "7", {
      prepared: "V1",
      approved: "D2",
      date: "2025-11-17",
      on: "2025-11-28",
      reason: "new bench gauge",
    }),
    paragraphs: [
      ["Medium", "Dry air, 20 °C."],
      [
        "Setting",
        "Three openings one after the other, each within 3 % or 0.1 bar of the set pressure, whichever is greater.",
      ],
      ["Tightness", "Seat tight at 90 % of the set pressure. Then sealed with a numbered lead seal."],
    ],
  },
  {
    record: procedure(
      "PRC-FIN",
      "final-inspection",
      "TB-QP-14",
      "Final inspection",
      "3",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      ["Scope", "Completed vessel with nameplate, safety valve and documents, before release."],
      [
        "Work",
        "Comparison of nameplate, drawing, certificates and this book; view inside and outside; accessories and seals.",
      ],
    ],
  },
];
