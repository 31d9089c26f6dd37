import { existsSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));

/** Folder below the compiled modules in which they stand put together (`tooling/bundle.ts`). */
export const bundled = "bundled";

/** Folder of the package, whether its code runs from `src/` or compiled from `dist/src/`. */
export const packageRoot: string = (() => {
  for (let at = here; ; at = dirname(at)) {
    if (existsSync(join(at, "package.json")) && existsSync(join(at, "schemas"))) return at;
    if (dirname(at) === at)
      throw new Error("the package folder, with package.json and schemas/, is not above the code");
  }
})();

/** The folder of the bundle, when this is part of it. */
export const bundleHere: string | undefined = basename(here) === bundled ? here : undefined;

/** A file that a thread runs: of the bundle, when this is part of it; else compiled, also when this is run from its sources. */
export const threadFile = (path: string): string =>
  join(packageRoot, "dist/src", ...(bundleHere === undefined ? [] : [bundled]), path);

/** "databook 0.1.0": named on *Judged with* and in the marker of an issue. */
export const toolName: string = (() => {
  const { name, version } = JSON.parse(readFileSync(join(packageRoot, "package.json"), "utf8")) as {
    name: string;
    version: string;
  };
  return `${name} ${version}`;
})();
