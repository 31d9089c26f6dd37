import { Buffer } from "node:buffer";
import { deflateSync } from "node:zlib";
import { degrees, PDFDocument, PDFName, PDFString, StandardFonts } from "pdf-lib";
import { pngChunk } from "../../foreign/png-chunk.ts";

/** Files as they come from scanners, suppliers and mischief. */

interface PageWish {
  readonly width?: number;
  readonly height?: number;
  readonly turn?: number;
  readonly text?: string;
}

/** A PDF with a page for each wish, its text 20 points from its left and lower edge. */
export async function pdfWith(...wishes: readonly PageWish[]): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const font = await document.embedFont(StandardFonts.Helvetica);
  for (const { width = 595, height = 842, turn = 0, text } of wishes) {
    const page = document.addPage([width, height]);
    page.setRotation(degrees(turn));
    if (text !== undefined) page.drawText(text, { x: 20, y: 20, size: 12, font });
  }
  return document.save();
}

/** A PDF that runs scripts: when opened, when its page is opened, and from a link. */
export async function pdfWithScripts(): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context } = document;
  const page = document.addPage([300, 300]);
  page.drawText("scripted", { x: 20, y: 20, font: await document.embedFont(StandardFonts.Helvetica) });
  const script = { S: "JavaScript", JS: PDFString.of("app.alert(1)") };
  document.addJavaScript("start", "app.alert(2)");
  document.catalog.set(PDFName.of("OpenAction"), context.obj(script));
  page.node.set(PDFName.of("AA"), context.obj({ O: script }));
  page.node.set(
    PDFName.of("Annots"),
    context.obj([{ Type: "Annot", Subtype: "Link", Rect: [0, 0, 99, 99], A: script }]),
  );
  return document.save();
}

/** A PDF whose page shows a stamp that is an annotation, and a filled field. */
export async function pdfWithStamp(): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const page = document.addPage([300, 300]);
  const font = await document.embedFont(StandardFonts.Helvetica);
  page.drawText("certificate", { x: 20, y: 200, font, size: 12 });
  const field = document.getForm().createTextField("inspector");
  field.setText("witnessed");
  field.addToPage(page, { x: 20, y: 40, width: 120, height: 20, font });
  return document.save();
}

/** An unencrypted PDF cut in the middle. */
export async function pdfCut(): Promise<Uint8Array> {
  const whole = await pdfWith({ text: "first" }, { text: "second" });
  return whole.slice(0, Math.floor(whole.length * 0.45));
}

/** A PDF whose first page is large and sound and whose second page has no content one could read. */
export async function pdfHalfBroken(): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context } = document;
  const first = document.addPage();
  const noise = Array.from({ length: 12_000 }, (_, index) => `${(Math.sin(index) * 1e6).toFixed(0)} 0 m`).join("\n");
  first.node.set(PDFName.of("Contents"), context.register(context.flateStream(noise)));
  document.addPage().node.set(PDFName.of("Contents"), context.obj([context.register(context.obj({}))]));
  return document.save();
}

/** A small grey PNG: a ramp from black to white, `width` by `height`. */
export function greyPng(width: number, height: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.writeUInt8(8, 8);
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows.writeUInt8(Math.round((x * 255) / width), y * (width + 1) + 1 + x);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    pngChunk("IHDR", header),
    pngChunk("IDAT", deflateSync(rows)),
    pngChunk("IEND", Buffer.alloc(0)),
  ]);
}
