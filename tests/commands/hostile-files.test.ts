import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { corpus } from "../foreign/hostile.ts";
import { freshFolder } from "../publish/issue/folders.ts";
import { copyBook } from "../support/copy-book.ts";
import { interimBook } from "../support/demo-book.ts";
import { runIn } from "../support/real.ts";

interface Ended {
  readonly exit: number;
  readonly said: string;
}

/** A command as it is given at a terminal. */
async function command(cwd: string, ...words: readonly string[]): Promise<Ended> {
  const said: string[] = [];
  const { exit } = await runIn({ cwd, out: said, err: said }, ...words);
  return { exit, said: said.join("") };
}

/** The interim book with every hostile file among its originals; those that were there are taken out, to be quick. */
async function hostileBook(): Promise<string> {
  const dir = join(await freshFolder(), "book");
  copyBook(interimBook, dir);
  mkdirSync(join(dir, "files/hostile"));
  for (const { name, bytes } of corpus) writeFileSync(join(dir, "files/hostile", name), bytes);
  return dir;
}

/** Records of them all, as somebody writes them who wants them in the book. */
function recordByHand(dir: string): void {
  const records = corpus.map(({ name, bytes }, index) => ({
    id: `HOSTILE-${index + 1}`,
    path: `files/hostile/${name}`,
    title: name,
    sha256: createHash("sha256").update(bytes).digest("hex"),
    pages: 1,
  }));
  writeFileSync(join(dir, "hostile.json"), JSON.stringify({ kind: "original", records }));
}

const fault = /fault of the program|Error:|\bat \S+ \(|node:internal/;

test("hostile files go through originals, check and build in plain words", { timeout: 300_000 }, async () => {
  const dir = await hostileBook();
  const added = await command(dir, "originals", dir, "--add");
  expect(added.said).not.toMatch(fault);
  expect(added.exit).toBe(1);
  for (const { name, sort, says } of corpus) {
    expect(added.said).toContain(name);
    expect(added.said, name).toContain(sort === "empty" ? "it is empty" : says);
  }

  recordByHand(dir);
  const checked = await command(dir, "check", dir);
  expect(checked.said).not.toMatch(fault);
  expect(checked.exit).toBe(1);
  for (const { name, says } of corpus) {
    expect(checked.said).toContain(name);
    expect(checked.said, name).toContain(says);
  }

  const out = join(dir, "../out");
  const built = await command(dir, "build", dir, "--out", out);
  expect(built.said).not.toMatch(fault);
  // What is open blocks a final issue; an interim one is published with it.
  expect(built.exit).toBe(1);
  expect(existsSync(join(out, "index.html"))).toBe(true);
  const findings = readFileSync(join(out, "findings.html"), "utf8");
  for (const { name } of corpus) expect(findings).toContain(name);
  // What is published of them are no pages of theirs, and no program.
  const published = readdirSync(out, { recursive: true, encoding: "utf8" });
  expect(published.filter((path) => /\.(exe|svg|bat|js|zip)$/i.test(path) && path.includes("hostile"))).toEqual([]);
});
