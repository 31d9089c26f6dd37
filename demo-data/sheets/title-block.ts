import { rgb } from "pdf-lib";
import type { Drawing } from "../generated/records.ts";
import { sizeOf, type Facts } from "../book/facts.ts";
import { height, left, right, rule, widthOf, write, type Sheet } from "../paper/paper.ts";
import { printed } from "./original.ts";

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Revisions, title and number at the foot of a drawing; `page` where it has several sheets. */
export function titleBlock(sheet: Sheet, facts: Facts, drawing: Drawing, page = "sheet 1 of 1"): void {
  const { book, equipment } = facts;
  const top = height - 150;
  const revisions = drawing.revisions ?? [];
  const last = revisions.at(-1);
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
    const reason = printed(revision.reason);
    const size = Math.min(8, (8 * 115) / widthOf(sheet.paper.regular, reason, 8));
    write(sheet, reason, left + 84, y, { size });
    write(sheet, printed(revision.approved), left + 200, y, { size: 8 });
  });
  const title = printed(drawing.title);
  const room = right - middle - 16;
  const size = Math.min(14, (14 * room) / widthOf(sheet.paper.bold, title, 14));
  write(sheet, title, middle + 8, top + 20, { size, bold: true });
  write(
    sheet,
    `${capital(equipment.name ?? "equipment")} ${sizeOf(facts)}, serial ${equipment.serial}`,
    middle + 8,
    top + 36,
    { size: 9 },
  );
  write(
    sheet,
    `Client: ${facts.organisation(book.client ?? "–").name}, order ${printed(book.contractNumber)}`,
    middle + 8,
    top + 49,
    { size: 8 },
  );
  write(
    sheet,
    `Drawn ${facts.name(last?.preparedBy)}   checked ${facts.name(last?.checkedBy)}   approved ${facts.name(last?.approvedBy)}`,
    middle + 8,
    top + 64,
    {
      size: 7.5,
    },
  );
  write(sheet, `${printed(drawing.number)}   revision ${printed(last?.revision)}   ${page}`, middle + 8, top + 92, {
    size: 10,
    bold: true,
  });
}
