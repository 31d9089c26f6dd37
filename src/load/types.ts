import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { generatedFiles } from "./generate.ts";
import { loadKinds } from "./kinds.ts";

// Run at the root of the repository by `npm run types`. With --check nothing is written: it only says what is outdated.
const check = process.argv.includes("--check");

function current(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

const outdated = [...(await generatedFiles(loadKinds(["schemas"])))].filter(
  ([path, content]) => current(path) !== content,
);
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
