import { Buffer } from "node:buffer";
import { PDFContext } from "pdf-lib";
import { openDesk } from "../../foreign/desk.ts";
import { stepsOf, type Progress } from "../progress.ts";
import type { Page, Publication } from "../publication.ts";
import { assemble, type Leaf } from "./assemble.ts";
import { destOf } from "./atoms.ts";
import { coverDest, originalsDest } from "./bookmarks.ts";
import { coverPieces } from "./cover.ts";
import { newFlow, type Flow, type Piece, type Place, type Sheet } from "./flow.ts";
import { openFonts } from "./fonts.ts";
import { titlePieces } from "./headings.ts";
import { layOut } from "./lay-out.ts";
import { packed } from "./objects.ts";
import { originalSheets } from "./originals.ts";
import type { PageSetter } from "./paragraphs.ts";
import { copyDest } from "./scans.ts";

/** What a caller may leave out of the book. */
export interface PdfOptions {
  /** Whether the pages of the originals are appended; they are unless this says no. */
  readonly appendOriginals?: boolean;
  readonly progress?: Progress;
}

/**
 * The book as PDF: title page, all pages of the publication with contents, bookmarks and links, then copies of the
 * originals. `originals` answers with the bytes of a path. The same publication and originals give the same bytes.
 * Throws ProgramError when a link of the publication leads nowhere.
 */
export async function bookPdf(
  publication: Publication,
  originals: (path: string) => Uint8Array,
  { appendOriginals = true, progress }: PdfOptions = {},
): Promise<Uint8Array> {
  const book = appendOriginals ? publication : { ...publication, originals: [] };
  const fonts = openFonts();
  const leaves: Leaf[] = [];
  const keep = (sheet: Sheet) => void leaves.push(leafOf(sheet));
  const flow = newFlow(fonts, keep);
  const copied = new Set(book.originals.map(({ path }) => path));
  const setter: PageSetter = {
    fonts,
    known: knownIn(book),
    copied: (path) => copied.has(path),
    destOf: (anchor) => anchor,
  };
  flow.begin(coverDest, "");
  flow.add(coverPieces(setter, book));
  const printed = book.pages.filter((page) => page.screenOnly !== true);
  const stepped = stepsOf("parts of the PDF", printed.length, progress);
  for (const page of printed) {
    stepped();
    addPage(flow, setter, book, page);
  }
  if (book.originals.length > 0) addOriginalsList(flow, setter, book);
  flow.end();
  const places = new Map<string, Place>(flow.places);
  for (const { url, printedAt } of book.pages) {
    const place = printedAt === undefined ? undefined : places.get(destOf(printedAt));
    if (place !== undefined) places.set(url, place);
  }
  const context = PDFContext.create();
  const desk = openDesk();
  try {
    const copying = stepsOf("originals in the PDF", book.originals.length, progress);
    for (const original of book.originals) {
      copying();
      const sheets = await originalSheets(context, setter, original, desk, () => originals(original.path));
      const start = leaves.length;
      for (const sheet of sheets)
        leaves.push({ ...leafOf(sheet), ...(sheet.copy !== undefined && { copy: sheet.copy }) });
      // A page the record promises and the file lacks is answered by the last one there is.
      for (let page = 1; page <= Math.max(original.pages, sheets.length); page++)
        places.set(copyDest(original.path, page), { sheet: start + Math.min(page, sheets.length) - 1, y: 0 });
    }
  } finally {
    await desk.close();
  }
  return assemble(context, fonts, book, leaves, places);
}

/**
 * A link to a page that is only on screen leads to where that is summed up, or is plain text here, as is one to a place on it;
 * one to a page that is nowhere is named in the end.
 */
function knownIn(book: Publication): (dest: string) => boolean {
  const onScreen = new Map(book.pages.filter((page) => page.screenOnly === true).map((page) => [page.url, page]));
  return (dest) => {
    const page = onScreen.get(dest.split("#")[0] ?? dest);
    return page === undefined || (page.printedAt !== undefined && page.url === dest);
  };
}

function leafOf({ canvas, foot }: Sheet): Leaf {
  const { shape, links, lateDrawings } = canvas;
  return { shape, content: packed(Buffer.from(canvas.content(), "latin1")), links, lateDrawings, foot };
}

function addPage(flow: Flow, setter: PageSetter, book: Publication, page: Page): void {
  const section = page.section === null ? undefined : book.sections[page.section];
  flow.begin(page.url, section === undefined ? "" : `${section.number} ${section.title}`, page.opening !== true);
  const own: PageSetter = { ...setter, destOf: (anchor) => destOf({ page: page.url, anchor }) };
  flow.add(pagePieces(own, page));
}

function* pagePieces(setter: PageSetter, page: Page): Generator<Piece> {
  yield* titlePieces(setter, page);
  yield* layOut(setter, page.blocks);
}

function addOriginalsList(flow: Flow, setter: PageSetter, book: Publication): void {
  flow.begin(originalsDest, "Originals");
  const entries = book.originals.map(({ id, title, path }, index) => ({
    number: String(index + 1),
    title: `${title} (${id})`,
    to: { page: path, anchor: "page=1" },
    level: 2 as const,
  }));
  const page: Page = {
    url: originalsDest,
    title: "Originals",
    under: [
      "Copies of the originals, for reading. The files themselves lie unchanged beside the book, with their hashes.",
    ],
    section: null,
    blocks: [{ type: "contents", entries }],
  };
  flow.add(pagePieces(setter, page));
}
