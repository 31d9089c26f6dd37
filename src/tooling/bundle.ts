import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { rolldown } from "rolldown";
import { shippedCode, shippedDefinitions, tableFolder } from "../definitions.ts";
import type { Kind } from "../model/kind.ts";
import { checkDefinitions } from "../plan/check-definitions.ts";
import { codeFile, functionsIn, hashOfFiles, proofFile, type Proof } from "../proof.ts";
import { bundled, packageRoot } from "../root.ts";

/** Where the program begins, and its threads: each is one file of the bundle. */
const entries = ["cli", "foreign/waiter", "foreign/worker", "sheets/worker"];

/** Paths of modules, and what the bundler itself adds; anything else is a package, or a part of Node. */
const ours = /^[./\\]|^[A-Za-z]:\\|^@oxc-project\/runtime\//;

/**
 * Puts the compiled modules together in a few files, beside the modules themselves: to load six hundred one by one takes longer
 * than to judge a small book. What is imported when it is asked for stays apart; packages stay packages. Beside them stands what
 * was proved of the definitions: throws `ProgramError` where one is wrong. `kinds` are those of the folder `schemas`.
 */
export async function writeBundle(schemas: string, kinds: ReadonlyMap<string, Kind>): Promise<void> {
  const code = join(packageRoot, "dist/src");
  const dir = join(code, bundled);
  const bundle = await rolldown({
    input: Object.fromEntries(entries.map((name) => [name, join(code, `${name}.js`)])),
    platform: "node",
    external: (id) => !ours.test(id),
    transform: { target: "node20" },
    logLevel: "warn",
  });
  rmSync(dir, { recursive: true, force: true });
  await bundle.write({ dir, format: "esm", entryFileNames: "[name].js", chunkFileNames: "[name].js" });
  await bundle.close();
  // Put together, functions lose their comments, and some of their names are changed.
  writeFileSync(join(dir, codeFile), JSON.stringify(functionsIn(shippedCode).map(String)));
  // Last, so that the program stands and says what is wrong with its definitions, where something is.
  const proof: Proof = {
    schemas: hashOfFiles(schemas),
    tables: hashOfFiles(tableFolder),
    code: hashOfFiles(dir, ".js"),
    paths: checkDefinitions(shippedDefinitions(kinds)),
  };
  writeFileSync(join(dir, proofFile), JSON.stringify(proof));
}
