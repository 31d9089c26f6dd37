import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { IssueError, evidenceFingerprint, hashLines, sha256 } from "../../../src/publish/issue/index.ts";
import { newSeal, parseHashList } from "../../../src/publish/issue/hash-list.ts";
import { folderName, pathFault, pathKeeper } from "../../../src/publish/issue/portable-path.ts";
import { contents, freshFolder, put, sampleFiles, sampleMarker, sealed } from "./folders.ts";

describe("evidence fingerprint", () => {
  const files = [
    { path: "weld-log/seams.json", sha256: sha256("a") },
    { path: "files/crt.pdf", sha256: sha256("b") },
    { path: "book.json", sha256: sha256("c") },
  ];

  test("is the hash of the lines sha256sum prints, in code-point order", () => {
    const lines = `${sha256("c")}  book.json\n${sha256("b")}  files/crt.pdf\n${sha256("a")}  weld-log/seams.json\n`;
    expect(hashLines(files)).toBe(lines);
    expect(evidenceFingerprint(files)).toBe(createHash("sha256").update(lines).digest("hex"));
  });

  test("does not depend on the order files were found in, nor on issue.json and signing/", () => {
    const wanted = evidenceFingerprint(files);
    expect(evidenceFingerprint([...files].reverse())).toBe(wanted);
    expect(
      evidenceFingerprint([
        { path: "issue.json", sha256: sha256("x") },
        { path: "signing/note.json", sha256: sha256("y") },
        ...files,
      ]),
    ).toBe(wanted);
  });

  test("changes with a byte, a name, a file more or less", () => {
    const all = [
      files,
      files.slice(1),
      [...files, { path: "sub/issue.json", sha256: sha256("x") }],
      files.map((file) => ({ ...file, path: file.path.replace("seams", "Seams") })),
      files.map((file) => ({ ...file, sha256: sha256(file.sha256) })),
    ].map(evidenceFingerprint);
    expect(new Set(all).size).toBe(all.length);
  });

  test("the shell's own tools give the same", async () => {
    const dir = await freshFolder();
    await put(dir, { "book.json": "c", "files/crt.pdf": "b", "weld-log/seams.json": "a" });
    const printed = execFileSync(
      "sh",
      ["-c", "LC_ALL=C find . -type f | sed 's|^./||' | LC_ALL=C sort | xargs sha256sum | sha256sum"],
      {
        cwd: dir,
        encoding: "utf8",
      },
    );
    expect(printed.slice(0, 64)).toBe(evidenceFingerprint(files));
  });
});

describe("hash list", () => {
  test("sha256sum -c accepts it, and notices one flipped byte", async () => {
    const dir = await freshFolder();
    const issue = sealed(sampleFiles({ "files/scan with space.pdf": "x" }), sampleMarker());
    await put(dir, Object.fromEntries(issue));
    const run = () =>
      execFileSync("sha256sum", ["--strict", "-c", "hashes.sha256"], { cwd: dir, encoding: "utf8", stdio: "pipe" });
    expect(run().trimEnd().split("\n")).toHaveLength(issue.size - 1);
    await put(dir, { "files/crt-012.pdf": "other" });
    expect(run).toThrow();
  });

  test("lists every file but itself, the marker among them", async () => {
    const dir = await freshFolder();
    const issue = sealed(sampleFiles(), sampleMarker());
    await put(dir, Object.fromEntries(issue));
    const list = parseHashList((await contents(dir))["hashes.sha256"] ?? "");
    expect(list.faults).toEqual([]);
    expect(list.files.map(({ path }) => path)).toEqual([...issue.keys()].filter((path) => path !== "hashes.sha256"));
    expect(list.files.map(({ path }) => path)).toContain("published.json");
  });

  test("the marker says what the contract names", () => {
    const text = sealed(sampleFiles(), sampleMarker()).get("published.json");
    expect(JSON.parse(String(text))).toEqual({
      format: 1,
      holds: "issue",
      number: "TQ423-01",
      revision: "0",
      state: "final",
      fingerprint: sampleMarker().fingerprint,
      tool: "databook 0.1.0",
    });
  });

  test("lines that are none, leave the folder or come twice are faults, never read", () => {
    const hash = "a".repeat(64);
    const { files, faults } = parseHashList(
      [
        `${hash}  a.txt`,
        `${hash} *b.txt`,
        `${hash}  ../../secret`,
        `${hash}  /etc/x`,
        "junk",
        `${hash}  a.txt`,
        "",
      ].join("\n"),
    );
    expect(files.map(({ path }) => path)).toEqual(["a.txt", "b.txt"]);
    expect(faults.map((fault) => /^hashes\.sha256:\d+/.exec(fault)?.[0])).toEqual([
      "hashes.sha256:3",
      "hashes.sha256:4",
      "hashes.sha256:5",
      "hashes.sha256:6",
    ]);
  });

  test("no part of an issue may bring its own marker or hash list", () => {
    for (const name of ["published.json", "hashes.sha256"])
      expect(() => sealed(sampleFiles({ [name]: "x" }), sampleMarker())).toThrow(IssueError);
  });
});

describe("portable paths", () => {
  const taken = (...paths: readonly string[]) => {
    const keeper = pathKeeper();
    for (const path of paths) keeper.take(path);
  };

  test.each(["index.html", "joint/r-L1.html", "files/a b.pdf", "evidence/x_y-z.json", "a.b/c"])(
    "accepts %s",
    (path) => {
      expect(pathFault(path)).toBeUndefined();
    },
  );

  test.each([
    "",
    "/etc/passwd",
    "../x",
    "a/../b",
    "a//b",
    "./a",
    "a\\b",
    "C:/x",
    "a/ b",
    "a /b",
    "a./b",
    "con",
    "x/NUL.txt",
    "com1.json",
    "é.html",
    "a\nb",
    "a".repeat(241),
  ])("refuses %j", (path) => {
    expect(pathFault(path)).toBeTypeOf("string");
    expect(() => taken(path)).toThrow(IssueError);
  });

  test("refuses pairs that cannot lie side by side everywhere", () => {
    expect(() => taken("joint/a.html", "Joint/A.html")).toThrow(
      'files "joint/a.html" and "Joint/A.html" differ only by case',
    );
    for (const paths of [
      ["a", "a/b"],
      ["a/b", "a"],
      ["A/b/c", "a/B"],
      ["a/b/c", "a/b/d", "a"],
      ["a/b", "a/c/d/e", "A/C/d"],
    ])
      expect(() => taken(...paths), paths.join()).toThrow("is a file, but");
    expect(() => taken("a", "a/b")).toThrow('"a" is a file, but "a/b" needs it to be a folder');
    expect(() => taken("x/a/b", "x/a")).toThrow('"x/a" is a file, but "x/a/b" needs it to be a folder');
    expect(() => taken("a/b", "a/c", "a.b")).not.toThrow();
  });

  test("refuses two files on one path, whatever they hold", () => {
    expect(() => taken("a/b.html", "c", "a/b.html")).toThrow('two files of the issue have the path "a/b.html"');
    const seal = newSeal(sampleMarker());
    seal.add(["a", "x"]);
    expect(() => seal.add(["a", "x"])).toThrow(IssueError);
  });

  test("a book's number becomes the name of a folder", () => {
    expect(folderName("TQ423-01")).toBe("TQ423-01");
    expect(folderName("TQ 423/01 é.")).toBe("TQ-423-01-e");
    expect(folderName("../../etc")).toBe("etc");
    for (const text of ["", "..", "///", "con"]) expect(folderName(text)).toMatch(/^unnamed-[0-9a-f]{8}$/);
  });
});
