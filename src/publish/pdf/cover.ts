import type { Publication } from "../publication.ts";
import type { Piece } from "./flow.ts";
import { fullWidth, mm, rules, styles, textWidth, type TextStyle } from "./measures.ts";
import { blank, drawRule, pile, shifted, stack, type PageSetter } from "./paragraphs.ts";
import { fingerprintPieces } from "./lists.ts";
import { setLines } from "./text.ts";

/** The title page: what the book is about, who made it for whom, which issue it is, and its fingerprint. */
export function coverPieces(setter: PageSetter, book: Publication): readonly Piece[] {
  const set = (text: string, style: TextStyle, width = fullWidth) =>
    stack(setLines(setter, [text], style, width), style);
  const heading = pile([
    blank(mm(34)),
    set("Manufacturing data book", { ...styles.facts, size: 11, leading: 15 }),
    blank(mm(1)),
    set(book.title, styles.bookTitle),
    blank(mm(2.5)),
    set(`${book.number}, ${book.state}`, { ...styles.under, size: 14, leading: 19 }),
    blank(mm(14)),
  ]);
  const rows: readonly (readonly [string, string])[] = [
    ["Maker", book.maker],
    ["Client", book.client],
    ["Issued", book.issueDate],
    ["Evidence up to", book.dataCutOff],
    ["Originals", book.originals.length === 0 ? "none" : `${book.originals.length}, copies at the end of this book`],
    ["Made with", book.tool],
  ];
  const warnings = [
    ...(book.interim ? [book.interimLine ?? "Interim issue, not for acceptance."] : []),
    ...(book.demonstration ? ["Demonstration: maker, client, equipment and every value are invented."] : []),
  ];
  const groups = book.fingerprint.match(/.{1,4}/g) ?? [];
  const label = "Evidence fingerprint (SHA-256); its first sixteen signs stand at the foot of every page";
  return [
    { ...heading, keep: true },
    ...rows.map(([name, value], index) => rowPiece(setter, name, value, index === 0, index === rows.length - 1)),
    ...fingerprintPieces(setter, { type: "fingerprint", label, groups }).map((piece) => ({ ...piece, space: mm(9) })),
    ...warnings.map((text) => ({
      ...set(text, { ...styles.text, strong: true, size: 10.5 }, textWidth),
      space: mm(5),
    })),
  ];
}

function rowPiece(setter: PageSetter, name: string, value: string, first: boolean, last: boolean): Piece {
  const style = styles.facts;
  const label = stack(setLines(setter, [{ type: "soft", text: name }], style, mm(34)), style);
  const text = stack(setLines(setter, [value], style, textWidth - mm(37)), style);
  const height = Math.max(label.height, text.height) + mm(2);
  return {
    height,
    draw(canvas, x, y) {
      if (first) drawRule(canvas, x, y, textWidth, rules.ends);
      label.draw(canvas, x, y + mm(1));
      shifted(text, mm(37)).draw(canvas, x, y + mm(1));
      if (last) drawRule(canvas, x, y + height, textWidth, rules.ends);
    },
  };
}
