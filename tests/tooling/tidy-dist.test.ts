import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";

const script = "src/tooling/tidy-dist.js";
const memory = "dist/tsconfig.tsbuildinfo";
let root = "";

const at = (path: string) => join(root, path);
function put(path: string, text = ""): void {
  mkdirSync(dirname(at(path)), { recursive: true });
  writeFileSync(at(path), text);
}
const tidy = () => execFileSync(process.execPath, [at(script)], { encoding: "utf8" });

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "databook-tidy-"));
  mkdirSync(dirname(at(script)), { recursive: true });
  cpSync(join(import.meta.dirname, "../..", script), at(script));
  for (const name of ["src/a", "src/deep/b"]) {
    put(`${name}.ts`);
    for (const ending of [".js", ".js.map", ".d.ts"]) put(`dist/${name}${ending}`);
  }
  put("dist/src/generated/schema-checks.cjs");
  put(
    memory,
    JSON.stringify({
      fileNames: ["../node_modules/x/lib.d.ts", "../src/types.d.ts", "../src/a.ts", "../src/deep/b.ts"],
    }),
  );
});
afterEach(() => rmSync(root, { recursive: true }));

test("a whole build is left as it is", () => {
  tidy();
  for (const path of ["dist/src/a.js", "dist/src/deep/b.d.ts", "dist/src/generated/schema-checks.cjs", memory])
    expect(existsSync(at(path)), path).toBe(true);
});

test("what was compiled from a source that is gone goes too, and nothing else", () => {
  rmSync(at("src/deep/b.ts"));
  tidy();
  for (const ending of [".js", ".js.map", ".d.ts"]) expect(existsSync(at(`dist/src/deep/b${ending}`))).toBe(false);
  for (const path of ["dist/src/a.js", "dist/src/generated/schema-checks.cjs", memory])
    expect(existsSync(at(path)), path).toBe(true);
});

test.each(["dist/src/a.js", "dist/src/a.js.map", "dist/src/deep/b.d.ts"])(
  "where %s is missing, the compiler forgets what it wrote",
  (path) => {
    rmSync(at(path));
    tidy();
    expect(existsSync(at(memory))).toBe(false);
    expect(existsSync(at("dist/src/deep/b.js"))).toBe(true);
  },
);

test("there may be nothing yet", () => {
  rmSync(at("dist"), { recursive: true });
  expect(tidy()).toBe("");
});
