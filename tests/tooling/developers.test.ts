import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const guide = readFileSync("DEVELOPERS.md", "utf8");
const named = [...guide.matchAll(/`([\w-]+(?:\/[\w-]+)*\/[\w-]+(?:\.test)?\.ts)`/g)].map(([, path = ""]) => path);

test("every file that DEVELOPERS.md names is there", () => {
  expect(named.length).toBeGreaterThan(50);
  // Files of `src/` and of the demonstrations are named from there.
  const there = (path: string) => ["", "src/", "demo-data/"].some((folder) => existsSync(folder + path));
  expect(named.filter((path) => !there(path))).toEqual([]);
});
