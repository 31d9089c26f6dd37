import { composedSchemas } from "../load/compose.ts";
import { quoted } from "../load/portable.ts";
import type { JudgedBook } from "../model/book.ts";
import { reportJson } from "../report/json.ts";
import { reportOf } from "../report/report.ts";
import { toolName } from "../root.ts";
import { bytesOf } from "./file-bytes.ts";
import { siteFiles } from "./html/index.ts";
import { hashLines, withheldName } from "./issue/index.ts";
import { publishedPath } from "../model/record.ts";
import { bookPdf } from "./pdf/index.ts";
import type { Progress } from "./progress.ts";
import { isWithheld, issuePath, type Publication } from "./publication.ts";
import { ChangedWhileBuilding } from "./changed.ts";

/**
 * Every file of an issue by its path, but for the marker and the hash list that seal it: the site, the PDF, the originals
 * byte for byte, the records as judged, the composed schemas and the findings.
 */
export async function issueFiles(
  judged: JudgedBook,
  publication: Publication,
  progress?: Progress,
): Promise<ReadonlyMap<string, Uint8Array | string>> {
  const files = new Map<string, Uint8Array | string>();
  const bytes = new Map<string, Uint8Array>();
  for (const file of judged.loaded.files) {
    const content = bytesOf(judged.loaded, file);
    if (content === undefined)
      throw new ChangedWhileBuilding(`${quoted(file.path)} changed while the book was being built; build it again`);
    // Of a form that is not published, only record and hash go out.
    if (isWithheld(file)) continue;
    bytes.set(issuePath(file), content);
    files.set(issuePath(file), content);
  }
  const withheld = judged.loaded.files
    .filter(isWithheld)
    .map((file) => ({ path: publishedPath(file), sha256: file.sha256 }));
  if (withheld.length > 0) files.set(withheldName, hashLines(withheld));
  for (const [path, schema] of composedSchemas(judged.definitions.kinds))
    files.set(`schemas/${path}`, `${JSON.stringify(schema, null, 2)}\n`);
  files.set("findings.json", reportJson(reportOf(judged, toolName)));
  for (const [path, content] of await siteFiles(publication, files.keys(), progress)) files.set(path, content);
  files.set(
    "book.pdf",
    await bookPdf(publication, (path) => bytes.get(path) ?? new Uint8Array(), { ...(progress && { progress }) }),
  );
  return files;
}
