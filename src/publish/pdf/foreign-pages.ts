import { Buffer } from "node:buffer";
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFObjectCopier,
  PDFRawStream,
  type PDFContext,
  type PDFPage,
  type PDFRef,
} from "pdf-lib";
import { appearanceOf } from "./appearances.ts";
import { packed } from "./objects.ts";

/** A page or picture ready to be drawn: a form or image of the book, its size, and how its corner is reached. */
export interface Copy {
  readonly ref: PDFRef;
  /** Shown size in points, after any turn. */
  readonly width: number;
  readonly height: number;
  /** Matrix that draws it at a scale with its lower left corner at a point. */
  matrix(scale: number, x: number, y: number): readonly number[];
}

/** Most bytes a page's content may unpack to. */
const mostContent = 64 * 1024 * 1024;

/**
 * The pages of a PDF as forms: content and resources only, so nothing that acts, asks or runs comes along. Visible
 * annotations (stamps, filled fields, signatures) are drawn as they look.
 */
export async function copyPdfPages(context: PDFContext, bytes: Uint8Array): Promise<readonly Copy[]> {
  const document = await PDFDocument.load(bytes, {
    updateMetadata: false,
    throwOnInvalidObject: true,
    parseSpeed: Infinity,
  });
  const copier = PDFObjectCopier.for(document.context, context);
  return document.getPages().map((page) => copyPage(context, copier, page));
}

function copyPage(context: PDFContext, copier: PDFObjectCopier, page: PDFPage): Copy {
  const box = shownBox(page);
  const turn = (((Math.round(page.getRotation().angle / 90) * 90) % 360) + 360) % 360;
  const content = contentOf(page);
  const resources = page.node.Resources();
  const form = context.obj({ Type: "XObject", Subtype: "Form", BBox: [box.x0, box.y0, box.x1, box.y1] });
  form.set(PDFName.of("Resources"), resources === undefined ? context.obj({}) : copier.copy(resources));
  const group = page.node.get(PDFName.of("Group"));
  if (group !== undefined) form.set(PDFName.of("Group"), copier.copy(group));
  if (content.filter !== undefined) form.set(PDFName.of("Filter"), PDFName.of(content.filter));
  const inner = context.register(PDFRawStream.of(form, content.bytes));
  const ref = withAppearances(context, copier, page, inner, box);
  const [w, h] = [box.x1 - box.x0, box.y1 - box.y0];
  const [width, height] = turn % 180 === 0 ? [w, h] : [h, w];
  return { ref, width, height, matrix: (scale, x, y) => turnedMatrix(turn, box, scale, x, y) };
}

interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The part of the page that is shown: its crop box within its media box. */
function shownBox(page: PDFPage): Box {
  const media = page.getMediaBox();
  const crop = page.getCropBox();
  const x0 = Math.max(media.x, crop.x);
  const y0 = Math.max(media.y, crop.y);
  const x1 = Math.min(media.x + media.width, crop.x + crop.width);
  const y1 = Math.min(media.y + media.height, crop.y + crop.height);
  const box =
    x1 - x0 > 1 && y1 - y0 > 1
      ? { x0, y0, x1, y1 }
      : { x0: media.x, y0: media.y, x1: media.x + media.width, y1: media.y + media.height };
  if (!Object.values(box).every(Number.isFinite) || box.x1 - box.x0 < 1 || box.y1 - box.y0 < 1)
    throw new RangeError("a page of it has no size");
  return box;
}

function turnedMatrix(turn: number, { x0, y0, x1, y1 }: Box, s: number, x: number, y: number): readonly number[] {
  switch (turn) {
    case 90:
      return [0, -s, s, 0, x - s * y0, y + s * x1];
    case 180:
      return [-s, 0, 0, -s, x + s * x1, y + s * y1];
    case 270:
      return [0, s, -s, 0, x + s * y1, y - s * x0];
    default:
      return [s, 0, 0, s, x - s * x0, y - s * y0];
  }
}

/** Content of a page: one flate stream is taken as it is, anything else is unpacked and packed again. */
function contentOf(page: PDFPage): { readonly bytes: Uint8Array; readonly filter?: string } {
  const contents = page.node.Contents();
  if (contents === undefined) return { bytes: new Uint8Array() };
  const streams =
    contents instanceof PDFArray ? contents.asArray().map((ref) => page.doc.context.lookup(ref)) : [contents];
  const raw = streams.filter((stream) => stream instanceof PDFRawStream);
  if (raw.length < streams.length) throw new RangeError("the content of a page is no stream");
  const [only] = raw;
  const filter = only?.dict.lookup(PDFName.of("Filter"));
  const plainFlate = filter === PDFName.of("FlateDecode") && only?.dict.get(PDFName.of("DecodeParms")) === undefined;
  if (only !== undefined && raw.length === 1 && plainFlate) return { bytes: only.getContents(), filter: "FlateDecode" };
  const parts = raw.map((stream) => Buffer.from(decodePDFRawStream(stream).decode()));
  if (parts.reduce((sum, part) => sum + part.length, 0) > mostContent)
    throw new RangeError("the content of a page is too large");
  return { bytes: packed(Buffer.concat(parts.flatMap((part) => [part, Buffer.from("\n")]))), filter: "FlateDecode" };
}

/** The page with the looks of its annotations drawn over it. */
function withAppearances(context: PDFContext, copier: PDFObjectCopier, page: PDFPage, inner: PDFRef, box: Box): PDFRef {
  const forms = new Map<string, PDFRef>([["P", inner]]);
  const drawn: string[] = [];
  for (const annotation of page.node.Annots()?.asArray() ?? []) {
    const dict = page.doc.context.lookup(annotation);
    const placed = dict instanceof PDFDict ? appearanceOf(dict) : undefined;
    if (placed === undefined) continue;
    const name = `A${forms.size}`;
    forms.set(name, copiedRef(context, copier, placed.stream));
    drawn.push(`q ${placed.matrix.map((value) => String(Math.round(value * 1e5) / 1e5)).join(" ")} cm /${name} Do Q`);
  }
  if (drawn.length === 0) return inner;
  const outer = context.obj({
    Type: "XObject",
    Subtype: "Form",
    BBox: [box.x0, box.y0, box.x1, box.y1],
    Filter: "FlateDecode",
  });
  const resources = context.obj({ XObject: {} });
  const xObjects = resources.lookup(PDFName.of("XObject"), PDFDict);
  for (const [name, ref] of forms) xObjects.set(PDFName.of(name), ref);
  outer.set(PDFName.of("Resources"), resources);
  return context.register(PDFRawStream.of(outer, packed(Buffer.from(`q /P Do Q\n${drawn.join("\n")}`, "latin1"))));
}

function copiedRef(context: PDFContext, copier: PDFObjectCopier, stream: PDFRawStream): PDFRef {
  const copied = copier.copy(stream);
  return context.getObjectRef(copied) ?? context.register(copied);
}
