import { Buffer } from "node:buffer";
import type { Limits } from "./budget.ts";
import { beyond, damaged } from "./refused.ts";

/** A JPEG without what is not needed to see it. */
export interface PlainJpeg {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly components: number;
  /** Whether inks are stored as their opposite, as files of a certain marker do. */
  readonly inverted: boolean;
  /** How a camera was held: 1 upright, 3 upside down, 6 and 8 on its side (Exif 2.3, tag 0x0112). */
  readonly orientation: number;
}

/** Markers that stand alone: TEM and the restarts. */
const isBare = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);
/** Frames that a PDF viewer can show: baseline, extended and progressive, Huffman coded. */
const frames: ReadonlySet<number> = new Set([0xc0, 0xc1, 0xc2]);
/** Every frame header: C0 to CF without tables (C4), JPG (C8) and arithmetic conditioning (CC). */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Tables, restarts, number of lines. */
const tables: ReadonlySet<number> = new Set([0xc4, 0xdb, 0xdc, 0xdd]);

/**
 * Walks the segments of a JPEG (ITU-T T.81, annex B) and keeps frame, tables, scans, and of the application segments only
 * what tells how colours are meant: no place, time, maker, thumbnail or remark comes along.
 */
export function plainJpeg(file: Buffer, limits: Limits): PlainJpeg {
  const kept: Buffer[] = [Buffer.from([0xff, 0xd8])];
  let frame: Pick<PlainJpeg, "width" | "height" | "components"> | undefined;
  let inverted = false;
  let orientation = 1;
  let scans = 0;
  let at = 2;
  if (file[0] !== 0xff || file[1] !== 0xd8) throw damaged("it does not begin as a JPEG picture");
  for (;;) {
    if (file[at] !== 0xff) throw damaged("a part of the picture does not begin where it should");
    while (file[at + 1] === 0xff) at++;
    const marker = file[at + 1] ?? 0xd9;
    if (at + 1 >= file.length) throw damaged("the picture ends too early");
    if (marker === 0xd9) break;
    if (isBare(marker)) {
      at += 2;
      continue;
    }
    const length = at + 4 <= file.length ? file.readUInt16BE(at + 2) : 0;
    if (length < 2 || at + 2 + length > file.length) throw damaged("the picture ends too early");
    const segment = file.subarray(at, at + 2 + length);
    const body = segment.subarray(4);
    at += segment.length;
    if (isFrame(marker)) {
      if (frame !== undefined) throw damaged("the picture says twice how large it is");
      frame = frameOf(marker, body, limits);
      kept.push(segment);
    } else if (tables.has(marker)) kept.push(segment);
    else if (marker === 0xda) {
      if (frame === undefined) throw damaged("the picture does not say how large it is");
      const end = scanEnd(file, at);
      kept.push(segment, file.subarray(at, end));
      at = end;
      scans++;
    } else if (marker === 0xe0 && body.toString("latin1", 0, 5) === "JFIF\0" && body.length >= 14)
      // Without the small picture that may follow.
      kept.push(Buffer.from([0xff, 0xe0, 0, 16]), body.subarray(0, 12), Buffer.from([0, 0]));
    else if (marker === 0xee && body.toString("latin1", 0, 5) === "Adobe" && body.length >= 12) {
      kept.push(Buffer.from([0xff, 0xee, 0, 14]), body.subarray(0, 12));
      inverted = true;
    } else if (marker === 0xe1 && body.toString("latin1", 0, 6) === "Exif\0\0")
      orientation = orientationOf(body.subarray(6));
  }
  if (frame === undefined || scans === 0) throw damaged("there is no picture in it");
  kept.push(Buffer.from([0xff, 0xd9]));
  return { bytes: new Uint8Array(Buffer.concat(kept)), ...frame, inverted, orientation };
}

function frameOf(marker: number, body: Buffer, limits: Limits): Pick<PlainJpeg, "width" | "height" | "components"> {
  if (body.length < 6) throw damaged("the picture does not say how large it is");
  const [depth, components] = [body.readUInt8(0), body.readUInt8(5)];
  const [height, width] = [body.readUInt16BE(1), body.readUInt16BE(3)];
  if (!frames.has(marker) || depth !== 8 || ![1, 3, 4].includes(components))
    throw beyond("the picture is coded in a way that not every reader shows", "baseline or progressive JPEG of 8 bits");
  if (width === 0 || height === 0) throw damaged("the picture does not say how large it is");
  if (width * height > limits.pixels)
    throw beyond(
      `the picture measures ${width} × ${height} points`,
      `pictures of at most ${limits.pixels / 1e6} million points`,
    );
  return { width, height, components };
}

/** Offset of the marker that ends the coded points of a scan. */
function scanEnd(file: Buffer, from: number): number {
  for (let at = file.indexOf(0xff, from); at >= 0 && at + 1 < file.length; at = file.indexOf(0xff, at + 1)) {
    const next = file[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && !isBare(next)) return at;
  }
  throw damaged("the picture ends too early");
}

/** The orientation that a camera noted; 1 where it noted none that can be read. */
function orientationOf(tiff: Buffer): number {
  const little = tiff.toString("latin1", 0, 2) === "II";
  const word = (at: number) => (little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
  if (tiff.length < 14) return 1;
  const start = little ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4);
  if (start + 2 > tiff.length) return 1;
  const count = word(start);
  for (let index = 0; index < count; index++) {
    const entry = start + 2 + index * 12;
    if (entry + 12 > tiff.length) return 1;
    if (word(entry) === 0x0112) return word(entry + 8);
  }
  return 1;
}
