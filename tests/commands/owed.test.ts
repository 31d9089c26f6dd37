import { address } from "../support/address.ts";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { finding, judgedBook } from "../report/judged.ts";
import { freshFolder, put } from "../publish/issue/folders.ts";
import { runOn } from "./fakes.ts";

async function desk() {
  const cwd = await freshFolder();
  await put(cwd, { "records/book.json": "{}" });
  return { cwd, judged: judgedBook({ findings: [finding({ severity: "gap", owner: "testing", due: "welding" })] }) };
}

test("text, csv and json are printed, xlsx is written beside and never over another; exit 0 whatever is owed", async () => {
  const setting = await desk();
  const text = await runOn(setting, "owed");
  expect(text).toMatchObject({ exit: 0, err: "" });
  expect(text.out).toContain("TQ423-01 Air <receiver>: what is owed\nrevision 0, final, evidence up to 2026-06-18\n");
  expect(text.out).toContain("testing: 1\n  welding: due\n    welder W07 was not qualified on 2026-03-09\n");
  expect((await runOn(setting, "owed", "--format", "csv")).out).toContain('\n"testing","","welder W07 was not');
  const json = JSON.parse((await runOn(setting, "owed", "--format", "json")).out) as { owed: unknown[] };
  expect(json.owed).toHaveLength(1);
  expect(await runOn(setting, "owed", "--format", "xlsx")).toMatchObject({
    exit: 0,
    out: "written owed.xlsx: 1 row\n",
  });
  expect((await readFile(join(setting.cwd, "owed.xlsx"))).subarray(0, 2).toString()).toBe("PK");
  expect(await runOn(setting, "owed", "--format", "xlsx")).toMatchObject({ exit: 2, out: "" });
});

test("what blocks and is no absence is said beside the list, so that its end is not taken for the end of the work", async () => {
  const cwd = await freshFolder();
  await put(cwd, { "records/book.json": "{}" });
  const findings = [
    finding({ key: "a", severity: "nonconformity" }),
    finding({ key: "b", severity: "query" }),
    finding({ key: "c", severity: "query", exception: address("waiver:WV-01") }),
    finding({ key: "d", severity: "note" }),
  ];
  const setting = { cwd, judged: judgedBook({ findings }) };
  const said =
    "beside this list check finds what is there and wrong or in doubt: 1 nonconformity and 1 query; that blocks too\n";
  expect((await runOn(setting, "owed")).out).toContain(`0 due, 0 not due yet\n${said}`);
  expect(await runOn(setting, "owed", "--format", "csv")).toMatchObject({ exit: 0, err: said });
  const json = JSON.parse((await runOn(setting, "owed", "--format", "json")).out) as { notOwed: { key: string }[] };
  expect(json.notOwed.map(({ key }) => key)).toEqual(["a", "b"]);
});

test("a milestone or owner nobody knows is refused with the nearest name", async () => {
  const setting = await desk();
  for (const [words, message] of [
    [["--until", "weldin"], '--until "weldin" is no milestone that issue.json lists'],
    [
      ["--owner", "testng"],
      '--owner "testng" is no role, and no firm or person that owes anything; did you mean testing?',
    ],
    [["--out", "x.csv"], "--out takes a sheet: say --format csv or --format xlsx; text is printed"],
  ] as const) {
    const refused = await runOn(setting, "owed", ...words);
    expect(refused).toMatchObject({ exit: 2, out: "" });
    expect(refused.err).toContain(message);
  }
});
