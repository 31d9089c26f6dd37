// Run by `npm run types` before the build, and therefore no TypeScript: what is made from the sources is made even while the
// lists and types that stand there name what is gone, or do not name what is new. What is wrong then, the build says after it.
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** @param {string[]} args */
const node = (...args) => spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });

node(join(root, "src/tooling/tidy-dist.js"));
node(createRequire(import.meta.url).resolve("typescript/bin/tsc"), "-p", "tsconfig.json", "--noEmitOnError", "false");
const { status, stdout, stderr } = node(join(root, "dist/src/tooling/types.js"), ...process.argv.slice(2));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = status ?? 1;
