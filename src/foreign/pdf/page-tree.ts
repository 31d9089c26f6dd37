import { beyond, damaged } from "../refused.ts";
import type { PdfFile } from "./file.ts";
import { entriesOf, isList, isRef, type Entries, type PdfValue } from "./values.ts";

/** A page with what it inherits from the nodes above it. */
export interface PdfPage {
  readonly entries: Entries;
  /** Number of its object, by which links name it. */
  readonly number: number | undefined;
}

const inherited = ["Resources", "MediaBox", "CropBox", "Rotate"];

/** All pages, in order. No node is entered twice, and the pages are counted while they are found. */
export function pagesOf(file: PdfFile): readonly PdfPage[] {
  const pages: PdfPage[] = [];
  const seen = new Set<number>();
  const { depth } = file.budget.limits;

  const visit = (value: PdfValue, above: Entries, level: number): void => {
    if (level > depth)
      throw beyond(`the file nests its list of pages deeper than ${depth} levels`, `at most ${depth} levels`);
    const own = entriesOf(file.resolve(value));
    if (own === undefined) throw damaged(`its page ${pages.length + 1} is missing`);
    const given = new Map([...own, ...inherited.flatMap((key) => passed(own, above, key))]);
    const kids = file.resolve(own.get("Kids"));
    if (!isList(kids)) {
      file.budget.spend("pages");
      pages.push({ entries: given, number: isRef(value) ? value.number : undefined });
      return;
    }
    if (isRef(value)) {
      if (seen.has(value.number)) throw damaged("its list of pages leads back into itself");
      seen.add(value.number);
    }
    for (const kid of kids) visit(kid, given, level + 1);
  };

  const top = file.root.get("Pages");
  if (entriesOf(file.resolve(top)) !== undefined) visit(top ?? null, new Map(), 0);
  if (pages.length === 0) throw damaged("it has no page");
  return pages;
}

function passed(own: Entries, above: Entries, key: string): readonly (readonly [string, PdfValue])[] {
  const value = own.has(key) ? undefined : above.get(key);
  return value === undefined ? [] : [[key, value]];
}
