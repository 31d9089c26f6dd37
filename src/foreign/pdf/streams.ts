import { Buffer } from "node:buffer";
import { deflateSync } from "node:zlib";
import type { Source } from "../copied.ts";
import { plainJpeg } from "../jpeg.ts";
import { beyond, damaged } from "../refused.ts";
import type { Copier } from "./copier.ts";
import { filtersOf, pictureFilters, unpack, unpackOnly, type Filter } from "./filters.ts";
import { sorts } from "./left-out.ts";
import { joined, nameSource, plainSource } from "./source.ts";
import { isStream, type PdfStream } from "./values.ts";

/** How a stream is packed in the book. */
export interface Packed {
  readonly source: Source;
  readonly bytes: Uint8Array;
}

/** A copy of its own: a window would keep the whole foreign file in memory. */
const own = (bytes: Buffer): Uint8Array => new Uint8Array(bytes);

/**
 * Bytes and filters of a stream for the book; undefined when it has none of its own. Everything is unpacked once, within
 * the limits, so that nothing goes into the book that a reader of it could not unpack.
 */
export function streamSource(stream: PdfStream, sort: "data" | "picture", copier: Copier): Packed | undefined {
  if (stream.entries.has("F")) {
    copier.leftOut.add(sorts.files);
    return undefined;
  }
  const { resolve, budget } = copier.file;
  const filters = filtersOf(stream, resolve, budget);
  if (sort === "picture") return pictureSource(stream, filters, copier);
  const [only] = filters;
  let bytes = stream.raw;
  for (const filter of filters) bytes = unpack(filter, bytes, resolve, budget);
  const asItIs = filters.length === 1 && only?.name === "FlateDecode" && only.parms.size === 0;
  return { source: ["/Filter/FlateDecode"], bytes: asItIs ? own(stream.raw) : repacked(bytes) };
}

/** Packs bytes as all streams of the book are packed. */
export const repacked = (bytes: Uint8Array): Uint8Array => new Uint8Array(deflateSync(bytes, { level: 6 }));

function pictureSource(stream: PdfStream, filters: readonly Filter[], copier: Copier): Packed | undefined {
  const { resolve, budget } = copier.file;
  checkSize(stream, copier);
  const last = filters.at(-1);
  const picture = last !== undefined && pictureFilters.has(last.name) ? last : undefined;
  const before = filters.slice(0, -1);
  let bytes = stream.raw;
  for (const filter of before) bytes = unpack(filter, bytes, resolve, budget);
  if (last === undefined) return { source: ["/Filter/FlateDecode"], bytes: repacked(bytes) };
  if (picture !== undefined) {
    const parms = parmsSource(picture, copier);
    const inner = picture.name === "DCTDecode" ? plainJpeg(bytes, budget.limits).bytes : own(bytes);
    return { source: joined([[`/Filter${nameSource(picture.name)}`], parms]), bytes: inner };
  }
  // Rows stay as their predictor made them: a viewer undoes it.
  const rows = unpackOnly(last, bytes, resolve, budget);
  const asItIs = last.name === "FlateDecode" && before.length === 0;
  const kept = asItIs ? own(stream.raw) : repacked(rows);
  return {
    source: joined([["/Filter/FlateDecode"], parmsSource({ ...last, name: "FlateDecode" }, copier)]),
    bytes: kept,
  };
}

const parmKeys: Readonly<Record<string, readonly string[]>> = {
  FlateDecode: ["Predictor", "Colors", "BitsPerComponent", "Columns"],
  CCITTFaxDecode: ["K", "EndOfLine", "EncodedByteAlign", "Columns", "Rows", "EndOfBlock", "BlackIs1"],
  DCTDecode: ["ColorTransform"],
};

function parmsSource({ name, parms }: Filter, copier: Copier): Source {
  const { resolve } = copier.file;
  const parts: Source[] = (parmKeys[name] ?? []).flatMap((key) => {
    const source = plainSource(resolve(parms.get(key)));
    return source === undefined ? [] : [[`${nameSource(key)} ${source} `]];
  });
  const globals = resolve(parms.get("JBIG2Globals"));
  if (name === "JBIG2Decode" && isStream(globals)) {
    const packed = streamSource(globals, "data", copier);
    if (packed !== undefined) {
      const index = copier.add({ source: joined([["<<"], packed.source, [">>"]]), bytes: packed.bytes });
      parts.push(["/JBIG2Globals ", index]);
    }
  }
  return parts.length === 0 ? [] : joined([["/DecodeParms<<"], ...parts, [">>"]]);
}

/** A picture says how large it is; more than a viewer can hold is not passed on. */
function checkSize({ entries }: PdfStream, { file }: Copier): void {
  const [width, height] = ["Width", "Height"].map((key) => file.resolve(entries.get(key)));
  if (typeof width !== "number" || typeof height !== "number" || width < 1 || height < 1)
    throw damaged("a picture in it does not say how large it is");
  const { pixels } = file.budget.limits;
  if (width * height > pixels)
    throw beyond(
      `the file holds a picture of ${width} × ${height} points`,
      `pictures of at most ${pixels / 1e6} million points`,
    );
}
