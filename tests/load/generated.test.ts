import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { generatedFiles } from "../../src/load/generate.ts";
import { loadKinds } from "../../src/load/kinds.ts";

it("types and editor schemas are those that the schemas make (npm run types)", async () => {
  const made = await generatedFiles(loadKinds(["schemas"]));
  const outdated = [...made].filter(([path, content]) => readFileSync(path, "utf8") !== content).map(([path]) => path);
  expect(outdated).toEqual([]);
  expect(
    readdirSync("schemas/editor")
      .map((name) => `schemas/editor/${name}`)
      .filter((path) => !made.has(path)),
  ).toEqual([]);
});
