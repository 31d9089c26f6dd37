import { fromMemory } from "../../model/basis.ts";
import { quantity, text } from "../../model/input.ts";
import { exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** Outside diameter in mm of the tube of each nominal size. */
const tubes: Readonly<Record<string, number>> = {
  "DN 10": 17.2,
  "DN 15": 21.3,
  "DN 20": 26.9,
  "DN 25": 33.7,
  "DN 32": 42.4,
  "DN 40": 48.3,
  "DN 50": 60.3,
  "DN 65": 76.1,
  "DN 80": 88.9,
  "DN 100": 114.3,
  "DN 125": 139.7,
  "DN 150": 168.3,
  "DN 200": 219.1,
  "DN 250": 273,
  "DN 300": 323.9,
};
/** What rolling may leave of it. */
const slack = 0.02;

export const fittingSize = rule({
  id: "fitting-size",
  title: "A fitting has the nominal size of the branch it is mounted on",
  basis: fromMemory("EN 10220", undefined, "outside diameters of steel tubes, series 1, by nominal size"),
  kind: "fitting",
  when: [
    { path: "nominalSize", exists: true },
    { path: "nominalSize", equals: Object.keys(tubes) },
    { path: "branch", exists: true },
    { path: "branch.role", equals: "nozzle-neck" },
    { path: "branch.outsideDiameter", exists: true },
  ],
  severity: "query",
  owner: "design",
  inputs: { size: text("nominalSize"), outside: quantity("branch.outsideDiameter", "mm") },
  *check({ size, outside }, fitting) {
    const wanted = tubes[size];
    if (wanted === undefined || Math.abs(outside.value - wanted) <= slack * wanted) return;
    yield {
      at: "size",
      accuses: [],
      message: `fitting ${fitting.name} is of ${size}; its branch has an outside diameter of ${outside.text}`,
      why: `a tube of ${size} has ${wanted} mm`,
      hint: "compare with the arrangement drawing: correct the size or the branch, or answer this query with the reducer between",
      related: [{ at: "outside", message: `${outside.text} here` }],
    };
  },
  examples: [
    { name: "as its branch", given: { size: "DN 25", outside: "33.7 mm" }, objections: [] },
    { name: "rolled thick", given: { size: "DN 25", outside: "34.2 mm" }, objections: [] },
    {
      name: "on a smaller branch",
      given: { size: "DN 40", outside: "33.7 mm" },
      objections: ["fitting X-01 is of DN 40; its branch has an outside diameter of 33.7 mm"],
    },
  ],
});

const ratings = [2.5, 6, 10, 16, 25, 40, 63, 100, 160, 250, 320, 400];

export const fittingRating = rule({
  id: "fitting-rating",
  title: "A fitting is allowed no more than its nominal pressure",
  basis: fromMemory(
    "EN 1333",
    undefined,
    "nominal pressure; what is allowed falls with the temperature and never rises above it",
  ),
  kind: "fitting",
  when: [
    { path: "pressureRating", exists: true },
    { path: "pressureRating", equals: ratings.map((one) => `PN ${one}`) },
    { path: "allowablePressure", exists: true },
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { rating: text("pressureRating"), allowed: quantity("allowablePressure", "bar") },
  *check({ rating, allowed }, fitting) {
    const answer = holds(allowed, "<=", exactly(Number(rating.replace("PN ", "")), "bar"));
    if (answer === "yes") return;
    yield {
      at: "allowed",
      accuses: ["allowed", "rating"],
      message: `fitting ${fitting.name} is rated ${rating}; ${allowed.text} are entered as allowed`,
      why: "hot or cold, no fitting is allowed more than it is rated for",
      hint: "compare with the plate and the certificate; correct the figure that is wrong",
      unsure: answer === "unsure",
      related: [{ at: "rating", message: `${rating} here` }],
    };
  },
  examples: [
    { name: "hot, less than its rating", given: { rating: "PN 40", allowed: "32 bar" }, objections: [] },
    { name: "cold, its rating", given: { rating: "PN 16", allowed: "16 bar" }, objections: [] },
    {
      name: "more",
      given: { rating: "PN 16", allowed: "32 bar" },
      objections: ["fitting X-01 is rated PN 16; 32 bar are entered as allowed"],
    },
  ],
});
