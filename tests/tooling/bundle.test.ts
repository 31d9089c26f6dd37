import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { shippedDefinitions, tableFolder } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { checkDefinitions } from "../../src/plan/check-definitions.ts";
import { codeFile, hashOfFiles, proofFile, proofHere, provedPaths } from "../../src/proof.ts";
import { packageRoot } from "../../src/root.ts";

const bundle = join(packageRoot, "dist/src/bundled");
const jsonIn = (name: string) => JSON.parse(readFileSync(join(bundle, name), "utf8")) as unknown;
const schemas = join(packageRoot, "schemas");

test("what the build has proved is what is proved of these sources (npm run build)", () => {
  const paths = checkDefinitions(shippedDefinitions(loadKinds([schemas])));
  expect(Object.keys(paths).length).toBeGreaterThan(100);
  expect(jsonIn(proofFile)).toEqual({
    schemas: hashOfFiles(schemas),
    tables: hashOfFiles(tableFolder),
    code: hashOfFiles(bundle, ".js"),
    paths,
  });
});

test("the code of definitions is kept as their modules have it", () => {
  // Asked of the modules themselves: a test would load them in another form.
  const script = `
    const { shippedCode } = await import(${JSON.stringify(join(packageRoot, "dist/src/definitions.js"))});
    const { functionsIn } = await import(${JSON.stringify(join(packageRoot, "dist/src/proof.js"))});
    console.log(JSON.stringify(functionsIn(shippedCode).map(String)));`;
  const said = execFileSync(process.execPath, ["--input-type=module", "-e", script], {
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  const texts = JSON.parse(said) as readonly string[];
  expect(texts.length).toBeGreaterThan(100);
  expect(JSON.stringify(jsonIn(codeFile)) === JSON.stringify(texts)).toBe(true);
});

test("run from its sources the program takes nothing for proved", () => {
  expect(proofHere()).toBeUndefined();
  expect(provedPaths(shippedDefinitions(loadKinds([schemas])))).toBeUndefined();
});

/** A copy of what is installed, and what its command says of a book. */
function installed(change: (root: string) => void): { readonly status: number | null; readonly said: string } {
  const root = mkdtempSync(join(tmpdir(), "databook-installed-"));
  for (const part of ["package.json", "schemas", "templates", "src/tables/data", "dist/src/bundled"])
    cpSync(join(packageRoot, part), join(root, part), { recursive: true });
  symlinkSync(join(packageRoot, "node_modules"), join(root, "node_modules"), "dir");
  change(root);
  const book = join(packageRoot, "records");
  const { status, stderr } = spawnSync(process.execPath, [join(root, "dist/src/bundled/cli.js"), "check", book], {
    encoding: "utf8",
  });
  return { status, said: stderr };
}

describe("an installation that is not as it was built", () => {
  test.each(["foreign", "foreign/worker.js", "foreign/waiter.js"])(
    "without %s: what is missing and what to do, exit 2",
    (gone) => {
      const { status, said } = installed((root) => rmSync(join(root, "dist/src/bundled", gone), { recursive: true }));
      expect(status).toBe(2);
      expect(said).toMatch(/^the installation is damaged: \S+foreign\/w\w+\.js is missing\./);
      expect(said).toContain("Install the package again");
      expect(said.trim().split("\n")).toHaveLength(1);
    },
  );
  test("whole: nothing is said of it", () => {
    const { status, said } = installed(() => undefined);
    expect(status).toBe(1);
    expect(said).not.toContain("differ from those the program was built with");
  });
  test("with another table: that is said, and the book is judged", () => {
    const { status, said } = installed((root) => {
      const table = join(root, "src/tables/data/en-10204.json");
      writeFileSync(table, `${readFileSync(table, "utf8")}\n`);
    });
    expect(status).toBe(1);
    expect(said).toContain("note: the shipped tables differ from those the program was built with");
  });
});

test("the bundle says of a book what its modules say", () => {
  const book = join(packageRoot, "demo-data/air-receiver-interim/book");
  const said = ["dist/src/bundled/cli.js", "dist/src/cli.js"].map((cli) => {
    try {
      return execFileSync(process.execPath, [join(packageRoot, cli), "check", book, "--format", "json"], {
        encoding: "utf8",
        maxBuffer: 64 * 1024 * 1024,
      });
    } catch (error) {
      const { status, stdout } = error as { status: number; stdout: string };
      return `${status} ${stdout}`;
    }
  });
  expect(said[0]).toContain('"findings"');
  expect(said[0]).toBe(said[1]);
});
