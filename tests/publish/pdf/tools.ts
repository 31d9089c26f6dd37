import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "vitest";

type Tool = "qpdf" | "pdfinfo" | "pdftotext" | "pdffonts" | "mutool";

const present = (tool: Tool) => spawnSync(tool, ["-v"]).error === undefined;

/** A test that needs outside programs: without them it is skipped by name, except where everything has to be there. */
export function testWith(tools: readonly Tool[], name: string, body: () => void | Promise<void>): void {
  const absent = tools.filter((tool) => !present(tool));
  const inCi = process.env["CI"] !== undefined;
  if (absent.length === 0 || inCi) test(name, body);
  else test.skip(`${name} (not run: ${absent.join(", ")} not installed)`, body);
}

/** Runs a program on a PDF given as bytes; `@` among the arguments stands for its file. */
export function runOn(bytes: Uint8Array, tool: Tool, ...args: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "book-pdf-"));
  try {
    const file = join(folder, "book.pdf");
    writeFileSync(file, bytes);
    return execFileSync(
      tool,
      args.map((arg) => (arg === "@" ? file : arg)),
      { encoding: "utf8", maxBuffer: 1 << 28 },
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
