import type { Cell, Column, Inline, Row, TableBlock } from "../../src/publish/blocks.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, type Html } from "../html.ts";
import { because, text, verdict } from "../inline.ts";
import { decimalsOf, paddingClass } from "./decimals.ts";
import { rangeMark } from "./range.ts";

/** A table: caption above, groups of rows, the first cell of a row its header; scrolls by itself where it is too wide. */
export function table(context: PageContext, block: TableBlock): Html {
  const decimals = block.columns.map((_, index) => decimalsOf(block.groups.flat().map((row) => row.cells[index])));
  const name = [block.number === "" ? "" : `Table ${block.number}`, block.title].filter(Boolean).join(", ");
  return html`<section class="scroll${block.wide === true && " wide"}" tabindex="0" aria-label="${name}">
    <table class="${shapeOf(block)}">
      ${caption(block)}
      <thead>
        <tr>
          ${block.columns.map((column) => head(context, column))}
        </tr>
      </thead>
      ${block.groups.map(
        (rows) =>
          html`<tbody>
            ${rows.map((row) => tableRow(context, row, block.columns, decimals))}
          </tbody> `,
      )}
    </table>
  </section>`;
}

/**
 * How a table is fitted to its page. Many columns stand closer, so that they need not scroll. On a phone a table with
 * sentences in it is stacked, row by row; one of short cells keeps its lines and scrolls.
 */
function shapeOf({ columns, groups }: TableBlock): string {
  let longest = 0;
  for (const rows of groups)
    for (const { cells } of rows) for (const cell of cells.slice(1)) longest = Math.max(longest, cellLength(cell));
  const density = columns.length >= 14 ? "most" : columns.length >= 9 ? "many" : "few";
  return `${density} ${longest <= longestShort ? "short" : columns.length <= 7 ? "stacked" : "roomy"}`;
}

const longestShort = 28;

function caption({ number, title }: TableBlock): Html | false {
  if (number === "" && title === "") return false;
  return html`<caption>
    <span class="held">${number !== "" && html`<span class="k">Table ${number}</span> `}${title}</span>
  </caption> `;
}

function head(context: PageContext, { head: title, symbol, unit, align }: Column): Html {
  if (title === "") return html`<td></td>`;
  const below = unit !== undefined && unit !== "" && html` <span class="u">${unit}</span>`;
  return html`<th scope="col" ${align === "number" && html` class="n"`}>
    ${symbol === undefined ? title : text(context, [{ type: "symbol", display: symbol }])}${below}
  </th>`;
}

function tableRow(context: PageContext, row: Row, columns: readonly Column[], decimals: readonly number[]): Html {
  const cells = row.cells.map((cell, index) =>
    tableCell(context, cell, index === 0, columns[index], decimals[index] ?? 0),
  );
  return html`<tr ${attribute("id", context.anchor(row.anchor))}>
    ${cells}
  </tr> `;
}

function tableCell(
  context: PageContext,
  cell: Cell,
  isHead: boolean,
  column: Column | undefined,
  longest: number,
): Html {
  if (cell.type === "empty") return html`<td></td>`;
  const classes = [column?.align === "number" ? "n" : "", classOf(cell, isHead, longest)].filter(Boolean).join(" ");
  const named = attribute("class", classes === "" ? undefined : classes);
  const content = cellContent(context, cell);
  return isHead
    ? html`<th scope="row" ${named}>${content}</th>`
    : html`<td ${named}${attribute("data-head", column?.head)}>${content}</td>`;
}

function cellContent(context: PageContext, cell: Exclude<Cell, { type: "empty" }>): Html | string {
  switch (cell.type) {
    case "text":
      return html`${text(context, cell.text)}`;
    case "number":
      return cell.text;
    case "mark":
      return html`${verdict(cell.mark)}${because(context, cell.because)}`;
    case "ditto":
      return html`<span class="vh">${cell.full}</span><span class="ditto" aria-hidden="true">″</span>`;
    case "range":
      return rangeMark(cell);
  }
}

// A short row head stays whole; a long one has to break like any text.
const longestHead = 20;

function classOf(cell: Cell, isHead: boolean, longest: number): string {
  if (cell.type === "number") return paddingClass(cell.text, longest);
  if (cell.type === "range") return "r";
  const length = cellLength(cell);
  return isHead && length > 0 && length <= longestHead ? "nb" : "";
}

const cellLength = (cell: Cell) =>
  cell.type === "text" ? cell.text.reduce((sum, part) => sum + lengthOf(part), 0) : 0;

const lengthOf = (part: Inline) => (typeof part === "string" ? part.length : "text" in part ? part.text.length : 6);
