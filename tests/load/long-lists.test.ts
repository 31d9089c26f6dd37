import { expect, test } from "vitest";
import { boilerBook, judgeChanged, newFindings, soundBoiler } from "../support/demo-book.ts";

/** Rows of a weld log, as many as are asked for. */
const runs = (count: number) =>
  Array.from({ length: count }, (_, at) => ({
    row: `fill ${at}`,
    layer: "fill",
    process: "121",
    position: "PA",
    welders: ["W15"],
    date: "2026-03-02T09:55+01:00",
    batches: ["B-2131", "B-2132"],
    current: "613 A",
    voltage: "32.1 V",
    travelSpeed: "528 mm/min",
    heatInput: "2.24 kJ/mm",
  }));

// Each run is judged by what its welder deposited in all: the work grows with the square of the rows.
test("thirty thousand runs in one log are refused, with the reason, and nothing else is said of them", () => {
  const { judged } = judgeChanged(boilerBook, [{ set: "weld-log:WL-L1", at: "/runs", to: runs(30_000) }]);
  const found = judged === null ? [] : newFindings(judged, soundBoiler());
  expect(found.map(({ message, hint }) => `${message} → ${hint}`)).toEqual([
    '"runs" has 30000 entries; expected at most 1000 → put what is alike into one entry, and remove the surplus',
  ]);
});
