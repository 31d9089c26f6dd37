import { composedSchemas } from "../load/compose.ts";
import { quoted } from "../load/portable.ts";
import type { JudgedBook } from "../model/book.ts";
import { reportJson } from "../report/json.ts";
import { reportOf } from "../report/report.ts";
import { toolName } from "../root.ts";
import { bytesOf } from "./file-bytes.ts";
import { siteFiles } from "./html/index.ts";
import { hashLines, withheldName, type IssueFile } from "./issue/index.ts";
import { publishedPath, type BookFile } from "../model/record.ts";
import { bookPdf } from "./pdf/index.ts";
import type { Progress } from "./progress.ts";
import { isWithheld, issuePath, type Publication } from "./publication.ts";
import { ChangedWhileBuilding } from "./changed.ts";

/**
 * Every file of an issue with its path, each given as soon as it is made, but for the marker and the hash list that seal it:
 * the originals byte for byte, the records as judged, the composed schemas, the findings, the site and the PDF. Throws
 * `ChangedWhileBuilding` when a file of the book is not what was judged any more.
 */
export async function* issueFiles(
  judged: JudgedBook,
  publication: Publication,
  progress?: Progress,
): AsyncGenerator<IssueFile> {
  const { files } = judged.loaded;
  const published = new Map(files.filter((file) => !isWithheld(file)).map((file) => [issuePath(file), file]));
  const beside = new Set<string>();
  const kept = (file: IssueFile): IssueFile => {
    beside.add(file[0]);
    return file;
  };
  for (const file of files) {
    const content = unchangedBytes(judged, file);
    // Of a form that is not published, only record and hash go out.
    if (!isWithheld(file)) yield kept([issuePath(file), content]);
  }
  const withheld = files.filter(isWithheld).map((file) => ({ path: publishedPath(file), sha256: file.sha256 }));
  if (withheld.length > 0) yield kept([withheldName, hashLines(withheld)]);
  for (const [path, schema] of composedSchemas(judged.definitions.kinds))
    yield kept([`schemas/${path}`, `${JSON.stringify(schema, null, 2)}\n`]);
  yield kept(["findings.json", reportJson(reportOf(judged, toolName))]);
  yield* siteFiles(publication, beside, progress);
  const original = (path: string) => {
    const file = published.get(path);
    return file === undefined ? new Uint8Array() : unchangedBytes(judged, file);
  };
  yield ["book.pdf", await bookPdf(publication, original, { ...(progress && { progress }) })];
}

/** A file is read when it is needed, and again for the PDF: all originals at once may be more than memory holds. */
function unchangedBytes({ loaded }: JudgedBook, file: BookFile): Uint8Array {
  const content = bytesOf(loaded, file);
  if (content === undefined)
    throw new ChangedWhileBuilding(`${quoted(file.path)} changed while the book was being built; build it again`);
  return content;
}
