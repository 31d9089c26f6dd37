import { procedure, type Approval, type ProcedureText } from "./procedure.ts";
import { testerProcedures } from "./procedures-testers.ts";

const shop = (date: string, on: string, reason = "yearly review"): Approval => ({
  prepared: "D2",
  checked: "M1",
  approved: "R1",
  date,
  on,
  reason,
});

export const procedures: readonly ProcedureText[] = [
  ...testerProcedures,
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
      checked: "D2",
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
        "To half the test pressure, then in steps of a tenth, to the test pressure; hold at least 30 min with the pump cut off, both gauges read at least every 5 min during the hold.",
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
      checked: "D2",
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
      [
        "Scope",
        "Completed vessel with safety valve and documents, before release. The nameplate is stamped and fixed when the certificate of the inspection body is there.",
      ],
      [
        "Work",
        "Comparison of drawings, nameplate as ordered, certificates and this book; view inside and outside; accessories and seals.",
      ],
    ],
  },
];
