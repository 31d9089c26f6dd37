import { join } from "node:path";
import { defineConfig } from "vitest/config";

const keptTexts = join(import.meta.dirname, "node_modules/.cache/databook-tests");

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["dist/**", "node_modules/**"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    setupFiles: ["tests/support/kept-texts.ts"],
    // Commands that tests run keep the texts of originals there too.
    env: { DATABOOK_CACHE: keptTexts },
  },
});
