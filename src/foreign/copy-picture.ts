import type { Buffer } from "node:buffer";
import type { Budget } from "./budget.ts";
import type { Copied, CopiedObject } from "./copied.ts";
import { plainJpeg } from "./jpeg.ts";
import { plainPng, type PlainPng } from "./png.ts";

/** Points for each pixel at most: no picture is printed coarser than 100 dots to the inch. */
const coarsest = 0.72;

/** Turns that set a picture upright; mirrored ones, which no camera makes, are shown as they are. */
const turns: ReadonlyMap<number, number> = new Map([
  [3, 180],
  [6, 90],
  [8, 270],
]);

const imageOf = (width: number, height: number, rest: string) =>
  `<</Type/XObject/Subtype/Image/Width ${width}/Height ${height}${rest}>>`;

/** A JPEG as a page: its coded points as they are, without what else the file tells. */
export function copyJpeg(file: Buffer, { limits }: Budget): Copied {
  const { bytes, width, height, components, inverted, orientation } = plainJpeg(file, limits);
  const colours = components === 1 ? "DeviceGray" : components === 3 ? "DeviceRGB" : "DeviceCMYK";
  const decode = components === 4 && inverted ? "/Decode[1 0 1 0 1 0 1 0]" : "";
  const source = imageOf(width, height, `/BitsPerComponent 8/ColorSpace/${colours}${decode}/Filter/DCTDecode`);
  return pictured([{ source: [source], bytes }], width, height, turns.get(orientation) ?? 0);
}

/** A PNG as a page. */
export async function copyPng(file: Buffer, budget: Budget): Promise<Copied> {
  const png = plainPng(file, budget);
  const direct = png.depth <= 8 && png.colour <= 3 && !png.interlaced && !png.transparent;
  return pictured(direct ? directPng(png) : await decodedPng(png), png.width, png.height, 0);
}

/** Without alpha the packed rows of a PNG are what a PDF holds too. */
function directPng({ width, height, depth, colour, palette, rows }: PlainPng): CopiedObject[] {
  const parms = `/Predictor 15/Colors ${colour === 2 ? 3 : 1}/BitsPerComponent ${depth}/Columns ${width}`;
  const rest = `/BitsPerComponent ${depth}/Filter/FlateDecode/DecodeParms<<${parms}>>/ColorSpace`;
  const bytes = new Uint8Array(rows);
  if (palette === undefined || colour !== 3)
    return [{ source: [imageOf(width, height, `${rest}/${colour === 2 ? "DeviceRGB" : "DeviceGray"}`)], bytes }];
  const entries = Math.min(palette.length / 3, 2 ** depth);
  const table = `[/Indexed/DeviceRGB ${entries - 1}<${palette.subarray(0, entries * 3).toString("hex")}>]`;
  return [{ source: [imageOf(width, height, `${rest}${table}`)], bytes }];
}

/** With alpha, interlaced or of 16 bits: decoded by the library, from a file that holds nothing but what was checked. */
async function decodedPng({ bytes }: PlainPng): Promise<CopiedObject[]> {
  // Loaded only when such a picture is met: most books have none.
  const { PDFContext, PDFRawStream, PngEmbedder } = await import("pdf-lib");
  const context = PDFContext.create();
  const picture = await (await PngEmbedder.for(new Uint8Array(bytes))).embedIntoContext(context);
  const made = context.enumerateIndirectObjects();
  const order = [picture, ...made.map(([ref]) => ref).filter((ref) => ref !== picture)];
  return order.flatMap((ref): CopiedObject[] => {
    const object = context.lookup(ref);
    if (!(object instanceof PDFRawStream)) return [];
    const source = object.dict.toString().split(/(\d+ 0 R)/);
    const referring = source.map((part) => {
      const index = order.findIndex(({ tag }) => tag === part);
      return index < 0 ? part : index;
    });
    return [{ source: referring, bytes: new Uint8Array(object.contents) }];
  });
}

function pictured(objects: readonly CopiedObject[], width: number, height: number, turn: number): Copied {
  const box = { x0: 0, y0: 0, x1: width * coarsest, y1: height * coarsest };
  return { objects, pages: [{ object: 0, box, turn, sort: "image", links: [] }], leftOut: [] };
}
