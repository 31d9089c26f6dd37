import type { Page, Publication } from "../src/publish/publication.ts";
import { html, type Html } from "./html.ts";
import { unbroken } from "./inline.ts";

/**
 * The page to find things on: a box that needs a script, and below it every page of the book as a plain list, for readers
 * without scripts and for the browser's own search.
 */
export function findBody({ sections, pages }: Publication, path: (path: string) => string): Html {
  const ofSection = (index: number | null) => pages.filter((page) => page.section === index);
  return html`<div class="opening">
      <h1>Find</h1>
      <p class="under">
        Ids, marks, tags, serials, numbers of certificates, heats, seals and films, titles and findings of this book.
      </p>
    </div>
    <div id="find-box" class="find-box" hidden>
      <label for="find-words">Words to look for</label>
      <input id="find-words" type="search" autocomplete="off" spellcheck="false" data-index="find-index.js" />
      <p id="find-count" role="status"></p>
      <ol id="find-results" class="results"></ol>
    </div>
    <noscript
      ><p>
        The search box needs scripts, which are switched off here. The
        <a href="#all-pages">list of all records</a> below names every page.
      </p></noscript
    >
    <h2 id="all-pages" class="level-2"><span class="t">All pages</span></h2>
    ${pageList(ofSection(null), path)}
    ${sections.map((section, index) => {
      const list = ofSection(index);
      return (
        list.length > 0 &&
        html`<h3 class="level-3"><span class="no">${section.number}</span> <span class="t">${section.title}</span></h3>
          ${pageList(list, path)} `
      );
    })}`;
}

function pageList(pages: readonly Page[], path: (path: string) => string): Html {
  return html`<ul class="plain pages">
    ${pages.map(
      (page) =>
        html`<li>
          <span class="no">${page.number ?? ""}</span>
          <span class="what"
            ><a href="${path(page.url)}">${unbroken(page.title)}</a
            >${page.kindLine !== undefined && html` <span class="soft">${unbroken(page.kindLine)}</span>`}</span
          >
        </li> `,
    )}
  </ul>`;
}
