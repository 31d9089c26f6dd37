import { Buffer } from "node:buffer";
import { deflateSync } from "node:zlib";
import { pngChunk } from "./png-chunk.ts";
import { onePage, rawPdf, stream, words } from "./raw-pdf.ts";

/** A file that was made to harm, or was harmed, with what must be said of it. */
export interface Hostile {
  /** Name in `files/`; its extension counts. */
  readonly name: string;
  readonly bytes: Buffer;
  readonly says: string;
  readonly sort: "form" | "damaged" | "empty" | "protected" | "bound";
}

const sound = onePage(stream(words("sound")));

/** Unpacks to 192 MB, packed twice over so that the file is small. */
function bomb(): Buffer {
  const once = deflateSync(Buffer.alloc(192 * 1024 * 1024, 0x20), { level: 9 });
  return onePage(stream(deflateSync(once, { level: 9 }), "/Filter[/FlateDecode/FlateDecode]"));
}

/** Twenty nodes, each of which names the next one ten times: 10^20 pages in two kilobytes. */
function multiplied(): Buffer {
  const objects: Record<number, string> = { 1: "<</Type/Catalog/Pages 2 0 R>>" };
  for (let node = 2; node < 22; node++)
    objects[node] = `<</Type/Pages/Count 1/Kids[${Array.from({ length: 10 }, () => `${node + 1} 0 R`).join(" ")}]>>`;
  objects[22] = "<</Type/Page/MediaBox[0 0 300 300]>>";
  return rawPdf({ objects });
}

/** No node twice, only too many pages. */
function crowded(): Buffer {
  const kids = Array.from({ length: 6000 }, () => "3 0 R").join(" ");
  return rawPdf({
    objects: {
      1: "<</Type/Catalog/Pages 2 0 R>>",
      2: `<</Type/Pages/Count 6000/Kids[${kids}]>>`,
      3: "<</Type/Page/MediaBox[0 0 300 300]>>",
    },
  });
}

/** Object streams that lie in themselves and in each other, by the table. */
function packedLoop(): Buffer {
  const body = Buffer.from("%PDF-1.7\n", "latin1");
  const rows = Buffer.from([0, 0, 0, 2, 2, 0, 2, 2, 0, 2, 2, 1, 1, body.length, 0]);
  const table = `4 0 obj\n<</Type/XRef/Size 5/W[1 1 1]/Root 1 0 R/Length ${rows.length}>>\nstream\n`;
  const end = `\nendstream\nendobj\nstartxref\n${body.length}\n%%EOF\n`;
  return Buffer.concat([body, Buffer.from(table, "latin1"), rows, Buffer.from(end, "latin1")]);
}

/** Forms inside each other, deeper than any drawing. */
function deepForms(): Buffer {
  const objects: Record<number, ReturnType<typeof stream>> = {};
  for (let form = 10; form < 400; form++)
    objects[form] = stream(
      "/X Do",
      `/Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<</X ${form + 1} 0 R>>>>`,
    );
  objects[400] = stream("", "/Type/XObject/Subtype/Form/BBox[0 0 9 9]");
  return onePage(stream("/X Do"), { resources: "/XObject<</X 10 0 R>>", objects });
}

const pictureOf = (width: number, height: number) =>
  onePage(stream("/I Do"), {
    resources: "/XObject<</I 10 0 R>>",
    objects: {
      10: stream(
        "x",
        `/Type/XObject/Subtype/Image/Width ${width}/Height ${height}/BitsPerComponent 8/ColorSpace/DeviceGray`,
      ),
    },
  });

/** A PNG of this size that holds these packed rows. */
export function pngOf(
  width: number,
  height: number,
  rows: Uint8Array,
  ...more: readonly (readonly [string, string])[]
): Buffer {
  const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 0, 0, 0, 0]);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    pngChunk("IHDR", head),
    ...more.map(([name, text]) => pngChunk(name, Buffer.from(text, "latin1"))),
    pngChunk("IDAT", deflateSync(rows)),
    pngChunk("IEND", Buffer.alloc(0)),
  ]);
}

/** The central directory of an archive with these parts, each of them empty. */
export function archiveWith(...names: readonly string[]): Buffer {
  const parts: Buffer[] = [Buffer.from("PK\u0003\u0004", "latin1"), Buffer.alloc(26)];
  const start = 30;
  const list = names.map((name) => {
    const entry = Buffer.alloc(46 + name.length);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt16LE(name.length, 28);
    entry.write(name, 46, "latin1");
    return entry;
  });
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(names.length, 8);
  end.writeUInt16LE(names.length, 10);
  end.writeUInt32LE(
    list.reduce((sum, entry) => sum + entry.length, 0),
    12,
  );
  end.writeUInt32LE(start, 16);
  return Buffer.concat([...parts, ...list, end]);
}

const text = (content: string) => Buffer.from(content, "latin1");
const tableLoop = () => {
  const source = sound.toString("latin1");
  // The table names itself as the one before it, and the objects it should lead to are gone.
  return text(
    source.replace("/Root 1 0 R", `/Root 1 0 R/Prev ${source.lastIndexOf("xref\n0")}`).replace(/1 0 obj/, "1 0 old"),
  );
};

export const corpus: readonly Hostile[] = [
  { name: "bomb.pdf", bytes: bomb(), sort: "bound", says: "a part of the file unpacks to more than 128 MB" },
  {
    name: "filters.pdf",
    bytes: onePage(stream("00>", `/Filter[${"/ASCIIHexDecode".repeat(40)}]`)),
    sort: "bound",
    says: "the file packs one of its parts more than 6 times over",
  },
  {
    name: "multiplied.pdf",
    bytes: multiplied(),
    sort: "damaged",
    says: "the file is damaged: its list of pages leads back into itself",
  },
  { name: "crowded.pdf", bytes: crowded(), sort: "bound", says: "the file holds more than 5\u00a0000 pages" },
  {
    name: "table-loop.pdf",
    bytes: tableLoop(),
    sort: "damaged",
    says: "the file is damaged: nothing in it says where its pages are",
  },
  {
    name: "packed-loop.pdf",
    bytes: packedLoop(),
    sort: "damaged",
    says: "the file is damaged: nothing in it says where its pages are",
  },
  {
    name: "nested.pdf",
    bytes: onePage(stream(words("deep")), { page: `/X ${"[".repeat(500)}${"]".repeat(500)}` }),
    sort: "bound",
    says: "the file nests its objects deeper than 96 levels",
  },
  { name: "deep-forms.pdf", bytes: deepForms(), sort: "bound", says: "the file nests its objects too deep" },
  {
    name: "huge-picture.pdf",
    bytes: pictureOf(65_000, 65_000),
    sort: "bound",
    says: "the file holds a picture of 65000 × 65000 points",
  },
  {
    name: "locked.pdf",
    bytes: onePage(stream("garbled"), { trailer: "/Encrypt 9 0 R" }),
    sort: "protected",
    says: "the file is encrypted",
  },
  {
    name: "cut.pdf",
    bytes: sound.subarray(0, 300),
    sort: "damaged",
    says: "the file is damaged: nothing in it says where its pages are",
  },
  { name: "nothing.pdf", bytes: Buffer.alloc(0), sort: "empty", says: "the file is empty" },
  {
    name: "huge.png",
    bytes: pngOf(60_000, 60_000, Buffer.alloc(100)),
    sort: "bound",
    says: "the picture measures 60000 × 60000 points",
  },
  {
    name: "short.png",
    bytes: pngOf(100, 100, Buffer.alloc(100)),
    sort: "damaged",
    says: "the file is damaged: the picture holds 100 bytes of points where its size asks for 10100",
  },
  {
    name: "polyglot.pdf",
    bytes: Buffer.concat([text("<html><script>alert(1)</script><!--"), sound]),
    sort: "form",
    says: "the file is a web page, which can hold scripts",
  },
  {
    name: "drawing.png",
    bytes: text('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'),
    sort: "form",
    says: "the file is a drawing in SVG, which can hold scripts",
  },
  {
    name: "page.html",
    bytes: text("<!doctype html><p>hello"),
    sort: "form",
    says: "the file is a web page, which can hold scripts",
  },
  { name: "viewer.exe", bytes: text("MZ\u0090\u0000program"), sort: "form", says: "the file is a program" },
  { name: "note.txt", bytes: text("#!/bin/sh\necho"), sort: "form", says: "the file is a script" },
  { name: "scans.zip", bytes: archiveWith("a.pdf"), sort: "form", says: "the file is an Office file or an archive" },
  {
    name: "macros.xlsx",
    bytes: archiveWith("[Content_Types].xml", "xl/workbook.xml", "xl/vbaProject.bin"),
    sort: "form",
    says: "the workbook holds macros or embedded programs",
  },
  {
    name: "really.pdf",
    bytes: Buffer.from([0xff, 0xd8, 0xff, 0xe0]),
    sort: "form",
    says: "the file is a JPEG picture by its content, and its name says otherwise",
  },
];
