import type { Block, Note } from "../../src/publish/blocks.ts";
import { drawings } from "../../src/publish/html/svg.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, trusted, type Html } from "../html.ts";
import { notes, text } from "../inline.ts";
import { calculation } from "./calculation.ts";
import { chain } from "./chain.ts";
import { caution, fingerprint, scan, signatures } from "./evidence.ts";
import { findings } from "./findings.ts";
import { contents, facts, judged, list } from "./lists.ts";
import { prose } from "./prose.ts";
import { table } from "./table.ts";

/** All blocks of a page, in the grid of the page. */
export function blocks(context: PageContext, list: readonly Block[]): Html[] {
  return list.map((block, index) => html`${printBlock(context, block, list, index)} `);
}

function printBlock(context: PageContext, block: Block, list: readonly Block[], index: number): Html {
  if (block.type === "table") {
    const remark =
      block.remark !== undefined &&
      block.remark.length > 0 &&
      html`<p class="after">${text(context, block.remark)}</p>`;
    const printed = table(context, block);
    // Beside a wide table there is no margin: its notes stand beside what follows it.
    if (block.wide === true) return html`${printed} ${beside(context, remark, block.notes, 2)}`;
    return beside(
      context,
      remark === false ? printed : html`<div class="remarked">${printed} ${remark}</div>`,
      block.notes,
    );
  }
  const printed = content(context, block);
  if (block.type === "figure") return html`${printed} ${beside(context, false, block.notes, 2)}`;
  return "notes" in block ? beside(context, printed, block.notes, roomBeside(list, index)) : html`${printed}`;
}

/** A block and its margin. They are wrapped together, since on paper the pair is a grid of its own. */
function beside(
  context: PageContext,
  printed: Html | readonly Html[] | false,
  list: readonly Note[] | undefined,
  rows = 1,
): Html {
  const margin = notes(context, list, rows);
  return margin === false ? html`${printed}` : html`<div class="pair">${printed} ${margin}</div>`;
}

/** How many rows of the grid a margin may stand beside: its own block, and what follows it in the text column. */
function roomBeside(list: readonly Block[], index: number): number {
  let rows = 1;
  for (const block of list.slice(index + 1)) {
    const inColumn = ["paragraph", "prose", "facts", "list", "judged", "caution"].includes(block.type);
    if (!inColumn || ("notes" in block && block.notes.length > 0)) break;
    rows++;
  }
  return rows;
}

function content(context: PageContext, block: Exclude<Block, { type: "table" }>): Html | readonly Html[] {
  switch (block.type) {
    case "heading":
      return heading(context, block);
    case "paragraph":
      return html`<p>${text(context, block.text)}</p>`;
    case "prose":
      return prose(block.markdown);
    case "facts":
      return facts(context, block.facts);
    case "list":
      return list(context, block);
    case "calculation":
      return calculation(context, block);
    case "judged":
      return judged(context, block);
    case "chain":
      return chain(context, block);
    case "findings":
      return findings(context, block.findings);
    case "figure":
      return html`<figure class="wide">
        ${drawings(context, block.figure)}
        <figcaption>
          ${block.number !== "" && html`<span class="k">Figure ${block.number}</span> `}${text(context, block.caption)}
        </figcaption>
      </figure>`;
    case "scan":
      return scan(context, block);
    case "signatures":
      return signatures(block);
    case "contents":
      return contents(context, block.entries);
    case "fingerprint":
      return fingerprint(context, block);
    case "caution":
      return caution(context, block);
    case "anchor":
      return html`<div class="anchor" ${attribute("id", context.anchor(block.anchor))}></div>`;
  }
}

function heading(context: PageContext, block: Extract<Block, { type: "heading" }>): Html {
  const tag = trusted(`h${context.headingLevel(block.level)}`);
  const number = block.number !== undefined && block.number !== "" && html`<span class="no">${block.number}</span> `;
  return html`<${tag} class="level-${block.level}"${attribute("id", context.anchor(block.anchor))}>${number}<span class="t">${block.text}</span></${tag}>`;
}
