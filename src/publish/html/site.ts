import { Buffer } from "node:buffer";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Eleventy from "@11ty/eleventy";
import { ProgramError } from "../../model/program-error.ts";

/** A page of the site: where it lies, and how its text is made. */
export interface SitePage {
  /** Path from the root of the issue, such as `joint/r-L1.html`. */
  readonly url: string;
  render(): string;
}

// Eleventy does not refuse a permalink that climbs out of its folder.
const safePath = /^(?:[A-Za-z0-9][A-Za-z0-9._-]*\/)*[A-Za-z0-9][A-Za-z0-9._-]*\.html$/;

/** So many pages are rendered at once: Eleventy keeps the text of each until the last of them is done. */
const batch = 250;

/**
 * Renders pages through Eleventy and gives each with its text, in their order, as soon as its batch is done; writes nothing.
 * The only module that knows Eleventy: one virtual template, paginated over the pages, so that no record ever meets a template
 * language. Refuses, with a `ProgramError`, paths that are not portable or come twice before any page is made.
 */
export async function* renderSite(pages: readonly SitePage[]): AsyncGenerator<readonly [url: string, text: string]> {
  checkPaths(pages);
  for (let at = 0; at < pages.length; at += batch) yield* await renderBatch(pages.slice(at, at + batch));
}

async function renderBatch(pages: readonly SitePage[]): Promise<readonly (readonly [string, string])[]> {
  const input = await mkdtemp(join(tmpdir(), "databook-site-"));
  try {
    const eleventy = new Eleventy(input, join(input, "_site"), {
      quietMode: true,
      configPath: null,
      config(settings) {
        settings.addGlobalData("pages", () => pages);
        settings.addTemplate("page.11ty.js", {
          data: () => ({
            // With a size of one Eleventy hands over the item itself.
            pagination: { data: "pages", size: 1, alias: "item", addAllPagesToCollections: false },
            permalink: ({ item }: { readonly item: SitePage }) => item.url,
            eleventyExcludeFromCollections: true,
          }),
          render: ({ item }: { readonly item: SitePage }) => inOnePiece(item.render()),
        });
      },
    });
    eleventy.disableLogger();
    await eleventy.init();
    const rendered = new Map((await eleventy.toJSON()).map(({ url, content }) => [url.replace(/^\//, ""), content]));
    return pages.map(({ url }) => [url, textOf(rendered, url)]);
  } catch (error) {
    throw originalOf(error);
  } finally {
    await rm(input, { recursive: true, force: true });
  }
}

/** A text put together of thousands of pieces keeps all of them until it is read; here it waits for its batch. */
const inOnePiece = (text: string) => Buffer.from(text).toString();

function checkPaths(pages: readonly SitePage[]): void {
  const seen = new Set<string>();
  for (const { url } of pages) {
    if (!safePath.test(url)) throw new ProgramError(`page path is "${url}"; expected portable names that end in .html`);
    if (seen.has(url)) throw new ProgramError(`two pages have the path ${url}`);
    seen.add(url);
  }
}

function textOf(rendered: ReadonlyMap<string, string>, url: string): string {
  const short = url.endsWith("index.html") ? url.slice(0, -"index.html".length) : url;
  const text = rendered.get(short) ?? rendered.get(url);
  if (text === undefined) throw new ProgramError(`page ${url} was not rendered`);
  return text;
}

/** Eleventy wraps what a template threw; the cause has the stack that helps. */
function originalOf(error: unknown): unknown {
  return error instanceof Error && "originalError" in error && error.originalError instanceof Error
    ? originalOf(error.originalError)
    : error;
}
