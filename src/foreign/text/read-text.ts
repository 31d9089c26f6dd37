import type { Buffer } from "node:buffer";
import type { OriginalText, PageText, PlacedWord } from "../../model/page-text.ts";
import { newBudget, usualLimits, type Limits } from "../budget.ts";
import { Refused } from "../refused.ts";
import { openText } from "./library.ts";
import { wordsOf, type TextRun } from "./page-words.ts";
import { unseenText } from "./painted.ts";

/** Words of one file, at most: a paper of a book has some hundreds a page. */
export const mostWords = 400_000;

/**
 * The text of a PDF, page by page. What keeps it from being read is said in the answer, never thrown: the same bytes give the
 * same on every machine.
 */
export async function readText(file: Buffer, limits: Limits = usualLimits, most = mostWords): Promise<OriginalText> {
  if (file.length > limits.bytes) return { none: "the file is larger than is read" };
  let unseen: readonly boolean[];
  try {
    unseen = unseenText(file, () => newBudget(limits));
  } catch (error) {
    if (error instanceof Refused) return { none: error.fault.found };
    throw error;
  }
  try {
    // The library takes the bytes away from whoever hands them over.
    return { pages: await pagesOf(new Uint8Array(file), unseen, most) };
  } catch (error) {
    if (error instanceof TooMuch) return { none: "the file holds more text than is read" };
    return { none: "its text cannot be read" };
  }
}

class TooMuch extends Error {}

async function pagesOf(bytes: Uint8Array, unseen: readonly boolean[], most: number): Promise<readonly PageText[]> {
  const document = await openText(bytes);
  try {
    const pages: PageText[] = [];
    let left = most;
    for (let number = 1; number <= Math.min(document.numPages, unseen.length); number++) {
      const page = await document.getPage(number);
      const { items } = await page.getTextContent();
      const words: PlacedWord[] = wordsOf(items.filter(isRun));
      page.cleanup();
      if ((left -= words.length) < 0) throw new TooMuch();
      pages.push({ words, unseen: unseen[number - 1] ?? false });
    }
    return pages;
  } finally {
    await document.destroy();
  }
}

const isRun = (item: unknown): item is TextRun =>
  typeof item === "object" && item !== null && "str" in item && typeof item.str === "string";
