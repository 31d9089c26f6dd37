import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";
import type { PDFContext, PDFRef } from "pdf-lib";
import type { Fonts, UsedFont } from "./fonts.ts";
import { packed, packedStream, refText, source } from "./objects.ts";
import { subsetFont } from "./subset-font.ts";

/** Writes the used glyphs of every font; answers with the source of the font resources of all pages. */
export function embedFonts(context: PDFContext, fonts: Fonts): string {
  const entries: string[] = [];
  for (const used of fonts.used) {
    if (used.characters.length === 0) continue;
    entries.push(`/${used.name} ${refText(embedFont(context, used))}`);
  }
  return `<<${entries.join(" ")}>>`;
}

function embedFont(context: PDFContext, used: UsedFont): PDFRef {
  const { font, characters } = used;
  const { bytes, numbers } = subsetFont(
    used.file,
    characters.map(({ glyph }) => glyph),
  );
  const name = `${tagOf(bytes)}+${font.postscriptName ?? "Font"}`;
  const scale = (value: number) => String(Math.round((value * 1000) / font.unitsPerEm));
  const file = packedStream(context, packed(bytes), { Length1: bytes.length });
  const box = [font.bbox.minX, font.bbox.minY, font.bbox.maxX, font.bbox.maxY].map(scale).join(" ");
  const italic = font.italicAngle !== 0;
  const descriptor = context.register(
    source(
      `<</Type/FontDescriptor/FontName/${name}/Flags ${italic ? 68 : 4}/FontBBox[${box}]/ItalicAngle ${font.italicAngle}` +
        `/Ascent ${scale(font.ascent)}/Descent ${scale(font.descent)}/CapHeight ${scale(font.capHeight)}` +
        `/XHeight ${scale(font.xHeight)}/StemV 80/FontFile2 ${refText(file)}>>`,
    ),
  );
  const widths = characters.map(({ width }) => String(Math.round(width * 100) / 100)).join(" ");
  const cidFont = context.register(
    source(
      `<</Type/Font/Subtype/CIDFontType2/BaseFont/${name}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>` +
        `/FontDescriptor ${refText(descriptor)}/W[1[${widths}]]/CIDToGIDMap ${refText(glyphMap(context, used, numbers))}>>`,
    ),
  );
  const unicode = packedStream(context, packed(Buffer.from(unicodeMap(used), "latin1")));
  return context.register(
    source(
      `<</Type/Font/Subtype/Type0/BaseFont/${name}/Encoding/Identity-H/DescendantFonts[${refText(cidFont)}]/ToUnicode ${refText(unicode)}>>`,
    ),
  );
}

/** Six letters that name the subset, the same for the same glyphs. */
function tagOf(bytes: Uint8Array): string {
  const hash = createHash("sha256").update(bytes).digest();
  return Array.from(hash.subarray(0, 6), (byte) => String.fromCharCode(65 + (byte % 26))).join("");
}

function glyphMap(context: PDFContext, { characters }: UsedFont, numbers: ReadonlyMap<number, number>): PDFRef {
  const map = Buffer.alloc((characters.length + 1) * 2);
  characters.forEach(({ glyph }, index) => map.writeUInt16BE(numbers.get(glyph) ?? 0, (index + 1) * 2));
  return packedStream(context, packed(map));
}

const hex = (text: string) => Buffer.from(text, "utf16le").swap16().toString("hex").toUpperCase();

/** What each character id reads as, in blocks of at most a hundred lines. */
function unicodeMap({ characters }: UsedFont): string {
  const lines = characters.flatMap(({ reads }, index) =>
    reads === "" ? [] : [`<${(index + 1).toString(16).padStart(4, "0")}> <${hex(reads)}>`],
  );
  const blocks: string[] = [];
  for (let at = 0; at < lines.length; at += 100) {
    const block = lines.slice(at, at + 100);
    blocks.push(`${block.length} beginbfchar\n${block.join("\n")}\nendbfchar`);
  }
  return [
    "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
    "/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def",
    "/CMapName /Adobe-Identity-UCS def /CMapType 2 def",
    "1 begincodespacerange <0000> <ffff> endcodespacerange",
    ...blocks,
    "endcmap CMapName currentdict /CMap defineresource pop end end",
  ].join("\n");
}
