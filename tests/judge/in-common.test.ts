import { describe, expect, test } from "vitest";
import { calculation, type Calculation } from "../../src/model/calculation.ts";
import { basis, define, finding, judged, open } from "../support/small-book.ts";
import { quantity } from "../support/small-kinds.ts";

const due = { due: "now" } as const;
const kinds = {
  tube: {
    bore: quantity("mm", due),
    wall: quantity("mm", due),
    measured: quantity("mm", due),
    mass: quantity("kg", due),
  },
};
const made = { covers: "a test", examples: [], basis, compared: [], appliesTo: { kind: "tube" } } as const;
/** A tenth of the bore is the least wall, as ordered and as measured; the mass is judged for itself. */
const wall = calculation({
  ...made,
  id: "wall",
  title: "Wall",
  inputs: {
    d: { path: "bore", unit: "mm", means: "bore" },
    e: { path: "wall", unit: "mm", means: "wall" },
    em: { path: "measured", unit: "mm", means: "measured wall" },
    m: { path: "mass", unit: "kg", means: "mass" },
  },
  steps: [{ symbol: "r", unit: "mm", means: "least wall", formula: "0.1*d" }],
  limits: [
    { left: "d", relation: "<=", right: "'900 mm'", means: "it is a tube" },
    { left: "e", relation: "<=", right: "d", means: "the bore is wider than the wall" },
    { left: "m", relation: "<=", right: "'50 kg'", means: "it can be carried" },
  ],
  accept: [
    { left: "e", relation: ">=", right: "r", means: "the wall is thick enough", accuses: "e" },
    { left: "m", relation: "<=", right: "'20 kg'", means: "it is light", accuses: "m" },
    { left: "em", relation: ">=", right: "r", means: "the measured wall is thick enough", accuses: "em" },
  ],
} satisfies Calculation);
const run = (tube: object) =>
  judged(define({ kinds, calculations: [wall] }), {
    records: { tube: { T: { bore: "50 mm", wall: "6 mm", measured: "6 mm", mass: "5 kg", ...tube } } },
  });

describe("comparisons that fail together", () => {
  test("a wrong value that fails two acceptances is one finding that names both", () => {
    const book = run({ bore: "500 mm" });
    const key = "wall|tube:T|e too low and em too low";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(finding(book, key)).toMatchObject({
      message:
        "tube T: the wall is 6 mm, below the least wall, 50 mm; the measured wall is 6 mm, below the least wall, 50 mm",
      place: { pointer: "/wall" },
      accuses: ["tube:T/wall", "tube:T/measured"],
    });
  });
  test("acceptances that rest on nothing in common are two", () => {
    expect(open(run({ measured: "4 mm", mass: "30 kg" }))).toEqual([
      "nonconformity wall|tube:T|em too low",
      "nonconformity wall|tube:T|m too high",
    ]);
  });
  test("limits likewise", () => {
    const book = run({ bore: "1000 mm", wall: "2000 mm" });
    const key = "wall|tube:T|limit d too high and limit e too high";
    expect(open(book)).toEqual([`query ${key}`]);
    expect(finding(book, key).message).toBe(
      "Wall does not cover tube T: the bore is 1000 mm, above 900 mm; the wall is 2000 mm, above the bore, 1000 mm",
    );
    expect(open(run({ bore: "1000 mm", mass: "60 kg" }))).toEqual([
      "query wall|tube:T|limit d too high",
      "query wall|tube:T|limit m too high",
    ]);
  });
});
