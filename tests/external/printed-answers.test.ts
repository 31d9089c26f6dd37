import { describe, expect, it } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { answers } from "../../src/verification/index.ts";

// One loop over every answer that somebody else printed: the source is named in the title.
describe.each(answers.map((one) => [`${one.source} (${one.class})`, one.answers] as const))("%s", (_, list) => {
  it.each(list.map((one) => [`${one.what}: ${one.given}`, one] as const))("%s", (__, one) => {
    const ours = one.ours();
    expect(Math.abs(ours - one.printed), `ours is ${ours} ${one.unit}, printed ${one.printed}`).toBeLessThanOrEqual(
      one.within * Math.abs(one.printed) + 1e-12,
    );
  });
});

describe("a band", () => {
  const all = answers.flatMap((one) => one.answers);
  it.each(all.map((one) => [`${one.what}: ${one.given}`, one] as const))("%s", (_, one) => {
    // Wider than the digits of a table leave open, it says why.
    if (one.within > 0.005) expect(one.because ?? "").not.toBe("");
    expect(one.reaches).not.toEqual([]);
  });
});

it("names calculations that exist, or functions they use", () => {
  const ids = new Set(calculations.map(({ id }) => id));
  const others = answers
    .flatMap((one) => one.answers.flatMap(({ reaches }) => reaches))
    .filter((name) => !ids.has(name));
  expect([...new Set(others)].sort()).toEqual(["density of water", "properties of steam"]);
});
