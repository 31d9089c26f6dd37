import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { judging } from "../../src/judge/judging.ts";

const guide = readFileSync("DEVELOPERS.md", "utf8");
const named = [...guide.matchAll(/`([\w-]+(?:\/[\w-]+)*\/[\w-]+(?:\.test)?\.ts)`/g)].map(([, path = ""]) => path);

test("every file that DEVELOPERS.md names is there", () => {
  expect(named.length).toBeGreaterThan(50);
  // Files of `src/` and of the demonstrations are named from there.
  const there = (path: string) => ["", "src/", "demo-data/"].some((folder) => existsSync(folder + path));
  expect(named.filter((path) => !there(path))).toEqual([]);
});

test("the table of test folders has each of them once", () => {
  const [, section = ""] = /\n## Tests\n(.*?)\n## /s.exec(guide) ?? [];
  const rows = [...section.matchAll(/^\| (`tests\/[^|]+) \|/gm)].map(([, cell = ""]) => cell);
  const listed = rows.flatMap((cell) => [...cell.matchAll(/`tests\/([\w-]+)`/g)].map(([, name = ""]) => name));
  const folders = readdirSync("tests", { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.length).toBeGreaterThan(20);
  expect(listed.sort()).toEqual(folders.map(({ name }) => name).sort());
});

test("the steps of judging are printed as they are listed", () => {
  const [, section = ""] = /### Steps of judging\n(.*?)\n### /s.exec(guide) ?? [];
  const printed = [...section.matchAll(/^\| (?!Step \|)([^|]+?) \| ([^|]+?) \|(?: ([^|]+?))? \|$/gm)];
  expect(judging.list.length).toBeGreaterThan(20);
  expect(printed.map(([, name, does, ends]) => ({ name, does, ends: ends ?? "none" }))).toEqual(
    judging.list.map(({ name, does, ends }) => ({ name, does, ends })),
  );
});
