import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { idFor } from "../../src/load/originals-add.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { sha256 } from "../../src/publish/issue/index.ts";
import { judgedBook } from "../report/judged.ts";
import { contents, freshFolder, put } from "../publish/issue/folders.ts";
import { greyPng } from "../publish/pdf/awkward.ts";
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
    expect(out).toMatch(/^not recorded files\/mtc\/crt 012\.pdf as CRT-012, 3 pages, SHA-256 [0-9a-f]{16}$/m);
    expect(out).toMatch(/^not recorded files\/photo\.png as PHOTO, 1 page, /m);
    expect(await contents(setting.cwd)).toEqual(before);
  });

  test("--add writes one new file with hash and pages, and never touches an earlier one", async () => {
    const scan = await pdf(2);
    const setting = await desk({ "files/crt-012.pdf": scan });
    await put(join(setting.cwd, "records"), { "originals/added-1.json": "mine" });
    const { exit, out } = await runOn(setting, "originals", "records", "--add");
    expect(exit).toBe(0);
    expect(out).toContain(
      "0 originals as recorded, 1 added in originals/added-2.json".replace("0 originals", "no originals"),
    );
    expect(await readFile(join(setting.cwd, "records/originals/added-1.json"), "utf8")).toBe("mine");
    expect(JSON.parse(await readFile(join(setting.cwd, "records/originals/added-2.json"), "utf8"))).toEqual({
      kind: "original",
      records: [
        { id: "CRT-012", path: "files/crt-012.pdf", sha256: sha256(scan), mediaType: "application/pdf", pages: 2 },
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
      out: "1 original as recorded, 0 not recorded, 0 changed, 0 missing\n",
    });
  });

  test("a damaged PDF is recorded without pages, and said", async () => {
    const setting = await desk({ "files/broken.pdf": "%PDF-1.7 nothing more" });
    const { exit, out } = await runOn(setting, "originals", "--add", "--format", "json");
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      added: "originals/added-1.json",
      unrecorded: [{ id: "BROKEN", path: "files/broken.pdf", mediaType: "application/pdf" }],
      problems: [{ path: "files/broken.pdf" }],
      changed: [],
      missing: [],
    });
    expect(await readFile(join(setting.cwd, "records/originals/added-1.json"), "utf8")).not.toContain("pages");
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
