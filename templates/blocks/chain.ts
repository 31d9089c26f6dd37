import type { Block, ChainLink } from "../../src/publish/blocks.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, type Html } from "../html.ts";
import { because, notes, text, verdict } from "../inline.ts";

/** The chain of evidence: a numbered list, each link with a leader to its verdict, arithmetic and basis in the margin. */
export function chain(context: PageContext, block: Extract<Block, { type: "chain" }>): Html {
  return html`<ol class="chain" aria-label="${block.label}">
      ${block.links.map((link) => chainLink(context, link))}
    </ol>
    <p class="after">${block.count}</p>`;
}

function chainLink(context: PageContext, link: ChainLink): Html {
  return html`<li ${attribute("id", context.anchor(link.anchor))}>
    <div class="link">
      <p class="head">
        <span class="what">${link.what}</span><span class="dots" aria-hidden="true"></span>${verdict(link.mark)}
      </p>
      ${link.text.map((paragraph) => html`<p>${text(context, paragraph)}</p> `)}${because(context, link.because)}
    </div>
    ${notes(context, link.notes)}
  </li> `;
}
