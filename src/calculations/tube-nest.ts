import { leastTubePlate } from "./functions/tube-field.ts";
import { tubeNestExamples } from "./tube-nest-examples.ts";
import { excerptSeen } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const regulation = excerptSeen("Indian Boiler Regulations 1950", "regulation 580");

export const tubeNest = calculation({
  id: "tube-nest",
  scope: "tube-nests",
  title: "Field of tubes in a tube plate",
  basis: regulation,
  covers:
    "Ligament between the tube holes, and least plate for expanded tubes; the pull on the joints is a calculation of its own. Both are asked for of welded tubes too, for which some codes ask less. That the tubes at the boundary of the field are stay tubes, and the strength of a tube against pressure from outside, are not covered here.",
  appliesTo: { kind: "part#tubeFields" },
  inputs: {
    d: { path: "tube.outsideDiameter", unit: "mm", means: "outside diameter of the tubes", display: "d_o" },
    s: { path: "calculation(tube-hole).s", unit: "mm", means: "clearance of the tubes in their holes", unsafe: "low" },
    P: { path: "pitch", unit: "mm", means: "distance of neighbouring hole centres" },
    nt: { path: "tubes", unit: "1", means: "plain tubes in the field", display: "n_t" },
    ns: { path: "stayTubes", unit: "1", means: "stay tubes in the field", display: "n_s" },
    kl: { path: "profile.ligamentShare", unit: "1", means: "share of the hole in the ligament", display: "k_l" },
    l0: { path: "profile.ligamentLeast", unit: "mm", means: "constant part of the ligament", display: "l_0" },
    ds: { path: "profile.tubePlateHoleSmall", unit: "mm", means: "greatest small hole", display: "d_s" },
    e1: { path: "profile.tubePlateLeastSmall", unit: "mm", means: "least plate for small holes" },
    e2: { path: "profile.tubePlateLeastLarge", unit: "mm", means: "least plate for greater holes" },
  },
  functions: [leastTubePlate],
  steps: [
    { symbol: "n", unit: "1", means: "tubes in the field", formula: "nt + ns" },
    { symbol: "dh", unit: "mm", means: "diameter of the holes", formula: "d + s", display: "d_h" },
    {
      symbol: "l",
      unit: "mm",
      means: "ligament between two holes",
      formula: "P - dh",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "lreq",
      unit: "mm",
      means: "required ligament",
      formula: "kl*dh + l0",
      display: "l_req",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "emin",
      unit: "mm",
      means: "least nominal thickness of the plate",
      formula: "leastTubePlate(dh, ds, e1, e2)",
      display: "e_min",
      round: { decimals: 1, direction: "up" },
    },
  ],
  limits: [
    { left: "n", relation: ">", right: "0", means: "the field has tubes" },
    {
      name: "tubes too few",
      left: "min(nt, ns)",
      relation: ">=",
      right: "0",
      means: "no count of tubes is negative",
      wrong: "a count of tubes is {left}, below {right}",
    },
    { left: "l", relation: ">", right: "'0 mm'", means: "the holes leave plate between them" },
  ],
  accept: [
    { left: "l", relation: ">=", right: "lreq", means: "the ligament is at least the required one", accuses: "P" },
  ],
  compared: [
    { symbol: "l", unsafe: "high" },
    { symbol: "lreq", unsafe: "low" },
    { symbol: "emin", unsafe: "low" },
  ],
  adopted: "P",
  examples: tubeNestExamples,
});
