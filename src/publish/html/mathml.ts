import type { Display, SymbolDisplay } from "../../model/formula/typeset.ts";
import { html, type Html } from "../../../templates/html.ts";
import { widthOf } from "./formula-width.ts";
import { spoken } from "./spoken.ts";

/**
 * A formula in MathML with its spoken text. It is cut before `=` and before signs of addition, where a narrow page may
 * break it; a piece that still is too long scrolls by itself.
 */
export function formula(display: Display): Html {
  const pieces = piecesOf(display);
  const scrolls = pieces.some((piece) => widthOf(piece) > 26);
  const maths = pieces.map(
    (piece, at) =>
      html`<math aria-hidden="true"
        ><mstyle displaystyle="true"><mrow>${setItems(piece, at > 0)}</mrow></mstyle></math
      > `,
  );
  return html`<span
    class="formula${scrolls && " long"}"
    role="math"
    aria-label="${spoken(display)}"
    ${scrolls && html` tabindex="0"`}
    >${maths}</span
  >`;
}

/** A symbol within running text; anything larger is set as a formula. */
export function symbolText(display: Display): Html {
  if (display.type !== "symbol") return formula(display);
  const { base, sub, sup } = display;
  return html`<span class="sym"
    >${base}${sub !== undefined && html`<sub>${sub}</sub>`}${sup !== undefined && html`<sup>${sup}</sup>`}</span
  >`;
}

const itemsOf = (display: Display): readonly Display[] => (display.type === "row" ? display.items : [display]);

function piecesOf(display: Display): readonly (readonly Display[])[] {
  const pieces: Display[][] = [[]];
  itemsOf(display).forEach((item, at) => {
    const breaks = item.type === "operator" && item.text !== "·" && item.text !== "/";
    if (at > 1 && breaks) pieces.push([]);
    pieces.at(-1)?.push(item);
  });
  return pieces;
}

function set(display: Display): Html {
  switch (display.type) {
    case "number":
      return html`<mn>${display.text}</mn>`;
    case "symbol":
      return setSymbol(display);
    case "operator":
      return html`<mo>${display.text}</mo>`;
    case "fraction":
      return html`<mfrac>${group(display.numerator)}${group(display.denominator)}</mfrac>`;
    case "root":
      // A radical stretches only in fonts made for mathematics; the style sheet draws it around this row.
      return html`<mrow class="root">${setItems(itemsOf(display.body))}</mrow>`;
    case "power":
      return html`<msup>${group(display.base)}${group(display.exponent)}</msup>`;
    case "group":
      return display.fence === "bars"
        ? fenced("|", group(display.body), "|", isTall(display.body))
        : fenced("(", group(display.body), ")", isTall(display.body));
    case "call": {
      const args = display.args.map((arg, at) => html`${at > 0 && html`<mo separator="true">,</mo>`}${group(arg)}`);
      return html`<mrow><mtext>${display.name}</mtext>${fenced("(", args, ")", display.args.some(isTall))}</mrow>`;
    }
    case "words":
      return wordsAfter(display.text, undefined);
    case "row":
      return group(display);
  }
}

const group = (display: Display): Html => html`<mrow>${setItems(itemsOf(display))}</mrow>`;

function fenced(open: string, body: Html | readonly Html[], close: string, tall: boolean): Html {
  const size = tall && html` class="tall"`;
  return html`<mrow><mo form="prefix" ${size}>${open}</mo>${body}<mo form="postfix" ${size}>${close}</mo></mrow>`;
}

/** Whether a fraction stands in it, so that brackets around it have to be larger. */
function isTall(display: Display): boolean {
  if (display.type === "fraction") return true;
  if (display.type === "row") return display.items.some(isTall);
  return display.type === "root" || display.type === "group" ? isTall(display.body) : false;
}

function setSymbol({ base, sub, sup }: SymbolDisplay): Html {
  const name = html`<mi mathvariant="normal">${base}</mi>`;
  const low = sub !== undefined && html`<mtext>${sub}</mtext>`;
  const high = sup !== undefined && html`<mtext>${sup}</mtext>`;
  if (low !== false && high !== false) return html`<msubsup>${name}${low}${high}</msubsup>`;
  if (low !== false) return html`<msub>${name}${low}</msub>`;
  return high === false ? name : html`<msup>${name}${high}</msup>`;
}

/** The items of a row; `goesOn` when the row began in an earlier piece, so that a first sign stands between two terms. */
function setItems(items: readonly Display[], goesOn = false): Html[] {
  return items.map((item, at) => {
    const before = items[at - 1];
    if (item.type === "words") return wordsAfter(item.text, before);
    if (item.type !== "operator") return set(item);
    if (item.text === "·") return productSign(before, items[at + 1]);
    const isSign = at === 0 && !goesOn && item.text === "−";
    return isSign ? html`<mo form="prefix">−</mo>` : html`<mo form="infix">${item.text}</mo>`;
  });
}

const gap = html`<mspace width="0.3em"></mspace>`;

/** A sign before the words has its own room. */
const wordsAfter = (text: string, before: Display | undefined): Html =>
  html`${before !== undefined && before.type !== "operator" && gap}<mtext>${text}</mtext>${gap}`;

/** Symbols stand side by side, numbers need a sign; a name of several letters would run into its neighbour. */
function productSign(before: Display | undefined, after: Display | undefined): Html {
  if (after === undefined || before === undefined || startsWithDigit(after)) return html`<mo form="infix">×</mo>`;
  return isWord(before) || isWord(after) || isClosed(before)
    ? html`<mo form="infix">·</mo>`
    : html`<mspace width="0.1em"></mspace>`;
}

const isWord = (item: Display) => item.type === "symbol" && /../u.test(item.base);
const isClosed = (item: Display) => item.type === "fraction" || item.type === "call";

function startsWithDigit(item: Display): boolean {
  if (item.type === "number") return true;
  if (item.type === "power") return startsWithDigit(item.base);
  if (item.type === "fraction") return startsWithDigit(item.numerator);
  const first = item.type === "row" ? item.items[0] : undefined;
  return first !== undefined && startsWithDigit(first);
}
