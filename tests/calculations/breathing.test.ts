import { describe, expect, it } from "vitest";
import { breathingSorts, leastBreathing } from "../../src/calculations/functions/breathing.ts";
import { profiles } from "../../src/profiles/index.ts";
import { linesOf, valueOf } from "./rows.ts";

const parameter = (name: string): number => Number.parseFloat(profiles[0]?.parameters[name]?.value ?? "");
const shipped = ["Share", "ShareOther", "Least", "Most", "TubesShell", "GussetTubes", "GussetFurnace"].map((name) =>
  parameter(`breathing${name}`),
);
const least = (sort: string, D: number) => valueOf(leastBreathing, breathingSorts.indexOf(sort), D, ...shipped);

describe("least breathing space", () => {
  it("Indian Boiler Regulations 1950, reg. 590: beside a furnace 5 % of the shell, 50 mm at least, 100 mm at most", () => {
    for (const sort of ["furnace-shell", "furnace-tubes"]) {
      expect([900, 1000, 1500, 2000, 2600].map((D) => least(sort, D))).toEqual([50, 50, 75, 100, 100]);
    }
  });

  it("Indian Boiler Regulations 1950, reg. 590: elsewhere 3 % of the shell, 50 mm at least, 100 mm at most", () => {
    expect([1500, 2000, 3000, 4000].map((D) => least("other", D))).toEqual([50, 60, 90, 100]);
  });

  it("Indian Boiler Regulations 1950, reg. 590: tubes and shell 40 mm, gussets and tubes 100 mm", () => {
    expect(least("tubes-shell", 1900)).toBe(40);
    expect(least("gusset-tubes", 1900)).toBe(100);
    // 200 mm as a rule, 250 mm for a long furnace in a wide shell: the greater is kept for all.
    expect(least("gusset-furnace", 1900)).toBe(250);
  });

  it("says by what", () => {
    expect(linesOf(leastBreathing, 0, 1900, ...shipped)).toEqual([
      "furnace-shell: 5 % of 1900 mm, from 50 mm to 100 mm",
    ]);
    expect(linesOf(leastBreathing, 2, 1900, ...shipped)).toEqual(["tubes-shell: 40 mm for any shell"]);
  });

  it("is refused for an unknown sort, and for a shell without diameter", () => {
    expect(valueOf(leastBreathing, -1, 1900, ...shipped)).toBe("what the space lies between is not known");
    expect(valueOf(leastBreathing, 0, 0, ...shipped)).toBe("the shell must have a diameter");
  });
});
