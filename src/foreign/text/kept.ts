import { createHash, randomBytes } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isList, isObject, type Json } from "../../model/json.ts";
import type { OriginalText, PageText, PlacedWord } from "../../model/page-text.ts";

/** Changes with whatever changes what is read of the same bytes: our own reading, and the library's version. */
const reading = "1-pdfjs-5.4.624";

const fileOf = (folder: string, sha256: string) => join(folder, reading, sha256.slice(0, 2), `${sha256}.json`);
const hashOf = (text: string) => createHash("sha256").update(text).digest("hex");

/**
 * The text that was kept of the file with this hash; undefined when there is none, or when what is there is not what was
 * written: then the file is read again.
 */
export function keptText(folder: string, sha256: string): OriginalText | undefined {
  try {
    const file = readFileSync(fileOf(folder, sha256), "utf8");
    const end = file.indexOf("\n");
    const body = file.slice(end + 1);
    if (file.slice(0, end) !== hashOf(sha256 + body)) return undefined;
    return textFrom(JSON.parse(body) as Json);
  } catch {
    return undefined;
  }
}

/** Keeps the text of a file. That it cannot be kept is no fault: it is read again the next time. */
export function keepText(folder: string, sha256: string, text: OriginalText): void {
  const path = fileOf(folder, sha256);
  const aside = `${path}.${randomBytes(6).toString("hex")}`;
  const body = JSON.stringify(text);
  try {
    mkdirSync(join(path, ".."), { recursive: true });
    writeFileSync(aside, `${hashOf(sha256 + body)}\n${body}`);
    renameSync(aside, path);
  } catch {
    try {
      rmSync(aside, { force: true });
    } catch {
      // Nothing more can be done about a folder that takes nothing.
    }
  }
}

function textFrom(value: Json): OriginalText | undefined {
  if (!isObject(value)) return undefined;
  const { none, pages } = value;
  if (typeof none === "string") return { none };
  if (!isList(pages)) return undefined;
  const read = pages.map(pageFrom);
  return read.every((page) => page !== undefined) ? { pages: read } : undefined;
}

function pageFrom(value: Json): PageText | undefined {
  if (!isObject(value) || !isList(value["words"]) || typeof value["unseen"] !== "boolean") return undefined;
  const words = value["words"].filter(isWord);
  return words.length === value["words"].length ? { words, unseen: value["unseen"] } : undefined;
}

// A page holds some hundreds of words: only their outer form is looked at, the hash above stands for the rest.
const isWord = (word: Json): word is PlacedWord & Json =>
  isList(word) && word.length === 5 && typeof word[0] === "string";
