import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { copyBook } from "../support/copy-book.ts";
import { runReal } from "../support/real.ts";

const cwd = mkdtempSync(join(tmpdir(), "databook-compared-"));
afterAll(() => {
  rmSync(cwd, { recursive: true, force: true });
});

const book = join(cwd, "book");
const originals = join(book, "originals.json");
beforeEach(() => {
  rmSync(book, { recursive: true, force: true });
  copyBook("demo-data/air-receiver-interim/book", book);
});

const compared = (...words: readonly string[]) => runReal(cwd, "compared", ...words, "--book", "book");
const asked = ["ORG-WELD-LOG-1", "--by", "B5", "--typed-by", "B4", "--on", "2026-06-05"];

describe("a comparison that a person states", () => {
  test("is shown, and written with the digest of each record as it stands", async () => {
    const before = readFileSync(originals, "utf8");
    expect(await compared(...asked)).toMatchObject({
      exit: 0,
      out:
        "compared     ORG-WELD-LOG-1, 3 records: weld log WL-C1, weld log WL-L1, weld log WL-L2\n" +
        "nothing is written yet; to write it: --write\n",
    });
    expect(readFileSync(originals, "utf8")).toBe(before);
    expect(await compared(...asked, "--write")).toMatchObject({ exit: 0, err: "" });
    // It is the comparison that stands there already.
    expect(JSON.parse(readFileSync(originals, "utf8"))).toEqual(JSON.parse(before));
  });

  test("is told of what the paper itself says against it, before it is written", async () => {
    const log = join(book, "welding/seams.json");
    const text = readFileSync(log, "utf8");
    writeFileSync(log, text.replace('"current": "236 A"', '"current": "263 A"'));
    const { exit, out } = await compared(...asked);
    expect(exit).toBe(0);
    expect(out).toContain("  but        open: ");
    expect(out).toMatch(/open: .*263/);
    expect(out).toContain("compare these with the page again, and correct the records or answer the query");
  });

  test("is told of a day that has not come, and of one behind the cut-off", async () => {
    const on = (day: string) => compared("ORG-WELD-LOG-1", "--by", "B5", "--typed-by", "B4", "--on", day);
    const late = await on("2026-06-06");
    expect(late.out).toContain("but        2026-06-06 lies after the data cut-off, 2026-06-05");
    expect(late.out).not.toContain("in the future");
    expect((await on("2027-01-08")).out).toContain("but        in the future: 2027-01-08, today is 2026-11-30");
  });

  test("of an order's shelf, by the people of the shop's", async () => {
    const shelf = join(cwd, "order");
    const people = "demo-data/shop/shelf";
    cpSync("demo-data/order/shelf", shelf, { recursive: true });
    const on = ["ORG-CRT-003", "--by", "B5", "--typed-by", "B4", "--on", "2026-07-16", "--book", "order"];
    const { exit, err } = await runReal(cwd, "compared", ...on);
    expect([exit, err]).toEqual([2, expect.stringContaining("say with --people in which folder the people stand")]);
    const written = await runReal(cwd, "compared", ...on, "--people", resolve(people), "--write");
    expect(written).toMatchObject({ exit: 0, err: "" });
    const nobody = await runReal(cwd, "compared", ...on.with(2, "NOBODY"), "--people", resolve(people));
    expect([nobody.exit, nobody.err]).toEqual([2, expect.stringContaining('there is no person "NOBODY"')]);
    rmSync(shelf, { recursive: true });
  });

  test.each([
    [["ORG-WELD-LOG-9", "--by", "B5", "--on", "2026-06-05"], 'there is no original "ORG-WELD-LOG-9"; nearest: '],
    [["ORG-WELD-LOG-1", "--on", "2026-06-05"], "say who compared, with --by"],
    [["ORG-WELD-LOG-1", "--by", "B5"], "say on which day, with --on"],
    [["ORG-WELD-LOG-1", "--by", "B5", "--on", "5.6.2026"], '"5.6.2026" is no day'],
    [["ORG-WELD-LOG-1", "--by", "B4", "--typed-by", "B4", "--on", "2026-06-05"], "somebody else has to compare it"],
    [["ORG-WELD-LOG-1", "--by", "NOBODY", "--on", "2026-06-05"], 'there is no person "NOBODY"'],
  ])("is refused: %j", async (words, why) => {
    const before = readFileSync(originals, "utf8");
    const { exit, out, err } = await compared(...words, "--write");
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toContain(why);
    expect(readFileSync(originals, "utf8")).toBe(before);
  });
});
