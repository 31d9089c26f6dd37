import { rmSync } from "node:fs";
import { join } from "node:path";
import { rolldown } from "rolldown";
import { bundled, packageRoot } from "../root.ts";

/** Where the program begins, and its threads: each is one file of the bundle. */
const entries = ["cli", "foreign/waiter", "foreign/worker", "sheets/worker"];

/** Paths of modules, and what the bundler itself adds; anything else is a package, or a part of Node. */
const ours = /^[./\\]|^[A-Za-z]:\\|^@oxc-project\/runtime\//;

/**
 * Puts the compiled modules together in a few files, beside the modules themselves: to load six hundred one by one takes longer
 * than to judge a small book. What is imported when it is asked for stays apart; packages stay packages.
 */
export async function writeBundle(): Promise<void> {
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
}
