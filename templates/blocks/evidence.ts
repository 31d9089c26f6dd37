import type { Block } from "../../src/publish/blocks.ts";
import { signatureHeads } from "../../src/publish/signature-heads.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, type Html } from "../html.ts";
import { text } from "../inline.ts";

type Kind<T extends Block["type"]> = Extract<Block, { readonly type: T }>;

/** An original: link to the page meant, path, whole hash, and which person compared it; pictures are shown. */
export function scan(context: PageContext, block: Kind<"scan">): Html {
  const isPaged = /\.pdf$/i.test(block.path);
  const address = context.file(block.page !== undefined && isPaged ? `${block.path}#page=${block.page}` : block.path);
  const which =
    block.page === undefined
      ? block.pages === 0
        ? "pages not stated"
        : `${block.pages} ${block.pages === 1 ? "page" : "pages"}`
      : `page ${block.page} of ${block.pages}`;
  const picture =
    block.absent === undefined &&
    block.hidden !== true &&
    /\.(?:png|jpe?g)$/i.test(block.path) &&
    html`<img src="${address}" alt="Scan of ${block.title}" loading="lazy" /> `;
  return html`<figure class="scan" ${attribute("id", context.anchor(block.anchor))}>
    ${picture}
    <figcaption>
      ${block.absent === undefined ? html`<a href="${address}">${block.title}, ${which}</a>` : `${block.title}, ${which}`}.
      ${block.compared}
      <span class="line"><code>${block.path}</code></span>
      ${[block.absent, block.remark].map((said) => said !== undefined && html`<span class="line"><b>${said}</b></span> `)}
      <span class="line">SHA-256 <code>${block.sha256}</code></span>
    </figcaption>
  </figure>`;
}

export function signatures(block: Kind<"signatures">): Html {
  return html`<section class="scroll wide" tabindex="0" aria-label="Signatures">
    <table class="sign">
      <thead>
        <tr>
          ${signatureHeads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${block.rows.map(
          (row) =>
            html`<tr>
              <th scope="row">${row.for}</th>
              <td>${row.that}</td>
              <td class="nb">${row.date}</td>
              <td class="line">${row.by}</td>
            </tr> `,
        )}
      </tbody>
    </table>
  </section>`;
}

/** The fingerprint in its groups, so that it can be compared by eye with the one on paper. */
export function fingerprint(context: PageContext, block: Kind<"fingerprint">): Html {
  const name = context.ownName();
  return html`<figure class="fingerprint">
    <figcaption id="${name}">${block.label}</figcaption>
    <ul class="groups" aria-labelledby="${name}">
      ${block.groups.map((group) => html`<li>${group}</li>`)}
    </ul>
  </figure>`;
}

export const caution = (context: PageContext, block: Kind<"caution">): Html =>
  html`<div class="caution">${block.text.map((paragraph) => html`<p>${text(context, paragraph)}</p> `)}</div>`;
