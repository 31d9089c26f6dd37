import { Buffer } from "node:buffer";
import { crc32 } from "node:zlib";
import type { Budget } from "./budget.ts";
import { inflated } from "./pdf/filters.ts";
import { beyond, damaged } from "./refused.ts";

/** What a PNG says of itself, and the chunks that are needed to see it. */
export interface PlainPng {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** 0 grey, 2 colours, 3 colours of a table, 4 grey with alpha, 6 colours with alpha. */
  readonly colour: number;
  readonly interlaced: boolean;
  readonly palette: Buffer | undefined;
  readonly transparent: boolean;
  /** Rows, packed as they stand in the file. */
  readonly rows: Buffer;
  /** The file without everything else. */
  readonly bytes: Buffer;
}

export const pngSignature: Buffer = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

const channels: ReadonlyMap<number, number> = new Map([
  [0, 1],
  [2, 3],
  [3, 1],
  [4, 2],
  [6, 4],
]);

const depths: ReadonlyMap<number, readonly number[]> = new Map([
  [0, [1, 2, 4, 8, 16]],
  [2, [8, 16]],
  [3, [1, 2, 4, 8]],
  [4, [8, 16]],
  [6, [8, 16]],
]);

/**
 * Reads a PNG chunk by chunk (ISO/IEC 15948): checks every sum, the size, and that exactly the rows it promises are in it.
 * Text, time, profiles and whatever else a program added is left behind.
 */
export function plainPng(file: Buffer, budget: Budget): PlainPng {
  const kept: Buffer[] = [pngSignature];
  const rows: Buffer[] = [];
  let head: Buffer | undefined;
  let palette: Buffer | undefined;
  let transparent = false;
  for (let at = pngSignature.length, ended = false; !ended;) {
    if (at + 12 > file.length) throw damaged("the picture ends too early");
    const length = file.readUInt32BE(at);
    const name = file.toString("latin1", at + 4, at + 8);
    if (at + 12 + length > file.length) throw damaged("the picture ends too early");
    const chunk = file.subarray(at, at + 12 + length);
    const data = chunk.subarray(8, 8 + length);
    if (crc32(chunk.subarray(4, 8 + length)) !== chunk.readUInt32BE(8 + length))
      throw damaged("a part of the picture does not agree with its check sum");
    at += chunk.length;
    if ((head === undefined) !== (name === "IHDR") || (head === undefined && length !== 13))
      throw damaged("the picture does not begin with its size");
    if (name === "IHDR") head = data;
    else if (name === "PLTE") palette = data;
    else if (name === "tRNS") transparent = true;
    else if (name === "IDAT") rows.push(data);
    else if (name === "IEND") ended = true;
    else if (/^[A-Z]/.test(name)) throw damaged("the picture needs a part that is not known");
    else continue;
    kept.push(chunk);
  }
  if (head === undefined) throw damaged("the picture does not say how large it is");
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const [depth, colour, interlace] = [head.readUInt8(8), head.readUInt8(9), head.readUInt8(12)];
  if (width === 0 || height === 0 || depths.get(colour)?.includes(depth) !== true || interlace > 1)
    throw damaged("the picture does not say rightly what it is");
  if (colour === 3 && (palette === undefined || palette.length % 3 !== 0 || palette.length === 0))
    throw damaged("the colour table of the picture is missing");
  const bits = depth * (channels.get(colour) ?? 1);
  const { pixels, stage } = budget.limits;
  const expected = expectedBytes(width, height, bits, interlace === 1);
  // Four bytes for each point are what decoding takes.
  if (width * height > pixels || Math.max(expected, width * height * 4) > stage * 2)
    throw beyond(
      `the picture measures ${width} × ${height} points`,
      `pictures of at most ${stage / 2 ** 21} million points`,
    );
  const packed = Buffer.concat(rows);
  const plain = inflated(packed, budget);
  budget.expanded(plain.length);
  if (plain.length !== expected)
    throw damaged(`the picture holds ${plain.length} bytes of points where its size asks for ${expected}`);
  return {
    width,
    height,
    depth,
    colour,
    interlaced: interlace === 1,
    palette,
    transparent,
    rows: packed,
    bytes: Buffer.concat(kept),
  };
}

/** First column, first row, and steps of the seven passes of an interlaced picture. */
const passes = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

function expectedBytes(width: number, height: number, bits: number, interlaced: boolean): number {
  const size = (columns: number, rows: number) =>
    columns <= 0 || rows <= 0 ? 0 : rows * (1 + Math.ceil((columns * bits) / 8));
  if (!interlaced) return size(width, height);
  return passes.reduce(
    (sum, [x, y, dx, dy]) => sum + size(Math.ceil((width - x) / dx), Math.ceil((height - y) / dy)),
    0,
  );
}
