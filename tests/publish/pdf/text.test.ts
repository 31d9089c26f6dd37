import fc from "fast-check";
import { expect, test } from "vitest";
import { spellControlsInLines } from "../../../src/model/spelled.ts";
import type { Text } from "../../../src/publish/blocks.ts";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { styles } from "../../../src/publish/pdf/measures.ts";
import { setLine, setLines, type Line, type Setter } from "../../../src/publish/pdf/text.ts";

const setter: Setter = { fonts: openFonts(), known: (dest) => dest !== "screen-only.html" };
const textOf = (line: Line) => line.runs.map((run) => run.text).join("");
const linesOf = (text: Text, width: number) => setLines(setter, text, styles.text, width).map(textOf);
const squeezed = (text: string) => text.replace(/[\s\u00a0]/g, "");

test("no line is wider than its column, and no character is lost: signs that act are spelled out", () => {
  const word = fc.string({ minLength: 1, maxLength: 40, unit: "grapheme" });
  const inline = fc.oneof(
    word,
    word.map((text) => ({ type: "strong" as const, text })),
    word.map((text) => ({ type: "code" as const, text })),
    word.map((text) => ({ type: "link" as const, text, to: { page: "joint/r-L1.html" } })),
  );
  fc.assert(
    fc.property(fc.array(inline, { maxLength: 12 }), fc.integer({ min: 60, max: 340 }), (text, width) => {
      const lines = setLines(setter, text, styles.text, width);
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.05);
      const written = text.map((part) => (typeof part === "string" ? part : part.text)).join("");
      expect(squeezed(lines.map(textOf).join(""))).toBe(squeezed(spellControlsInLines(written)));
    }),
    { numRuns: 300 },
  );
});

test("a number keeps its unit, and whole text is never broken", () => {
  const short = linesOf(["the plate is 8.0 mm thick and the test took 30 min."], 70);
  expect(short.some((line) => line.includes("8.0\u00a0mm"))).toBe(true);
  expect(short.some((line) => line.includes("30\u00a0min."))).toBe(true);
  const dates = linesOf(["welded on ", { type: "whole", text: "2026-06-09, W07" }, " by hand"], 80);
  expect(dates).toContain("2026-06-09, W07");
});

test("words part at a hyphen between letters, never inside an id or a date", () => {
  expect(linesOf(["a cross-check"], 40)).toEqual(["a cross-", "check"]);
  expect(linesOf(["see B-2217 2026-06-09"], 50)).toEqual(["see B-2217", "2026-06-09"]);
});

test("words stay apart in the text layer where the face changes", () => {
  const line = setLine(
    setter,
    ["Part 1, ", { type: "link", to: { page: "p.html" }, text: "heat 84713" }, " only."],
    styles.text,
  );
  expect(textOf(line)).toBe("Part 1, heat 84713 only.");
  expect(line.runs.map((run) => run.link !== undefined)).toEqual([false, true, false]);
});

test("a link to a page that is not in the PDF is text", () => {
  const link = (page: string) =>
    setLine(setter, [{ type: "link", to: { page }, text: "list" }], styles.text).runs[0]?.link;
  expect(link("records.html")).toEqual({ dest: "records.html" });
  expect(link("screen-only.html")).toBeUndefined();
});

test("the first line leaves its indent free", () => {
  const lines = setLines(setter, ["one two three four five six seven eight"], styles.text, 100, 40);
  expect(lines[0]?.runs[0]?.x).toBe(40);
  expect(lines[1]?.runs[0]?.x).toBe(0);
});
