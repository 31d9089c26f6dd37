import { address } from "../support/address.ts";
import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { layOut } from "../../src/pipeline.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { answered } from "../support/answered.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots, sound } from "../support/demo-book.ts";

const sha256 = (text: string) => createHash("sha256").update(text).digest("hex");

const override = (value: string): Change => ({
  set: "book:TQ423-MDB",
  at: "/overrides",
  to: [
    {
      parameter: "comparisonByReading",
      value,
      by: "D2",
      authority: "order TQ423, clause 9",
      date: "2026-03-02",
      basis: "contract",
    },
  ],
});
const uncompared: Change = { remove: "original:ORG-CRT-001", at: "/transcription" };

const judgedOf = (changes: readonly Change[], withPapers = true): JudgedBook => {
  const { judged } = judgeChanged(demoBook, changes, { withPapers, asCompared: true });
  if (judged === null) throw new Error("the book cannot be judged");
  return judged;
};
const keys = (judged: JudgedBook) => newRoots(judged, sound).map(({ key }) => key);

/** What stands on the first page of which the address says this. */
async function words(judged: JudgedBook, url: string): Promise<string> {
  const page = (await layOut(judged)).pages.find((one) => one.url.includes(url));
  const all: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value === "string") all.push(value);
    else if (Array.isArray(value)) value.forEach(walk);
    else if (typeof value === "object" && value !== null) Object.values(value).forEach(walk);
  };
  walk([...(page?.blocks ?? [])]);
  return all.join(" ");
}

describe("an original nobody compared", () => {
  test("owes the comparison, though its text was read back: the profile says no by default", () => {
    expect(keys(judgedOf([uncompared]))).toEqual(["missing|original:ORG-CRT-001|transcription"]);
  });

  test("owes it no more where the book lets reading back stand in its place; that is asked about, and every page says so", async () => {
    const judged = judgedOf(answered(demoBook, [override("allowed"), uncompared]));
    expect(keys(judged).map((key) => key.split("|")[0])).toEqual(["profile-cautious"]);
    expect(judged.comparisons.get(address("material-certificate:CRT-001"))?.map(({ state }) => state)).toEqual([
      "read back",
    ]);
    expect(await words(judged, "index.html")).toContain(
      "the profile lets the file's own text, read back, stand in place of that: choices and sentences in them nobody compared",
    );
    expect(await words(judged, "not-checked.html")).toMatch(
      /no program looked for choices and sentences in them: +\S* *\S* *CRT-001/,
    );
    expect(await words(judged, "CRT-001.html")).toContain("Not compared by a person: the profile lets");
  });

  test("owes it all the same where a value is not on the page, where nothing was read, or where the word is another", () => {
    const slip: Change = {
      set: "material-certificate:CRT-001",
      at: "/rows/0/tensile/0/tensileStrength",
      to: "484 MPa",
    };
    const owing = "missing|original:ORG-CRT-001|transcription";
    expect(keys(judgedOf([override("allowed"), uncompared, slip]))).toContain(owing);
    expect(keys(judgedOf([override("allowed"), uncompared], false))).toContain(owing);
    expect(keys(judgedOf([override("required"), uncompared]))).toContain(owing);
  });
});

describe("a paper that a contract takes back", () => {
  test("is owed no more: the front page says which, by whom and why", async () => {
    const changes = answered(demoBook, [
      { remove: "mill-approval:MA-01", at: "/source" },
      {
        add: {
          kind: "waiver",
          id: "WV-09",
          answers: [{ finding: "missing|mill-approval:MA-01|source", digest: "as printed" }],
          reason: "the mill shows its approval at the works",
          authority: "order TQ423, clause 12",
          by: "E1",
          date: "2026-07-07",
          source: { original: "ORG-NP-01", page: 1 },
        },
        file: "plan/exceptions.json",
      },
    ]);
    const { judged } = judgeChanged(demoBook, changes);
    if (judged === null) throw new Error("the book cannot be judged");
    expect(keys(judged)).toEqual([]);
    expect(judged.missing.map(({ message }) => message)).toContain("mill approval MA-01 has no original");
    const front = await words(judged, "index.html");
    expect(front).toContain("the mill shows its approval at the works");
    expect(front).toContain("It answers: mill approval MA-01 has no original.");
  });
});

test("originals and files that nobody names are one note each, however many there are", () => {
  const bytes = (text: string) => Buffer.from(text).toString("base64");
  const { judged } = judgeChanged(demoBook, [
    { file: "files/a.txt", bytes: bytes("a") },
    { file: "files/b.txt", bytes: bytes("b") },
    ...["ORG-X1", "ORG-X2", "ORG-X3"].map((id) => ({
      add: {
        kind: "original",
        id,
        path: `files/${id.toLowerCase()}.txt`,
        sha256: sha256(id),
        title: id,
        mediaType: "text/plain",
        pages: 1,
        language: "en",
        signed: false,
      },
      file: `originals/${id}.json`,
    })),
    ...["ORG-X1", "ORG-X2", "ORG-X3"].map((id) => ({ file: `files/${id.toLowerCase()}.txt`, bytes: bytes(id) })),
  ]);
  const notes = judged?.findings.filter(({ severity }) => severity === "note").map(({ message }) => message);
  expect(notes).toEqual([
    "2 files have no original record: files/a.txt, files/b.txt",
    "nothing in the book names 3 originals: ORG-X1, ORG-X2, ORG-X3",
  ]);
});
