import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { folders } from "./folders.ts";

// Run compiled, at the root of the repository: node dist/demo-data/make.js. Writes the demonstration books and shelves anew.
for (const { folder, make } of folders) {
  const files = await make();
  const place = join("demo-data", folder);
  rmSync(place, { recursive: true, force: true });
  for (const [path, content] of files) {
    const target = join(place, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  console.log(`${place}: ${files.size} files`);
}
