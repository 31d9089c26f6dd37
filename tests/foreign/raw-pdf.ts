import { Buffer } from "node:buffer";
import { deflateSync } from "node:zlib";

/** A PDF written by hand, so that it can be wrong in any way a test wants. */

export interface RawStream {
  /** Entries of its dictionary besides the length. */
  readonly dict: string;
  readonly bytes: Uint8Array;
}

export interface RawFile {
  /** Objects by number; number 1 is the catalogue. */
  readonly objects: Readonly<Record<number, string | RawStream>>;
  /** Further entries of the trailer. */
  readonly trailer?: string;
}

export const stream = (bytes: Uint8Array | string, dict = ""): RawStream => ({
  dict,
  bytes: typeof bytes === "string" ? Buffer.from(bytes, "latin1") : bytes,
});

export const flate = (bytes: Uint8Array | string, dict = ""): RawStream =>
  stream(deflateSync(typeof bytes === "string" ? Buffer.from(bytes, "latin1") : bytes), `/Filter/FlateDecode${dict}`);

/** The file with a table of its objects that is right. */
export function rawPdf({ objects, trailer = "" }: RawFile): Buffer {
  const parts: Buffer[] = [];
  const offsets = new Map<number, number>();
  let at = 0;
  const write = (part: Uint8Array | string) => {
    const bytes = typeof part === "string" ? Buffer.from(part, "latin1") : Buffer.from(part);
    parts.push(bytes);
    at += bytes.length;
  };
  write("%PDF-1.7\n%\u0081\u0081\u0081\u0081\n");
  for (const [number, object] of Object.entries(objects)) {
    offsets.set(Number(number), at);
    write(`${number} 0 obj\n`);
    if (typeof object === "string") write(object);
    else {
      write(`<<${object.dict}/Length ${object.bytes.length}>>\nstream\n`);
      write(object.bytes);
      write("\nendstream");
    }
    write("\nendobj\n");
  }
  const size = Math.max(...offsets.keys()) + 1;
  const table = at;
  write(`xref\n0 ${size}\n0000000000 65535 f \n`);
  for (let number = 1; number < size; number++) {
    const offset = offsets.get(number);
    write(offset === undefined ? "0000000000 00000 f \n" : `${String(offset).padStart(10, "0")} 00000 n \n`);
  }
  write(`trailer\n<</Size ${size}/Root 1 0 R${trailer}>>\nstartxref\n${table}\n%%EOF\n`);
  return Buffer.concat(parts);
}

export interface Additions {
  readonly page?: string;
  readonly catalogue?: string;
  readonly resources?: string;
  readonly objects?: RawFile["objects"];
  readonly trailer?: string;
}

/** A file of one page with this content and these further objects, from number 10 on. */
export function onePage(content: RawStream, more: Additions = {}): Buffer {
  const { page = "", catalogue = "", resources = "", objects = {}, trailer } = more;
  return rawPdf({
    objects: {
      1: `<</Type/Catalog/Pages 2 0 R${catalogue}>>`,
      2: "<</Type/Pages/Count 1/Kids[3 0 R]>>",
      3:
        "<</Type/Page/Parent 2 0 R/MediaBox[0 0 300 300]/Contents 4 0 R" +
        `/Resources<</Font<</F1 5 0 R>>${resources}>>${page}>>`,
      4: content,
      5: "<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>",
      ...objects,
    },
    ...(trailer !== undefined && { trailer }),
  });
}

export const words = (text: string): string => `BT /F1 12 Tf 20 200 Td (${text}) Tj ET`;
