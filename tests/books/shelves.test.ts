import { citedKey } from "../../src/model/finding-key.ts";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadBook } from "../../src/load/book-files.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { judgeAgain, judgeBook, judgeRemembering, layOut, publishBook, readBook } from "../../src/pipeline.ts";
import { reportHere } from "../../src/report/report.ts";
import { allFiles } from "../support/all-files.ts";
import { applyChange, type Change } from "../support/changes.ts";
import { copyWhole } from "../support/copy-book.ts";
import { demoBook, judgedOnce, laidOutOnce, newFindings, sound, vesselBook } from "../support/demo-book.ts";

const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-shelves-")));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const demoData = join(demoBook, "../..");
const { kinds } = sound.definitions;
const before = judgeRemembering({ ...loadBook(demoBook, kinds), kinds }, sound.definitions);
const { judged } = before;
/** Without the text of papers: a value that a test changes is not on its paper, which is found beside. */
const judgeOnly = (at: string) => {
  return judgeAgain(before, { ...loadBook(at, kinds), kinds }).judged;
};

/** A fresh copy of the book and its two shelves, each where the other finds it. */
function copied(): { readonly book: string; readonly shop: string; readonly order: string } {
  const at = mkdtempSync(join(dir, "changed-"));
  const place = (folder: string) => {
    cpSync(join(demoData, folder), join(at, folder), { recursive: true });
    return join(at, folder);
  };
  return { book: place("air-receiver/book"), shop: place("shop/shelf"), order: place("order/shelf") };
}

/** Judges such a copy with changes; `at` of a change on the shop's shelf begins with its folder. */
function changed(on: { readonly book?: readonly Change[]; readonly shop?: readonly Change[] }): JudgedBook {
  const { book, shop } = copied();
  for (const change of on.book ?? []) applyChange(book, change);
  for (const change of on.shop ?? []) applyChange(shop, change);
  return judgeOnly(book);
}
const found = (one: JudgedBook) => newFindings(one, judged).map(({ key }) => key);

describe("the receiver, its common records on two shelves", () => {
  test("is judged as the same records in one folder", () => {
    const whole = join(dir, "whole");
    copyWhole(demoBook, whole);
    const alone = judgeOnly(whole);
    expect(judged.findings).toEqual([]);
    expect(alone.findings.map(({ key }) => key)).toEqual([
      "record-used|material-certificate:CRT-009|",
      "record-used|welding-procedure:WPS-10|",
    ]);
    const verdicts = ({ outcomes }: JudgedBook) =>
      outcomes.map(({ definition, subject, verdict }) => `${definition} ${subject?.kind} ${subject?.id}: ${verdict}`);
    const known = new Set(verdicts(alone));
    expect(verdicts(judged).filter((one) => !known.has(one))).toEqual([]);
    expect(verdicts(judged).length).toBeGreaterThan(1900);
    expect(judged.loaded.aside).toEqual([]);
    // What is on a shelf and not reached is in the other book alone: the second vessel's ends, and a procedure for its welds.
    const reached = new Set(judged.loaded.records.map(({ kind, id }) => `${kind}:${id}`));
    expect(
      alone.loaded.records.map(({ kind, id }) => `${kind}:${id}`).filter((address) => !reached.has(address)),
    ).toEqual([
      "material-certificate:CRT-009",
      "original:ORG-CRT-009",
      "original:ORG-WPS-10",
      "welding-procedure:WPS-10",
    ]);
  });

  test("sees nothing of another client's job on it", () => {
    const other = changed({
      shop: [
        { add: { kind: "organisation", id: "OTHER-CLIENT", name: "Other Client Ltd" }, file: "other/client.json" },
        {
          add: { kind: "person", id: "X77", name: "N. Furzewick", employer: "OTHER-CLIENT" },
          file: "other/person.json",
        },
        { add: { kind: "weld-log", id: "WL-77", joint: "C2" }, file: "other/log.json" },
        {
          add: { kind: "original", id: "ORG-77", path: "files/other/77.txt", sha256: "0".repeat(64) },
          file: "other/original.json",
        },
      ],
    });
    expect(other.findings).toEqual([]);
    expect(other.counts).toEqual(judged.counts);
    expect(other.fingerprint).toBe(judged.fingerprint);
    expect(JSON.stringify(other.loaded.files)).not.toContain("other/77");
    expect(other.loaded.aside).toEqual([]);
  });

  test("counts in its fingerprint what it reaches, and its originals", () => {
    const person = { set: "person:R1", at: "/mark", to: "R-1" } as const;
    expect(changed({ shop: [person] }).fingerprint).not.toBe(judged.fingerprint);
    const original = judged.loaded.files.find(({ path }) => path.startsWith("shelves/shop/files/"));
    const file = (original?.path ?? "").replace("shelves/shop/", "");
    const other = changed({ shop: [{ file, bytes: "JVBERi0=" }] });
    expect(other.fingerprint).not.toBe(judged.fingerprint);
    expect(other.findings.map(({ rule, place }) => `${rule} ${place.file.split("/").slice(0, 3).join("/")}`)).toContain(
      "original-unchanged shelves/shop/original",
    );
  });

  test("misses a qualification that the shelf lost, and has it back where it stands in the book", () => {
    const gone = changed({ shop: [{ file: "people/welders.json", gone: true }] });
    expect(found(gone)).not.toEqual([]);
    const own: Change = {
      add: JSON.parse(readFileSync(join(demoData, "shop/shelf/people/welders.json"), "utf8")),
      file: "people/welders.json",
    };
    expect(found(changed({ book: [own], shop: [{ file: "people/welders.json", gone: true }] }))).toEqual([]);
  });

  test("judges no absence while a file of the shelf cannot be read", () => {
    const torn = changed({ shop: [{ file: "people/welders.json", find: "{", replace: "" }] });
    expect(found(torn)).toEqual(["file-syntax|shelves/shop/people/welders.json"]);
    expect(torn.outcomes.some(({ verdict, because }) => verdict === "not judged" && because?.type !== "not due")).toBe(
      true,
    );
  });

  test("judges no absence while the shelf is not there", () => {
    const away = changed({
      book: [{ set: "book:TQ423-MDB", at: "/shelves/0/folder", to: "../away" }],
    });
    expect(found(away)).toEqual(["shelf-folder|book:TQ423-MDB|shelves[shop].folder"]);
  });

  test("says a fault of a reached record at the record for the issue, and on the shelf for whoever mends it", () => {
    const slip = changed({ shop: [{ set: "person:R1", at: "/marc", to: "R1" }] });
    expect(slip.findings.map(({ place }) => place)).toContainEqual({
      file: "shelves/shop/person/r-R1.json",
      pointer: "/marc",
    });
    const here = reportHere(slip, "test").findings.find(({ finding }) => finding.key.includes("marc"));
    expect(here?.finding.place.file).toBe("shelves/shop/people/people.json");
    expect(here?.line).toContain('"marc": "R1"');
  });

  test("says a fault of a record that it does not reach as a note that is no part of the book", () => {
    const slip = changed({
      shop: [{ add: { kind: "person", id: "X77", nam: "N. Furzewick" }, file: "other/person.json" }],
    });
    expect(slip.findings).toEqual([]);
    expect(slip.loaded.aside?.map(({ severity, place }) => `${severity} ${place.file}`)).toEqual([
      "note shelves/shop/other/person.json",
      "note shelves/shop/other/person.json",
    ]);
    const report = reportHere(slip, "test");
    expect(report.findings.map(({ finding }) => finding.severity)).toEqual(["note", "note"]);
    expect(report.counts.note).toBe(2);
  });

  test("accuses both of two ids that clash or look alike: what reads either waits", () => {
    const twin = changed({
      book: [{ add: { kind: "person", id: "R1", name: "N. Furzewick" }, file: "people/new.json" }],
    });
    expect(found(twin)).toEqual(["id-unique|person:R1|id"]);
    const [clash] = newFindings(twin, judged);
    expect([clash?.place.file, ...(clash?.related ?? []).map(({ place }) => place.file)]).toEqual([
      "shelves/shop/person/r-R1.json",
      "people/new.json",
    ]);
    expect(clash?.why).toContain('stands in people/new.json and on the shelf "shop"');
    expect(
      twin.outcomes.some(
        ({ because }) => because?.type !== "not due" && because?.keys.includes(citedKey("id-unique|person:R1|id")),
      ),
    ).toBe(true);
  });
});

describe.each([
  ["the receiver's", demoBook],
  ["the second vessel's", vesselBook],
])("%s issue", (name, bookAt) => {
  let files: ReadonlyMap<string, Uint8Array | string>;
  let first: JudgedBook;
  let again: JudgedBook;
  beforeAll(async () => {
    first = judgedOnce(bookAt);
    files = await allFiles(publishBook(first));
    const issue = join(dir, "issues", name);
    for (const [path, content] of files) {
      const to = path.startsWith("evidence/")
        ? path.slice("evidence/".length)
        : path.startsWith("files/")
          ? path
          : null;
      if (to === null) continue;
      mkdirSync(dirname(join(issue, to)), { recursive: true });
      writeFileSync(join(issue, to), content);
    }
    again = judgeBook(readBook(issue));
  }, 300_000);

  test("holds each reached record as a file of its own, and the originals of the shelf below its name", () => {
    const paths = [...files.keys()];
    expect(paths.filter((path) => path.startsWith("evidence/shelves/shop/")).length).toBe(
      first.loaded.records.filter(({ file }) => file.startsWith("shelves/shop/")).length,
    );
    expect(JSON.parse(String(files.get("evidence/shelves/shop/person/r-R1.json")))).toMatchObject({
      kind: "person",
      id: "R1",
    });
    expect(paths.filter((path) => path.startsWith("files/shelves/shop/")).length).toBeGreaterThan(10);
    expect(paths.filter((path) => path.startsWith("shelves/"))).toEqual([]);
  });

  test("stands alone: taken as a book it gives the same fingerprint, findings, pages and PDF, byte for byte", async () => {
    expect(again.fingerprint).toBe(first.fingerprint);
    expect(again.findings).toEqual(first.findings);
    expect(again.outcomes).toEqual(first.outcomes);
    const second = await allFiles(publishBook(again));
    expect([...second.keys()]).toEqual([...files.keys()]);
    const other = [...files].filter(
      ([path, content]) => !Buffer.from(content).equals(Buffer.from(second.get(path) ?? "")),
    );
    expect(other.map(([path]) => path)).toEqual([]);
  }, 300_000);

  test("names no folder of the machine it was made on", () => {
    const texts = [...files].filter(([path]) => /\.(html|json|txt|sha256)$/.test(path));
    expect(texts.filter(([, content]) => Buffer.from(content).includes(dir)).map(([path]) => path)).toEqual([]);
  });
});

describe("a balance of what was cut from a certificate on the shelf", () => {
  test("says that cuts for other books are not counted, with its finding and among what was not checked", async () => {
    const more = changed({ book: [{ set: "piece-mark:PM-01", at: "/area", to: "5.21 m²" }] });
    const [finding] = newFindings(more, judged);
    expect(finding?.rule).toBe("plate-cut");
    expect(finding?.why).toMatch(/; pieces cut for other books are not counted$/u);
    const notChecked = async (one: JudgedBook) => {
      const page = (await layOut(one)).pages.find(({ url }) => url === "not-checked.html");
      return JSON.stringify(page?.blocks);
    };
    expect(await notChecked(judged)).toContain(
      "pieces cut for other books are not counted, where they stand on a shelf: ",
    );
    const whole = join(dir, "without-shelves");
    copyWhole(demoBook, whole);
    expect(await notChecked(judgeOnly(whole))).not.toContain("other books");
  });
});

describe("the second vessel of the order", () => {
  const second = judgedOnce(vesselBook);
  const addresses = ({ loaded }: JudgedBook) =>
    new Map(loaded.records.map((record) => [`${record.kind}:${record.id}`, record]));

  test("is clean, and reaches people, qualifications and the plate of the first", () => {
    expect(second.findings).toEqual([]);
    expect(second.loaded.aside).toEqual([]);
    const [first, own] = [addresses(judged), addresses(second)];
    const both = [...own].filter(([address, { file }]) => file.startsWith("shelves/") && first.has(address));
    for (const address of [
      "person:W03",
      "welder-qualification:WQ-03-1",
      "material-certificate:CRT-003",
      "instrument:PG-03",
    ])
      expect(both.map(([name]) => name)).toContain(address);
    for (const [address, { value }] of both) expect([address, value]).toEqual([address, first.get(address)?.value]);
    expect(both.length).toBeGreaterThan(80);
    // Less than half of what the book holds was written for it.
    const written = [...own.values()].filter(({ file }) => !file.startsWith("shelves/")).length;
    expect(written).toBeLessThan(own.size / 2 + 40);
  });

  test("sees nothing of the first vessel, nor does the first of it", () => {
    const serials = (one: JudgedBook) => [...(one.graph.byKind.get("equipment")?.keys() ?? [])];
    expect([serials(judged), serials(second)]).toEqual([["TQ423-01"], ["TQ423-02"]]);
    for (const kind of ["part", "joint", "weld-log", "piece-mark", "material-certificate"])
      for (const [id, { value }] of second.graph.byKind.get(kind) ?? [])
        expect([kind, id, JSON.stringify(value).includes("TQ423-01")]).toEqual([kind, id, false]);
  });

  test("both together cut no more from a plate or a pipe than there was", () => {
    const cut = (row: string, field: "area" | "length") =>
      [judged, second]
        .flatMap((one) => [...(one.graph.byKind.get("piece-mark")?.values() ?? [])])
        .filter(({ value }) => value["certificateRow"] === row)
        .reduce((sum, { value }) => sum + Number.parseFloat(JSON.stringify(value[field]).slice(1)), 0);
    // Certified: plate 1250 mm × 4000 mm, pipe 2000 mm.
    expect(cut("CRT-003#84713", "area")).toBeCloseTo(4.48, 6);
    expect(cut("CRT-003#84713", "area")).toBeLessThan(1.25 * 4);
    expect(cut("CRT-005#70344", "length")).toBe(560);
  });

  test("says on its own that cuts for other books are not counted", async () => {
    const page = (await laidOutOnce(vesselBook)).pages.find(({ url }) => url === "not-checked.html");
    expect(JSON.stringify(page?.blocks)).toContain("pieces cut for other books are not counted");
  });

  test("no one is at two places: no welder, tester or instrument of the test works for both at a time", () => {
    const spans = [judged, second].flatMap((one, book) =>
      [...(one.graph.byKind.get("weld-log")?.values() ?? [])].flatMap(({ value }) => {
        const runs = Array.isArray(value["runs"])
          ? (value["runs"] as { welders: string[]; date: string; finished?: string }[])
          : [];
        const [from, to] = [runs[0]?.date ?? "", runs.at(-1)?.finished ?? ""];
        return (runs[0]?.welders ?? []).map((who) => ({ who, from, to, book }));
      }),
    );
    const clashes = spans.flatMap((one) =>
      spans.filter(
        (other) => other.book > one.book && other.who === one.who && other.from < one.to && one.from < other.to,
      ),
    );
    expect(spans.filter(({ book }) => book === 1).length).toBe(7);
    expect(clashes).toEqual([]);
  });
});
