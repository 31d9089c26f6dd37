import { mkdtemp, mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach } from "vitest";
import { evidenceFingerprint, sha256, type Content, type Marker } from "../../../src/publish/issue/index.ts";
import { byCodePoint } from "../../../src/model/order.ts";
import { newSeal } from "../../../src/publish/issue/hash-list.ts";
import { listFolder } from "../../../src/publish/issue/folder.ts";

const made: string[] = [];

afterEach(async () => {
  for (const dir of made.splice(0)) await rm(dir, { recursive: true, force: true });
});

/** A folder that is removed after the test. */
export async function freshFolder(): Promise<string> {
  const dir = await mkdtemp(join(tmpdir(), "databook-test-"));
  made.push(dir);
  return dir;
}

export async function put(dir: string, files: Readonly<Record<string, Content>>): Promise<void> {
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(dir, path)), { recursive: true });
    await writeFile(join(dir, path), content);
  }
}

/** Every file of a folder with its text. */
export async function contents(dir: string): Promise<Readonly<Record<string, string>>> {
  const { files } = await listFolder(dir);
  return Object.fromEntries(
    await Promise.all(files.map(async (path) => [path, await readFile(join(dir, path), "utf8")] as const)),
  );
}

const scan = new Uint8Array([0x25, 0x50, 0x44, 0x46, 0, 255, 128]);

/** A page as far as verifying reads it: the fingerprint whole, and its beginning at the foot. */
export const pagePrinting = (fingerprint: string): string => {
  const groups = fingerprint.match(/.{4}/g) ?? [];
  const items = groups.map((group) => `<li>${group}</li>`).join("");
  return `<!doctype html>\n<figure class="fingerprint"><ul>${items}</ul></figure><footer><code>${groups.slice(0, 4).join(" ")}</code></footer>\n`;
};

/** A small issue: two pages, two records, issue.json, one original. */
export function sampleFiles(changes: Readonly<Record<string, Content>> = {}): ReadonlyMap<string, Content> {
  const files = new Map<string, Content>(
    Object.entries({
      "index.html": "",
      "joint/r-L1.html": "<p>L1 Ø</p>\n",
      "evidence/book.json": `{"kind":"book"}\n`,
      "evidence/weld-log/seams.json": `{"kind":"weld-log"}\n`,
      "evidence/issue.json": `{"kind":"issue"}\n`,
      "files/crt-012.pdf": scan,
      "findings.json": "{}\n",
      ...changes,
    }),
  );
  if (files.get("index.html") === "") files.set("index.html", pagePrinting(evidenceOf(files)));
  return files;
}

/** Every file of an issue, what seals it among them, by path. */
export function sealed(files: ReadonlyMap<string, Content>, marker: Marker): ReadonlyMap<string, Content> {
  const seal = newSeal(marker);
  for (const file of files) seal.add(file);
  return new Map([...files, ...seal.close().files].sort(([a], [b]) => byCodePoint(a, b)));
}

/** The marker that belongs to `sampleFiles`. */
export function sampleMarker(files = sampleFiles(), changes: Partial<Marker> = {}): Marker {
  return {
    format: 1,
    holds: "issue",
    number: "TQ423-01",
    revision: "0",
    state: "final",
    fingerprint: evidenceOf(files),
    tool: "databook 0.1.0",
    ...changes,
  };
}

function evidenceOf(files: ReadonlyMap<string, Content>): string {
  return evidenceFingerprint(
    [...files].flatMap(([path, content]) =>
      path.startsWith("evidence/") || path.startsWith("files/")
        ? [{ path: path.replace(/^evidence\//, ""), sha256: sha256(content) }]
        : [],
    ),
  );
}
