import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";
import { PDFHexString, PDFStreamWriter, type PDFContext, type PDFRef } from "pdf-lib";
import { ProgramError } from "../../model/program-error.ts";
import type { Publication } from "../publication.ts";
import { bookmarksOf, writeBookmarks } from "./bookmarks.ts";
import { newCanvas, type LateDrawing, type LinkArea, type LinkTo } from "./canvas.ts";
import { writeDestinations, type Destination } from "./destinations.ts";
import { embedFonts } from "./embed-fonts.ts";
import type { Place } from "./flow.ts";
import type { Fonts } from "./fonts.ts";
import { drawFrame } from "./frame.ts";
import type { SheetShape } from "./measures.ts";
import { catalogText, writeInformation, writeXmp } from "./metadata.ts";
import { byteText, literal, packed, packedStream, refText, source } from "./objects.ts";
import { copyName } from "./originals.ts";

/** A sheet whose own content is packed already; its frame and page numbers are still to come. */
export interface Leaf {
  readonly shape: SheetShape;
  readonly content: Uint8Array;
  readonly links: readonly LinkArea[];
  readonly lateDrawings: readonly LateDrawing[];
  readonly foot: string;
  readonly copy?: PDFRef;
}

/** Writes all leaves with their frames, links, destinations and bookmarks; answers with the bytes of the book. */
export async function assemble(
  context: PDFContext,
  fonts: Fonts,
  book: Publication,
  leaves: readonly Leaf[],
  places: ReadonlyMap<string, Place>,
): Promise<Uint8Array> {
  checkLinks(leaves, places);
  const refs = leaves.map(() => context.nextRef());
  const fontsRef = context.nextRef();
  const tree = pageTree(context, refs);
  leaves.forEach((leaf, index) => {
    const ref = refs[index];
    const parent = tree.parents[index];
    if (ref === undefined || parent === undefined) return;
    const contents = [frameOf(fonts, book, leaf, index + 1, leaves.length, places), leaf.content];
    const streams = contents.map((bytes) => refText(packedStream(context, bytes))).join(" ");
    const drawn = leaf.copy === undefined ? "" : `/XObject<</${copyName} ${refText(leaf.copy)}>>`;
    const { width, height } = leaf.shape;
    context.assign(
      ref,
      source(
        `<</Type/Page/Parent ${refText(parent)}/MediaBox[0 0 ${width} ${height}]/Contents[${streams}]` +
          `/Resources<</Font ${refText(fontsRef)}${drawn}>>${annotations(leaf, places)}>>`,
      ),
    );
  });
  // Only now is every glyph known.
  context.assign(fontsRef, source(embedFonts(context, fonts)));
  const destinations = writeDestinations(context, destinationsOf(leaves, refs, places));
  const outlines = writeBookmarks(context, bookmarksOf(book));
  const catalog = catalogText(book, { pages: tree.root, outlines, destinations, xmp: writeXmp(context, book) });
  context.trailerInfo.Info = writeInformation(context, book);
  context.trailerInfo.Root = context.register(source(catalog));
  return write(context);
}

const kidsPerNode = 64;

function pageTree(context: PDFContext, pages: readonly PDFRef[]) {
  const root = context.nextRef();
  const nodes: PDFRef[] = [];
  const parents: PDFRef[] = [];
  for (let at = 0; at < pages.length; at += kidsPerNode) {
    const kids = pages.slice(at, at + kidsPerNode);
    const text = `<</Type/Pages/Parent ${refText(root)}/Count ${kids.length}/Kids[${kids.map(refText).join(" ")}]>>`;
    const node = context.register(source(text));
    nodes.push(node);
    parents.push(...kids.map(() => node));
  }
  context.assign(root, source(`<</Type/Pages/Count ${pages.length}/Kids[${nodes.map(refText).join(" ")}]>>`));
  return { root, parents };
}

function frameOf(
  fonts: Fonts,
  book: Publication,
  leaf: Leaf,
  page: number,
  pages: number,
  places: ReadonlyMap<string, Place>,
): Uint8Array {
  const canvas = newCanvas(fonts, leaf.shape);
  drawFrame(canvas, fonts, book, leaf.foot, page, pages);
  const pageOf = (dest: string) => {
    const place = places.get(dest);
    return place === undefined ? undefined : place.sheet + 1;
  };
  for (const draw of leaf.lateDrawings) draw(canvas, pageOf);
  return packed(Buffer.from(canvas.content(), "latin1"));
}

/** A link to a file leads to its copy in the book where there is one. */
function landingOf(to: LinkTo, places: ReadonlyMap<string, Place>): string | undefined {
  if ("dest" in to) return to.dest;
  const [path = "", fragment = ""] = to.file.split("#");
  const copy = `${path}#${fragment.startsWith("page=") ? fragment : "page=1"}`;
  return places.has(copy) ? copy : undefined;
}

function annotations(leaf: Leaf, places: ReadonlyMap<string, Place>): string {
  if (leaf.links.length === 0) return "";
  const fixed = (value: number) => String(Math.round(value * 10) / 10);
  const areas = leaf.links.map(({ x, y, width, height, to }) => {
    const top = leaf.shape.height - y;
    const rect = [x, top - height, x + width, top].map(fixed).join(" ");
    const dest = landingOf(to, places);
    const action =
      dest === undefined && "file" in to
        ? `/A<</S/URI/URI ${literal(addressOf(to.file))}>>`
        : `/Dest ${literal(dest ?? "")}`;
    return `<</Type/Annot/Subtype/Link/Rect[${rect}]/Border[0 0 0]/F 4${action}>>`;
  });
  return `/Annots[${areas.join("")}]`;
}

/** Relative address of a file beside the book. */
function addressOf(path: string): string {
  const [file = "", fragment] = path.split("#");
  const address = file.split("/").map(encodeURIComponent).join("/");
  return byteText(
    fragment === undefined ? address : `${address}#${encodeURIComponent(fragment).replaceAll("%3D", "=")}`,
  );
}

function destinationsOf(leaves: readonly Leaf[], refs: readonly PDFRef[], places: ReadonlyMap<string, Place>) {
  const destinations = new Map<string, Destination>();
  for (const [name, { sheet, y }] of places) {
    const page = refs[sheet];
    const shape = leaves[sheet]?.shape;
    if (page !== undefined && shape !== undefined)
      destinations.set(name, { page, top: shape.height - Math.max(0, y - 8) });
  }
  return destinations;
}

function checkLinks(leaves: readonly Leaf[], places: ReadonlyMap<string, Place>): void {
  const lost = new Set<string>();
  for (const { links } of leaves)
    for (const { to } of links) if ("dest" in to && !places.has(to.dest)) lost.add(to.dest);
  if (lost.size > 0) throw new ProgramError(`links of the PDF lead nowhere: ${[...lost].slice(0, 20).join(", ")}`);
}

/** Serializes with an identifier of the document made from its own bytes. */
async function write(context: PDFContext): Promise<Uint8Array> {
  const holder = "0".repeat(32);
  const id = PDFHexString.of(holder);
  context.trailerInfo.ID = context.obj([id, id]);
  const bytes = await PDFStreamWriter.forContext(context, Infinity, true, 200).serializeToBuffer();
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const hash = createHash("sha256").update(file).digest("hex").slice(0, 32).toUpperCase();
  let at = file.lastIndexOf("/ID");
  for (let written = 0; written < 2; written++) {
    at = file.indexOf(holder, at);
    file.write(hash, at, "latin1");
  }
  return bytes;
}
