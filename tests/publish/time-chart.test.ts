import { expect, test } from "vitest";
import { boilerBook, demoBook, laidOutOnce } from "../support/demo-book.ts";

test.each([
  ["receiver", demoBook],
  ["boiler", boilerBook],
] as const)(
  "chart of the %s: the names of the gauges stand clear of every level and of the axis",
  async (_name, book) => {
    const { pages } = await laidOutOnce(book);
    const figures = pages
      .filter(({ url }) => url.startsWith("pressure-test/"))
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.type === "figure" ? [block.figure.wide, block.figure.narrow] : []));
    expect(figures.length).toBeGreaterThan(1);
    for (const { shapes } of figures) {
      const names = shapes.flatMap((shape) =>
        shape.type === "text" && /^(line|rings): /.test(shape.text) ? [shape] : [],
      );
      const lines = shapes.flatMap((shape) =>
        shape.type === "line" && shape.from[1] === shape.to[1] && shape.to[0] - shape.from[0] > 20
          ? [shape.from[1]]
          : [],
      );
      expect(names).toHaveLength(2);
      // Axis, hold and at least one level.
      expect(lines.length).toBeGreaterThan(2);
      for (const { at, size } of names)
        for (const line of lines) expect(line < at[1] - size || line > at[1] + 2, `${at[1]} and ${line}`).toBe(true);
    }
  },
);
