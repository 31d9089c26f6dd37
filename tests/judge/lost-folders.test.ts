import { describe, expect, test } from "vitest";
import { lostFolders } from "../../src/judge/lost-folders.ts";
import { blocks } from "../../src/model/finding.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots, sound } from "../support/demo-book.ts";

const lost = (named: readonly string[], there: readonly string[]) =>
  [...lostFolders(named, (path) => there.includes(path))].map(
    ([path, { folder, files }]) => `${path} in ${folder}, ${files}`,
  );

describe("files that originals name and the book does not hold", () => {
  const named = ["files/a/1.pdf", "files/a/2.pdf", "files/a/3.pdf", "files/b/4.pdf"];

  test("are lost with the outermost folder of which nothing is left", () => {
    expect(lost(named, [])).toEqual(named.map((path) => `${path} in files, 4`));
    expect(lost(named, ["files/b/4.pdf"])).toEqual(named.slice(0, 3).map((path) => `${path} in files/a, 3`));
  });

  test("are lost one by one where others are left, or only two were there", () => {
    expect(lost(named, ["files/a/1.pdf", "files/b/4.pdf"])).toEqual([]);
    expect(lost(named.slice(1), ["files/b/4.pdf"])).toEqual([]);
    expect(lost([], [])).toEqual([]);
  });
});

describe("in the book", () => {
  const gone = (folder: string): readonly Change[] =>
    sound.loaded.files
      .filter(({ path, role }) => role === "original" && path.startsWith(`${folder}/`))
      .map(({ path }) => ({ file: path, gone: true }));

  test("a lost folder is one finding that lists its originals", () => {
    const changes = gone("files/completion");
    const { judged } = judgeChanged(demoBook, changes);
    const [root, ...more] = judged === null ? [] : newRoots(judged, sound);
    expect(more).toEqual([]);
    expect(root?.key).toBe("original-present|files/completion");
    expect(root?.message).toContain(
      `none of the ${changes.length} files that originals name in files/completion is in the book`,
    );
    expect(root?.accuses).toHaveLength(changes.length);
    expect(root === undefined ? false : blocks(root)).toBe(true);
  });
});
