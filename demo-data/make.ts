import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { bookFiles, finalEdition, interimEdition } from "./air-receiver/book-files.ts";
import { bookFiles as boilerFiles, boilerEdition } from "./boiler/book-files.ts";

// Run compiled, at the root of the repository: node dist/demo-data/make.js. Writes the demonstration books anew.
const books = [
  ["demo-data/boiler/book", boilerEdition, boilerFiles],
  ["demo-data/air-receiver/book", finalEdition, bookFiles],
  ["demo-data/air-receiver-interim/book", interimEdition, bookFiles],
] as const;

for (const [folder, edition, make] of books) {
  const files = await make(edition);
  rmSync(folder, { recursive: true, force: true });
  for (const [path, content] of files) {
    const target = join(folder, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  console.log(`${folder}: ${files.size} files`);
}
