import MarkdownIt from "markdown-it";
import { spellControlsInLines } from "../../src/model/spelled.ts";
import { boundedRemark, boundedTables } from "../../src/publish/remarks.ts";
import { html, trusted, type Html } from "../html.ts";

/**
 * Reads free text of a record. It is never trusted: no markup passes, no picture is loaded, and no link leads out of the
 * book or to an address that was never checked; those are printed as written.
 */
const reader = new MarkdownIt({ html: false, linkify: false, typographer: false }).disable([
  "image",
  "link",
  "autolink",
  "reference",
  "html_block",
  "html_inline",
]);

const { rules } = reader.renderer;
// Headings belong to the book; one inside a remark is set as a strong line.
rules["heading_open"] = () => '<p class="say">';
rules["heading_close"] = () => "</p>\n";
rules["hr"] = () => "";
rules["table_open"] = () => '<section class="scroll" tabindex="0" aria-label="Table of the remark">\n<table>\n';
rules["table_close"] = () => "</table>\n</section>\n";
// The reader's own cells carry inline styles for their alignment, which the content policy refuses.
rules["th_open"] = () => '<th scope="col">';
rules["td_open"] = () => "<td>";

/** A record's free text as markup. */
export const prose = (markdown: string): Html =>
  html`<div class="prose">${trusted(printed(spellControlsInLines(boundedRemark(markdown))))}</div>`;

function printed(markdown: string): string {
  const tokens = boundedTables(reader.parse(markdown, {}), (sentence) => reader.parse(`*${sentence}*`, {}));
  return reader.renderer.render(tokens, reader.options, {});
}
