import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ownersByName } from "../../src/load/original-owners.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { copyWhole } from "../support/copy-book.ts";
import { runReal } from "../support/real.ts";

const kinds = loadKinds(["schemas"]);
const record = (kind: string, id: string, value: JsonObject = {}) => ({
  kind,
  id,
  file: "records.json",
  pointer: "",
  value: { id, ...value },
  faulty: false,
});

describe("the name of a file", () => {
  const spoken = ownersByName(
    [
      record("material-certificate", "CRT-012", { number: "GV-26-00417" }),
      record("material-certificate", "CRT-013", { number: "GV-26-00418", source: { original: "ORG-1" } }),
      record("instrument", "PG-04", { calibrations: [{ certificate: "LK-CAL-2131" }, { certificate: "LK-CAL-2292" }] }),
      record("ndt-report", "RT-1"),
      record("ndt-report", "RT-1-R2"),
      record("joint", "L1"),
      record("person", "P-001"),
    ],
    kinds,
  );
  const said = (name: string) =>
    spoken(`files/x/${name}`).map(({ kind, id, by, taken }) => `${kind} ${id} ${by}${taken ? " taken" : ""}`);

  test("speaks of a record by its id or number as whole words, whatever parts them", () => {
    expect(said("crt_012 (scan).pdf")).toEqual(["material-certificate CRT-012 CRT-012"]);
    expect(said("GV 26-00417.pdf")).toEqual(["material-certificate CRT-012 GV-26-00417"]);
    expect(said("lk-cal-2292.pdf")).toEqual(["instrument PG-04 LK-CAL-2292"]);
    expect(said("GV-26-00418.pdf")).toEqual(["material-certificate CRT-013 GV-26-00418 taken"]);
    expect(said("RT-1-R2.pdf")).toEqual(["ndt-report RT-1-R2 RT-1-R2"]);
    expect(said("CRT-012 and RT-1.pdf")).toEqual(["material-certificate CRT-012 CRT-012", "ndt-report RT-1 RT-1"]);
  });

  test("speaks of none by a part of a word, a name too short to be one, or a person's number", () => {
    for (const name of ["CRT-0123.pdf", "XCRT-012.pdf", "GV-26-0041.pdf", "L1.pdf", "P-001.pdf", "scan7.pdf"])
      expect(said(name)).toEqual([]);
  });
});

describe("originals --link", () => {
  let cwd: string;
  beforeAll(() => {
    cwd = mkdtempSync(join(tmpdir(), "databook-links-"));
    copyWhole("demo-data/air-receiver/book", join(cwd, "book"));
    const path = join(cwd, "book/materials/mills.json");
    const mills = JSON.parse(readFileSync(path, "utf8")) as { records: Record<string, unknown>[] };
    for (const one of mills.records) if (one["id"] !== "MA-03") delete one["source"];
    writeFileSync(path, JSON.stringify(mills, null, 2));
    for (const name of ["MA-01.txt", "MA-02.txt", "MA-02 again.txt", "MA-03.txt", "MA-01 and MA-04.txt"])
      writeFileSync(join(cwd, "book/files", name), name);
  });
  afterAll(() => {
    rmSync(cwd, { recursive: true, force: true });
  });
  const mills = () => readFileSync(join(cwd, "book/materials/mills.json"), "utf8");

  test("shows what it would link, and writes only what one file and one record leave no doubt about", async () => {
    const before = mills();
    const shown = await runReal(cwd, "originals", "book");
    expect(shown.out).toContain("proposed     MA-01, files/MA-01.txt: source of mill approval MA-01 (by MA-01)");
    expect(shown.out).toContain("to record them: databook originals book --add\n");
    expect(shown.out).toContain("these records: databook originals book --add --link\n");
    expect(shown.out).toContain("unclear      MA-01-AND-MA-04, files/MA-01 and MA-04.txt: its name speaks of");
    expect(await runReal(cwd, "originals", "book", "--add", "--rename")).toMatchObject({ exit: 0 });
    expect(mills()).toBe(before);
    // Recorded and not linked: --link alone proposes them still.
    const later = await runReal(cwd, "originals", "book");
    expect(later.out).toContain("to make them the sources of these records: databook originals book --link\n");
    const linked = await runReal(cwd, "originals", "book", "--link");
    expect(linked.out).toContain(
      "linked       MA-01, files/MA-01.txt: source of mill approval MA-01 (by MA-01), page 1",
    );
    expect(linked.out).toMatch(/MA-02 \(by MA-02\); another file claims it too/);
    expect(linked.out).toContain("MA-03 (by MA-03), which names an original already");
    const { records } = JSON.parse(mills()) as { records: { id: string; source?: unknown }[] };
    const sources = records.flatMap(({ id, source }) => (source === undefined ? [] : [[id, source]]));
    expect(sources).toEqual([
      ["MA-01", { original: "MA-01", page: 1 }],
      ["MA-03", expect.objectContaining({ original: "ORG-MILLS" })],
    ]);
    const again = await runReal(cwd, "originals", "book", "--link");
    expect([again.exit, again.out]).toEqual([0, expect.not.stringContaining("linked       ")]);
  });
});
