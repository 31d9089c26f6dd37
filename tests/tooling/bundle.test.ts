import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
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
