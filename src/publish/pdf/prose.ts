import MarkdownIt from "markdown-it";
import type { Inline, Text } from "../blocks.ts";
import { boundedRemark, boundedTables } from "../remarks.ts";
import type { Piece } from "./flow.ts";
import { listPieces } from "./lists.ts";
import { mm, styles, textWidth, type TextStyle } from "./measures.ts";
import { linePieces, shifted, spaced, stack, type PageSetter } from "./paragraphs.ts";
import { setLines } from "./text.ts";

type Token = ReturnType<MarkdownIt["parse"]>[number];

/** HTML stays text, addresses are printed and lead nowhere: what a record says is never trusted. */
const markdown = new MarkdownIt({ html: false, linkify: false });

/** Free text of a record. */
export function prosePieces(setter: PageSetter, source: string): readonly Piece[] {
  const pieces: Piece[] = [];
  let depth = 0;
  const counters: { readonly ordered: boolean; count: number }[] = [];
  let firstOfItem = false;
  // Cells of a row of a table: printed on a line, kept apart by bars.
  let cells: Text[] | undefined;
  const tokens = boundedTables(markdown.parse(boundedRemark(source), {}), (sentence) =>
    markdown.parse(`*${sentence}*`, {}),
  );
  for (const token of tokens) {
    if (token.type === "ordered_list_open" || token.type === "bullet_list_open")
      counters.push({ ordered: token.type.startsWith("o"), count: 0 });
    else if (token.type === "ordered_list_close" || token.type === "bullet_list_close") counters.pop();
    else if (token.type === "list_item_open") {
      const counter = counters.at(-1);
      if (counter !== undefined) counter.count += 1;
      firstOfItem = true;
    } else if (token.type === "blockquote_open") depth += 1;
    else if (token.type === "blockquote_close") depth -= 1;
    else if (token.type === "tr_open") cells = [];
    else if (token.type === "tr_close") {
      pieces.push(
        ...paragraph(
          setter,
          (cells ?? []).flatMap((cell, index) => (index === 0 ? cell : [" | ", ...cell])),
          0,
        ),
      );
      cells = undefined;
    } else if (token.type === "fence" || token.type === "code_block") pieces.push(...codePieces(setter, token.content));
    else if (token.type === "inline") {
      const text = inlinesOf(token.children ?? []);
      if (cells !== undefined) {
        cells.push(text);
        continue;
      }
      const left = mm(6) * (depth + counters.length);
      const counter = counters.at(-1);
      if (counter !== undefined && firstOfItem) pieces.push(...itemPieces(setter, counter, text, left - mm(6)));
      else pieces.push(...paragraph(setter, text, left));
      firstOfItem = false;
    }
  }
  return pieces;
}

const paragraph = (setter: PageSetter, text: Text, left: number) =>
  spaced(linePieces(setLines(setter, text, styles.text, textWidth - left), styles.text, left), mm(1.6));

/** One item, numbered as it was counted so far. */
function itemPieces(
  setter: PageSetter,
  counter: { readonly ordered: boolean; readonly count: number },
  text: Text,
  left: number,
) {
  if (!counter.ordered) return listPieces(setter, false, [text], left);
  return listPieces(setter, true, [...Array.from({ length: counter.count - 1 }, () => [] as const), text], left);
}

function codePieces(setter: PageSetter, content: string): readonly Piece[] {
  const style: TextStyle = { family: "mono", size: 8, leading: 11 };
  return content
    .replace(/\n$/, "")
    .split("\n")
    .map((line) =>
      shifted(stack(setLines(setter, [{ type: "whole", text: line }], style, textWidth - mm(4)), style), mm(4)),
    );
}

function inlinesOf(tokens: readonly Token[]): Text {
  const inlines: Inline[] = [];
  let strong = 0;
  let em = 0;
  const hrefs: string[] = [];
  for (const token of tokens) {
    if (token.type === "strong_open") strong += 1;
    else if (token.type === "strong_close") strong -= 1;
    else if (token.type === "em_open") em += 1;
    else if (token.type === "em_close") em -= 1;
    else if (token.type === "link_open") hrefs.push(token.attrGet("href") ?? "");
    else if (token.type === "link_close") {
      const href = hrefs.pop() ?? "";
      if (href !== "") inlines.push(` (${href})`);
    } else if (token.type === "softbreak" || token.type === "hardbreak") inlines.push(" ");
    else if (token.type === "code_inline") inlines.push({ type: "code", text: token.content });
    else if (token.content !== "")
      inlines.push(
        strong > 0
          ? { type: "strong", text: token.content }
          : em > 0
            ? { type: "em", text: token.content }
            : token.content,
      );
  }
  return inlines;
}
