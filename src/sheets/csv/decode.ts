import { Buffer } from "node:buffer";
import { refuse, type Unreadable } from "../unreadable.ts";

const marks: readonly (readonly [mark: readonly number[], encoding: string, name: string])[] = [
  [[0xef, 0xbb, 0xbf], "utf-8", "UTF-8"],
  [[0xff, 0xfe], "utf-16le", "UTF-16"],
  [[0xfe, 0xff], "utf-16be", "UTF-16"],
];

const saveAs =
  "save the sheet anew in the encoding UTF-8 (in a spreadsheet program: “CSV UTF-8”), or import the workbook itself";

/** The text of a CSV file: UTF-8, or UTF-16 with its mark. Throws Unreadable for any other encoding, and for bytes that are no text. */
export function decoded(bytes: Uint8Array): string {
  const [mark, encoding, name] = marks.find(([signs]) => signs.every((sign, at) => bytes[at] === sign)) ?? [
    [],
    "utf-8",
    "UTF-8",
  ];
  const content = bytes.subarray(mark.length);
  let text: string;
  try {
    text = new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(content);
  } catch {
    throw encoding === "utf-8" ? notUtf8(content, mark.length > 0) : broken(name);
  }
  const zero = text.indexOf("\0");
  if (zero >= 0)
    throw refuse(
      "the file is no text that can be read",
      "it holds zero bytes, as a file in UTF-16 without its mark does, or one that is no text",
      saveAs,
      `line ${lineOf(text, zero)}`,
    );
  return text;
}

const broken = (name: string) =>
  refuse(`the file is not in ${name}`, `it begins with the mark of ${name}, and what follows is none`, saveAs);

/** Names the first byte that is not UTF-8, and what it would be in the encoding that older programs save in. */
function notUtf8(bytes: Uint8Array, marked: boolean): Unreadable {
  const at = validUpTo(bytes);
  const line = bytes.subarray(0, at).reduce((count, byte) => count + Number(byte === 10), 1);
  const around = Buffer.from(bytes.subarray(Math.max(0, at - 20), at + 20));
  const word = /[^\s,;"\t]*$/.exec(around.toString("latin1", 0, Math.min(20, at)))?.[0] ?? "";
  const rest = /^[^\s,;"\t]*/.exec(new TextDecoder("windows-1252").decode(bytes.subarray(at, at + 20)))?.[0] ?? "";
  const looks = marked || rest === "" ? "" : `; in Windows-1252 there would stand “${word}${rest}”`;
  const hex = (bytes[at] ?? 0).toString(16).toUpperCase().padStart(2, "0");
  return refuse("the file is not in UTF-8", `its byte ${hex} is no UTF-8${looks}`, saveAs, `line ${line}`);
}

/** Place of the first byte that begins no sign of UTF-8. */
function validUpTo(bytes: Uint8Array): number {
  const isValid = (length: number) => {
    try {
      new TextDecoder("utf-8", { fatal: true }).decode(bytes.subarray(0, length), { stream: true });
      return true;
    } catch {
      return false;
    }
  };
  let [good, bad] = [0, bytes.length];
  while (good < bad) {
    const middle = (good + bad + 1) >> 1;
    if (isValid(middle)) good = middle;
    else bad = middle - 1;
  }
  // The valid beginning may end within a sign: its first byte is the one to name.
  while (good > 0 && ((bytes[good] ?? 0) & 0xc0) === 0x80) good--;
  return Math.min(good, bytes.length - 1);
}

const lineOf = (text: string, at: number): number => text.slice(0, at).split(/\r\n|\n|\r/).length;
