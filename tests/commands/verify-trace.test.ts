import { mkdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Block } from "../../src/publish/blocks.ts";
import { sha256, verifyIssue, writeIssue } from "../../src/publish/issue/index.ts";
import { judgedBook } from "../report/judged.ts";
import { contents, freshFolder, put, sampleFiles, sampleMarker } from "../publish/issue/folders.ts";
import { runOn } from "./fakes.ts";

describe("verify", () => {
  async function desk() {
    const cwd = await freshFolder();
    await put(cwd, { "records/book.json": "{}" });
    await writeIssue(sampleFiles(), sampleMarker(), { type: "folder", dir: join(cwd, "issue") }, join(cwd, "records"));
    return { cwd, judged: judgedBook() };
  }

  test("sound: exit 0, with the fingerprint in groups of four", async () => {
    const setting = await desk();
    const { exit, out, err } = await runOn(setting, "verify", "issue");
    const grouped = sampleMarker().fingerprint.replaceAll(/(.{4})(?=.)/g, "$1 ");
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    const { issueFingerprint } = await verifyIssue(join(setting.cwd, "issue"));
    expect(out.split("\n").slice(0, 4)).toEqual([
      "TQ423-01 revision 0, final, by databook 0.1.0",
      `evidence fingerprint ${grouped}`,
      `issue's fingerprint  ${(issueFingerprint ?? "").replaceAll(/(.{4})(?=.)/g, "$1 ")}`,
      "8 files as listed: nothing moved",
    ]);
    expect(out).toContain("give that with --expect\n");
  });

  test("changed, missing and extra files: exit 1, each named", async () => {
    const setting = await desk();
    await put(setting.cwd, { "issue/index.html": "other", "issue/new.txt": "x" });
    await rm(join(setting.cwd, "issue/joint/r-L1.html"));
    const { exit, out } = await runOn(setting, "verify", "issue");
    expect(exit).toBe(1);
    expect(out).toContain("changed  index.html\nmissing  joint/r-L1.html\nextra    new.txt\n");
    expect(out).toContain("of 8 listed files: 1 changed, 1 missing, 1 extra\n");
    const json = await runOn(setting, "verify", "issue", "--format", "json");
    expect(json.exit).toBe(1);
    expect(JSON.parse(json.out)).toMatchObject({
      format: 1,
      issue: sampleMarker(),
      listed: 8,
      changed: ["index.html"],
      missing: ["joint/r-L1.html"],
      extra: ["new.txt"],
      faults: [],
      sound: false,
    });
  });

  test("--expect takes either fingerprint and says which it is", async () => {
    const setting = await desk();
    const { issueFingerprint, fingerprint } = await verifyIssue(join(setting.cwd, "issue"));
    const issue = (issueFingerprint ?? "").toUpperCase().replaceAll(/(.{4})(?=.)/g, "$1 ");
    const first = await runOn(setting, "verify", "issue", "--expect", issue);
    expect(first.exit).toBe(0);
    expect(first.out).toContain("expected: the issue's fingerprint, and it is: every byte is as it was issued\n");
    const second = await runOn(setting, "verify", "issue", "--expect", fingerprint?.recomputed ?? "");
    expect(second.exit).toBe(0);
    expect(second.out).toContain("expected: the evidence fingerprint, and it is. It covers records and originals;");
    const none = await runOn(setting, "verify", "issue", "--expect", "a".repeat(64));
    expect(none.exit).toBe(1);
    expect(none.out).toContain("that is neither the issue's fingerprint nor the evidence's");
    const json = await runOn(setting, "verify", "issue", "--expect", "a".repeat(64), "--format", "json");
    expect(JSON.parse(json.out)).toMatchObject({ sound: true, expected: { fingerprint: "a".repeat(64), is: null } });
    expect(await runOn(setting, "verify", "issue", "--expect", "abcd")).toMatchObject({
      exit: 2,
      err: `--expect is "abcd"; expected a fingerprint of 64 hex digits (0 to 9, a to f), whole, with or without spaces\n`,
    });
  });

  test("a page edited with its line in the list: verify alone sees nothing, --expect does", async () => {
    const setting = await desk();
    const { issueFingerprint } = await verifyIssue(join(setting.cwd, "issue"));
    const list = (await contents(setting.cwd))["issue/hashes.sha256"] ?? "";
    await put(setting.cwd, {
      "issue/joint/r-L1.html": "all passed",
      "issue/hashes.sha256": list.replace(
        /[0-9a-f]{64} {2}joint\/r-L1.html/,
        `${sha256("all passed")}  joint/r-L1.html`,
      ),
    });
    expect((await runOn(setting, "verify", "issue")).exit).toBe(0);
    expect((await runOn(setting, "verify", "issue", "--expect", issueFingerprint ?? "")).exit).toBe(1);
  });

  test("an empty folder somebody added: exit 1, named", async () => {
    const setting = await desk();
    await mkdir(join(setting.cwd, "issue/notes"));
    const { exit, out } = await runOn(setting, "verify", "issue");
    expect(exit).toBe(1);
    expect(out).toContain("extra    notes/, an empty folder\n");
  });

  test("no issue: exit 2", async () => {
    const setting = await desk();
    for (const name of ["records", "absent"])
      expect(await runOn(setting, "verify", name)).toMatchObject({ exit: 2, out: "" });
  });
});

describe("trace", () => {
  type Chain = Extract<Block, { type: "chain" }>;
  const chain: Chain = {
    type: "chain",
    label: "Evidence for joint L1",
    count: "one link passed, one failed",
    links: [
      {
        what: "Material of part 1",
        mark: "passed",
        text: [
          [
            "Plate ",
            { type: "link", to: { page: "part/r-1.html" }, text: "1" },
            " is of heat ",
            { type: "code", text: "84613" },
            ".",
          ],
        ],
        notes: [],
      },
      {
        what: "Welder qualified on the day",
        mark: "failed",
        text: [["Welded on 2026-03-09 by W07."]],
        because: [{ type: "link", to: { page: "findings.html" }, text: "W07 was not qualified\u001b[2J" }],
        notes: [{ lead: "Basis", text: ["EN ISO 9606-1:2017 (from memory)"] }],
      },
    ],
  };
  async function desk(changes: Partial<Chain> = {}) {
    const cwd = await freshFolder();
    await put(cwd, { "records/book.json": "{}" });
    return { cwd, judged: judgedBook(), chain: { ...chain, ...changes } };
  }

  test("prints the chain numbered, with leaders, reasons and notes; a failed link is exit 1", async () => {
    const { exit, out } = await runOn(await desk(), "trace", "joint", "L1");
    expect(exit).toBe(1);
    expect(out.split("\n")).toEqual([
      "Evidence for joint L1",
      "",
      "passed          Material of part 1",
      "                Plate 1 is of heat 84613.",
      "",
      "failed          Welder qualified on the day",
      "                Welded on 2026-03-09 by W07.",
      "                W07 was not qualified\\u001b[2J",
      "                Basis: EN ISO 9606-1:2017 (from memory)",
      "",
      "one link passed, one failed",
      "",
      "used in",
      "",
      "no record names it",
      "",
    ]);
  });

  test("exit follows the marks", async () => {
    for (const [mark, exit] of [
      ["passed", 0],
      ["not applicable", 0],
      ["not due", 0],
      ["on record", 0],
      ["answered", 0],
      ["rejected", 1],
      ["not judged", 1],
      ["failed", 1],
    ] as const) {
      const links = [{ what: "x", mark, text: [], notes: [] }];
      expect((await runOn(await desk({ links }), "trace", "joint", "L1")).exit).toBe(exit);
    }
  });

  test("json holds the same", async () => {
    const { out } = await runOn(await desk(), "trace", "joint", "L1", "--format", "json");
    expect(JSON.parse(out)).toMatchObject({
      format: 1,
      subject: { kind: "joint", id: "L1" },
      links: [
        {
          what: "Material of part 1",
          verdict: "passed",
          text: ["Plate 1 is of heat 84613."],
          because: null,
          notes: [],
        },
        { verdict: "failed", notes: [{ lead: "Basis", text: "EN ISO 9606-1:2017 (from memory)" }] },
      ],
    });
  });

  test("an unknown kind or id is exit 2, with what was probably meant", async () => {
    const setting = await desk();
    expect(await runOn(setting, "trace", "jiont", "L1")).toMatchObject({
      exit: 2,
      out: "",
      err: `there is no kind "jiont"; did you mean joint?\n`,
    });
    expect(await runOn(setting, "trace", "joint", "L11")).toMatchObject({
      exit: 2,
      err: `the book holds no joint "L11"; did you mean L1?\n`,
    });
    expect(await runOn(setting, "trace", "joint", "C99")).toMatchObject({
      exit: 2,
      err: `the book holds no joint "C99"\n`,
    });
  });
});
