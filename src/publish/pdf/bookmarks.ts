import type { PDFContext, PDFRef } from "pdf-lib";
import type { Appendix, Page, Publication } from "../publication.ts";
import { literal, refText, source, textString } from "./objects.ts";
import { copyDest } from "./scans.ts";

/** One line of the reader's table of contents. */
export interface Bookmark {
  readonly title: string;
  readonly dest: string;
  readonly children: readonly Bookmark[];
}

/** Destinations that belong to no page of the publication. */
export const coverDest = "cover";
export const originalsDest = "originals";

/** Title page, front matter, sections with their pages, originals. */
export function bookmarksOf(book: Publication): readonly Bookmark[] {
  const printed = book.pages.filter((page) => page.screenOnly !== true);
  const front = printed.filter((page) => page.section === null).map(pageMark);
  const sections = book.sections.flatMap((section, index) => {
    const own = printed.filter((page) => page.section === index);
    const [first] = own;
    if (first === undefined) return [];
    const children = own.filter((page) => page.url !== section.opening).map(pageMark);
    const dest = own.some((page) => page.url === section.opening) ? section.opening : first.url;
    return [{ title: `${section.number} ${section.title}`, dest, children }];
  });
  const originals = book.originals.map(originalMark);
  return [
    { title: "Title page", dest: coverDest, children: [] },
    ...front,
    ...sections,
    ...(originals.length === 0 ? [] : [{ title: "Originals", dest: originalsDest, children: originals }]),
  ];
}

const pageMark = (page: Page): Bookmark => ({
  title: page.number === undefined ? page.title : `${page.number} ${page.title}`,
  dest: page.url,
  children: [],
});

const originalMark = (original: Appendix): Bookmark => ({
  title: `${original.id} ${original.title}`,
  dest: copyDest(original.path),
  children: [],
});

/** Writes the outline; sections are closed when the book is opened. */
export function writeBookmarks(context: PDFContext, marks: readonly Bookmark[]): PDFRef {
  const root = context.nextRef();
  const { first, last } = writeLevel(context, root, marks);
  context.assign(
    root,
    source(`<</Type/Outlines/First ${refText(first)}/Last ${refText(last)}/Count ${marks.length}>>`),
  );
  return root;
}

function writeLevel(context: PDFContext, parent: PDFRef, marks: readonly Bookmark[]) {
  const refs = marks.map(() => context.nextRef());
  marks.forEach((mark, index) => {
    const own = refs[index] ?? parent;
    const link = (key: string, ref: PDFRef | undefined) => (ref === undefined ? "" : `/${key} ${refText(ref)}`);
    const inner = mark.children.length === 0 ? undefined : writeLevel(context, own, mark.children);
    const nested =
      inner === undefined
        ? ""
        : `${link("First", inner.first)}${link("Last", inner.last)}/Count ${-mark.children.length}`;
    context.assign(
      own,
      source(
        `<</Title ${textString(mark.title)}/Parent ${refText(parent)}/Dest ${literal(mark.dest)}` +
          `${link("Prev", refs[index - 1])}${link("Next", refs[index + 1])}${nested}>>`,
      ),
    );
  });
  return { first: refs[0] ?? parent, last: refs.at(-1) ?? parent };
}
