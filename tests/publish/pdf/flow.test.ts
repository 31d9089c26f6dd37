import { expect, test } from "vitest";
import { newFlow, type Piece, type Sheet } from "../../../src/publish/pdf/flow.ts";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { mm, turned, upright } from "../../../src/publish/pdf/measures.ts";

const fonts = openFonts();
const room = upright.bottom - upright.top;

/** Lays pieces out and tells on which sheet and how far from its top each was drawn. */
function flowed(pieces: (draw: (name: string) => Piece["draw"]) => readonly Piece[]) {
  const drawn: { readonly name: string; readonly sheet: number; readonly y: number }[] = [];
  const sheets: Sheet[] = [];
  const flow = newFlow(fonts, (sheet) => void sheets.push(sheet));
  flow.begin("page.html", "7 Welding");
  flow.add(
    pieces((name) => (canvas, _x, y) => void drawn.push({ name, sheet: sheets.length, y: y - canvas.shape.top })),
  );
  flow.end();
  return { drawn, sheets, places: flow.places, at: (name: string) => drawn.find((piece) => piece.name === name) };
}

test("pieces stand below each other; space is left out at the top of a sheet", () => {
  const { at } = flowed((draw) => [
    { height: 100, space: 20, draw: draw("a") },
    { height: 100, space: 20, draw: draw("b") },
    { height: room - 100, space: 20, draw: draw("c") },
  ]);
  expect(at("a")).toEqual({ name: "a", sheet: 0, y: 0 });
  expect(at("b")?.y).toBeCloseTo(120, 6);
  expect(at("c")).toEqual({ name: "c", sheet: 1, y: 0 });
});

test("a heading goes to the next sheet with what follows it", () => {
  const { at } = flowed((draw) => [
    { height: room - 30, draw: draw("text") },
    { height: 20, keep: true, draw: draw("heading") },
    { height: 20, draw: draw("first line") },
  ]);
  expect(at("heading")?.sheet).toBe(1);
  expect(at("first line")?.sheet).toBe(1);
});

test("what is kept together but taller than a sheet is parted, and nothing is drawn below the text area", () => {
  const { drawn } = flowed((draw) =>
    Array.from({ length: 30 }, (_, index) => ({ height: 50, keep: true, draw: draw(`row ${index}`) })),
  );
  expect(drawn).toHaveLength(30);
  for (const { y } of drawn) expect(y + 50).toBeLessThanOrEqual(room + 0.01);
});

test("a note pushes the next noted or wide piece down, but not plain text", () => {
  const notes = { height: 90, draw: () => undefined };
  const { at } = flowed((draw) => [
    { height: 20, notes, draw: draw("noted") },
    { height: 20, draw: draw("plain") },
    { height: 20, notes, draw: draw("noted too") },
  ]);
  expect(at("plain")?.y).toBeCloseTo(20, 6);
  expect(at("noted too")?.y).toBeCloseTo(90 + mm(2), 6);
});

test("a table that goes on repeats its head and closes below its last row", () => {
  const { drawn } = flowed((draw) => [
    { height: room - 10, draw: draw("rows"), closing: { height: 0, draw: draw("closing") } },
    { height: 20, draw: draw("next row"), again: { height: 15, draw: draw("head again") } },
  ]);
  expect(drawn.map(({ name, sheet }) => [name, sheet])).toEqual([
    ["rows", 0],
    ["closing", 0],
    ["head again", 1],
    ["next row", 1],
  ]);
  expect(drawn[3]?.y).toBeCloseTo(15, 6);
});

test("a piece that needs a turned page gets one, and an untouched sheet is turned instead of wasted", () => {
  const { sheets, at } = flowed((draw) => [
    { height: 50, turned: true, draw: draw("wide table") },
    { height: 50, draw: draw("text") },
  ]);
  expect(sheets.map(({ canvas }) => canvas.shape)).toEqual([turned, upright]);
  expect(at("text")?.sheet).toBe(1);
});

test("destinations lie where their piece was put", () => {
  const { places } = flowed((draw) => [
    { height: room - 5, draw: draw("a") },
    { height: 20, dests: ["page.html#L1"], draw: draw("b") },
  ]);
  expect(places.get("page.html")).toEqual({ sheet: 0, y: 0 });
  expect(places.get("page.html#L1")).toEqual({ sheet: 1, y: upright.top });
});

/** Sheet on which a second page begins, by its destination and by what is drawn, after 100 pt of the first. */
function followedBy(...pieces: readonly Omit<Piece, "draw">[]) {
  const sheets: Sheet[] = [];
  const drawn: number[] = [];
  const flow = newFlow(fonts, (sheet) => void sheets.push(sheet));
  flow.begin("first.html", "7 Welding");
  flow.add([{ height: 100, draw: () => undefined }]);
  flow.begin("second.html", "7 Welding", true);
  flow.add(pieces.map((piece) => ({ ...piece, draw: () => void drawn.push(sheets.length) })));
  flow.end();
  return { drawn, place: flow.places.get("second.html"), sheets: sheets.length };
}

test("a page follows on the sheet of the one before where what it opens with fits", () => {
  const { drawn, place } = followedBy({ height: 20, keep: true }, { height: 200 });
  expect(drawn).toEqual([0, 0]);
  expect(place?.sheet).toBe(0);
  expect(place?.y).toBeGreaterThan(upright.top + 100);
});

test("where it does not, its destination goes to the next sheet with it", () => {
  const tall = followedBy({ height: 20, keep: true }, { height: room - 60 });
  expect(tall.drawn).toEqual([1, 1]);
  expect(tall.place).toEqual({ sheet: 1, y: 0 });
  const wide = followedBy({ height: 20, turned: true });
  expect(wide.drawn).toEqual([1]);
  expect(wide.place).toEqual({ sheet: 1, y: 0 });
});

test("a page without pieces has its destination all the same", () => {
  expect(followedBy().place?.sheet).toBe(0);
});
