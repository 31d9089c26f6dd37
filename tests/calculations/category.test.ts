import { describe, expect, it } from "vitest";
import { categories, gasCategory, heatedCategory, states } from "../../src/calculations/functions/category.ts";
import { valueOf } from "./rows.ts";

const [liquid, gas, steam] = [states.indexOf("liquid"), states.indexOf("gas"), states.indexOf("steam")];
const named = (value: number | string) => (typeof value === "number" ? categories[value] : value);
const cold = (PS: number, V: number, group = 2, state = gas) => named(valueOf(gasCategory, PS, V, group, state));
const hot = (PS: number, V: number) => named(valueOf(heatedCategory, PS, V));
const practice = "sound engineering practice";

describe("category of a vessel for gas of group 2", () => {
  it.each([
    ["at and above 0.5 bar", [0.5, 10_000, practice], [0.51, 1000, "II"]],
    ["at and above 50 bar·l", [10, 5, practice], [10, 5.01, "I"]],
    ["at and above 200 bar·l", [10, 20, "I"], [10, 20.1, "II"]],
    ["at and above 1000 bar·l", [10, 100, "II"], [10, 100.1, "III"]],
    ["at and above 3000 bar·l", [10, 300, "III"], [10, 300.1, "IV"]],
    ["at and above 1 l", [900, 1, practice], [900, 1.01, "II"]],
    ["at and above 1000 bar up to 1 l", [1000, 1, practice], [1000.1, 1, "III"]],
    ["at and above 3000 bar up to 1 l", [3000, 1, "III"], [3000.1, 1, "IV"]],
  ] as const)("%s", (_, below, above) => {
    expect(cold(below[0], below[1])).toBe(below[2]);
    expect(cold(above[0], above[1])).toBe(above[2]);
  });

  it("refuses the two corners that only the drawing tells", () => {
    expect(cold(4, 750)).toBe("III");
    expect(cold(4, 751)).toMatch(/whether III or IV/);
    expect(cold(4.01, 751)).toBe("IV");
    expect(cold(0.9, 1000)).toBe("II");
    expect(cold(0.9, 1001)).toMatch(/whether II or III/);
    expect(cold(1, 1000)).toBe("II");
  });

  it("covers vapour, and refuses group 1, liquids, and nothing", () => {
    expect(cold(10, 300, 2, steam)).toBe("III");
    expect(cold(10, 300, 1)).toMatch(/^fluids of group 1/);
    expect(cold(10, 300, 2, liquid)).toMatch(/^liquids/);
    expect(cold(10, 0)).toBe("pressure and volume must be positive");
    expect(cold(Number.NaN, 10)).toBe("pressure and volume must be positive");
  });
});

describe("category of heated equipment", () => {
  it.each([
    ["at and above 0.5 bar", [0.5, 10_000, practice], [0.51, 10, "I"]],
    ["at and above 2 l", [20, 2, practice], [20, 2.01, "I"]],
    ["at and above 50 bar·l", [10, 5, "I"], [10, 5.01, "II"]],
    ["at and above 200 bar·l", [10, 20, "II"], [10, 20.1, "III"]],
    ["at and above 3000 bar·l", [10, 300, "III"], [10, 300.1, "IV"]],
    ["at and above 32 bar", [32, 6.25, "II"], [32.1, 6.2, "IV"]],
    ["at and above 1000 l", [3, 1000, "III"], [2.9, 1001, "IV"]],
  ] as const)("%s", (_, below, above) => {
    expect(hot(below[0], below[1])).toBe(below[2]);
    expect(hot(above[0], above[1])).toBe(above[2]);
  });

  it("is refused without a volume", () => {
    expect(hot(10, 0)).toBe("pressure and volume must be positive");
  });

  it("is never lower than that of an unheated vessel for gas", () => {
    for (const PS of [0.6, 1, 3, 10, 25, 32, 33, 60])
      for (const V of [2.1, 5, 20, 90, 300, 999, 1001, 8000]) {
        const unheated = valueOf(gasCategory, PS, V, 2, gas);
        if (typeof unheated === "number")
          expect(valueOf(heatedCategory, PS, V), `${PS} bar ${V} l`).toBeGreaterThanOrEqual(unheated);
      }
  });
});
