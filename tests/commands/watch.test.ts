import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runIn, runReal } from "../support/real.ts";
import { openBrowser } from "../support/browser.ts";
import type { Ran } from "./fakes.ts";

const root = join(import.meta.dirname, "../..");
const opened = await openBrowser();

let folder = "";
let book = "";
const out: string[] = [];
const err: string[] = [];
let stop: () => void = () => undefined;
let ended: Promise<Ran>;
let url = "";

const until = async (what: string, holds: () => boolean | Promise<boolean>) => {
  for (let tries = 0; tries < 400; tries++) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`waited in vain until ${what}; printed:\n${out.join("")}\n${err.join("")}`);
};
const page = async (path = "") => await (await fetch(url + path)).text();
const isLive = (text: string) => text.includes("Live view of the records");

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "databook-watch-"));
  book = join(folder, "book");
  cpSync(join(root, "records"), book, { recursive: true });
  const stopped = new Promise<void>((resolve) => (stop = resolve));
  ended = runIn(
    { cwd: folder, out, err, interrupted: (failed) => Promise.race([failed, stopped]) },
    ...["watch", "book", "--port", "18500"],
  );
  await until("it serves", () => /^open /m.test(out.join("")));
  url = /^open (\S+)$/m.exec(out.join(""))?.[1] ?? "";
});
afterAll(async () => {
  stop();
  await ended;
  rmSync(folder, { recursive: true, force: true });
  if (typeof opened !== "string") await opened.close();
});

const write = (name: string, text: string) => writeFileSync(join(book, name), text);

describe("a book that is watched", () => {
  test("opens with its findings, and says on every page that it is no issue", async () => {
    const first = await page();
    expect(first).toContain("Findings, by who must act");
    for (const path of ["", "index.html", "find.html"]) expect(isLive(await page(path))).toBe(true);
    expect(await page()).not.toContain("New with the last change");
  });

  test.skipIf(typeof opened === "string")(
    "a save that adds a fault renews the open page, the new finding first; mending it says what is gone",
    async () => {
      if (typeof opened === "string") return;
      const tab = await opened.browser.newPage();
      const refused: string[] = [];
      tab.on("console", (message) => message.type() === "error" && refused.push(message.text()));
      await tab.goto(url);
      write("joints.json", '{ "kind": "joint", "records": [ { "id": "L1", "parts": ["no such"] } ] }');
      await tab.getByText("New with the last change").first().waitFor({ timeout: 40_000 });
      const heads = await tab.locator("h2").allInnerTexts();
      expect(heads[0]).toMatch(/New with the last change/);
      expect(await tab.locator("main").innerText()).toContain("joints.json:1:");
      expect(await tab.getByRole("link", { name: /L1/ }).count()).toBeGreaterThan(0);
      rmSync(join(book, "joints.json"));
      await tab.getByText("Gone with the last change").first().waitFor({ timeout: 40_000 });
      expect(refused).toEqual([]);
      await tab.close();
      expect(out.join("")).toMatch(/^[1-9]\d* new, \d+ still open, \d+ gone/m);
    },
    120_000,
  );

  test("a file saved half way is a finding, not an end", async () => {
    write("joints.json", '{ "kind": "joint", "records": [ { "id": "L1", ');
    await until("the broken file is found", async () => (await page()).includes("joints.json"));
    rmSync(join(book, "joints.json"));
    await until("it is gone", async () => (await page()).includes("Gone with the last change"));
  });

  test("a book that cannot be judged shows that and nothing older", async () => {
    const sound = readFileSync(join(book, "book.json"), "utf8");
    write("book.json", "{");
    await until("it cannot be judged", async () => (await page()).includes("The book cannot be judged"));
    expect(await page("index.html")).toContain("The book cannot be judged");
    write("book.json", sound);
    await until("it can", async () => isLive(await page()));
  });

  test("a folder that goes away is waited for", async () => {
    renameSync(book, `${book}-away`);
    await until("it says so", () => err.join("").includes("the folder of the book is gone"));
    await until("the page says so", async () => (await page()).includes("The book cannot be judged"));
    renameSync(`${book}-away`, book);
    await until("it is back", async () => isLive(await page()));
    write("joints.json", '{ "kind": "joint", "records": [ { "id": "L1", "parts": ["no such"] } ] }');
    await until("its saves are seen again", async () => (await page()).includes("joints.json"));
  });

  test("stopped, it ends as the last judging did", async () => {
    stop();
    expect((await ended).exit).toBe(1);
    await expect(fetch(url)).rejects.toThrow();
  });
});

test("a port that is none is refused", async () => {
  const { exit, err: told } = await runReal(root, "watch", "records", "--port", "80x");
  expect([exit, told]).toEqual([2, '--port is "80x"; expected a whole number from 1 to 65535\n']);
});
