/**
 * A TrueType font (OpenType specification) with the same glyphs, each padded to a multiple of four bytes. The font
 * library halves the offsets of a subset's glyphs and so loses those that begin at an odd byte; here none does.
 */
export function evenFont(file: Buffer): Buffer {
  const tables = tablesOf(file);
  const [head, loca, glyf, maxp] = ["head", "loca", "glyf", "maxp"].map(
    (tag) => tables.find(([name]) => name === tag)?.[1],
  );
  if (head === undefined || loca === undefined || glyf === undefined || maxp === undefined)
    throw new RangeError("the font has no outlines of the TrueType kind");
  const short = head.readInt16BE(50) === 0;
  const offset = (glyph: number) => (short ? loca.readUInt16BE(glyph * 2) * 2 : loca.readUInt32BE(glyph * 4));
  const count = maxp.readUInt16BE(4);
  const outlines = Array.from({ length: count }, (_, glyph) => padded(glyf.subarray(offset(glyph), offset(glyph + 1))));
  const offsets = Buffer.alloc((count + 1) * 4);
  let end = 0;
  outlines.forEach((outline, glyph) => {
    end += outline.length;
    offsets.writeUInt32BE(end, (glyph + 1) * 4);
  });
  const longHead = Buffer.from(head);
  longHead.writeInt16BE(1, 50);
  const changed = new Map([
    ["glyf", Buffer.concat(outlines)],
    ["loca", offsets],
    ["head", longHead],
  ]);
  return joined(tables.map(([tag, table]) => [tag, changed.get(tag) ?? table] as const));
}

type Table = readonly [tag: string, bytes: Buffer];

function tablesOf(file: Buffer): readonly Table[] {
  return Array.from({ length: file.readUInt16BE(4) }, (_, index) => {
    const at = 12 + index * 16;
    const start = file.readUInt32BE(at + 8);
    return [file.toString("latin1", at, at + 4), file.subarray(start, start + file.readUInt32BE(at + 12))] as const;
  });
}

const padded = (bytes: Buffer) => Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);

/** Directory and tables; checksums are left out, since the library reads the font and writes its own. */
function joined(tables: readonly Table[]): Buffer {
  const directory = Buffer.alloc(12 + tables.length * 16);
  directory.writeUInt32BE(0x00010000, 0);
  directory.writeUInt16BE(tables.length, 4);
  let start = directory.length;
  const bodies = tables.map(([tag, table], index) => {
    const at = 12 + index * 16;
    directory.write(tag, at, "latin1");
    directory.writeUInt32BE(start, at + 8);
    directory.writeUInt32BE(table.length, at + 12);
    const body = padded(table);
    start += body.length;
    return body;
  });
  return Buffer.concat([directory, ...bodies]);
}
