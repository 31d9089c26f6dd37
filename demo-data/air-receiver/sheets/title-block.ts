import { rgb } from "pdf-lib";
import type { Drawing } from "../../../src/generated/records.ts";
import { height, left, right, rule, write, type Sheet } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import { printed } from "./original.ts";

/** Revisions, title and number at the foot of a drawing. */
export function titleBlock(sheet: Sheet, drawing: Drawing): void {
  const top = height - 150;
  const revisions = drawing.revisions ?? [];
  sheet.page.drawRectangle({
    x: left,
    y: 44,
    width: right - left,
    height: 106,
    borderWidth: 0.9,
    borderColor: rgb(0.1, 0.1, 0.1),
  });
  const middle = left + 250;
  rule(sheet, middle, top, middle, top + 106, 0.6);
  for (const [text, across] of [
    ["Rev.", 6],
    ["Date", 30],
    ["Reason", 84],
    ["Approved", 200],
  ] as const)
    write(sheet, text, left + across, top + 12, { size: 7 });
  revisions.forEach((revision, index) => {
    const y = top + 26 + index * 13;
    write(sheet, revision.revision, left + 6, y, { size: 8, bold: true });
    write(sheet, printed(revision.date), left + 30, y, { size: 8 });
    write(sheet, printed(revision.reason), left + 84, y, { size: 8 });
    write(sheet, printed(revision.approved), left + 200, y, { size: 8 });
  });
  write(sheet, printed(drawing.title), middle + 8, top + 20, { size: 14, bold: true });
  write(sheet, "Compressed-air receiver 3000 l, serial TQ423-01", middle + 8, top + 36, { size: 9 });
  write(sheet, "Client: Pebblewright Glass, order PW-1187", middle + 8, top + 49, { size: 8 });
  write(sheet, `Drawn ${nameOf("R1")}   checked ${nameOf("R2")}   approved ${nameOf("K1")}`, middle + 8, top + 64, {
    size: 7.5,
  });
  write(
    sheet,
    `${printed(drawing.number)}   revision ${printed(revisions.at(-1)?.revision)}   sheet 1 of 1`,
    middle + 8,
    top + 92,
    { size: 10, bold: true },
  );
}
