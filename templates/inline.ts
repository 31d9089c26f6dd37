import type { Inline, Mark, Note, Text } from "../src/publish/blocks.ts";
import { symbolText } from "../src/publish/html/mathml.ts";
import type { PageContext } from "./context.ts";
import { html, type Hole, type Html } from "./html.ts";

/** Running text. */
export const text = (context: PageContext, parts: Text): Html[] => parts.map((part) => inline(context, part));

// Longer ones must be allowed to break, or a narrow page would scroll sideways.
const longestWhole = 28;

/** An id or number of a paper, such as NDT-RT-014: browsers would break it at its hyphens. */
const id = /[A-Z][A-Z0-9]*(?:-[A-Z0-9]+)+/g;

/** What no column holds may break: a path after its slashes, a hash after every sixteenth sign. */
function breakable(words: string): Hole {
  const parts: Hole[] = [];
  let from = 0;
  for (const { 0: found, index } of words.matchAll(/\b[0-9a-f]{32,}\b|(?<!\S)(?=\S{29})[^\s/]+\/\S*/g)) {
    const pieces = found.split(found.includes("/") ? /(?<=\/)/ : /(?<=^(?:.{16})+)/);
    parts.push(words.slice(from, index), ...pieces.flatMap((one, at) => (at === 0 ? [one] : [html`<wbr />`, one])));
    from = index + found.length;
  }
  return from === 0 ? words : [...parts, words.slice(from)];
}

/** Text with its ids kept whole; one too long for a narrow page may break. */
export function unbroken(words: string, longest = longestWhole): Hole {
  const parts: Hole[] = [];
  let from = 0;
  for (const { 0: found, index } of words.matchAll(id)) {
    if (found.length > longest) continue;
    parts.push(breakable(words.slice(from, index)), html`<span class="nb">${found}</span>`);
    from = index + found.length;
  }
  return from === 0 ? breakable(words) : [...parts, breakable(words.slice(from))];
}

function inline(context: PageContext, part: Inline): Html {
  if (typeof part === "string") return html`${unbroken(part)}`;
  switch (part.type) {
    case "link":
      return html`<a href="${context.href(part.to)}">${unbroken(part.text)}</a>`;
    case "file":
      return html`<a href="${context.file(part.path)}">${unbroken(part.text)}</a>`;
    case "code":
      return html`<code>${part.text}</code>`;
    case "strong":
      return html`<b>${unbroken(part.text)}</b>`;
    case "em":
      return html`<em>${unbroken(part.text)}</em>`;
    case "soft":
      return html`<span class="soft">${unbroken(part.text)}</span>`;
    case "symbol":
      return symbolText(part.display);
    case "whole":
      return part.text.length > longestWhole ? html`${part.text}` : html`<span class="nb">${part.text}</span>`;
  }
}

const classOf: Readonly<Record<Mark, string>> = {
  passed: "passed",
  computed: "kept",
  failed: "failed",
  rejected: "failed",
  "on record": "kept",
  answered: "answered",
  "not judged": "open",
  "not applicable": "na",
  "not due": "due",
};

/** A verdict: its word, with the pencil mark the style sheet draws before it. */
export const verdict = (mark: Mark): Html => html`<span class="v ${classOf[mark]}">${mark}</span>`;

/** Why a verdict is not a pass. */
export const because = (context: PageContext, reason: Text | undefined): Html | false =>
  reason !== undefined && reason.length > 0 && html`<p class="because">${text(context, reason)}</p>`;

/** The margin beside a block; `rows` is how many following rows of the grid it may stand beside. */
export function notes(context: PageContext, list: readonly Note[] | undefined, rows = 1): Html | false {
  if (list === undefined || list.length === 0) return false;
  const span = rows > 1 ? ` rows-${Math.min(rows, 6)}` : "";
  return html`<div class="note${span}">
    ${list.map((note) => html`<p>${note.lead !== undefined && html`<b>${note.lead}</b> `}${text(context, note.text)}</p> `)}
  </div>`;
}
