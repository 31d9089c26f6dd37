import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { generatedFiles } from "./generate.ts";
import { loadKinds } from "../load/kinds.ts";
import { packageRoot } from "../root.ts";
import { generatedLists } from "./lists.ts";

// Run at the root of the repository by `npm run types`. With --check nothing is written: it only says what is outdated.
const check = process.argv.includes("--check");

function current(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

const made = [
  ...(await generatedFiles(loadKinds(["schemas"]))),
  ...(await generatedLists("src", join(packageRoot, "dist/src"))),
];
const outdated = made.filter(([path, content]) => current(path) !== content);
for (const [path, content] of outdated) {
  console.log(`${check ? "outdated" : "written"}: ${path}`);
  if (check) continue;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
}
if (check && outdated.length > 0) {
  console.log("run `npm run types`");
  process.exitCode = 1;
}
