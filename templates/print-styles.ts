import type { Publication } from "../src/publish/publication.ts";

/**
 * Style sheet for printing a page from the browser: running head and foot in the margin boxes, where only a style sheet
 * can put text; the layout itself is in `styles/paper.css`.
 */
export function printStyles(publication: Publication): string {
  const { number, title, state, interim, demonstration, fingerprint } = publication;
  const groups = fingerprint.slice(0, 16).match(/.{1,4}/g) ?? [];
  const top = (content: string, more = "") =>
    `{ content: ${content};${more} font-family: "Book Sans", sans-serif; font-size: 8pt; vertical-align: bottom; padding-bottom: 1.6mm; border-bottom: 0.6pt solid #000; margin-bottom: 5mm; }`;
  const bottom = (content: string) =>
    `{ content: ${content}; font-family: "Book Sans", sans-serif; font-size: 7.5pt; vertical-align: top; padding-top: 5mm; }`;
  return `@page {
  size: A4;
  margin: 25mm 19mm 22mm 25mm;
  @top-left ${top(cssText(`${number}  ${title}`))}
  @top-center ${top(cssText(interim ? `${state}, not for acceptance` : state), interim ? " font-weight: 600;" : "")}
  @top-right ${top(cssText(demonstration ? "demonstration, invented data" : ""), " font-style: italic;")}
  @bottom-left ${bottom(cssText(`evidence fingerprint ${groups.join(" ")}`))}
  @bottom-right ${bottom('"page " counter(page) " of " counter(pages)')}
}
`;
}

/** A string of a style sheet: whatever could end it or the sheet is written as its code. */
const cssText = (text: string) =>
  `"${text.replaceAll(/["\\<>\p{Cc}]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)}"`;
