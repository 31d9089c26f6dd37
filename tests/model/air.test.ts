import { describe, expect, test } from "vitest";
import { dewPoint } from "../../src/model/air.ts";
import { isRefusal, saturationPressure, saturationTemperature } from "../../src/steam/index.ts";

/** The same by the saturation line of IAPWS-IF97, which is verified against its printed values (`tests/steam`). */
function byIndustrialFormulation(air: number, humidity: number): number {
  const full = saturationPressure(air + 273.15);
  if (isRefusal(full)) throw new Error("the air is colder than the line begins");
  const dew = saturationTemperature(full * humidity);
  if (isRefusal(dew)) throw new Error("the dew point is colder than the line begins");
  return dew - 273.15;
}

describe("the dew point of moist air", () => {
  const air = [5, 10, 15, 20, 25, 30, 35, 40];
  const humidity = [0.45, 0.6, 0.75, 0.85, 0.95];
  const cases = air
    .flatMap((t) => humidity.map((part) => [t, part] as const))
    .filter(([t, part]) => dewPoint(t, part) > 0.5);

  test.each(cases)("air of %d °C, humidity %d: as by IAPWS-IF97, within 0.05 K", (t, part) => {
    expect(Math.abs(dewPoint(t, part) - byIndustrialFormulation(t, part))).toBeLessThan(0.05);
  });

  test("of saturated air is its temperature", () => {
    for (const t of [-20, 0, 20, 40]) expect(dewPoint(t, 1)).toBeCloseTo(t, 9);
  });

  test("goes on below the freezing point, over water", () => {
    expect(dewPoint(10, 0.3)).toBeLessThan(0);
    expect(dewPoint(10, 0.3)).toBeGreaterThan(-10);
  });
});
