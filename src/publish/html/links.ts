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

/** Looks at the links of finished pages while these go by, and says in the end which do not land. */
export interface LinkCheck {
  /** Takes a page: the names of its elements and where its links lead; of the markup itself nothing is kept. */
  add(url: string, markup: string): void;
  /**
   * Links that do not land, page by page: on a page that is not there, on a name no element has, outside the issue. Files of
   * the issue that are not pages are checked if all of them are known; the site's own always are.
   */
  dead(files: ReadonlySet<string>, allFilesKnown: boolean): readonly string[];
  /** Refuses, with a `ProgramError`, a site with a link that does not land. */
  refuse(files: ReadonlySet<string>, allFilesKnown: boolean): void;
}

/** Begins to check the links of a site. It reads the markup itself, so nothing a template writes can escape it. */
export function newLinkCheck(): LinkCheck {
  const names = new Map<string, ReadonlySet<string>>();
  /** By page, the addresses that did not land on what had gone by. */
  const open = new Map<string, readonly string[]>();
  const keep = detached();
  const lands = (from: string, address: string, elsewhere: (path: string) => boolean): boolean => {
    const reached = resolve(from, address);
    if (reached === null) return false;
    const anchors = names.get(reached.path);
    return anchors === undefined ? elsewhere(reached.path) : reached.fragment === "" || anchors.has(reached.fragment);
  };
  const dead: LinkCheck["dead"] = (files, allFilesKnown) => {
    const elsewhere = (path: string) => files.has(path) || (!allFilesKnown && !path.endsWith(".html"));
    return [...open].flatMap(([url, addresses]) =>
      addresses.filter((one) => !lands(url, one, elsewhere)).map((one) => `${url} links to ${one}`),
    );
  };
  return {
    add(url, markup) {
      const [ids, addresses] = [new Set<string>(), new Set<string>()];
      for (const [, name, address] of markup.matchAll(/\s(?:id="([^"]*)"|(?:href|src)="([^"]*)")/g))
        if (name !== undefined) ids.add(keep(unescape(name)));
        else if (address !== undefined) addresses.add(address);
      names.set(url, ids);
      const unseen = [...addresses].map(unescape).filter((address) => !lands(url, address, () => false));
      if (unseen.length > 0) open.set(url, unseen.map(keep));
    },
    dead,
    refuse(files, allFilesKnown) {
      const found = dead(files, allFilesKnown);
      if (found.length === 0) return;
      const more = found.length > 20 ? [`and ${found.length - 20} more`] : [];
      throw new ProgramError([`${found.length} links do not land:`, ...found.slice(0, 20), ...more].join("\n  "));
    },
  };
}

/**
 * Gives a copy of a text on its own, the same one for equal texts: what a pattern finds is a window into its page and would
 * keep the whole of it in memory.
 */
function detached(): (text: string) => string {
  const known = new Map<string, string>();
  return (text) => {
    let own = known.get(text);
    if (own === undefined) known.set((own = Buffer.from(text).toString()), own);
    return own;
  };
}

const unescape = (text: string) =>
  text.includes("&")
    ? text
        .replaceAll("&lt;", "<")
        .replaceAll("&gt;", ">")
        .replaceAll("&quot;", '"')
        .replaceAll("&#39;", "'")
        .replaceAll("&amp;", "&")
    : text;
