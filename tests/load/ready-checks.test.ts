import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";
import { expect, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import { checkName } from "../../src/load/ready-checks.ts";
import { packageRoot } from "../../src/root.ts";

const built = join(packageRoot, "dist/src/generated/schema-checks.cjs");
const ready = createRequire(import.meta.url)(built) as Record<string, (value: unknown) => boolean>;
const kinds = loadKinds([join(packageRoot, "schemas")]);

test("every shipped schema is compiled beforehand, for a record alone and for a row", () => {
  const missing = [...kinds.values()].flatMap(({ name, single, row }) =>
    [single, row].some((schema) => ready[checkName(schema)] === undefined) ? [name] : [],
  );
  expect(missing).toEqual([]);
});

test("a changed schema has another name, so that old code never checks it", () => {
  const joint = kinds.get("joint");
  expect(ready[checkName({ ...joint?.single, required: [] })]).toBeUndefined();
});

test("the compiler of schemas is not loaded for a sound book", () => {
  const script = `
    const { createRequire } = await import("node:module");
    const { readBook } = await import(${JSON.stringify(join(packageRoot, "dist/src/pipeline.js"))});
    const { findings } = readBook(${JSON.stringify(join(packageRoot, "demo-data/air-receiver/book"))});
    const loaded = Object.keys(createRequire(import.meta.url).cache).filter((file) => file.endsWith("/ajv.js") || file.endsWith("/2020.js"));
    console.log(JSON.stringify({ findings: findings.length, loaded }));`;
  const said = execFileSync(process.execPath, ["--input-type=module", "-e", script], { encoding: "utf8" });
  expect(JSON.parse(said)).toEqual({ findings: 0, loaded: [] });
});
