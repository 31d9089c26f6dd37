import { grey, height, left, right, widthOf, wrap, write, type Sheet } from "./paper.ts";

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
