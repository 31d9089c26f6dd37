import { publishedPath, type BookFile } from "../../model/record.ts";
import { pathNamedBy, shelfOf } from "../../model/shelf.ts";
import type { Row } from "../blocks.ts";
import { isWithheld, issuePath, type Page } from "../publication.ts";
import { linkTo, plain, type Context } from "./context.ts";
import { plainTable } from "./plain-table.ts";

const onShelf = ({ path }: BookFile) => shelfOf(path) !== undefined;

/** What is on a shelf has another path there than in any book: it is called by the one it has in the issue. */
const nameOfFile = (file: BookFile) => (onShelf(file) ? publishedPath(file) : file.path);

/** All files with their hashes, and what they are summed up to. */
export function integrityPage(context: Context, number: string, section: number): Page {
  const { loaded, fingerprint } = context.judged;
  const files = [...loaded.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const owner = new Map(
    [...(context.judged.graph.byKind.get("original")?.values() ?? [])].map((record) => [
      pathNamedBy(record, plain(record.value["path"])),
      record,
    ]),
  );
  return {
    url: "integrity.html",
    number,
    title: "Integrity",
    under: [
      "The evidence fingerprint is the SHA-256 over the list below, without issue.json: change one byte of a record or an original, and it changes.",
    ],
    section,
    blocks: [
      { type: "fingerprint", label: "Evidence fingerprint (SHA-256)", groups: fingerprint.match(/.{4}/g) ?? [] },
      plainTable(
        `${number}.1`,
        "Records and originals",
        { File: 4, Record: 1.5, "Bytes#": 1, "SHA-256, first 32 signs": 4 },
        files.map((file): Row => {
          const record = owner.get(file.path);
          return {
            cells: [
              {
                type: "text",
                text: isWithheld(file)
                  ? [nameOfFile(file), ", not published"]
                  : [
                      { type: "file", path: issuePath(file), text: nameOfFile(file) },
                      ...(file.publishedAs === undefined || onShelf(file)
                        ? []
                        : [`, which lies here as ${file.publishedAs}`]),
                    ],
              },
              record === undefined ? { type: "empty" } : { type: "text", text: [linkTo(context, record)] },
              { type: "number", text: String(file.size) },
              {
                type: "text",
                text: [{ type: "code", text: (file.sha256.slice(0, 32).match(/.{8}/g) ?? []).join(" ") }],
              },
            ],
          };
        }),
      ),
    ],
  };
}
