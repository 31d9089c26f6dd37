import { describe, expect, test } from "vitest";
import { definitions, sound, soundBoiler } from "../support/demo-book.ts";

const { calculations, rules } = definitions;

/** Calculations that hold nothing against a limit themselves, and some that hold what they compute against one. */
const servants: Readonly<Record<string, readonly string[]>> = {
  "design-stress": ["cylindrical-shell", "torispherical-end", "shell-opening", "furnace", "stay"],
  "stayed-flat-plate": ["flat-plate"],
  "test-limits": ["pressure-hold", "hold-drift"],
  "tested-length": ["radiographic-extent"],
  "image-quality": ["wire-seen"],
  "valve-settings": ["valve-set-pressure"],
  "valve-bench-limits": ["valve-bench", "valve-reseat"],
};

describe("a calculation without an acceptance", () => {
  const silent = calculations.filter(
    ({ accept, limits }) => accept.length === 0 && limits.every(({ decides }) => decides !== true),
  );

  test("is known, and serves one that has", () => {
    expect(silent.map(({ id }) => id).sort()).toEqual(Object.keys(servants).sort());
    for (const { id } of silent) {
      const reads = ({ inputs }: { readonly inputs: object }) => JSON.stringify(inputs).includes(`calculation(${id})`);
      const holders = [...calculations.filter(({ accept }) => accept.length > 0), ...rules].filter(reads);
      expect(holders.map((one) => one.id)).toEqual(expect.arrayContaining([...(servants[id] ?? [])]));
      expect(servants[id]).not.toEqual([]);
    }
  });

  test("that has a deciding limit says on which basis, and has an example beyond it", () => {
    const deciding = calculations.flatMap(({ limits, basis, examples }) =>
      limits.filter(({ decides }) => decides === true).map((limit) => ({ limit, basis, examples })),
    );
    expect(deciding.length).toBeGreaterThan(0);
    for (const { limit, basis, examples } of deciding) {
      expect((limit.basis ?? basis).class).not.toBe("own choice");
      expect(examples.some(({ outside }) => outside?.includes(limit.means))).toBe(true);
    }
  });
});

describe.each([
  ["receiver", () => sound],
  ["boiler", soundBoiler],
] as const)("in the book of the %s", (_name, bookOf) => {
  test("what says passed was held against something, and what says computed against nothing", () => {
    const done = bookOf().computed.flatMap((one) => (one.state === "done" ? [one] : []));
    expect(done.length).toBeGreaterThan(20);
    const held = (one: (typeof done)[number]) =>
      one.accept.length > 0 || one.limits.some(({ limit }) => limit.decides === true);
    const name = ({ calculation, subject, outcome }: (typeof done)[number]) =>
      `${calculation.id} ${subject.id} ${outcome.verdict}`;
    expect(done.filter((one) => one.outcome.verdict === "passed" && !held(one)).map(name)).toEqual([]);
    expect(done.filter((one) => one.outcome.verdict === "computed" && held(one)).map(name)).toEqual([]);
    expect(
      done
        .filter((one) => one.calculation.id === "design-stress")
        .every(({ outcome }) => outcome.verdict === "computed"),
    ).toBe(true);
  });
});
