import { black, grey, height, left, right, rule, widthOf, wrap, write, type Sheet } from "./paper.ts";

/** A heading between blocks. */
export function heading(sheet: Sheet, text: string): void {
  sheet.y += 8;
  write(sheet, text, left, sheet.y + 10, { size: 10.5, bold: true, color: sheet.paper.look.ink });
  sheet.y += 17;
}

/** A paragraph over the whole width. */
export function paragraph(sheet: Sheet, text: string, size = 9): void {
  for (const line of wrap(sheet.paper.regular, text, size, right - left)) {
    write(sheet, line, left, sheet.y + size, { size });
    sheet.y += size * 1.35;
  }
  sheet.y += 4;
}

/** A paragraph that begins with a word in bold. */
export function article(sheet: Sheet, title: string, text: string): void {
  write(sheet, title, left, sheet.y + 9, { size: 9, bold: true });
  const indent = 86;
  for (const line of wrap(sheet.paper.regular, text, 9, right - left - indent)) {
    write(sheet, line, left + indent, sheet.y + 9);
    sheet.y += 12.5;
  }
  sheet.y += 5;
}

/** A form: boxes with a small label and a value, in columns. */
export function fields(sheet: Sheet, pairs: readonly (readonly [string, string])[], columns = 2): void {
  const { page, paper } = sheet;
  const box = (right - left) / columns;
  const tall = 24;
  pairs.forEach(([label, value], index) => {
    const x = left + (index % columns) * box;
    const y = sheet.y + Math.floor(index / columns) * tall;
    page.drawRectangle({ x, y: height - y - tall, width: box, height: tall, borderColor: grey, borderWidth: 0.4 });
    write(sheet, label, x + 4, y + 8, { size: 6.5, color: grey });
    const room = box - 8;
    const size = Math.min(9, (9 * room) / Math.max(room, widthOf(paper.regular, value, 9)));
    write(sheet, value, x + 4, y + 19, { size });
  });
  sheet.y += Math.ceil(pairs.length / columns) * tall + 8;
}

export interface Column {
  readonly title: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: "right";
}

/** A ruled table; cells wrap. */
export function table(sheet: Sheet, columns: readonly Column[], rows: readonly (readonly string[])[], size = 8): void {
  const { paper } = sheet;
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => ((right - left) * share) / whole);
  const starts = widths.map((_, index) => left + widths.slice(0, index).reduce((sum, one) => sum + one, 0));
  const step = size * 1.28;
  const line = (cells: readonly string[], bold: boolean) => {
    const font = bold ? paper.bold : paper.regular;
    const wrapped = columns.map((_, index) => wrap(font, cells[index] ?? "", size, (widths[index] ?? 0) - 6));
    const deep = Math.max(...wrapped.map((lines) => lines.length)) * step + 5;
    wrapped.forEach((lines, index) => {
      lines.forEach((text, row) => {
        const start = (starts[index] ?? left) + 3;
        const far = (starts[index] ?? left) + (widths[index] ?? 0) - 3 - widthOf(font, text, size);
        write(sheet, text, columns[index]?.align === "right" ? far : start, sheet.y + size + 1.5 + row * step, {
          size,
          bold,
        });
      });
    });
    rule(sheet, left, sheet.y + deep, right, sheet.y + deep, bold ? 0.9 : 0.3, bold ? black : grey);
    for (const x of [...starts.slice(1)]) rule(sheet, x, sheet.y, x, sheet.y + deep, 0.25, grey);
    sheet.y += deep;
  };
  const top = sheet.y;
  rule(sheet, left, top, right, top, 0.9);
  line(
    columns.map(({ title }) => title),
    true,
  );
  for (const row of rows) line(row, false);
  rule(sheet, left, top, left, sheet.y, 0.5);
  rule(sheet, right, top, right, sheet.y, 0.5);
  rule(sheet, left, sheet.y, right, sheet.y, 0.9);
  sheet.y += 8;
}
