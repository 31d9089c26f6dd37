import { Buffer } from "node:buffer";
import { deflateSync } from "node:zlib";
import { PDFContext, PDFDict, PDFObject, PDFStream, type PDFRef } from "pdf-lib";
import { spellControls } from "../../model/spelled.ts";

/** A class because the library's writer asks objects for their bytes by these methods. */
class SourceObject extends PDFObject {
  readonly #text: string;

  constructor(text: string) {
    super();
    this.#text = text;
  }

  override clone(): PDFObject {
    return new SourceObject(this.#text);
  }

  override toString(): string {
    return this.#text;
  }

  override sizeInBytes(): number {
    return this.#text.length;
  }

  override copyBytesInto(buffer: Uint8Array, offset: number): number {
    return Buffer.from(buffer.buffer, buffer.byteOffset, buffer.byteLength).write(this.#text, offset, "latin1");
  }
}

/** An object given as PDF source: bulk objects cost a fraction of what a tree of dictionaries and names would. */
export const source = (text: string): PDFObject => new SourceObject(text);

/** A class for the same reason; the library's writer tells streams from other objects by their class. */
class SourceStream extends PDFStream {
  readonly #text: string;
  readonly #bytes: Uint8Array;

  constructor(text: string, bytes: Uint8Array) {
    super(PDFDict.fromMapWithContext(new Map(), PDFContext.create()));
    this.#text = `${text.replace(/>>$/, "")}/Length ${bytes.length}>>\nstream\n`;
    this.#bytes = bytes;
  }

  override clone(): PDFStream {
    return this;
  }

  override getContentsString(): string {
    return Buffer.from(this.#bytes).toString("latin1");
  }

  override getContents(): Uint8Array {
    return this.#bytes;
  }

  override getContentsSize(): number {
    return this.#bytes.length;
  }

  override toString(): string {
    return `${this.#text}${this.getContentsString()}${streamEnd}`;
  }

  override sizeInBytes(): number {
    return this.#text.length + this.#bytes.length + streamEnd.length;
  }

  override copyBytesInto(buffer: Uint8Array, offset: number): number {
    const target = Buffer.from(buffer.buffer, buffer.byteOffset, buffer.byteLength);
    let at = offset + target.write(this.#text, offset, "latin1");
    target.set(this.#bytes, at);
    at += this.#bytes.length;
    return at + target.write(streamEnd, at, "latin1") - offset;
  }
}

const streamEnd = "\nendstream";

/** A stream given as PDF source, without its length, and bytes that are packed as the source says. */
export const sourceStream = (text: string, bytes: Uint8Array): PDFObject => new SourceStream(text, bytes);

/** Compresses content or any other bytes the way all streams of the book are. */
export function packed(bytes: Uint8Array): Uint8Array {
  // A copy of its own: what the compressor gives is a window into a block many times as large.
  return Buffer.from(deflateSync(bytes, { level: 6 }));
}

/** Registers packed bytes as a stream. */
export function packedStream(
  context: PDFContext,
  bytes: Uint8Array,
  entries: Readonly<Record<string, string | number | readonly number[]>> = {},
): PDFRef {
  return context.register(context.stream(bytes, { Filter: "FlateDecode", ...entries }));
}

/** Reference as source text. */
export const refText = (ref: PDFRef): string => `${ref.objectNumber} ${ref.generationNumber} R`;

const escapes: ReadonlyMap<string, string> = new Map([
  ["\\", "\\\\"],
  ["(", "\\("],
  [")", "\\)"],
  ["\r", "\\r"],
  ["\n", "\\n"],
]);

/** A name or address as a byte string: UTF-8, one character for each byte. */
export const byteText = (text: string): string => Buffer.from(text, "utf8").toString("latin1");

/** Byte string literal. */
export const literal = (text: string): string =>
  `(${byteText(text).replace(/[\\()\r\n]/g, (sign) => escapes.get(sign) ?? sign)})`;

/** Text string that any reader shows, signs that act spelled out: UTF-16 with its mark, in hexadecimal. */
export function textString(text: string): string {
  const bytes = Buffer.from(`\ufeff${spellControls(text)}`, "utf16le").swap16();
  return `<${bytes.toString("hex").toUpperCase()}>`;
}
