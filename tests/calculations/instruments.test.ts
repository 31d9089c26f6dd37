import { describe, expect, it } from "vitest";
import { coarsest, thermometer } from "../../src/calculations/functions/instruments.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

describe("thermometers", () => {
  const two = rows(thermometer, [{ resolution: "0.1 K" }, { resolution: "0.5 K" }]);

  it("count with the coarsest resolution", () => {
    expect(valueOf(coarsest, two)).toBe(0.5);
    expect(linesOf(coarsest, two)).toEqual(["row 1: 0.1 K", "row 2: 0.5 K"]);
  });

  it("are refused when there is none, or only a lower bound of it", () => {
    expect(valueOf(coarsest, [])).toBe("no resolution of a thermometer is known");
    expect(valueOf(coarsest, rows(thermometer, [{ resolution: ">0.1 K" }]))).toBe(
      "no resolution of a thermometer is known",
    );
  });
});
