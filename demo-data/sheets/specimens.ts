import type { Facts } from "../book/facts.ts";
import { paragraph } from "../paper/blocks.ts";
import { signature } from "../paper/marks.ts";
import { left, newSheet, write, type Paper } from "../paper/paper.ts";
import { printed } from "./original.ts";

const perSheet = 24;

/** Specimen signatures of all who sign in the book. */
export function drawSpecimens(paper: Paper, facts: Facts): void {
  const people = facts.all("person");
  for (let from = 0; from < people.length; from += perSheet) {
    const sheet = newSheet(paper);
    paragraph(sheet, "Specimen signatures of all who sign in this book.");
    people.slice(from, from + perSheet).forEach(({ id, name, roles }, index) => {
      const x = left + (index % 2) * 250;
      const y = sheet.y + Math.floor(index / 2) * 56;
      write(sheet, id, x, y + 18, { size: 11, bold: true });
      write(sheet, name, x + 34, y + 14, { size: 9 });
      write(sheet, `${printed(roles?.[0]?.role)}, since ${printed(roles?.[0]?.from)}`, x + 34, y + 25, { size: 7.5 });
      signature(sheet, name, x + 40, y + 46);
    });
  }
}
