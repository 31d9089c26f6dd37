import { extname } from "node:path";
import { composedSchemas } from "../../load/compose.ts";
import type { JudgedBook } from "../../model/book.ts";
import type { BookFile } from "../../model/record.ts";
import { reportJson } from "../../report/json.ts";
import { reportOf } from "../../report/report.ts";
import { bytesOf } from "../file-bytes.ts";
import { siteOnDemand } from "../html/index.ts";
import { findingsPage } from "../outline/finding-blocks.ts";
import { isWithheld, issuePath, type Publication } from "../publication.ts";
import type { Answer } from "./server.ts";
import { wordsPage } from "./words-page.ts";

/** Media types of what a book holds; anything else is sent as bytes to keep. */
const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/plain; charset=utf-8",
  ".pdf": "application/pdf",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
};

const found = (path: string, body: Uint8Array | string): Answer => ({
  status: 200,
  type: types[extname(path).toLowerCase()] ?? "application/octet-stream",
  body,
});

/**
 * The issue a judged book would give, each of its files made when it is asked for. The first page is the list of findings.
 * Originals are read from the book then; one that changed since the book was judged is not shown under its old hash.
 */
export function liveSite(judged: JudgedBook, publication: Publication): (path: string) => Promise<Answer> {
  const site = siteOnDemand(publication);
  const files = new Map(judged.loaded.files.filter((file) => !isWithheld(file)).map((file) => [issuePath(file), file]));
  const schemas = new Map(
    [...composedSchemas(judged.definitions.kinds)].map(([path, schema]) => [`schemas/${path}`, schema]),
  );
  const made = new Map<string, Promise<Uint8Array>>();
  const once = (path: string, make: () => Promise<Uint8Array>) => {
    const bytes = made.get(path) ?? make();
    made.set(path, bytes);
    return bytes;
  };
  return async (asked) => {
    const path = asked === "/" ? findingsPage : asked.slice(1);
    const page = site(path);
    if (page !== undefined) return found(path, page);
    if (path === "book.pdf") return found(path, await once(path, () => pdfOf(judged, publication)));
    if (path === "findings.json") return found(path, reportJson(reportOf(judged, publication.tool)));
    const schema = schemas.get(path);
    if (schema !== undefined) return found(path, `${JSON.stringify(schema, null, 2)}\n`);
    const file = files.get(path);
    if (file === undefined)
      return wordsPage(404, "There is no such page", [
        `The book as it was last saved has no page or file "${path}". The record it belonged to may be gone, or have another number.`,
      ]);
    const bytes = bytesNow(judged, file);
    return bytes === undefined
      ? wordsPage(409, "This file changed just now", [
          `"${file.path}" is not what was judged. The book is judged again; this page renews itself.`,
        ])
      : found(path, bytes);
  };
}

/** What can no longer be read is as if it had changed. */
function bytesNow({ loaded }: JudgedBook, file: BookFile): Uint8Array | undefined {
  try {
    return bytesOf(loaded, file);
  } catch {
    return undefined;
  }
}

async function pdfOf(judged: JudgedBook, publication: Publication): Promise<Uint8Array> {
  const { bookPdf } = await import("../pdf/index.ts");
  const bytes = new Map<string, Uint8Array>();
  for (const file of judged.loaded.files)
    if (file.role === "original" && !isWithheld(file))
      bytes.set(issuePath(file), bytesNow(judged, file) ?? new Uint8Array());
  return await bookPdf(publication, (path) => bytes.get(path) ?? new Uint8Array());
}
