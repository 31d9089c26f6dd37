import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { idFor } from "../../src/load/original-id.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { sha256 } from "../../src/publish/issue/index.ts";
import { judgedBook } from "../report/judged.ts";
import { contents, freshFolder, put } from "../publish/issue/folders.ts";
import { greyPng } from "../publish/pdf/awkward.ts";
import { onePage, stream } from "../foreign/raw-pdf.ts";
import { runOn } from "./fakes.ts";

async function pdf(pages: number): Promise<Uint8Array> {
  const document = await PDFDocument.create();
  for (let n = 0; n < pages; n++) document.addPage();
  return document.save();
}

const png = greyPng(3, 2);

const original = (id: string, path: string, hash: string): BookRecord => ({
  kind: "original",
  id,
  file: "originals.json",
  pointer: "",
  value: { id, path, sha256: hash },
  faulty: false,
});

async function desk(files: Readonly<Record<string, Uint8Array | string>>, records: readonly BookRecord[] = []) {
  const cwd = await freshFolder();
  await put(join(cwd, "records"), { "book.json": "{}", ...files });
  const listed = Object.entries(files).map(([path, content]) => ({
    path,
    size: content.length,
    sha256: sha256(content),
    role: "original" as const,
  }));
  return { cwd, judged: judgedBook({ files: listed, records }) };
}

describe("originals", () => {
  test("without --add lists what no record names, and writes nothing", async () => {
    const setting = await desk({ "files/mtc/crt 012.pdf": await pdf(3), "files/photo.png": png });
    const before = await contents(setting.cwd);
    const { exit, out } = await runOn(setting, "originals");
    expect(exit).toBe(1);
    expect(out).toMatch(
      /^not recorded files\/mtc\/crt 012\.pdf as CRT-012, "crt 012", 3 pages, SHA-256 [0-9a-f]{16}$/m,
    );
    expect(out).toMatch(/^not recorded files\/photo\.png as PHOTO, "photo", 1 page, /m);
    expect(await contents(setting.cwd)).toEqual(before);
  });

  test("--add writes one new file with hash and pages, and never touches an earlier one", async () => {
    const scan = await pdf(2);
    const setting = await desk({ "files/crt-012.pdf": scan });
    await put(join(setting.cwd, "records"), { "originals/added-1.json": "mine" });
    const { exit, out } = await runOn(setting, "originals", "records", "--add");
    expect(exit).toBe(0);
    expect(out).toContain("no originals as recorded, 1 added in originals/added-2.json, 0 not recorded");
    expect(await readFile(join(setting.cwd, "records/originals/added-1.json"), "utf8")).toBe("mine");
    expect(JSON.parse(await readFile(join(setting.cwd, "records/originals/added-2.json"), "utf8"))).toEqual({
      kind: "original",
      records: [
        {
          id: "CRT-012",
          path: "files/crt-012.pdf",
          sha256: sha256(scan),
          title: "crt-012",
          mediaType: "application/pdf",
          pages: 2,
        },
      ],
    });
  });

  test("a changed or missing file is said and left as recorded: exit 1", async () => {
    const records = [original("A", "files/a.pdf", "a".repeat(64)), original("B", "files/b.pdf", "b".repeat(64))];
    const setting = await desk({ "files/a.pdf": "other" }, records);
    const before = await contents(setting.cwd);
    const { exit, out } = await runOn(setting, "originals", "--add");
    expect(exit).toBe(1);
    expect(out).toContain(
      `changed      files/a.pdf: A records ${"a".repeat(16)}, the file has ${sha256("other").slice(0, 16)}`,
    );
    expect(out).toContain("missing      files/b.pdf: B names it");
    expect(await contents(setting.cwd)).toEqual(before);
  });

  test("everything recorded as it is: exit 0", async () => {
    const setting = await desk({ "files/a.png": png }, [original("A", "files/a.png", sha256(png))]);
    expect(await runOn(setting, "originals", "--add")).toMatchObject({
      exit: 0,
      out: "1 original as recorded, none added, 0 not recorded, 0 moved, 0 changed, 0 missing\n",
    });
  });

  test("while a file of records cannot be read, nothing is written beside it: it may name these files", async () => {
    const setting = await desk({ "files/crt-012.pdf": await pdf(2) });
    const before = await contents(setting.cwd);
    const unread = {
      ...setting,
      judged: judgedBook({ files: setting.judged.loaded.files, unreadable: ["originals.json"] }),
    };
    for (const options of [["--add"], ["--add", "--rename"], ["--link"], ["--add", "--link"]]) {
      const { exit, out } = await runOn(unread, "originals", "records", ...options);
      expect([exit, out]).toEqual([
        1,
        expect.stringContaining(
          "not read: originals.json cannot be read; what stands there is not known here\n" +
            "nothing was written: what was not read may name these files already; mend that first\n",
        ),
      ]);
      expect(await contents(setting.cwd)).toEqual(before);
    }
    const { out } = await runOn(unread, "originals", "records");
    expect(out).not.toContain("nothing was written");
  });

  test("what cannot be read, is empty, or has the bytes of another is said and not recorded: exit 1", async () => {
    const known = await pdf(1);
    const setting = await desk(
      {
        "files/a.pdf": known,
        "files/b/again.pdf": known,
        "files/broken.pdf": "%PDF-1.7 nothing more",
        "files/empty.pdf": "",
        "files/model.step": "ISO-10303-21;",
        "files/locked.pdf": onePage(stream("garbled"), { trailer: "/Encrypt 9 0 R" }),
        "files/named.pdf": greyPng(5, 4),
        "files/new.png": png,
        "files/new2.png": png,
      },
      [original("A", "files/a.pdf", sha256(known))],
    );
    const { exit, out } = await runOn(setting, "originals", "--add", "--format", "json");
    expect(exit).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      added: "originals/added-1.json",
      recorded: ["NEW"],
      notAdded: [
        {
          path: "files/b/again.pdf",
          sort: "double",
          why: "it has the bytes of files/a.pdf (A); name that one, or remove this",
        },
        { path: "files/broken.pdf", sort: "unread" },
        { path: "files/empty.pdf", sort: "empty" },
        {
          path: "files/locked.pdf",
          sort: "unread",
          why:
            "the file is encrypted; expected a PDF without password and without restrictions; ask for such a copy, or record " +
            "this one by hand and answer the query it raises",
        },
        { path: "files/model.step", sort: "unread" },
        { path: "files/named.pdf", sort: "unread" },
        { path: "files/new2.png", sort: "double" },
      ],
      changed: [],
      missing: [],
    });
    const { records } = JSON.parse(await readFile(join(setting.cwd, "records/originals/added-1.json"), "utf8")) as {
      records: readonly { id: string }[];
    };
    expect(records.map(({ id }) => id)).toEqual(["NEW"]);
  });

  test("a file under another name is known by its hash, and its record follows it; nothing else changes", async () => {
    const scan = await pdf(1);
    const text = `{ "kind": "original",\n  "records": [ { "id": "A",  "path":"files/a.pdf", "sha256": "${sha256(scan)}" } ] }`;
    const record = { ...original("A", "files/a.pdf", sha256(scan)), pointer: "/records/0" };
    const setting = await desk({ "files/mtc/renamed.pdf": scan }, [record]);
    await put(join(setting.cwd, "records"), { "originals.json": text });
    expect((await runOn(setting, "originals")).out).toContain(
      "moved        files/a.pdf of A lies at files/mtc/renamed.pdf now\n",
    );
    const { exit, out } = await runOn(setting, "originals", "--add");
    expect(exit).toBe(0);
    expect(out).toContain("moved        files/a.pdf lies at files/mtc/renamed.pdf now: A follows it\n");
    expect(await readFile(join(setting.cwd, "records/originals.json"), "utf8")).toBe(
      text.replace("files/a.pdf", "files/mtc/renamed.pdf"),
    );
  });

  test("a name that is not portable: one that is proposed, and given only with --rename", async () => {
    const setting = await desk({ "files/Scan (1).pdf": await pdf(1), "files/scan-1.PDF": await pdf(2) });
    const before = await contents(setting.cwd);
    const said = await runOn(setting, "originals");
    expect(said.out).toContain(
      'not recorded files/Scan (1).pdf: it holds the sign "(" (U+0028), which not every system can store or show; files/Scan-1-2.pdf would do',
    );
    expect(said.out).toContain("databook originals --add --rename");
    expect(await contents(setting.cwd)).toEqual(before);
    expect(await runOn(setting, "originals", "--rename")).toMatchObject({ exit: 2 });
    const { exit, out } = await runOn(setting, "originals", "--add", "--rename");
    expect(exit).toBe(0);
    expect(out).toContain(
      'added        files/Scan (1).pdf, renamed to files/Scan-1-2.pdf, as SCAN-1-2, "Scan (1)", 1 page',
    );
    const after = await contents(join(setting.cwd, "records"));
    expect(Object.keys(after).sort()).toEqual([
      "book.json",
      "files/Scan-1-2.pdf",
      "files/scan-1.PDF",
      "originals/added-1.json",
    ]);
  });

  test("names are printed without signs that act, and what systems leave is passed over aloud", async () => {
    const setting = await desk({ "files/a\u202e\u001bfdp.png": png });
    await put(join(setting.cwd, "records"), {
      "files/.DS_Store": "x",
      "files/mtc/Thumbs.db": "x",
      "files/~$list.xlsx": "x",
    });
    const { out } = await runOn(setting, "originals");
    expect(out).toContain("not recorded files/a\\u202e\\u001bfdp.png: ");
    for (const path of ["files/.DS_Store", "files/mtc/Thumbs.db", "files/~$list.xlsx"])
      expect(out).toContain(`passed over  ${path}: `);
    const json = await runOn(setting, "originals", "--format", "json");
    expect(json.out).toContain("a\\u202e\\u001bfdp.png");
    expect(JSON.parse(json.out)).toMatchObject({ unrecorded: [{ from: "files/a\u202e\u001bfdp.png" }] });
  });
});

test("ids are folded to the alphabet of ids, cut, and made unique", () => {
  const ids = new Set<string>();
  const next = (path: string) => {
    const id = idFor(path, ids);
    ids.add(id);
    return id;
  };
  expect(next("files/mtc/CRT_012 (scan).pdf")).toBe("CRT-012-SCAN");
  expect(next("files/other/crt 012 scan.png")).toBe("CRT-012-SCAN-2");
  expect(next("files/é.pdf")).toBe("E");
  expect(next("files/---.pdf")).toBe("ORIGINAL");
  expect(next("files/v1.2.pdf")).toBe("V1.2");
  const long = next(`files/${"x".repeat(60)}.pdf`);
  expect(long).toBe("X".repeat(40));
  expect(next(`files/a/${"x".repeat(60)}.pdf`)).toBe(`${"X".repeat(38)}-2`);
  for (const id of ids) expect(id).toMatch(/^[A-Z0-9][A-Z0-9.-]{0,39}$/);
});
