import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { maxDepth, scanJson } from "../../src/load/scan.ts";

const doubled = (text: string) => scanJson(text).duplicates.map(({ name, first, again }) => [name, first, again]);

describe("names that stand twice", () => {
  it("are found at every level, with both places", () => {
    expect(doubled('{"a":1,"a":2}')).toEqual([["a", 1, 7]]);
    expect(doubled('{"rows":[{"x":1},{"y":{"z":1,"q":2,"z":3}}]}')).toEqual([["z", 23, 35]]);
    expect(doubled('{"a":1,"b":{"a":1},"c":[{"a":1},{"a":1}]}')).toEqual([]);
  });
  it("are compared as what they mean, not as they are written", () => {
    expect(doubled(String.raw`{"a":1,"\u0061":2}`)).toEqual([["a", 1, 7]]);
    expect(doubled(String.raw`{"a\"b":1,"a\u0022b":2}`)).toEqual([['a"b', 1, 10]]);
    expect(doubled(String.raw`{"a\\":1,"a":2}`)).toEqual([]);
  });
  it("are names such as __proto__ and constructor too", () => {
    expect(doubled('{"__proto__":1,"constructor":2}')).toEqual([]);
    expect(doubled('{"__proto__":1,"__proto__":2}')).toEqual([["__proto__", 1, 15]]);
  });
  it("are found in objects of many names, and are not confused with texts that look alike", () => {
    const names = Array.from({ length: 500 }, (_, index) => `"n${index}":"n0"`);
    expect(doubled(`{${names.join(",")}}`)).toEqual([]);
    const [found] = doubled(`{${[...names, '"n7":1'].join(",")}}`);
    expect(found?.[0]).toBe("n7");
  });
  it("are distinguished when their hashes are equal", () => {
    // "Aa" and "BB" have one hash when it is built as 31·hash + unit.
    expect(doubled('{"Aa":1,"BB":2}')).toEqual([]);
  });
  it("end after the number asked for", () => {
    expect(scanJson('{"a":1,"a":2,"a":3,"a":4}', 2).duplicates).toHaveLength(2);
  });
  it("agree with counting the members of what was written", () => {
    const object: fc.Memo<[string, unknown][]> = fc.memo((depth) =>
      fc.array(
        fc.tuple(
          fc.constantFrom("a", "b", "c", "\\", '"', "é", "__proto__"),
          depth <= 1 ? fc.integer() : object(depth - 1),
        ),
        { maxLength: 4 },
      ),
    );
    const write = (value: unknown): string =>
      Array.isArray(value)
        ? `{${(value as [string, unknown][]).map(([name, inner]) => `${JSON.stringify(name)}:${write(inner)}`).join(",")}}`
        : String(value);
    const count = (value: unknown): number => {
      if (!Array.isArray(value)) return 0;
      const members = value as [string, unknown][];
      return (
        members.length -
        new Set(members.map(([name]) => name)).size +
        members.reduce((sum, [, inner]) => sum + count(inner), 0)
      );
    };
    fc.assert(
      fc.property(object(4), (value) => {
        expect(scanJson(write(value), 10_000).duplicates.length).toBe(count(value));
      }),
    );
  });
});

describe("nesting", () => {
  const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);
  it(`is allowed ${maxDepth} deep and no deeper`, () => {
    expect(scanJson(nested(maxDepth)).tooDeep).toBeUndefined();
    expect(scanJson(nested(maxDepth + 1)).tooDeep).toBe(maxDepth);
    expect(scanJson(`[${`{"a":[]},`.repeat(1000)}1]`).tooDeep).toBeUndefined();
  });
});

it("ends on any text", () => {
  const pieces = fc.constantFrom('"', "\\", "{", "}", "[", "]", ",", ":", "a", "\\u", "\\u12", "\n", "é");
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 60 }), (parts) => {
      expect(scanJson(parts.join("")).duplicates.length).toBeLessThanOrEqual(50);
    }),
    { numRuns: 2000 },
  );
});

it("costs about what JSON.parse costs", () => {
  const records = Array.from({ length: 12_000 }, (_, i) => ({
    id: `W-${i}`,
    thickness: "14.0 mm",
    rows: Array.from({ length: 6 }, (_unused, j) => ({
      row: String(j),
      result: "accepted",
      length: "100 mm",
      note: "a remark of a usual length",
    })),
  }));
  const text = JSON.stringify({ records }, null, 2);
  const time = (run: () => unknown) => {
    const times = [1, 2, 3, 4, 5].map(() => {
      const from = performance.now();
      run();
      return performance.now() - from;
    });
    return Math.min(...times);
  };
  expect(time(() => scanJson(text))).toBeLessThan(4 * time(() => JSON.parse(text)));
});
