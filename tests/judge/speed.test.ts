import { expect, test } from "vitest";
import { judge } from "../../src/judge/judge.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { smallBook } from "../support/small-book.ts";
import { definitions, sound } from "./sound-book.ts";

/** About forty definitions: those of the small book, with names of their own. */
const many: Definitions = {
  ...definitions,
  rules: [1, 2, 3, 4].flatMap((round) => definitions.rules.map((rule) => ({ ...rule, id: `${rule.id}-${round}` }))),
};

/** A book with so many joints, each with its part, certificate row, report row and sheet. */
function bookOf(joints: number, broken: (index: number) => boolean) {
  const names = Array.from({ length: joints }, (_, index) => index);
  const part = (index: number): JsonObject => ({
    ...sound["part"]?.["SHELL"],
    thickness: broken(index) ? "3 mm" : "8 mm",
    heat: `CRT${Math.floor(index / 100)}X#H${index}`,
  });
  const rows = (from: number) =>
    names
      .slice(from * 100, from * 100 + 100)
      .map((index) => ({ heat: `H${index}`, strength: "250 MPa", thickness: "8 mm" }));
  const blocks = Array.from({ length: Math.ceil(joints / 100) }, (_, index) => index);
  const all = <T>(list: readonly number[], name: (index: number) => string, value: (index: number) => T) =>
    Object.fromEntries(list.map((index) => [name(index), value(index)]));
  return smallBook({
    records: {
      ...sound,
      part: all(names, (index) => `P${index}`, part),
      certificate: all(
        blocks,
        (index) => `CRT${index}X`,
        (index) => ({ issued: "2026-02-01", rows: rows(index) }),
      ),
      joint: all(
        names,
        (index) => `J${index}`,
        (index) => ({
          part: `P${index}`,
          welder: index % 2 === 0 ? "WAB" : "WCD",
          process: index % 2 === 0 ? "135" : "141",
          welded: "2026-03-10",
        }),
      ),
      report: all(
        blocks,
        (index) => `VT${index}X`,
        (index) => ({
          method: "VT",
          date: "2026-03-20",
          rows: names.slice(index * 100, index * 100 + 100).map((one) => ({ joint: `J${one}`, result: "ok" })),
        }),
      ),
      "calculation-sheet": all(
        names,
        (index) => `CS${index}`,
        (index) => ({ ...sound["calculation-sheet"]?.["CSA"], subject: `part:P${index}` }),
      ),
    },
  });
}

/** Time of the processor, which other work on the machine does not count into. */
const time = (run: () => unknown) => {
  const from = process.cpuUsage();
  run();
  return process.cpuUsage(from).user;
};

test("the time grows with the book, not with its square, whether it is sound or broken throughout", () => {
  for (const broken of [() => false, () => true]) {
    const [small, large] = [bookOf(200, broken), bookOf(1600, broken)];
    time(() => judge(small, many));
    const one = Math.min(...[1, 2, 3].map(() => time(() => judge(small, many))));
    // Eight times the book; three times that for memory. Its square would be sixty-four.
    expect(time(() => judge(large, many)) / one).toBeLessThan(24);
  }
});

test("a book of two thousand joints judges", () => {
  const book = judge(
    bookOf(2000, (index) => index % 50 === 0),
    many,
  );
  expect(book.counts.passed).toBeGreaterThan(20_000);
  // Their sheets were made with another thickness: that is said, and what acceptance would say waits for it.
  expect(book.findings.filter(({ rule }) => rule === "wall/inputs")).toHaveLength(40);
});
