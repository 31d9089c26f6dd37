import { procedure, type Approval, type ProcedureText } from "../../order/facts/procedure.ts";
import { procedures as shopProcedures } from "../../order/facts/procedures.ts";

const shop = (date: string, on: string, reason = "yearly review"): Approval => ({
  prepared: "D2",
  checked: "M1",
  approved: "R1",
  date,
  on,
  reason,
});

/** Procedures of the shop that hold for every vessel. */
const shared = shopProcedures.filter(({ record }) => ["PRC-MARK", "PRC-DIM", "PRC-FIN"].includes(record.id));

/** Working procedures other than those of welding and of its testing. */
export const procedures: readonly ProcedureText[] = [
  ...shared,
  {
    record: procedure(
      "PRC-ROLL",
      "forming",
      "TB-QP-05",
      "Rolling of courses and furnaces",
      "4",
      shop("2026-01-19", "2026-01-23"),
    ),
    paragraphs: [
      ["Scope", "Cylinders of plate up to 25 mm in non-alloy steel, rolled cold, and hoops pressed cold."],
      ["Strain", "Thickness over mean diameter at most 5 %: no heat treatment follows."],
      ["After it", "Template of 20 % of the diameter, at least 400 mm; both edges looked at for cracks."],
    ],
  },
  {
    record: procedure(
      "PRC-TX",
      "expanding",
      "TB-QP-08",
      "Insertion and expansion of boiler tubes",
      "5",
      shop("2026-01-19", "2026-01-23"),
    ),
    paragraphs: [
      [
        "Before",
        "Holes bored to the drawing, free of lengthwise scores, edges broken 1 mm. Bores measured with the three-point gauge, one hole in ten, every hole at the edge of a field.",
      ],
      [
        "Expansion",
        "Rollers with torque cut-off, first from the cold end; wall thinned by 5 % to 8 %, set on ten trial tubes. Stay tubes are welded first, then rolled lightly, by 2 % to 4 %.",
      ],
      ["After it", "Every tube end looked at; bore after expansion measured on one tube in twenty."],
    ],
  },
  {
    record: procedure(
      "PRC-HT",
      "pressure-test",
      "TB-QP-10",
      "Hydrostatic test of shell boilers",
      "3",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      [
        "Before",
        "All welding, expansion, repairs and tests are finished and the nonconformity reports closed. Surfaces bare, inside and outside of every tube dry. Two gauges, 1.5 to 4 times the test pressure, calibrated within six months.",
      ],
      [
        "Water",
        "Clean, not colder than 10 °C, vented at the highest nozzle, left overnight to take the temperature of the steel.",
      ],
      [
        "Pressure",
        "To half the test pressure, then in steps of a tenth, to the test pressure; hold at least 30 min with the pump cut off, both gauges read at least every 5 min during the hold.",
      ],
      [
        "Examination",
        "At the maximum allowable pressure: every weld, every tube end, furnace and chamber from inside. No leak, no lasting deformation.",
      ],
    ],
  },
  {
    record: procedure(
      "PRC-RINSE",
      "cleaning",
      "TB-QP-13",
      "Cleaning of the water side before delivery",
      "2",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      ["Scope", "Water side of steam boilers, after the hydrostatic test."],
      [
        "Work",
        "Emptied, chips and scale removed through manhole and inspection openings, flushed; boiled out at the functional test, then looked at again.",
      ],
    ],
  },
  {
    record: procedure(
      "PRC-PAINT",
      "coating",
      "TB-QP-15",
      "Outside coating of boilers under lagging",
      "3",
      shop("2026-02-02", "2026-02-06"),
    ),
    paragraphs: [
      [
        "System",
        "One coat of zinc-free heat-resistant primer up to 400 °C, 25 µm to 60 µm dry film. No coat on the water side.",
      ],
      ["Conditions", "After the hydrostatic test, steel dry, at least 3 K above the dew point, hand cleaned to St 3."],
    ],
  },
  {
    record: procedure("PRC-SVS", "set-pressure", "HV-WI-33", "Setting and sealing of safety valves for steam", "4", {
      prepared: "V1",
      checked: "D2",
      approved: "D2",
      date: "2025-11-24",
      on: "2025-12-05",
      reason: "steam bench enlarged",
    }),
    paragraphs: [
      ["Medium", "Dry saturated steam of the bench boiler, valve warmed through."],
      [
        "Setting",
        "Three openings one after the other, each within 3 % or 0.1 bar of the set pressure, whichever is greater; blowdown at most 10 %.",
      ],
      ["Tightness", "Seat tight with air at 90 % of the set pressure, cold. Then sealed with a numbered lead seal."],
    ],
  },
];
