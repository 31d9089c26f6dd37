import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { judgeBook, layOut, readBook } from "../../../src/pipeline.ts";
import type { JudgedBook } from "../../../src/model/book.ts";
import { siteFiles } from "../../../src/publish/html/index.ts";
import { liveSite } from "../../../src/publish/live/site.ts";
import type { Answer } from "../../../src/publish/live/server.ts";
import { issuePath, type Publication } from "../../../src/publish/publication.ts";
import { copyBook } from "../../support/copy-book.ts";

const unchanged = { fresh: new Set<string>(), gone: [] };
let folder = "";
let judged: JudgedBook;
let publication: Publication;
let answer: (path: string) => Promise<Answer>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "databook-live-"));
  copyBook(join(import.meta.dirname, "../../../demo-data/air-receiver/book"), folder);
  judged = judgeBook(readBook(folder));
  publication = await layOut(judged, unchanged);
  answer = liveSite(judged, publication);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const policy = /<meta http-equiv="Content-Security-Policy"[^>]*>/;
const textOf = ({ body }: Answer) => (typeof body === "string" ? body : Buffer.from(body).toString("utf8"));

test("each page is the page of the issue, but for the policy, which the server states", async () => {
  for await (const [path, content] of siteFiles(publication)) {
    const sent = await answer(`/${path}`);
    expect([path, sent.status]).toEqual([path, 200]);
    const text = Buffer.from(content).toString("utf8");
    if (path.endsWith(".html")) expect(text).toMatch(policy);
    expect(textOf(sent)).toBe(path.endsWith(".html") ? text.replace(policy, "") : text);
  }
});

test("a view that is no issue says so on every page, also of a final book", async () => {
  expect(judged.state).toBe("final");
  for (const { url } of publication.pages.slice(0, 40))
    expect(textOf(await answer(`/${url}`))).toContain(
      "Live view of the records as they were last saved, not an issue.",
    );
});

test("what changed and what is gone stand first, whatever their weight", async () => {
  const gone = [{ severity: "gap" as const, message: "a paper was missing", now: "not found any more" }];
  const view = liveSite(judged, await layOut(judged, { sentence: "0 new, 1 gone", fresh: new Set(), gone }));
  const text = textOf(await view("/"));
  expect(text).toContain("Gone with the last change (1)");
  expect(text).toContain("a paper was missing");
  expect(text).toContain("With the last change: 0 new, 1 gone.");
});

test("records, schemas, findings and the PDF are there too", async () => {
  for (const path of ["/evidence/book.json", "/schemas/joint.schema.json", "/findings.json", "/book.pdf"])
    expect([path, (await answer(path)).status]).toEqual([path, 200]);
});

test("a path that the book does not have is said, and reaches no other file", async () => {
  for (const path of ["/joint/r-NONE.html", "/book.json", "/../book.json", "//etc/passwd", "/evidence/../book.json"])
    expect([path, (await answer(path)).status]).toEqual([path, 404]);
  expect(textOf(await answer("/<script>"))).toContain("&lt;script&gt;");
});

test("an original that changed since it was judged is not shown", async () => {
  const original = judged.loaded.files.find(({ role, path }) => role === "original" && path.endsWith(".pdf"));
  const path = `/${original === undefined ? "" : issuePath(original)}`;
  expect((await answer(path)).type).toBe("application/pdf");
  writeFileSync(join(folder, original?.path ?? ""), "another file");
  const sent = await answer(path);
  expect([sent.status, textOf(sent).includes("This file changed just now")]).toEqual([409, true]);
});
