import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import { packageRoot } from "../../src/root.ts";
import { generatedFiles } from "../../src/tooling/generate.ts";
import { generatedLists } from "../../src/tooling/lists.ts";

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

it("lists of definitions hold all that their folders define (npm run types)", async () => {
  const made = await generatedLists("src", join(packageRoot, "dist/src"));
  const outermost = [...made.keys()].filter((path) => path.split("/").length === 3);
  expect(outermost).toHaveLength(8);
  expect(made.size).toBeGreaterThan(outermost.length);
  const outdated = [...made].filter(([path, content]) => readFileSync(path, "utf8") !== content).map(([path]) => path);
  expect(outdated).toEqual([]);
});

/** A folder of sources that are plain enough to be their own compiled files, with the given ones among its rules. */
function sourcesWith(rules: Readonly<Record<string, string>>): string {
  const root = mkdtempSync(join(tmpdir(), "lists-"));
  writeFileSync(join(root, "package.json"), '{"type":"module"}');
  for (const folder of ["rules", "calculations", "facts", "chains", "closers", "expiries", "scopes", "verification"])
    mkdirSync(join(root, folder, "apart"), { recursive: true });
  for (const [path, text] of Object.entries(rules))
    for (const name of [path, path.replace(/\.ts$/, ".js")]) writeFileSync(join(root, "rules", name), text);
  return root;
}

const ruleNamed = (id: string) => `{ id: "${id}", title: "t", check() {} }`;

test("a definition is listed by what it is: folders, then files, then in the order of the file, and no helper", async () => {
  const root = sourcesWith({
    "b.ts": `export const second = ${ruleNamed("s")};\nexport const help = (a) => a;\nexport const both = [${ruleNamed("x")}, ${ruleNamed("y")}];\n`,
    "a.ts": `export const z = ${ruleNamed("z")};\nexport const first = ${ruleNamed("f")};\nexport const words = { id: "no rule" };\n`,
    "apart/c.ts": `export const third = ${ruleNamed("t")};\nexport const again = [third];\n`,
  });
  const made = await generatedLists(root, root);
  const listed = (path: string) => {
    const text = made.get(path) ?? "";
    return /\[([^\]]*)\];/.exec(text.slice(text.indexOf("=")))?.[1];
  };
  expect(listed("src/rules/index.ts")).toBe("...apartRules, z, first, second, ...both");
  expect(listed("src/rules/apart/index.ts")).toBe("third");
  expect(made.get("src/rules/index.ts")).toContain('import { second, both } from "./b.ts";');
  expect(made.get("src/rules/apart/index.ts")).toContain('import type { Rule } from "../../model/rule.ts";');
  // A folder of helpers has no list.
  expect(made.has("src/facts/apart/index.ts")).toBe(false);
});

test("two definitions of one name are refused, with both files", async () => {
  const root = sourcesWith({
    "a.ts": `export const one = ${ruleNamed("a")};\n`,
    "b.ts": `export const one = ${ruleNamed("b")};\n`,
  });
  await expect(generatedLists(root, root)).rejects.toThrow("`one` is exported by a.ts and by b.ts of src/rules/");
});
