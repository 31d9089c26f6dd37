import type { CopiedLink } from "../copied.ts";
import type { PdfFile } from "./file.ts";
import { numbersOf } from "./numbers.ts";
import type { PdfPage } from "./page-tree.ts";
import { isList, isName, isRef, isText, nameOf, type Entries, type PdfValue } from "./values.ts";

/** What links within a file may lead to. */
export interface Destinations {
  readonly file: PdfFile;
  /** Place in the file, counted from 1, by the number of a page's object. */
  readonly pages: ReadonlyMap<number, number>;
  readonly count: number;
}

/** The plain links of a page to pages of the same file: area and page, and nothing else of them. */
export function linksOf(to: Destinations, { entries }: PdfPage): readonly CopiedLink[] {
  const { file } = to;
  const annotations = file.resolve(entries.get("Annots"));
  return (isList(annotations) ? annotations : []).flatMap((annotation): CopiedLink[] => {
    const own = file.dict(annotation);
    if (own === undefined || nameOf(file.resolve(own.get("Subtype"))) !== "Link") return [];
    const page = pageOf(to, targetOf(file, own));
    const [a, b, c, d, more] = numbersOf(file, own.get("Rect")) ?? [];
    if (page === undefined || d === undefined || more !== undefined) return [];
    return [{ rect: [a ?? 0, b ?? 0, c ?? 0, d], page }];
  });
}

function targetOf(file: PdfFile, link: Entries): PdfValue {
  const action = file.dict(link.get("A"));
  if (action === undefined) return link.get("Dest") ?? null;
  return nameOf(file.resolve(action.get("S"))) === "GoTo" ? (action.get("D") ?? null) : null;
}

function pageOf(to: Destinations, target: PdfValue): number | undefined {
  const { file } = to;
  let found = file.resolve(target);
  if (isName(found)) found = file.resolve(file.dict(file.root.get("Dests"))?.get(found.name));
  else if (isText(found)) found = named(to, found.bytes.toString("latin1"));
  // A named destination may be a dictionary around the list.
  const list = isList(found) ? found : file.resolve(file.dict(found)?.get("D"));
  const first = isList(list) ? list[0] : undefined;
  if (isRef(first)) return to.pages.get(first.number);
  return typeof first === "number" && first >= 0 && first < to.count ? Math.trunc(first) + 1 : undefined;
}

/** Looks a name up in the tree of names; each node is entered once. */
function named({ file }: Destinations, name: string): PdfValue {
  const seen = new Set<Entries>();
  const waiting = [file.dict(file.dict(file.root.get("Names"))?.get("Dests"))];
  for (let node = waiting.pop(); waiting.length > 0 || node !== undefined; node = waiting.pop()) {
    if (node === undefined || seen.has(node)) continue;
    seen.add(node);
    const limits = file.resolve(node.get("Limits"));
    if (isList(limits)) {
      const [low, high] = limits.map((item) => textOf(file.resolve(item)));
      if ((low !== undefined && name < low) || (high !== undefined && name > high)) continue;
    }
    const pairs = file.resolve(node.get("Names"));
    if (isList(pairs))
      for (let at = 0; at + 1 < pairs.length; at += 2)
        if (textOf(file.resolve(pairs[at])) === name) return file.resolve(pairs[at + 1]);
    const kids = file.resolve(node.get("Kids"));
    if (isList(kids)) for (const kid of kids) waiting.push(file.dict(kid));
  }
  return null;
}

const textOf = (value: PdfValue) => (isText(value) ? value.bytes.toString("latin1") : undefined);
