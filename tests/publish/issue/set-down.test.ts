import { existsSync, readdirSync } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { verifyIssue, writeIssue, type IssueFile, type Marker } from "../../../src/publish/issue/index.ts";
import { copied, setDown } from "../../../src/publish/issue/set-down.ts";
import { contents, freshFolder, put, sampleFiles, sampleMarker, sealed } from "./folders.ts";

/** What stands aside in a folder while an issue is written there. */
const asideIn = (dir: string) => readdirSync(dir).filter((name) => name.startsWith(".databook-"));

/** The sample, each file made when it is asked for; `seen` hears how many of those before it stand in the folder then. */
async function* oneByOne(dir: string, seen: (standing: number) => void): AsyncGenerator<IssueFile> {
  const given: string[] = [];
  for (const file of sampleFiles()) {
    await Promise.resolve();
    seen(given.filter((path) => asideIn(dir).some((aside) => existsSync(join(dir, aside, path)))).length);
    yield file;
    given.push(file[0]);
  }
}

/** Two files, and then no more can be made. */
function* broken(ended: () => void): Generator<IssueFile> {
  try {
    yield ["index.html", "half"];
    yield ["joint/r-L1.html", "half"];
    throw new RangeError("no such row");
  } finally {
    ended();
  }
}

test("each file stands on the disk before the next is made", async () => {
  const root = await freshFolder();
  const standing: number[] = [];
  const issue = await setDown(
    oneByOne(root, (count) => standing.push(count)),
    sampleMarker(),
    join(root, "issue"),
  );
  expect(standing).toEqual([...sampleFiles()].map((_, index) => index));
  expect((await verifyIssue(issue.dir)).sound).toBe(true);
  const whole = sealed(sampleFiles(), sampleMarker());
  expect([...issue.hashes.keys()]).toEqual([...whole.keys()]);
  expect((await contents(issue.dir))["hashes.sha256"]).toBe(whole.get("hashes.sha256"));
});

test("a copy of what was set down has the same bytes", async () => {
  const root = await freshFolder();
  const issue = await setDown(sampleFiles(), sampleMarker(), join(root, "issue"));
  expect(await contents(await copied(issue, "current", join(root, "issue")))).toEqual(await contents(issue.dir));
});

test.each([
  ["the series", (root: string) => ({ type: "series", root: join(root, "deep/out") }) as const],
  ["a named folder", (root: string) => ({ type: "folder", dir: join(root, "deep/down/issue") }) as const],
])("when a file cannot be made, nothing is left in %s, and the cause is told", async (_name, target) => {
  const root = await freshFolder();
  await put(root, { "records/book.json": "{}" });
  let ended = 0;
  const work = writeIssue(
    broken(() => ended++),
    sampleMarker(),
    target(root),
    join(root, "records"),
  );
  await expect(work).rejects.toThrow(new RangeError("no such row"));
  expect(ended).toBe(1);
  expect(await readdir(root)).toEqual(["records"]);
});

test("folders that were there before stay, and so does the earlier issue", async () => {
  const root = await freshFolder();
  await put(root, { "records/book.json": "{}" });
  const interim: Marker = sampleMarker(sampleFiles(), { state: "interim" });
  for (const target of [
    { type: "series", root: join(root, "out") },
    { type: "folder", dir: join(root, "issue") },
  ] as const) {
    const { dir } = await writeIssue(sampleFiles(), interim, target, join(root, "records"));
    const before = await contents(root);
    const since = (await stat(dir)).ino;
    await expect(
      writeIssue(
        broken(() => undefined),
        interim,
        target,
        join(root, "records"),
      ),
    ).rejects.toThrow("no such row");
    expect(await contents(root)).toEqual(before);
    expect((await stat(dir)).ino).toBe(since);
  }
});

test("a path that no folder should hold ends the work before it is written, and whoever makes the files hears it", async () => {
  const root = await freshFolder();
  let ended = false;
  function* files(): Generator<IssueFile> {
    try {
      yield ["index.html", "x"];
      yield ["../../escaped.html", "x"];
      yield ["never.html", "x"];
    } finally {
      ended = true;
    }
  }
  await expect(setDown(files(), sampleMarker(), join(root, "issue"))).rejects.toThrow('has the step ".."');
  expect(ended).toBe(true);
  expect(await readdir(root)).toEqual([]);
  expect(existsSync(join(root, "../escaped.html"))).toBe(false);
});
