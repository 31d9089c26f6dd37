import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { unzipSync } from "fflate";
import { packageRoot } from "../../src/root.ts";

/** One task of the bench in a process of its own, which loads only what the task needs. */
const [name, from = "", to = ""] = process.argv.slice(2);
if (name === "write") copyFiles(from, to);
else if (name === "unpack") unzipSync(readFileSync(from));
else if (name === "read-sheet") await readSheet();
else await work();

async function work(): Promise<void> {
  const { loadKinds } = await import("../../src/load/kinds.ts");
  const { loadBook } = await import("../../src/load/book-files.ts");
  const kinds = loadKinds([join(packageRoot, "schemas")]);
  const read = { ...loadBook(from, kinds), kinds };
  if (name === "parse") return;
  const { layOut, judgeBook } = await import("../../src/pipeline.ts");
  const judged = judgeBook(read);
  const publication = await layOut(judged);
  if (name === "site") {
    const { siteFiles } = await import("../../src/publish/html/index.ts");
    for await (const [path] of siteFiles(publication))
      if (path === "") throw new Error("a file of the site has no path");
    return;
  }
  const { bookPdf } = await import("../../src/publish/pdf/index.ts");
  const { bytesOf } = await import("../../src/publish/file-bytes.ts");
  const { issuePath } = await import("../../src/publish/publication.ts");
  const files = new Map(judged.loaded.files.map((file) => [issuePath(file), file]));
  await bookPdf(publication, (path) => {
    const file = files.get(path);
    const bytes = file && bytesOf(judged.loaded, file);
    if (bytes === undefined) throw new Error(`${path} is not a file of ${from}`);
    return bytes;
  });
}

/** Reads a sheet file as the import does, in the thread that can be ended, and looks at every cell. */
async function readSheet(): Promise<void> {
  const { readSheetFile } = await import("../../src/sheets/read.ts");
  const read = await readSheetFile(readFileSync(from), from);
  if (!("sheets" in read)) throw new Error(`${read.message}: ${read.why}`);
  let taken = 0;
  for (const { rows } of read.sheets)
    for (const { cells } of rows)
      taken += cells.filter(({ shown, fault }) => shown !== null && fault === undefined).length;
  if (taken !== Number(to)) throw new Error(`${taken} cells were read of ${to}`);
}

function copyFiles(source: string, target: string): void {
  const walk = (dir: string): string[] =>
    readdirSync(dir).flatMap((entry) => {
      const path = join(dir, entry);
      return statSync(path).isDirectory() ? walk(path) : [path];
    });
  for (const path of walk(source)) {
    const copy = join(target, relative(source, path));
    mkdirSync(dirname(copy), { recursive: true });
    writeFileSync(copy, readFileSync(path));
  }
}
