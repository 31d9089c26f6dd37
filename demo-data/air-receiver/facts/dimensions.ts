import type { DimensionCheck } from "../../../src/generated/records.ts";
import { atMost, between, place, roundnessOf, signed, thickness } from "../../order/making/dimensions.ts";

const roundness = roundnessOf("1184 mm", "1178 mm", "1190 mm");

export const dimensionChecks: readonly DimensionCheck[] = [
  {
    id: "DIM-01",
    title: "Ends as received: thickness after forming, diameter, height",
    date: "2026-05-12",
    by: "D2",
    drawing: "DRG-01@B",
    instruments: ["UT-03", "TAPE-03"],
    rows: [
      thickness("P03", "crown", [7.9]),
      thickness("P03", "knuckle, four places", [7.6, 7.4, 7.6, 7.5]),
      thickness("P03", "straight flange", [8.0]),
      thickness("P04", "crown", [8.0]),
      thickness("P04", "knuckle, four places", [7.5, 7.3, 7.6, 7.6]),
      thickness("P04", "straight flange", [7.9]),
      between("circumference at the edge, P03", 3770, 6, 3772, { part: "P03" }),
      between("circumference at the edge, P04", 3770, 6, 3769, { part: "P04" }),
    ],
    result: "accepted",
    signatures: signed("2026-05-12"),
  },
  {
    id: "DIM-02",
    title: "Shell courses: roundness and peaking after the longitudinal seams",
    date: "2026-06-01",
    by: "D2",
    drawing: "DRG-01@B",
    instruments: ["TAPE-03", "CA-05"],
    rows: [
      roundness("inside diameter, course 1, left edge", "P01", [1183, 1186, 1185, 1182]),
      roundness("inside diameter, course 1, right edge", "P01", [1184, 1186, 1183, 1182]),
      roundness("inside diameter, course 2, left edge", "P02", [1185, 1183, 1182, 1186]),
      roundness("inside diameter, course 2, right edge", "P02", [1183, 1184, 1187, 1182]),
      atMost("peaking at L1, template 600 mm", "L1", "4.0 mm", "1.6 mm"),
      atMost("peaking at L2, template 600 mm", "L2", "4.0 mm", "1.9 mm"),
    ],
    result: "accepted",
    signatures: signed("2026-06-01"),
  },
  {
    id: "DIM-03",
    title: "Completed vessel: offset of edges, length, nozzles",
    date: "2026-06-18",
    by: "D2",
    drawing: "DRG-01@B",
    instruments: ["TAPE-03", "CA-05", "WG-01"],
    rows: [
      atMost("offset of edges, C1", "C1", "1.8 mm", "0.7 mm"),
      atMost("offset of edges, C2", "C2", "1.8 mm", "0.8 mm"),
      atMost("offset of edges, C3", "C3", "1.8 mm", "0.6 mm"),
      between("length over ends", 2947, 10, 2950),
      place("N1 from the left tangent line", "P05", 400, 401),
      place("N2 from the left tangent line", "P06", 1950, 1949),
      place("N3 from the left tangent line", "P07", 1400, 1402),
      place("N4 from the left tangent line", "P08", 200, 201),
      place("N5 from the left tangent line", "P09", 2150, 2150),
      place("N6 from the left tangent line", "P10", 800, 802),
    ],
    result: "accepted",
    signatures: signed("2026-06-18"),
  },
];
