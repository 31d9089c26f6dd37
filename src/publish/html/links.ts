import { Buffer } from "node:buffer";
import { ProgramError } from "../../model/program-error.ts";
import type { Target } from "../blocks.ts";

/** Address of a place in the book as seen from one of its pages; always names the file, since a folder shows a listing. */
export function relativeLink(from: string, { page, anchor }: Target): string {
  const fragment = anchor === undefined ? "" : `#${encodeURIComponent(anchor)}`;
  return page === from && fragment !== "" ? fragment : relativePath(from, page) + fragment;
}

/** Address of a file of the issue as seen from a page; a `#page=3` at the end is kept for the viewer. */
export function relativePath(from: string, path: string): string {
  const [file = "", ...fragment] = path.split("#");
  const here = from.split("/").slice(0, -1);
  const there = file.split("/");
  let same = 0;
  while (same < here.length && same < there.length - 1 && here[same] === there[same]) same++;
  const steps = [...here.slice(same).map(() => ".."), ...there.slice(same).map(encodeURIComponent)];
  // A first step with a colon would be read as a protocol; `encodeURIComponent` has written it as %3A.
  return [steps.join("/"), ...fragment].join("#");
}

/** The path in the issue that an address on a page leads to, and its fragment; null when it leaves the issue. */
function resolve(from: string, address: string): { readonly path: string; readonly fragment: string } | null {
  if (/^[a-z][a-z0-9+.-]*:|^\//i.test(address)) return null;
  const [way = "", fragment = ""] = address.split("#");
  if (way === "") return { path: from, fragment: decodeURIComponent(fragment) };
  const steps = from.split("/").slice(0, -1);
  for (const step of way.split("/")) {
    if (step === "..") {
      if (steps.pop() === undefined) return null;
    } else steps.push(decodeURIComponent(step));
  }
  return { path: steps.join("/"), fragment: decodeURIComponent(fragment) };
}

/**
 * Links of the finished pages that do not land: on a page that is not there, on a name no element has, outside the issue.
 * Reads the markup itself, so nothing a template writes can escape it. Files of the issue that are not pages are checked
 * if they are known; the site's own always are.
 */
export function deadLinks(
  pages: ReadonlyMap<string, Buffer | string>,
  files: ReadonlySet<string>,
  allFilesKnown: boolean,
): string[] {
  const names = new Map<string, ReadonlySet<string>>();
  for (const [url, markup] of pages)
    names.set(
      url,
      new Set(Array.from(String(markup).matchAll(/\sid="([^"]*)"/g), ([, name = ""]) => detached(unescape(name)))),
    );
  const dead = new Set<string>();
  for (const [url, markup] of pages)
    for (const [, escaped = ""] of String(markup).matchAll(/\s(?:href|src)="([^"]*)"/g)) {
      const address = unescape(escaped);
      const reached = resolve(url, address);
      if (reached === null || !lands(reached)) dead.add(`${url} links to ${address}`);
    }
  return [...dead];

  function lands({ path, fragment }: { readonly path: string; readonly fragment: string }): boolean {
    const anchors = names.get(path);
    if (anchors !== undefined) return fragment === "" || anchors.has(fragment);
    return files.has(path) || (!allFilesKnown && !path.endsWith(".html"));
  }
}

/** Refuses a site with a link that does not land. */
export function checkLinks(
  pages: ReadonlyMap<string, Buffer | string>,
  files: ReadonlySet<string>,
  allFilesKnown: boolean,
): void {
  const dead = deadLinks(pages, files, allFilesKnown);
  if (dead.length === 0) return;
  const more = dead.length > 20 ? [`and ${dead.length - 20} more`] : [];
  throw new ProgramError([`${dead.length} links do not land:`, ...dead.slice(0, 20), ...more].join("\n  "));
}

/** A copy on its own: what a pattern finds is a window into its page and would keep the whole of it in memory. */
const detached = (text: string) => Buffer.from(text).toString();

const unescape = (text: string) =>
  text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
