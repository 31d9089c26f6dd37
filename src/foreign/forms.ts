import { isUtf8, type Buffer } from "node:buffer";
import { Refused } from "./refused.ts";
import { pngSignature } from "./png.ts";
import { archiveOf } from "./zip.ts";

/** A form that an original may have. */
export interface Form {
  readonly means: string;
  readonly mediaType: string;
  readonly extension: RegExp;
  /** What its copy in the book is made by; none: it can only be opened beside the book. */
  readonly shows?: "pdf" | "png" | "jpeg";
  readonly is: (file: Buffer) => boolean;
}

const starts = (file: Buffer, ...signs: readonly number[]) => signs.every((sign, at) => file[at] === sign);
const startsText = (file: Buffer, text: string) => file.toString("latin1", 0, text.length) === text;
const xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const forms: readonly Form[] = [
  {
    means: "a PDF",
    mediaType: "application/pdf",
    extension: /\.pdf$/i,
    shows: "pdf",
    is: (file) => /^(?:\u00ef\u00bb\u00bf)?\s{0,16}%PDF-/.test(file.toString("latin1", 0, 32)),
  },
  {
    means: "a PNG picture",
    mediaType: "image/png",
    extension: /\.png$/i,
    shows: "png",
    is: (file) => file.subarray(0, 8).equals(pngSignature),
  },
  {
    means: "a JPEG picture",
    mediaType: "image/jpeg",
    extension: /\.jpe?g$/i,
    shows: "jpeg",
    is: (file) => starts(file, 0xff, 0xd8, 0xff),
  },
  {
    means: "a TIFF picture",
    mediaType: "image/tiff",
    extension: /\.tiff?$/i,
    is: (file) => starts(file, 0x49, 0x49, 0x2a, 0) || starts(file, 0x4d, 0x4d, 0, 0x2a),
  },
  {
    means: "an XLSX workbook",
    mediaType: xlsx,
    extension: /\.xlsx$/i,
    is: (file) => startsText(file, "PK\u0003\u0004") && archiveOf(file)?.names.includes("xl/workbook.xml") === true,
  },
  { means: "a table of text", mediaType: "text/csv", extension: /\.csv$/i, is: isText },
  { means: "a text", mediaType: "text/plain", extension: /\.(?:txt|md)$/i, is: isText },
];

/** What an unwelcome file is, by how it begins. */
const others: readonly (readonly [means: string, is: (file: Buffer) => boolean])[] = [
  ["a program", (file) => startsText(file, "MZ") || startsText(file, "\u007fELF") || isMach(file)],
  ["a script", (file) => startsText(file, "#!")],
  ["a PostScript program", (file) => startsText(file, "%!")],
  ["a drawing in SVG, which can hold scripts", (file) => /<svg[\s>]/i.test(headOf(file))],
  [
    "a web page, which can hold scripts",
    (file) => /^\s*<(?:!doctype html|html|head|body|script|iframe)\b/i.test(headOf(file)),
  ],
  ["a text with markup, which can hold scripts", (file) => /^\s*<[!?a-z]/i.test(headOf(file))],
  ["an Office file of the old form, or one under a password", (file) => starts(file, 0xd0, 0xcf, 0x11, 0xe0)],
  ["an Office file or an archive", (file) => startsText(file, "PK")],
  ["an archive", (file) => startsText(file, "7z\u00bc\u00af") || startsText(file, "Rar!") || starts(file, 0x1f, 0x8b)],
  ["a text with formats (RTF)", (file) => startsText(file, "{\\rtf")],
  ["a GIF picture", (file) => startsText(file, "GIF8")],
  ["a picture of another form", (file) => startsText(file, "BM") || /^RIFF....WEBP|^....ftyp/s.test(headOf(file))],
];

const isMach = (file: Buffer) => starts(file, 0xcf, 0xfa, 0xed, 0xfe) || starts(file, 0xca, 0xfe, 0xba, 0xbe);

const headLength = 1024;
const headOf = (file: Buffer) => file.toString("latin1", 0, headLength).replace(/^\u00ef\u00bb\u00bf/, "");

const otherThan = (file: Buffer) => others.find(([, is]) => is(file))?.[0];

/** Text in UTF-8 or a Latin alphabet: no sign that only programs use, and no beginning that another program would run. */
function isText(file: Buffer): boolean {
  if (otherThan(file) !== undefined || forms.some((form) => form.is !== isText && form.is(file))) return false;
  if (file.includes(0)) return false;
  // Control signs tell other files from a text, whatever its code page; tabs and ends of lines are none of them.
  return isUtf8(file) || !file.subarray(0, headLength).some((byte) => byte < 9 || (byte > 13 && byte < 32));
}

const accepted =
  "PDF, PNG or JPEG, which are shown; TIFF, XLSX without macros, CSV or plain text, which can be opened beside the book";

/** The form of a file, by its content and its name together. Throws Refused for any other. */
export function formOf(path: string, file: Buffer): Form {
  const byName = forms.find(({ extension }) => extension.test(path));
  const byContent = byName?.is(file) === true ? byName : forms.find(({ is }) => is(file));
  if (byContent === undefined) {
    const what =
      otherThan(file) ?? (byName === undefined ? "of no form that is known" : `not ${byName.means}, as its name says`);
    throw refuse(
      `the file is ${what}`,
      "print it to a PDF and record that, or ask for it in one of these forms; then move this file out of files/",
    );
  }
  if (byName !== byContent)
    throw refuse(
      `the file is ${byContent.means} by its content, and its name says otherwise`,
      "give it the name of what it is, in the record too; if it should be something else, ask for it again",
    );
  if (byContent.mediaType === xlsx) checkWorkbook(file);
  return byContent;
}

/** The first part of an Office file by these names that is a program, or may hold one. */
export const macroIn = (names: readonly string[]): string | undefined =>
  names.find(
    (name) => /vbaproject|macrosheets|activex|\.bin$|\.exe$|\.dll$/i.test(name) && !/printersettings/i.test(name),
  );

function checkWorkbook(file: Buffer): void {
  if (macroIn(archiveOf(file)?.names ?? []) !== undefined)
    throw refuse(
      "the workbook holds macros or embedded programs",
      "save it as a workbook without macros (.xlsx), or print it to a PDF, and record that",
    );
}

const refuse = (found: string, hint: string) => new Refused({ sort: "form", found, accepted, hint });
