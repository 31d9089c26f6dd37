import type { Buffer } from "node:buffer";

/** A value of a PDF file as written, with nothing looked up (ISO 32000-1, 7.3). */
export type PdfValue = null | boolean | number | PdfName | PdfText | PdfRef | readonly PdfValue[] | PdfDict | PdfStream;

export interface PdfName {
  readonly type: "name";
  readonly name: string;
}

export interface PdfText {
  readonly type: "text";
  readonly bytes: Buffer;
}

export interface PdfRef {
  readonly type: "ref";
  readonly number: number;
}

export type Entries = ReadonlyMap<string, PdfValue>;

export interface PdfDict {
  readonly type: "dict";
  readonly entries: Entries;
}

export interface PdfStream {
  readonly type: "stream";
  readonly entries: Entries;
  /** As they stand in the file. */
  readonly raw: Buffer;
}

export const isList = (value: PdfValue | undefined): value is readonly PdfValue[] => Array.isArray(value);

const typed = (value: PdfValue | undefined) =>
  typeof value === "object" && value !== null && !isList(value) ? value : undefined;

export const isRef = (value: PdfValue | undefined): value is PdfRef => typed(value)?.type === "ref";
export const isName = (value: PdfValue | undefined): value is PdfName => typed(value)?.type === "name";
export const isText = (value: PdfValue | undefined): value is PdfText => typed(value)?.type === "text";
export const isStream = (value: PdfValue | undefined): value is PdfStream => typed(value)?.type === "stream";
export const isDict = (value: PdfValue | undefined): value is PdfDict => typed(value)?.type === "dict";

/** Entries of a dictionary or of the dictionary of a stream. */
export const entriesOf = (value: PdfValue | undefined): Entries | undefined =>
  isDict(value) || isStream(value) ? value.entries : undefined;

export const nameOf = (value: PdfValue | undefined): string | undefined => (isName(value) ? value.name : undefined);
