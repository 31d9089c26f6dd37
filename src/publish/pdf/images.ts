import { Buffer } from "node:buffer";
import { JpegEmbedder, PngEmbedder, type PDFContext, type PDFRef } from "pdf-lib";
import type { Copy } from "./foreign-pages.ts";

/** Most points of a picture that has to be unpacked. */
const mostPixels = 60_000_000;

/** Points for each pixel at most: no picture is printed coarser than 100 dots to the inch. */
const coarsest = 0.72;

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A PNG or JPEG file as a picture of the book; undefined for any other file. */
export async function copyImage(context: PDFContext, bytes: Uint8Array): Promise<Copy | undefined> {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (file.subarray(0, 8).equals(signature)) return copyPng(context, file);
  if (file[0] !== 0xff || file[1] !== 0xd8) return undefined;
  // A copy of its own: the library reads the whole buffer behind a view.
  const jpeg = await JpegEmbedder.for(new Uint8Array(file));
  return picture(await jpeg.embedIntoContext(context), jpeg.width, jpeg.height);
}

async function copyPng(context: PDFContext, file: Buffer): Promise<Copy> {
  const width = file.readUInt32BE(16);
  const height = file.readUInt32BE(20);
  const depth = file.readUInt8(24);
  const colour = file.readUInt8(25);
  if (width === 0 || height === 0 || width * height > mostPixels)
    throw new RangeError(`it measures ${width} × ${height} points`);
  const direct = depth <= 8 && (colour === 0 || colour === 2 || colour === 3) && file.readUInt8(28) === 0;
  const chunks = chunksOf(file);
  // Without an alpha channel the packed rows of a PNG are what a PDF holds too: nothing is unpacked.
  if (direct && !chunks.some(({ name }) => name === "tRNS")) {
    const data = Buffer.concat(chunks.filter(({ name }) => name === "IDAT").map(({ data }) => data));
    const palette = chunks.find(({ name }) => name === "PLTE")?.data;
    return picture(directPng(context, { width, height, depth, colour, data, palette }), width, height);
  }
  const png = await PngEmbedder.for(new Uint8Array(file));
  return picture(await png.embedIntoContext(context), width, height);
}

interface DirectPng {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly colour: number;
  readonly data: Buffer;
  readonly palette: Buffer | undefined;
}

function directPng(context: PDFContext, { width, height, depth, colour, data, palette }: DirectPng): PDFRef {
  const colours = colour === 2 ? 3 : 1;
  const indexed = () => {
    if (palette === undefined) throw new RangeError("its colour table is missing");
    return ["Indexed", "DeviceRGB", palette.length / 3 - 1, context.register(context.stream(palette))];
  };
  const stream = context.stream(data, {
    Type: "XObject",
    Subtype: "Image",
    Width: width,
    Height: height,
    BitsPerComponent: depth,
    ColorSpace: colour === 3 ? indexed() : colour === 2 ? "DeviceRGB" : "DeviceGray",
    Filter: "FlateDecode",
    DecodeParms: { Predictor: 15, Colors: colours, BitsPerComponent: depth, Columns: width },
  });
  return context.register(stream);
}

function chunksOf(file: Buffer): readonly { readonly name: string; readonly data: Buffer }[] {
  const chunks: { readonly name: string; readonly data: Buffer }[] = [];
  let at = 8;
  while (at + 12 <= file.length) {
    const length = file.readUInt32BE(at);
    const name = file.toString("latin1", at + 4, at + 8);
    if (at + 12 + length > file.length) throw new RangeError("it ends too early");
    chunks.push({ name, data: file.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  if (chunks.at(-1)?.name !== "IEND") throw new RangeError("it ends too early");
  return chunks;
}

const picture = (ref: PDFRef, pixelsWide: number, pixelsHigh: number): Copy => {
  const width = pixelsWide * coarsest;
  const height = pixelsHigh * coarsest;
  return { ref, width, height, matrix: (scale, x, y) => [width * scale, 0, 0, height * scale, x, y] };
};
