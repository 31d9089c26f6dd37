import { expect, test } from "vitest";
import type { Cell, Column, TableBlock } from "../../../src/publish/blocks.ts";
import { newFlow, type Sheet } from "../../../src/publish/pdf/flow.ts";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { fullWidth, textWidth, turnedWidth } from "../../../src/publish/pdf/measures.ts";
import type { PageSetter } from "../../../src/publish/pdf/paragraphs.ts";
import { fitTable } from "../../../src/publish/pdf/table-columns.ts";
import { tablePieces } from "../../../src/publish/pdf/table.ts";

const fonts = openFonts();
const setter: PageSetter = { fonts, known: () => true, copied: () => true, destOf: (anchor) => `page.html#${anchor}` };
const text = (value: string): Cell => ({ type: "text", text: [value] });
const number = (value: string): Cell => ({ type: "number", text: value });
const left = (head: string): Column => ({ head, align: "left" });
const figures = (head: string, unit?: string): Column => ({
  head,
  align: "number",
  ...(unit !== undefined && { unit }),
});

const table = (
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  more: Partial<TableBlock> = {},
): TableBlock => ({
  type: "table",
  number: "7.3",
  title: "Weld log",
  columns,
  groups: [rows.map((cells) => ({ cells }))],
  ...more,
});

/** Everything drawn, by sheet, with where it was drawn. */
function drawnBy(block: TableBlock) {
  const texts: { readonly sheet: number; readonly text: string; readonly x: number; readonly end: number }[] = [];
  const sheets: Sheet[] = [];
  const watched = { ...setter, fonts: { ...fonts } };
  const flow = newFlow(watched.fonts, (sheet) => void sheets.push(sheet));
  flow.begin("page.html", "");
  flow.add(
    [...tablePieces(setter, block)].map((piece) => ({
      ...piece,
      draw(canvas, x, y) {
        const spy = {
          ...canvas,
          text: (at: number, base: number, face: Parameters<typeof fonts.width>[0], size: number, shown: string) => {
            texts.push({ sheet: sheets.length, text: shown, x: at, end: at + fonts.width(face, size, shown) });
            canvas.text(at, base, face, size, shown);
          },
        };
        piece.draw(spy, x, y);
      },
    })),
  );
  flow.end();
  return { texts, sheets, places: flow.places };
}

test("a narrow table keeps to the text column, a wide one takes the block, one of many columns a turned page", () => {
  const few = fitTable(setter, table([left("Joint"), figures("Length", "mm")], [[text("L1"), number("1200")]]));
  expect([few.width, few.turned]).toEqual([textWidth, false]);
  const wide = fitTable(setter, table([left("Joint"), left("What")], [[text("L1"), text("word ".repeat(60))]]));
  expect([wide.width, wide.turned]).toEqual([fullWidth, false]);
  const many = Array.from({ length: 24 }, (_, index) => `E${index}`);
  const turned = fitTable(
    setter,
    table(
      many.map((head) => figures(head)),
      [many.map(() => number("0.0062"))],
    ),
  );
  expect([turned.width, turned.turned]).toEqual([turnedWidth, true]);
});

test.each([1, 2, 5, 12, 30, 60])("%i columns of words stay inside their table and do not overlap", (count) => {
  const heads = Array.from({ length: count }, (_, index) => `Column ${index}`);
  const cells = heads.map((_, index) => text(`words of column ${index} that go on for a while`));
  const { columns, width } = fitTable(setter, table(heads.map(left), [cells, cells]));
  let end = 0;
  for (const column of columns) {
    expect(column.x).toBeGreaterThanOrEqual(end - 0.01);
    expect(column.width).toBeGreaterThan(0);
    end = column.x + column.width;
  }
  expect(end).toBeLessThanOrEqual(width + 0.1);
});

test("an id stays whole in a column that is as narrow as can be, among narrow letters too", () => {
  const id = "WWW-WMW-014";
  const filler = "will till it is still ill ".repeat(4);
  const cells = [text(`${filler}${id} ${filler}`), ...Array.from({ length: 20 }, () => text(filler.repeat(3)))];
  const drawn = drawnBy(
    table(
      cells.map(() => left("a")),
      [cells],
    ),
  );
  expect(drawn.texts.filter((one) => one.text.includes("WWW")).map((one) => one.text.includes(id))).toEqual([true]);
});

test("numbers of a column meet at the decimal point; no digit is added", () => {
  const values = ["0.14", "12 566.5", "7", "<0.0031"];
  const { texts } = drawnBy(
    table(
      [left("Heat"), figures("Value")],
      values.map((value) => [text("h"), number(value)]),
    ),
  );
  const points = values.map((value) => {
    const drawn = texts.find(({ text: shown }) => shown === value);
    const whole = value.includes(".") ? value.slice(0, value.indexOf(".")) : value;
    return (drawn?.x ?? Number.NaN) + fonts.width("sans", 8.5, whole);
  });
  for (const point of points) expect(point).toBeCloseTo(points[0] ?? 0, 6);
});

test("a long table repeats its head on every sheet and says that it goes on", () => {
  const rows = Array.from({ length: 150 }, (_, index) => [text(`row ${index}`), number("8.0")]);
  const { texts, sheets } = drawnBy(table([left("Joint"), figures("Thickness", "mm")], rows));
  expect(sheets.length).toBeGreaterThan(2);
  expect(texts.filter(({ text: shown }) => shown.startsWith("row "))).toHaveLength(150);
  for (const [index, { canvas }] of sheets.entries())
    expect(canvas.lateDrawings).toHaveLength(index < sheets.length - 1 ? 1 : 0);
});

test("a group of five rows is never parted; the last rows of a table are not left alone", () => {
  const groups = Array.from({ length: 40 }, (_, group) =>
    Array.from({ length: 5 }, (_, row) => ({ anchor: `${group}-${row}`, cells: [text(`${group}/${row}`)] })),
  );
  const { places } = drawnBy(table([left("Joint")], [], { groups }));
  for (let group = 0; group < 40; group++) {
    const sheetsOf = Array.from({ length: 5 }, (_, row) => places.get(`page.html#${group}-${row}`)?.sheet);
    expect(new Set(sheetsOf).size).toBe(1);
  }
});

test("a row taller than a sheet goes on on the next one", () => {
  const long = Array.from({ length: 1500 }, (_, index) => `w${index}`).join(" ");
  const { texts, sheets } = drawnBy(table([left("Remark")], [[text(long)]]));
  expect(sheets.length).toBeGreaterThan(1);
  const words = texts
    .map(({ text: shown }) => shown)
    .join(" ")
    .split(" ");
  expect(words.filter((word) => /^w\d+$/.test(word))).toHaveLength(1500);
});
