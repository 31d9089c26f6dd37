import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder of the package, whether its code runs from `src/` or compiled from `dist/src/`. */
export const packageRoot: string = (() => {
  for (let at = dirname(fileURLToPath(import.meta.url)); ; at = dirname(at)) {
    if (existsSync(join(at, "package.json")) && existsSync(join(at, "schemas"))) return at;
    if (dirname(at) === at)
      throw new Error("the package folder, with package.json and schemas/, is not above the code");
  }
})();

/** "databook 0.1.0": named on *Judged with* and in the marker of an issue. */
export const toolName: string = (() => {
  const { name, version } = JSON.parse(readFileSync(join(packageRoot, "package.json"), "utf8")) as {
    name: string;
    version: string;
  };
  return `${name} ${version}`;
})();
