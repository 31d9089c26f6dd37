import { join } from "node:path";
import { configDefaults, defineConfig } from "vitest/config";

const keptTexts = join(import.meta.dirname, "node_modules/.cache/databook-tests");

/** Test files that change what all of a process share, modules or its environment, or are changed by it: each has a process of its own. */
const alone = [
  "tests/again/damaged.test.ts",
  "tests/commands/watch.test.ts",
  "tests/load/put-files.test.ts",
  // Compares what two ways cost, which depends on what ran before.
  "tests/load/scan.test.ts",
  "tests/publish/html/browser.test.ts",
  "tests/publish/issue/write-fails.test.ts",
  "tests/publish/pdf/book.test.ts",
];

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    globalSetup: ["tests/support/run-folder.ts"],
    setupFiles: ["tests/support/kept-texts.ts"],
    // Commands that tests run keep the texts of originals there too.
    env: { DATABOOK_CACHE: keptTexts },
    projects: [
      {
        extends: true,
        test: {
          name: "shared",
          // Schemas, definitions and the demonstrations are loaded and judged once for all files of a process.
          isolate: false,
          include: ["tests/**/*.test.ts"],
          exclude: [...configDefaults.exclude, ...alone],
        },
      },
      { extends: true, test: { name: "alone", include: alone, sequence: { groupOrder: 1 } } },
    ],
  },
});
