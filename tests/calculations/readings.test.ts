import { describe, expect, it } from "vitest";
import { holdMinutes, reading } from "../../src/calculations/functions/hold.ts";
import { pressureChange, waterChange, waterMean } from "../../src/calculations/functions/hold-changes.ts";
import { coldestWater, greatestDifference, highestReading } from "../../src/calculations/functions/readings.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

/** Readings as "10:00 20.1 20.2 15": time, gauge A, gauge B, water. */
const log = (...lines: readonly string[]) =>
  rows(
    reading,
    lines.map((line) => {
      const [time = "", a = "", b = "", water = ""] = line.split(" ");
      return {
        time: time.includes("-") ? time : `2026-04-14T${time}+02:00`,
        gaugeA: `${a} bar`,
        gaugeB: `${b} bar`,
        waterTemperature: `${water} °C`,
        isolated: "2026-04-14",
        from: "2026-04-14",
        to: "2026-04-15",
      };
    }),
  );

const steady = log("10:00 20.1 20.1 15", "10:05 20.1 20.1 15", "10:10 20.1 20.1 15");

describe("hold", () => {
  it("counts from the first to the last reading at or above the pressure", () => {
    expect(valueOf(holdMinutes, steady, 20.1, 0, 0, 5)).toBe(10);
    expect(valueOf(holdMinutes, steady, 20.11, 0, 0, 5)).toBe(0);
  });

  it("needs both gauges", () => {
    const one = log("10:00 20.1 20.1 15", "10:05 20.1 20.0 15", "10:10 20.1 20.1 15", "10:12 20.1 20.1 15");
    expect(valueOf(holdMinutes, one, 20.1, 0, 0, 5)).toBe(2);
  });

  it("is broken by a gap longer than permitted, not by one equal to it", () => {
    const late = log("10:00 20.1 20.1 15", "10:05 20.1 20.1 15", "10:11 20.1 20.1 15", "10:13 20.1 20.1 15");
    expect(valueOf(holdMinutes, late, 20.1, 0, 0, 6)).toBe(13);
    expect(valueOf(holdMinutes, late, 20.1, 0, 0, 5.99)).toBe(5);
  });

  it("is the longest of several", () => {
    const two = log(
      "10:00 20.1 20.1 15",
      "10:03 20.1 20.1 15",
      "10:04 19.9 20.1 15",
      "10:06 20.1 20.1 15",
      "10:10 20.1 20.1 15",
    );
    expect(valueOf(holdMinutes, two, 20.1, 0, 0, 5)).toBe(4);
    expect(linesOf(holdMinutes, two, 20.1, 0, 0, 5)[0]).toBe(
      "2026-04-14T10:06+02:00 to 2026-04-14T10:10+02:00: 2 of 5 readings of the hold, each at least 20.1 bar at the top on both gauges",
    );
  });

  it("takes the water head off each gauge", () => {
    const low = log("10:00 20.1 20.3 15", "10:05 20.1 20.3 15");
    expect(valueOf(holdMinutes, low, 20.1, 0, 0.2, 5)).toBe(5);
    expect(valueOf(holdMinutes, low, 20.1, 0, 0.21, 5)).toBe(0);
    expect(valueOf(holdMinutes, low, 20.1, 0.01, 0.2, 5)).toBe(0);
  });

  it("takes a reading stated as a bound at its lower end", () => {
    const bound = log("10:00 >20.1 20.1 15", "10:05 20.1 20.1 15");
    expect(valueOf(holdMinutes, bound, 20.1, 0, 0, 5)).toBe(5);
    expect(valueOf(holdMinutes, log("10:00 <20.5 20.1 15", "10:05 20.1 20.1 15"), 20.1, 0, 0, 5)).toBe(0);
  });

  it("reads times across offsets", () => {
    const offsets = log("2026-04-14T10:00+02:00 20.1 20.1 15", "2026-04-14T08:05+00:00 20.1 20.1 15");
    expect(valueOf(holdMinutes, offsets, 20.1, 0, 0, 5)).toBe(5);
  });

  it("refuses readings it cannot follow in time", () => {
    expect(valueOf(holdMinutes, log("10:00 20.1 20.1 15"), 20.1, 0, 0, 5)).toBe(
      "there is 1 reading; a hold needs at least two",
    );
    expect(valueOf(holdMinutes, log("10:05 20.1 20.1 15", "10:05 20.1 20.1 15"), 20.1, 0, 0, 5)).toBe(
      "the reading of 2026-04-14T10:05+02:00 is not later than the one before it",
    );
    expect(valueOf(holdMinutes, log("2026-04-14 20.1 20.1 15", "2026-04-15 20.1 20.1 15"), 20.1, 0, 0, 5)).toBe(
      "the reading of 2026-04-14 has no time of day",
    );
  });
});

describe("changes during the hold", () => {
  const falling = log(
    "09:50 12 12 14",
    "10:00 20.3 20.4 15",
    "10:05 20.3 20.3 14.9",
    "10:10 20.2 20.3 14.8",
    "10:20 0 0 14",
  );

  it("are those between its first and last reading", () => {
    expect(valueOf(pressureChange, falling, 20.1, 0, 0, 5)).toBeCloseTo(-0.1, 9);
    expect(valueOf(waterChange, falling, 20.1, 0, 0, 5)).toBeCloseTo(-0.2, 9);
    expect(valueOf(waterMean, falling, 20.1, 0, 0, 5)).toBeCloseTo(14.9, 9);
    expect(linesOf(pressureChange, falling, 20.1, 0, 0, 5)).toEqual(["from 20.35 to 20.25 bar"]);
  });

  it("are refused where nothing held", () => {
    for (const named of [pressureChange, waterChange, waterMean])
      expect(valueOf(named, falling, 20.4, 0, 0, 5)).toBe(
        "no two readings in a row show 20.4 bar at the top on both gauges within 5 min; the report states the hold from 2026-04-14 to 2026-04-15, the pump shut off at 2026-04-14",
      );
    expect(valueOf(pressureChange, [], 20.1, 0, 0, 5)).toBe("there are 0 readings; a hold needs at least two");
  });
});

describe("extremes of all readings", () => {
  const uneven = log("10:00 20.1 20.4 15", "10:05 20.6 20.5 9.5", "10:10 20.2 20.3 12");

  it("are found with the time they were read", () => {
    expect(valueOf(highestReading, uneven, 0, 0)).toBe(20.6);
    expect(linesOf(highestReading, uneven, 0, 0)).toEqual(["20.6 bar at 2026-04-14T10:05+02:00"]);
    expect(valueOf(greatestDifference, uneven, 0, 0)).toBeCloseTo(0.3, 9);
    expect(valueOf(coldestWater, uneven)).toBe(9.5);
  });

  it("are taken at the top", () => {
    expect(valueOf(highestReading, uneven, 0.3, 0)).toBe(20.5);
    expect(valueOf(greatestDifference, uneven, 0, 0.3)).toBeCloseTo(0.4, 9);
  });

  it("are refused without readings, and for a reading that is only a bound", () => {
    for (const named of [highestReading, greatestDifference, coldestWater])
      expect(valueOf(named, [])).toBe("there are no readings");
    expect(valueOf(highestReading, log("10:00 >20 20 15"), 0, 0)).toBe("a reading states a bound instead of a value");
  });
});
