import type { FindingItem } from "../../src/publish/blocks.ts";
import type { PageContext } from "../context.ts";
import { attribute, html, trusted, type Html } from "../html.ts";
import { notes, text } from "../inline.ts";

/** Findings: severity and message, then where, why and what to do, with the basis in the margin. */
export const findings = (context: PageContext, items: readonly FindingItem[]): Html[] =>
  items.map((item) => finding(context, item));

function finding(context: PageContext, item: FindingItem): Html {
  const level = trusted(`h${context.itemLevel()}`);
  return html`<article class="find"${attribute("id", context.anchor(item.anchor))}>
<div><${level} class="message"><span class="sev">${capital(item.severity)}</span> ${text(context, item.message)}</${level}>
${
  item.rows.length > 0 &&
  html`<dl>
    ${item.rows.map(
      (row) =>
        html`<dt>${row.label}</dt>
          <dd>${text(context, row.value)}</dd> `,
    )}
  </dl>`
}</div>
${notes(context, item.notes)}
</article>
`;
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
