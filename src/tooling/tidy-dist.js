// Run by `npm run build` before the compiler, and therefore no TypeScript: the compiler remembers what it wrote and looks
// neither at what has gone from dist/ nor at what should have gone with its source.
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** What the compiler makes of one source. */
const endings = [".js", ".js.map", ".d.ts"];

/**
 * Removes what was compiled from sources that are gone, so that nothing loads it by mistake; and where compiled files are
 * missing, the compiler's memory, so that it writes all of them again.
 * @param {string} root folder that holds `dist/` and the sources
 */
function tidy(root) {
  const dist = join(root, "dist");
  if (!existsSync(dist)) return;
  for (const path of readdirSync(dist, { recursive: true, encoding: "utf8" })) {
    const ending = endings.find((one) => path.endsWith(one));
    if (ending !== undefined && !existsSync(join(root, `${path.slice(0, -ending.length)}.ts`)))
      rmSync(join(dist, path));
  }
  const memory = join(dist, "tsconfig.tsbuildinfo");
  if (existsSync(memory) && !isWhole(root, memory)) rmSync(memory);
}

/**
 * @param {string} root
 * @param {string} memory file in which the compiler keeps what it compiled
 */
function isWhole(root, memory) {
  const { fileNames } = JSON.parse(readFileSync(memory, "utf8"));
  return fileNames
    .map((/** @type {string} */ name) => resolve(dirname(memory), name))
    .filter((/** @type {string} */ path) => !/\.d\.ts$|[/\\]node_modules[/\\]/.test(path) && existsSync(path))
    .every((/** @type {string} */ path) => {
      const compiled = join(root, "dist", path.slice(root.length, -".ts".length));
      return endings.every((ending) => existsSync(compiled + ending));
    });
}

tidy(resolve(dirname(fileURLToPath(import.meta.url)), "../.."));
