import { address } from "../../support/address.ts";
import { expect, test } from "vitest";
import { shelfOf } from "../../../src/model/shelf.ts";
import { addressOf } from "../../../src/model/record.ts";
import { boilerBook, judgedOnce, laidOutOnce, vesselBook } from "../../support/demo-book.ts";
import { wordsIn } from "./words.ts";

const judged = judgedOnce(vesselBook);
const { pages } = await laidOutOnce(vesselBook);
const pageAt = (url: string) => wordsIn(pages.find((page) => page.url === url)?.blocks ?? []);
const shop = "“shop”, what Tarnequill Boiler Works keeps for all its orders";
const order = "“order”, what the vessels of order PW-1187 share";

test("a record of a shelf says on which it stands, whose that is, and who in this book names it", () => {
  const names = new Set((judged.graph.back.get(address("person:W03")) ?? []).map(({ from }) => addressOf(from)));
  expect(names.size).toBeGreaterThan(1);
  expect(pageAt("person/r-W03.html")).toContain(
    `On the shelf ${shop}. Other books may read it too; they are not seen from here. In this book ${names.size} records name it.`,
  );
  expect(pageAt("material-certificate/r-CRT-003.html")).toContain(`On the shelf ${order}. Other books`);
});

test("every record of a shelf says so, and no other does", () => {
  const shown = judged.graph.records.flatMap((record) => {
    const url = pages.find((page) => page.url === `${record.kind}/r-${record.id}.html`)?.url;
    return record.kind === "heat" || url === undefined ? [] : [{ url, shelved: shelfOf(record.file) !== undefined }];
  });
  expect(new Set(shown.map(({ shelved }) => shelved))).toEqual(new Set([true, false]));
  for (const { url, shelved } of shown) expect(pageAt(url).includes("On the shelf “"), url).toBe(shelved);
});

test("front page and tables count them; a book without shelves says nothing of it", async () => {
  const on = judged.graph.records.filter(({ file }) => shelfOf(file) !== undefined).length;
  expect(pageAt("index.html")).toContain(
    `${on} of the ${judged.graph.records.length} records of this book stand on shelves`,
  );
  const people = pages.find((page) =>
    page.blocks.some((block) => block.type === "heading" && block.anchor === "person"),
  );
  expect(wordsIn(people?.blocks ?? [])).toContain(`On the shelf ${shop}, which other books may read too: all of them.`);
  const boiler = await laidOutOnce(boilerBook);
  expect(wordsIn(boiler.pages[0]?.blocks ?? [])).not.toContain("shelf");
});

test("a file of a shelf is called by one path, the one it has in the issue", () => {
  const list = pageAt("integrity.html");
  expect(list).toContain("files/shelves/shop/documents/specimen-signatures.pdf");
  const everywhere = pages.map(({ blocks }) => wordsIn(blocks)).join(" ");
  expect(everywhere).not.toContain("shelves/shop/files/");
  expect(everywhere).not.toContain("which lies here as");
});

test("a shelf's original has one path everywhere: that under which it lies in the issue", () => {
  const originals = judged.graph.records.filter(
    (record) => record.kind === "original" && shelfOf(record.file) !== undefined,
  );
  expect(originals.length).toBeGreaterThan(10);
  for (const { id, file, value } of originals) {
    const [path, shelf] = [typeof value["path"] === "string" ? value["path"] : "", shelfOf(file) ?? ""];
    const own = pages.find(({ url }) => url === `original/r-${id}.html` || url === `original/g-${id}.html`);
    const said = pages.filter(({ blocks }) => wordsIn(blocks).includes(` ${path}`)).map(({ url }) => url);
    expect([id, said]).toEqual([id, []]);
    if (own !== undefined) expect(wordsIn(own.blocks)).toContain(path.replace("files/", `files/shelves/${shelf}/`));
  }
});
