import { mkdtempSync, rmSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import type { Field, Kind } from "../../src/model/kind.ts";
import { statementOf } from "../../src/model/comparison.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { contents, freshFolder, put } from "../publish/issue/folders.ts";
import { copyWhole } from "../support/copy-book.ts";
import { runReal } from "../support/real.ts";

const kinds = loadKinds(["schemas"]);
/** What stands on a shelf stays there: these have all their records themselves. */
const whole = mkdtempSync(join(tmpdir(), "databook-from-"));
const bookOf = (name: string) => join(whole, name);
for (const name of ["air-receiver", "boiler"])
  copyWhole(join(import.meta.dirname, "../../demo-data", name, "book"), bookOf(name));
afterAll(() => rmSync(whole, { recursive: true, force: true }));

interface Next {
  readonly last: JudgedBook;
  readonly next: JudgedBook;
  readonly out: string;
  readonly files: Readonly<Record<string, string>>;
}

/** The last job's book as it is, judged once. */
const lasts = new Map<string, JudgedBook>();
function lastOf(name: string): JudgedBook {
  const last = lasts.get(name) ?? judgeBook(readBook(bookOf(name)));
  lasts.set(name, last);
  return last;
}

async function begun(name: string, ...words: readonly string[]) {
  const cwd = await freshFolder();
  const ran = await runReal(cwd, "new", "next", "--from", bookOf(name), "--order-date", "2026-11-20", ...words);
  expect(ran).toMatchObject({ exit: 0, err: "" });
  return { dir: join(cwd, "next"), out: ran.out, files: await contents(join(cwd, "next")) };
}

async function nextOf(name: string, ...words: readonly string[]): Promise<Next> {
  const { dir, ...next } = await begun(name, ...words);
  return { last: lastOf(name), next: judgeBook(readBook(dir)), ...next };
}

const same = ["--same-design", "--serial", "XQ900-07", "--number", "XQ900-BOOK", "--title", "The next one"] as const;

describe.each(["air-receiver", "boiler"])("the next job after the %s's", (name) => {
  let plain: Next;
  let design: Next;
  beforeAll(async () => {
    plain = await nextOf(name);
    design = await nextOf(name, ...same);
  }, 120_000);

  test("records that stand for themselves come along whole, with their originals byte for byte", () => {
    const { last, next } = plain;
    const known = new Map(last.graph.records.map((record) => [`${record.kind}:${record.id}`, record]));
    const taken = next.graph.records.filter(({ kind }) => !["book", "issue", "heat"].includes(kind));
    expect(taken.length).toBeGreaterThan(100);
    for (const { kind, id, value } of taken) {
      const whole = kinds.get(kind)?.carry;
      expect([kind, whole === "always" || whole === "named"]).toEqual([kind, true]);
      const before = known.get(`${kind}:${id}`)?.value;
      expect(alone(value)).toEqual(alone(before ?? {}));
    }
    const hashes = (judged: JudgedBook) =>
      new Map(judged.loaded.files.filter(({ role }) => role === "original").map(({ path, sha256 }) => [path, sha256]));
    const [old, fresh] = [hashes(last), hashes(next)];
    expect(fresh.size).toBeGreaterThan(10);
    for (const [path, hash] of fresh) expect(old.get(path)).toBe(hash);
    expect(fresh.size).toBe(next.graph.byKind.get("original")?.size);
  });

  test("each original is compared with what came along whole, as it was, and with nothing else", () => {
    for (const { next } of [plain, design]) {
      const states = [...next.comparisons.values()].flat().map(({ state }) => state);
      expect(new Set(states)).toEqual(new Set(["compared"]));
      expect(states.length).toBeGreaterThan(30);
      const compared = new Set<string>(next.comparisons.keys());
      for (const original of next.graph.byKind.get("original")?.values() ?? [])
        for (const address of statementOf(original).records.keys()) expect(compared.has(address)).toBe(true);
    }
  });

  test("evidence of the old job, its order and its client stay behind", () => {
    for (const { next, files } of [plain, design]) {
      for (const { name: kind, carry } of kinds.values())
        if (carry === "never" && kind !== "issue")
          expect([kind, next.graph.byKind.get(kind)?.size]).toEqual([kind, undefined]);
      const { book: old } = plain.last;
      for (const field of ["number", "contractNumber", "client", "site"])
        for (const [path, written] of Object.entries(files))
          if (path.endsWith(".json") && !path.startsWith(".schemas/"))
            expect([path, field, written.includes(`"${text(old.value[field])}"`)]).toEqual([path, field, false]);
    }
  });

  test("no link leads nowhere, and nothing is worse than a gap that is due", () => {
    for (const { next } of [plain, design]) {
      expect(next.graph.links.filter(({ state }) => state !== "found").map(({ text }) => text)).toEqual([]);
      expect(next.loaded.unreadable).toEqual([]);
      const found = next.findings.filter(({ severity }) => severity !== "note");
      expect(new Set(found.map(({ severity }) => severity))).toEqual(new Set(["gap"]));
      expect(found.every(({ due }) => due === "order")).toBe(true);
      expect(next.findings.filter(({ severity }) => severity === "note").map(({ rule }) => rule)).toEqual(
        next.findings.filter(({ rule }) => rule === "record-used").map(({ rule }) => rule),
      );
    }
  });

  test("of the same design only what was decided before: no day, no reading, no mark, no number of that job", () => {
    const { last, next } = design;
    const decided = next.graph.records.filter(({ kind }) => kinds.get(kind)?.carry === "same-design");
    expect(new Set(decided.map(({ kind }) => kind))).toEqual(
      new Set([...kinds.values()].filter(({ carry }) => carry === "same-design").map(({ name: kind }) => kind)),
    );
    const serial = text([...(last.graph.byKind.get("equipment")?.values() ?? [])][0]?.value["serial"]);
    for (const record of decided) {
      const dated = [...leaves(record, kinds.get(record.kind))].filter(
        ({ field, value }) => field.type === "date" || (typeof value === "string" && value.includes(serial)),
      );
      expect(dated.map(({ path }) => `${record.id} ${path}`)).toEqual([]);
      for (const name of ["mark", "measuredThickness", "measuredDiameters", "source", "sources", "signatures"])
        expect([record.id, name, record.value[name]]).toEqual([record.id, name, undefined]);
    }
    expect(
      [...(next.graph.byKind.get("equipment")?.values() ?? [])].map(({ id, value }) => [id, value["serial"]]),
    ).toEqual([["XQ900-07", "XQ900-07"]]);
    const steps = (judged: JudgedBook) => [...(judged.graph.byKind.get("inspection-step")?.keys() ?? [])];
    expect(steps(next)).toEqual(steps(last));
    for (const { value } of next.graph.byKind.get("inspection-step")?.values() ?? [])
      for (const point of isList(value["points"]) ? value["points"] : [])
        expect(
          Object.keys(isObject(point) ? point : {}).filter((key) => !["party", "point", "row"].includes(key)),
        ).toEqual([]);
    const tests = (judged: JudgedBook) =>
      [...(judged.graph.byKind.get("joint")?.values() ?? [])].map(({ value }) =>
        (isList(value["requiredTests"]) ? value["requiredTests"] : []).map((one) => isObject(one) && one["extent"]),
      );
    expect(tests(next)).toEqual(tests(last));
  });

  test("the same command gives the same bytes", async () => {
    expect((await begun(name, ...same)).files).toEqual(design.files);
  }, 60_000);

  test("the summary says what came along, what stayed, and what has ended, as the engine judges it", () => {
    const { out, next } = plain;
    expect(out).toMatch(/^came along from .*: \d+ records, with \d+ files$/m);
    expect(out).toMatch(/^ {2}evidence of that job: .*weld-log \d+/m);
    expect(out).toContain("of that order alone: organisation 1");
    expect(out).toMatch(/of the record of the book: .*client/);
    // The gauges' papers print these days: common practice is to look at the sticker.
    const instruments = [...(next.graph.byKind.get("instrument")?.values() ?? [])];
    for (const { id, value } of instruments) {
      const ends = (isList(value["calibrations"]) ? value["calibrations"] : []).map((one) =>
        isObject(one) ? text(one["validTo"]) : "",
      );
      const over = ends.every((day) => day < "2026-11-20");
      expect([id, out.includes(`instrument ${id} is not within a calibration`)]).toEqual([id, over]);
    }
  });
});

describe("what nobody can say is said", () => {
  test("a certificate without its last day, a file that is not there, a file that cannot be read", async () => {
    const cwd = await freshFolder();
    expect((await runReal(cwd, "new", "old", "--register", "unfired-vessel", "--order-date", "2026-01-12")).exit).toBe(
      0,
    );
    await put(join(cwd, "old"), {
      "people.json": JSON.stringify({
        kind: "person",
        records: [{ id: "T1", name: "A. Tester", specimen: "ORG-1" }],
      }),
      "testers.json": JSON.stringify({ kind: "ndt-personnel", records: [{ id: "NP-1", person: "T1", method: "VT" }] }),
      "originals.json": JSON.stringify({
        kind: "original",
        records: [{ id: "ORG-1", path: "files/sheet.pdf", sha256: "0".repeat(64) }],
      }),
      "broken.json": "{",
    });
    const ran = await runReal(cwd, "new", "next", "--from", "old", "--order-date", "2026-11-20");
    expect(ran.exit).toBe(0);
    expect(ran.out).toContain("files that were not there to be copied: 1\n  files/sheet.pdf");
    expect(ran.out).toContain("not read there, so that nothing of it is known here: 1\n  broken.json");
    expect(ran.out).toContain(
      "ndt-personnel NP-1: whether a tester's certificate has not ended on the day of the order",
    );
    const json = await runReal(cwd, "new", "n2", "--from", "old", "--order-date", "2026-11-20", "--format", "json");
    const { taken } = JSON.parse(json.out) as { taken: JsonObject };
    expect(taken).toMatchObject({ missing: ["files/sheet.pdf"], unreadable: ["broken.json"], files: 0 });
    expect(isList(taken["unsaid"]) && taken["unsaid"].length).toBeGreaterThan(0);
  });

  test("maps of the shop's sheets come along as they are; a register that is asked for stands over that of the last book", async () => {
    const cwd = await freshFolder();
    expect((await runReal(cwd, "new", "old", "--register", "shell-boiler", "--order-date", "2026-01-12")).exit).toBe(0);
    await put(join(cwd, "old"), { "imports/parts.json": '{ "kind": "part" }\n', "imports/notes.txt": "none" });
    const words = ["--order-date", "2026-11-20", "--register", "unfired-vessel", "--profile", "ped-en-13445"];
    const ran = await runReal(cwd, "new", "next", "--from", "old", ...words);
    expect(ran.out).toContain("what the shop's sheets call things: imports/parts.json\n");
    expect(await readFile(join(cwd, "next", "imports", "parts.json"), "utf8")).toBe('{ "kind": "part" }\n');
    expect(Object.keys(await contents(join(cwd, "next", "imports")))).toEqual(["parts.json"]);
    const book = JSON.parse(await readFile(join(cwd, "next", "book.json"), "utf8")) as JsonObject;
    expect(book).toMatchObject({ register: "unfired-vessel", profile: "ped-en-13445" });
  });

  test("options that lack another are refused before anything is read or written", async () => {
    const cwd = await freshFolder();
    const from = ["--from", bookOf("air-receiver")];
    for (const [words, why] of [
      [from, "--from needs --order-date"],
      [[...from, "--order-date", "2026-11-20", "--same-design"], "--same-design needs --serial"],
      [["--register", "shell-boiler", "--same-design"], "--same-design goes with --from"],
      [["--from", "nowhere", "--order-date", "2026-11-20"], 'there is no folder "nowhere"'],
    ] as const)
      expect((await runReal(cwd, "new", "b", ...words)).err).toContain(why);
    await writeFile(join(cwd, "b"), "mine");
    expect((await runReal(cwd, "new", "b", ...from, "--order-date", "2026-11-20")).err).toContain("is no folder");
    expect(await readFile(join(cwd, "b"), "utf8")).toBe("mine");
  });
});

const text = (value: Json | undefined) => (typeof value === "string" ? value : "none");

/** Without the sheet it came from, and the comparison, which speaks of others too. */
const alone = ({ imported: _, transcription: _comparison, ...value }: JsonObject) => value;

/** Every written value of a record that is no list or object, with its field. */
function* leaves(record: BookRecord, kind: Kind | undefined) {
  yield* inFields(record.value, kind?.fields ?? new Map<string, Field>(), "");
}

function* inFields(
  value: JsonObject,
  fields: ReadonlyMap<string, Field>,
  path: string,
): Generator<{ readonly field: Field; readonly value: Json; readonly path: string }> {
  for (const [name, field] of fields) {
    const found = value[name];
    if (found !== undefined) yield* inField(found, field, `${path}/${name}`);
  }
}

function* inField(value: Json, field: Field, path: string): ReturnType<typeof inFields> {
  if (isList(value) && field.item !== undefined)
    for (const [index, one] of value.entries()) yield* inField(one, field.item, `${path}/${index}`);
  else if (isObject(value) && field.fields !== undefined) yield* inFields(value, field.fields, path);
  else yield { field, value, path };
}
