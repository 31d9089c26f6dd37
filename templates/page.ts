import type { Block } from "../src/publish/blocks.ts";
import type { Page } from "../src/publish/publication.ts";
import { blocks } from "./blocks/index.ts";
import type { PageContext } from "./context.ts";
import { html, type Html } from "./html.ts";
import { text, unbroken } from "./inline.ts";

/** Opening lines of a page and its blocks. */
export function pageBody(context: PageContext, page: Omit<Page, "blocks">, list: readonly Block[]): Html {
  return html`${opening(context, page)} ${blocks(context, list)}`;
}

// What a title in its size still holds on the narrowest page.
const longestInTitle = 15;

function opening(context: PageContext, page: Omit<Page, "blocks">): Html {
  const { number, kindLine, title, under } = page;
  const kind = page.url === "index.html" ? " title" : page.opening === true ? " section" : "";
  return html`<div class="opening${kind}">
    ${number !== undefined && number !== "" && html`<p class="no" aria-hidden="true">${number}</p> `}${kindLine !== undefined && html`<p class="kindline">${unbroken(kindLine)}</p> `}
    <h1>${unbroken(title, longestInTitle)}</h1>
    ${under !== undefined && html`<p class="under">${text(context, under)}</p> `}
  </div>`;
}
