import type { DimensionCheck } from "../../generated/records.ts";
import { atMost, between, place, roundnessOf, signed, thickness } from "../../order/making/dimensions.ts";

const roundness = roundnessOf("339.6 mm", "337.9 mm", "341.3 mm");

export const dimensionChecks: readonly DimensionCheck[] = [
  {
    id: "DIM-01",
    title: "Ends as received: thickness after forming, circumference, height",
    date: "2026-05-12",
    by: "D2",
    drawing: "DRG-01@B",
    instruments: ["UT-03", "TAPE-03"],
    rows: [
      thickness("P02", "crown", [7.9]),
      thickness("P02", "knuckle, four places", [7.6, 7.5, 7.7, 7.6]),
      thickness("P02", "straight flange", [8.0]),
      thickness("P03", "crown", [8.0]),
      thickness("P03", "knuckle, four places", [7.5, 7.6, 7.4, 7.6]),
      thickness("P03", "straight flange", [7.9]),
      between("circumference at the edge, P02", 1117, 3, 1118, { part: "P02" }),
      between("circumference at the edge, P03", 1117, 3, 1116, { part: "P03" }),
      between("height over the crown, P02", 122, 2, 122.5, { part: "P02" }),
      between("height over the crown, P03", 122, 2, 121.5, { part: "P03" }),
    ],
    result: "accepted",
    signatures: signed("2026-05-12"),
  },
  {
    id: "DIM-02",
    title: "Shell course: thickness, roundness and peaking after the longitudinal seam",
    date: "2026-06-01",
    by: "D2",
    drawing: "DRG-01@B",
    instruments: ["UT-03", "TAPE-03", "CA-05"],
    rows: [
      { ...thickness("P01", "course, four places", [8.1, 8.1, 8.0, 8.2]), minimum: "7.7 mm" },
      roundness("inside diameter, left edge", "P01", [339.2, 340.3, 339.9, 338.9]),
      roundness("inside diameter, right edge", "P01", [339.5, 340.1, 339.0, 339.8]),
      { ...atMost("peaking at L1, template 180 mm", "L1", "2.0 mm", "0.8 mm"), shape: "peaking" },
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
      { ...atMost("offset of edges, C1", "C1", "1.8 mm", "0.5 mm"), shape: "offset of edges" },
      { ...atMost("offset of edges, C2", "C2", "1.8 mm", "0.4 mm"), shape: "offset of edges" },
      between("length over ends", 488, 4, 490),
      place("N1 from the left tangent line", "P04", 150, 151),
      place("N2 from the left tangent line", "P05", 150, 150),
      place("N3 from the left tangent line", "P06", 150, 149),
      place("N4 from the left tangent line", "P07", 150, 151),
    ],
    result: "accepted",
    signatures: signed("2026-06-18"),
  },
];
