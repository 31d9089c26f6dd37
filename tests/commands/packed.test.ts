import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative, sep } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { contents, freshFolder } from "../publish/issue/folders.ts";

/**
 * The package as it is installed: what `npm pack` puts into it, unpacked beside the packages that an installation without
 * development brings. They are copied from those of this repository, which npm put there by the same lockfile, so that
 * nothing is asked of a network; a package that is not listed among the dependencies is not there to be found.
 */
const root = join(import.meta.dirname, "../..");
const npm = process.platform === "win32" ? "npm.cmd" : "npm";
const call = promisify(execFile);
const most = { maxBuffer: 64 * 1024 * 1024 };

let home = "";
let packed: readonly string[] = [];

interface Ended {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the installed command as its own process. */
async function databook(cwd: string, ...words: readonly string[]): Promise<Ended> {
  const cli = join(home, "node_modules/databook/dist/src/bundled/cli.js");
  try {
    const { stdout, stderr } = await call(process.execPath, [cli, ...words], { cwd, ...most });
    return { exit: 0, out: stdout, err: stderr };
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
    return { exit: code, out: stdout, err: stderr };
  }
}

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), "databook-installed-"));
  const { stdout } = await call(npm, ["pack", "--json", "--pack-destination", home], { cwd: root, ...most });
  const [made] = JSON.parse(stdout) as readonly { filename: string; files: readonly { path: string }[] }[];
  if (made === undefined) throw new Error("npm packed nothing");
  packed = made.files.map(({ path }) => path);
  await mkdir(join(home, "node_modules"));
  await call("tar", ["-xzf", made.filename], { cwd: home });
  await cp(join(home, "package"), join(home, "node_modules/databook"), { recursive: true });

  const { stdout: listed } = await call(npm, ["ls", "--omit=dev", "--all", "--parseable"], { cwd: root, ...most });
  const paths = listed
    .trim()
    .split("\n")
    .map((path) => relative(root, path))
    .filter((path) => path.startsWith(`node_modules${sep}`));
  expect(paths.length).toBeGreaterThan(20);
  // A package inside another comes with its own line.
  const withoutInner = (source: string) => !relative(root, source).split(sep).slice(2).includes("node_modules");
  for (const path of paths)
    await cp(join(root, path), join(home, path), {
      recursive: true,
      filter: (source) => path.split("node_modules").length > 2 || withoutInner(source),
    });
}, 240_000);

afterAll(async () => rm(home, { recursive: true, force: true }));

describe("what npm packs", () => {
  test("is the program and what it reads: no tests, no demonstration, no source map", () => {
    const folders = new Set(packed.map((path) => path.split("/").slice(0, 2).join("/")));
    expect([...folders].filter((name) => /^(dist|templates)\//.test(name)).sort()).toEqual([
      "dist/src",
      "dist/templates",
      "templates/client",
      "templates/starter",
      "templates/styles",
    ]);
    expect(packed.filter((path) => path.endsWith(".map") || path.startsWith("records/"))).toEqual([]);
    expect(packed).toContain("dist/src/generated/schema-checks.cjs");
  });

  test("brings no package of development along", async () => {
    const here = await readdir(join(home, "node_modules"));
    for (const name of ["typescript", "vitest", "eslint", "playwright-core", "json-schema-to-typescript"])
      expect(here).not.toContain(name);
    const { devDependencies } = JSON.parse(await readFile(join(root, "package.json"), "utf8")) as {
      devDependencies: Readonly<Record<string, string>>;
    };
    expect(Object.keys(devDependencies)).toContain("vitest");
  });
});

describe("the installed command, in a folder of its own", () => {
  test("begins a book, checks it from inside, builds it beside, and verifies the issue", async () => {
    const jobs = await freshFolder();
    const begun = await databook(jobs, "new", "AV 300", "--register", "unfired-vessel", "--order-date", "2026-03-09");
    expect(begun).toMatchObject({ exit: 0, err: "" });
    expect(await readdir(join(jobs, "AV 300/.schemas"))).toContain("weld-log.json");

    const checked = await databook(join(jobs, "AV 300"), "check", "--format", "json");
    expect(checked).toMatchObject({ exit: 1, err: "" });
    const { counts } = JSON.parse(checked.out) as { counts: Readonly<Record<string, number>> };
    expect(counts).toMatchObject({ nonconformity: 0, query: 0, note: 0 });
    expect(counts["gap"]).toBeGreaterThan(0);

    const built = await databook(join(jobs, "AV 300"), "build");
    expect(built.exit).toBe(1);
    const page = built.out.trim();
    expect(page).toMatch(/out\/AV-300\/P1-interim-[0-9a-f]{8}\/index\.html$/);
    const issue = join(page, "..");
    expect((await stat(join(issue, "book.pdf"))).size).toBeGreaterThan(10_000);
    expect((await readdir(jobs)).sort()).toEqual(["AV 300", "out"]);
    expect(await databook(jobs, "verify", issue)).toMatchObject({ exit: 0 });
    // What an editor completes by is no evidence.
    const files = Object.keys(await contents(issue));
    expect(files.filter((path) => path.startsWith("evidence/"))).toEqual(["evidence/book.json", "evidence/issue.json"]);
  }, 120_000);

  test("explains, and says what it is", async () => {
    const jobs = await freshFolder();
    const all = await databook(jobs, "explain", "--format", "json");
    expect(all).toMatchObject({ exit: 0, err: "" });
    const { kinds, rules } = JSON.parse(all.out) as Readonly<Record<"kinds" | "rules", readonly unknown[]>>;
    expect(kinds.length).toBeGreaterThan(40);
    expect(rules.length).toBeGreaterThan(100);
    expect((await databook(jobs, "--version")).out).toMatch(/^databook \d/);
    expect(await databook(jobs, "check")).toMatchObject({ exit: 2, out: "" });
    expect(await readdir(jobs)).toEqual([]);
  }, 60_000);

  // Last: it spoils what is installed.
  test("a schema that was changed since the build is checked, and refused where it is wrong", async () => {
    const file = join(home, "node_modules/databook/schemas/joint.schema.json");
    const schema = JSON.parse(await readFile(file, "utf8")) as { properties: Record<string, unknown> };
    schema.properties["colour"] = { type: "string" };
    await writeFile(file, JSON.stringify(schema));
    const jobs = await freshFolder();
    await writeFile(join(jobs, "book.json"), "{}");
    const { exit, err } = await databook(jobs, "check");
    expect(exit).toBe(2);
    expect(err).toContain("joint.schema.json: colour has no description");
  });
});
