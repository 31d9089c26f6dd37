import { mkdir, readdir, readFile, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { guideText } from "../../src/begin/shipped.ts";
import { milestonesOf } from "../../src/begin/milestones.ts";
import { idOf, starterFiles } from "../../src/begin/starter.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { editorSchemas } from "../../src/load/compose.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { contents, freshFolder, put } from "../publish/issue/folders.ts";
import { runReal } from "../support/real.ts";

const kinds = loadKinds(["schemas"]);
const definitions = shippedDefinitions(kinds);
const { registers, profiles } = definitions;

describe("new", () => {
  test("writes the smallest book, judged at once, from any folder", async () => {
    const cwd = await freshFolder();
    const ran = await runReal(cwd, "new", "jobs/AV-300", "--register", "unfired-vessel", "--order-date", "2026-03-09");
    expect(ran).toMatchObject({ exit: 0, err: "" });
    expect(ran.out).toContain("begun in jobs/AV-300: README.md, book.json, issue.json, and 45 schemas");
    expect(ran.out).toMatch(/found: no nonconformities, 5 gaps/);
    const files = await contents(join(cwd, "jobs/AV-300"));
    expect(Object.keys(files).filter((path) => !path.startsWith(".schemas/"))).toEqual([
      "README.md",
      "book.json",
      "issue.json",
    ]);
    expect(JSON.parse(files["book.json"] ?? "")).toEqual({
      $schema: ".schemas/book.json",
      kind: "book",
      id: "BOOK",
      format: 1,
      number: "AV-300",
      title: "Unfired pressure vessel",
      profile: "cautious",
      register: "unfired-vessel",
      orderDate: "2026-03-09",
    });
    expect(JSON.parse(files["issue.json"] ?? "")).toMatchObject({ dataCutOff: "2026-03-09", issueDate: "2026-03-09" });
    expect(await readdir(cwd)).toEqual(["jobs"]);
    expect(await readdir(join(cwd, "jobs"))).toEqual(["AV-300"]);
  });

  test("of what is made, its number alone", async () => {
    const cwd = await freshFolder();
    const ran = await runReal(cwd, "new", "b", "--register", "shell-boiler", "--serial", "K 12/2026");
    expect(ran.exit).toBe(0);
    expect(JSON.parse(await readFile(join(cwd, "b/equipment.json"), "utf8"))).toEqual({
      $schema: ".schemas/equipment.json",
      kind: "equipment",
      id: "K-12-2026",
      serial: "K 12/2026",
    });
    expect([idOf("--"), idOf("Ü1"), idOf("a".repeat(60))]).toEqual(["1", "1", "A".repeat(40)]);
  });

  test.each(registers.map((register) => [register.id]))("%s: every profile, nothing worse than a gap", async (name) => {
    for (const { id } of profiles) {
      const cwd = await freshFolder();
      const words = ["--register", name, "--profile", id, "--order-date", "2026-03-09", "--serial", "S-1"];
      expect(await runReal(cwd, "new", "b", ...words)).toMatchObject({ exit: 0, err: "" });
      const { findings } = judgeBook(readBook(join(cwd, "b")));
      expect(findings.filter(({ severity }) => severity !== "gap").map(({ key }) => key)).toEqual([
        "record-used|equipment:S-1|",
      ]);
    }
  });

  test("names that nobody knows are refused with what was probably meant, and nothing is written", async () => {
    const cwd = await freshFolder();
    const refused = async (...words: readonly string[]) => {
      const ran = await runReal(cwd, "new", "b", ...words);
      expect(ran).toMatchObject({ exit: 2, out: "" });
      return ran.err;
    };
    expect(await refused()).toContain("say which register with --register; there are:\n  unfired-vessel");
    expect(await refused("--register", "shell-boilr")).toContain(
      `"shell-boilr"; did you mean shell-boiler? There are:`,
    );
    const words = ["--register", "shell-boiler", "--profile", "ped-en-12593"];
    expect(await refused(...words)).toContain("did you mean ped-en-12953");
    for (const day of ["9.3.2026", "2026-02-30", "2026-03-09T10:00Z"])
      expect(await refused("--register", "shell-boiler", "--order-date", day)).toContain("expected a day");
    expect(await readdir(cwd)).toEqual([]);
  });

  test("only a new or an empty folder, outside any book and any issue", async () => {
    const cwd = await freshFolder();
    await put(cwd, { "mine/thesis.txt": "years", "book/book.json": "{}", "issue/published.json": "{}", file: "" });
    await mkdir(join(cwd, "empty"));
    await symlink(join(cwd, "mine"), join(cwd, "link"));
    const before = await contents(cwd);
    for (const [folder, why] of [
      ["mine", "is not empty: it holds thesis.txt"],
      ["book/inner", "which is a book"],
      ["issue/a/b", "which is an issue"],
      ["file", "is no folder"],
      ["link", "is no folder"],
    ] as const) {
      const ran = await runReal(cwd, "new", folder, "--register", "shell-boiler");
      expect(ran).toMatchObject({ exit: 2, out: "" });
      expect(ran.err).toContain(why);
    }
    expect(await contents(cwd)).toEqual(before);
    expect((await runReal(cwd, "new", "empty", "--register", "shell-boiler")).exit).toBe(0);
    expect(await readdir(join(cwd, "empty"))).toContain("book.json");
  });

  test("a folder that cannot be written leaves nothing behind", async () => {
    const cwd = await freshFolder();
    await writeFile(join(cwd, "paper"), "no folder");
    expect(await runReal(cwd, "new", "paper/b", "--register", "shell-boiler")).toMatchObject({ exit: 2, out: "" });
    expect(await readdir(cwd)).toEqual(["paper"]);
  });
});

describe("schemas that go with a book", () => {
  test("are no evidence: neither read nor counted", async () => {
    const cwd = await freshFolder();
    await runReal(cwd, "new", "b", "--register", "unfired-vessel");
    const before = judgeBook(readBook(join(cwd, "b")));
    await put(join(cwd, "b/.schemas"), { "joint.json": "not even JSON" });
    const after = judgeBook(readBook(join(cwd, "b")));
    expect(after.fingerprint).toBe(before.fingerprint);
    expect(after.loaded.files).toEqual(before.loaded.files);
    expect(after.findings).toMatchObject([
      {
        rule: "file-schemas",
        severity: "note",
        message: `the schemas for editors in ".schemas" are of another version: joint.json differs`,
      },
    ]);
  });

  test("are renewed, and nothing else is touched", async () => {
    const cwd = await freshFolder();
    await runReal(cwd, "new", "b", "--register", "unfired-vessel");
    const before = await contents(join(cwd, "b"));
    await put(join(cwd, "b/.schemas"), { "joint.json": "{}", "part.json": "" });
    expect(await runReal(cwd, "new", "b", "--schemas")).toMatchObject({
      exit: 0,
      out: `${editorSchemas(kinds).size} schemas written to b/.schemas\n`,
    });
    expect(await contents(join(cwd, "b"))).toEqual(before);
    expect((await runReal(cwd, "new", "c", "--schemas")).err).toContain("holds no book.json");
    expect((await runReal(cwd, "new", "b", "--schemas", "--serial", "1")).err).toContain("leave out --serial");
  });

  test("a command given from inside their folder means the book around it", async () => {
    const cwd = await freshFolder();
    await runReal(cwd, "new", "b", "--register", "unfired-vessel");
    expect(await runReal(join(cwd, "b/.schemas"), "check")).toMatchObject({ exit: 0 });
  });
});

test("milestones are those that rows and fields use, in their usual order", () => {
  for (const register of registers) {
    const names = milestonesOf(register, definitions);
    for (const { due } of register.requirements) if (due !== "now") expect(names).toContain(due);
    expect(names[0]).toBe("order");
    expect(names.at(-1)).toBe("release");
  }
});

test("records/ holds the book that `new` begins (npx vitest run tests/begin -u)", async () => {
  const [register] = registers;
  if (register === undefined) throw new Error("there is no register");
  const files = starterFiles(
    {
      number: "BOOK-01",
      title: "Title of the book: equipment and size",
      register,
      milestones: milestonesOf(register, definitions),
      profile: profiles[0]?.id ?? "",
      cutOff: "2026-01-02",
      ordered: "2026-01-02",
      schemas: "../schemas/editor",
    },
    kinds,
    guideText(),
  );
  for (const [path, text] of files) await expect(text).toMatchFileSnapshot(`../../records/${path}`);
});
