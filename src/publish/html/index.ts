import { ProgramError } from "../../model/program-error.ts";
import { findBody } from "../../../templates/find-page.ts";
import { frame, type Place } from "../../../templates/frame.ts";
import { pageBody } from "../../../templates/page.ts";
import { printStyles } from "../../../templates/print-styles.ts";
import { stepsOf, type Progress } from "../progress.ts";
import type { Page, Publication } from "../publication.ts";
import { newFindIndex, type FindIndex } from "./find-index.ts";
import { fontFiles } from "./fonts.ts";
import { newLinkCheck, relativePath } from "./links.ts";
import { pageContext } from "./page-context.ts";
import { renderSite, type SitePage } from "./site.ts";
import { findScript, styles } from "./styles.ts";

/**
 * Every file of the site with its path in the issue, each given as soon as it is made: styles, fonts, pages, the find page and
 * its index. All links are relative and were checked when the last file was given, else it throws a `ProgramError`; `beside`
 * names the other files of the issue, so that links to them are checked too (without it, those are taken to be there).
 */
export async function* siteFiles(
  publication: Publication,
  beside?: Iterable<string>,
  progress?: Progress,
): AsyncGenerator<readonly [path: string, content: Uint8Array | string]> {
  const fixed = fixedFiles(publication);
  yield* fixed;
  const found = newFindIndex(publication.pages);
  const links = newLinkCheck();
  const made = [...sitePages(publication, found), findPage(publication)];
  if (!made.some(({ url }) => url === "index.html"))
    throw new ProgramError("the publication has no front page, index.html");
  const step = stepsOf("pages of the site", made.length, progress);
  const pages = renderSite(
    made.map((page) => ({
      url: page.url,
      render() {
        step();
        return page.render();
      },
    })),
  );
  for await (const page of pages) {
    links.add(...page);
    yield page;
  }
  yield ["find-index.js", found.script()];
  links.refuse(new Set([...fixed.keys(), "find-index.js", "book.pdf", ...(beside ?? [])]), beside !== undefined);
}

const fixedFiles = (publication: Publication): Map<string, Uint8Array | string> =>
  new Map<string, Uint8Array | string>([
    ...fontFiles(),
    ["styles.css", styles()],
    ["print.css", printStyles(publication)],
    ["find.js", findScript()],
  ]);

/**
 * The site by path, each page made when it is asked for and without the policy that pages of an issue carry: whoever serves
 * them says it in a header. Undefined for a path that the site does not have.
 */
export function siteOnDemand(publication: Publication): (path: string) => Uint8Array | string | undefined {
  const files = fixedFiles(publication);
  const unread: FindIndex = { add: () => undefined, script: () => "" };
  const pages = new Map(
    [...sitePages(publication, unread, true), findPage(publication, true)].map((page) => [page.url, page]),
  );
  return (path) =>
    path === "find-index.js" ? wholeIndex(publication) : (files.get(path) ?? pages.get(path)?.render());
}

function wholeIndex({ pages }: Publication): string {
  const found = newFindIndex(pages);
  for (const [at, { blocks }] of pages.entries()) found.add(at, blocks);
  return found.script();
}

function sitePages(publication: Publication, found: FindIndex, served = false): SitePage[] {
  // Neighbours are those of the printed order; pages that only serve the screen stand outside of it.
  const order = publication.pages.filter(({ screenOnly }) => screenOnly !== true);
  const position = new Map(order.map((page, index) => [page, index]));
  const findings = publication.pages.some(({ url }) => url === "findings.html");
  return publication.pages.map((page, index) => {
    const at = position.get(page);
    const place: Place = {
      path: (path) => relativePath(page.url, path),
      section: page.section === null ? undefined : publication.sections[page.section],
      before: at === undefined ? undefined : order[at - 1],
      next: at === undefined ? undefined : order[at + 1],
      findings,
    };
    return {
      url: page.url,
      render() {
        const { blocks } = page;
        found.add(index, blocks);
        return frame(publication, { page, place, body: pageBody(pageContext(page.url), page, blocks), served });
      },
    };
  });
}

function findPage(publication: Publication, served = false): SitePage {
  const page: Pick<Page, "url" | "title"> = { url: "find.html", title: "Find" };
  const path = (to: string) => relativePath(page.url, to);
  const place: Place = { path, section: undefined, before: undefined, next: undefined, findings: false };
  return {
    url: page.url,
    render: () => frame(publication, { page, place, body: findBody(publication, path), scripts: ["find.js"], served }),
  };
}
