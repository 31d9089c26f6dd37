import type { Block, ContentsEntry, Fact, JudgedBlock } from "../../src/publish/blocks.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, type Html } from "../html.ts";
import { because, text, unbroken, verdict } from "../inline.ts";

/** Label and value, one pair a line. */
export function facts(context: PageContext, list: readonly Fact[]): Html {
  const rows = list.map(
    (fact) =>
      html`<div ${fact.gap === true && html` class="gap"`}${attribute("id", context.anchor(fact.anchor))}>
        <dt>${fact.label}</dt>
        <dd>${text(context, fact.value)}</dd>
      </div> `,
  );
  return html`<dl class="facts">${rows}</dl>`;
}

export function list(context: PageContext, block: Extract<Block, { type: "list" }>): Html {
  const items = block.items.map((item) => html`<li>${text(context, item)}</li> `);
  return block.ordered
    ? html`<ol class="steps">
        ${items}
      </ol>`
    : html`<ul class="plain">
        ${items}
      </ul>`;
}

/** Sentences that were judged, each joined to its verdict by a leader. */
export function judged(context: PageContext, { items }: JudgedBlock): Html {
  return html`<ul class="judged">
    ${items.map(
      (item) =>
        html`<li>
          <div class="said"><p>${text(context, item.text)}</p></div>
          ${verdict(item.mark)}${because(context, item.because)}
        </li> `,
    )}
  </ul>`;
}

/** Contents; entries of the second level stand under the one before them. */
export function contents(context: PageContext, entries: readonly ContentsEntry[]): Html {
  const parts: { readonly entry: ContentsEntry; readonly under: ContentsEntry[] }[] = [];
  for (const entry of entries.filter(({ paperOnly }) => paperOnly !== true)) {
    const last = parts.at(-1);
    if (entry.level === 2 && last !== undefined) last.under.push(entry);
    else parts.push({ entry, under: [] });
  }
  const many = parts.length > 12;
  return html`<ol class="contents${many && " wide"}">
    ${parts.map(
      ({ entry, under }) =>
        html`<li>
          ${contentsEntry(context, entry)}${
            under.length > 0 &&
            html` <ol>
              ${under.map((one) => html`<li>${contentsEntry(context, one)}</li> `)}
            </ol>`
          }
        </li> `,
    )}
  </ol>`;
}

const contentsEntry = (context: PageContext, { number, title, to }: ContentsEntry): Html =>
  html`<span class="entry"
    ><span class="no">${number}</span> <a href="${context.href(to)}">${unbroken(title)}</a></span
  >`;
