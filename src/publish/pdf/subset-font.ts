import { Buffer } from "node:buffer";

/** A TrueType font reduced to some glyphs, and the new number of each old one. */
export interface FontSubset {
  readonly bytes: Buffer;
  readonly numbers: ReadonlyMap<number, number>;
}

const shortOffsets = 0;

/**
 * A TrueType font (OpenType specification, tables glyf, loca, hmtx, head, hhea, maxp) that holds the glyphs named, the
 * parts of composed ones, and glyph 0. Glyphs are padded and counted from long offsets: the subset of the font library
 * halves odd offsets and so loses glyphs of fonts whose data are not padded.
 */
export function subsetFont(file: Buffer, glyphs: readonly number[]): FontSubset {
  const tables = tablesOf(file);
  const need = (tag: string): Buffer => {
    const table = tables.get(tag);
    if (table === undefined) throw new RangeError(`the font has no table "${tag}"`);
    return table;
  };
  const [head, hhea, maxp] = [Buffer.from(need("head")), Buffer.from(need("hhea")), Buffer.from(need("maxp"))];
  const [loca, glyf, hmtx] = [need("loca"), need("glyf"), need("hmtx")];
  const short = head.readInt16BE(50) === shortOffsets;
  const offset = (glyph: number) => (short ? loca.readUInt16BE(glyph * 2) * 2 : loca.readUInt32BE(glyph * 4));
  const numbers = new Map<number, number>([[0, 0]]);
  const take = (glyph: number): number => {
    const number = numbers.get(glyph) ?? numbers.size;
    numbers.set(glyph, number);
    return number;
  };
  glyphs.forEach(take);
  const outlines: Buffer[] = [];
  // The map grows while composed glyphs bring in their parts; iteration sees the additions.
  for (const glyph of numbers.keys()) {
    const outline = Buffer.from(glyf.subarray(offset(glyph), offset(glyph + 1)));
    renumberParts(outline, take);
    outlines.push(padded(outline));
  }
  const count = numbers.size;
  const offsets = Buffer.alloc((count + 1) * 4);
  let end = 0;
  outlines.forEach((outline, index) => {
    end += outline.length;
    offsets.writeUInt32BE(end, (index + 1) * 4);
  });
  head.writeInt16BE(1, 50);
  head.writeUInt32BE(0, 8);
  maxp.writeUInt16BE(count, 4);
  const metrics = hhea.readUInt16BE(34);
  hhea.writeUInt16BE(count, 34);
  const kept = ["cvt ", "fpgm", "prep"].flatMap((tag) => {
    const table = tables.get(tag);
    return table === undefined ? [] : [[tag, table] as const];
  });
  const bytes = fontFile([
    ...kept,
    ["glyf", Buffer.concat(outlines)],
    ["head", head],
    ["hhea", hhea],
    ["hmtx", Buffer.concat([...numbers.keys()].map((glyph) => metricOf(hmtx, metrics, glyph)))],
    ["loca", offsets],
    ["maxp", maxp],
  ]);
  return { bytes, numbers };
}

function tablesOf(file: Buffer): ReadonlyMap<string, Buffer> {
  const tables = new Map<string, Buffer>();
  const count = file.readUInt16BE(4);
  for (let index = 0; index < count; index++) {
    const at = 12 + index * 16;
    const start = file.readUInt32BE(at + 8);
    tables.set(file.toString("latin1", at, at + 4), file.subarray(start, start + file.readUInt32BE(at + 12)));
  }
  return tables;
}

/** Flags of a part of a composed glyph that tell how long its entry is. */
const wordArguments = 0x1;
const scale = 0x8;
const moreParts = 0x20;
const twoScales = 0x40;
const twoByTwo = 0x80;

function renumberParts(outline: Buffer, take: (glyph: number) => number): void {
  if (outline.length < 10 || outline.readInt16BE(0) >= 0) return;
  let at = 10;
  let flags: number;
  do {
    flags = outline.readUInt16BE(at);
    outline.writeUInt16BE(take(outline.readUInt16BE(at + 2)), at + 2);
    at += (flags & wordArguments) !== 0 ? 8 : 6;
    at += (flags & scale) !== 0 ? 2 : (flags & twoScales) !== 0 ? 4 : (flags & twoByTwo) !== 0 ? 8 : 0;
  } while ((flags & moreParts) !== 0);
}

/** Advance and bearing of a glyph; glyphs past the last advance share it. */
function metricOf(hmtx: Buffer, metrics: number, glyph: number): Buffer {
  if (glyph < metrics) return hmtx.subarray(glyph * 4, glyph * 4 + 4);
  const bearing = metrics * 4 + (glyph - metrics) * 2;
  return Buffer.concat([hmtx.subarray(metrics * 4 - 4, metrics * 4 - 2), hmtx.subarray(bearing, bearing + 2)]);
}

const padded = (table: Buffer) => Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);

function checksum(table: Buffer): number {
  let sum = 0;
  for (let at = 0; at + 4 <= table.length; at += 4) sum = (sum + table.readUInt32BE(at)) >>> 0;
  return sum;
}

/** Table directory and tables, with the checksums a font file carries. */
function fontFile(tables: readonly (readonly [string, Buffer])[]): Buffer {
  const count = tables.length;
  const power = 2 ** Math.floor(Math.log2(count));
  const directory = Buffer.alloc(12 + count * 16);
  directory.writeUInt32BE(0x00010000, 0);
  directory.writeUInt16BE(count, 4);
  directory.writeUInt16BE(power * 16, 6);
  directory.writeUInt16BE(Math.log2(power), 8);
  directory.writeUInt16BE((count - power) * 16, 10);
  let start = directory.length;
  const bodies = tables.map(([tag, table], index) => {
    const body = padded(table);
    const at = 12 + index * 16;
    directory.write(tag, at, "latin1");
    directory.writeUInt32BE(checksum(body), at + 4);
    directory.writeUInt32BE(start, at + 8);
    directory.writeUInt32BE(table.length, at + 12);
    start += body.length;
    return body;
  });
  const file = Buffer.concat([directory, ...bodies]);
  const head = tables.findIndex(([tag]) => tag === "head");
  file.writeUInt32BE((0xb1b0afba - checksum(file)) >>> 0, directory.readUInt32BE(12 + head * 16 + 8) + 8);
  return file;
}
