import { describe, expect, test } from "vitest";
import { readText } from "../../src/foreign/text/read-text.ts";
import { flate, rawPdf, stream, type RawStream } from "../foreign/raw-pdf.ts";

/** A file of one page with this content; a picture of one point is there by the name of Im. */
const onePage = (content: string | RawStream) =>
  rawPdf({
    objects: {
      1: "<</Type/Catalog/Pages 2 0 R>>",
      2: "<</Type/Pages/Kids[3 0 R]/Count 1>>",
      3: "<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Contents 4 0 R/Resources<</Font<</F1 5 0 R>>/XObject<</Im 6 0 R>>>>>>",
      4: typeof content === "string" ? flate(content) : content,
      5: "<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>",
      6: stream("\u0000", "/Type/XObject/Subtype/Image/Width 1/Height 1/BitsPerComponent 8/ColorSpace/DeviceGray"),
    },
  });

const text = (mode: number, words: string, y: number) => `BT /F1 12 Tf ${mode} Tr 50 ${y} Td (${words}) Tj ET\n`;
const picture = "q 595 0 0 842 0 0 cm /Im Do Q\n";

async function pageOf(content: string | RawStream) {
  const read = await readText(onePage(content));
  if ("none" in read) throw new Error(read.none);
  const [page] = read.pages;
  return { words: page?.words.map(([word]) => word), unseen: page?.unseen };
}

describe("text that a machine laid over a scan is told from text that is printed", () => {
  test("printed", async () =>
    expect(await pageOf(text(0, "Heat 84108", 700))).toEqual({ words: ["Heat", "84108"], unseen: false }));
  test("shown in the mode that paints nothing", async () =>
    expect(await pageOf(picture + text(3, "Heat 84108", 700))).toEqual({ words: ["Heat", "84108"], unseen: true }));
  test("painted, and then covered by a picture of the page", async () =>
    expect((await pageOf(text(0, "Heat 84108", 700) + picture)).unseen).toBe(true));
  test("painted on a picture: a letterhead", async () =>
    expect((await pageOf(picture + text(0, "Heat 84108", 700))).unseen).toBe(false));
  test("a stamp printed on a recognised scan makes it no paper of its own", async () =>
    expect((await pageOf(picture + text(3, "Heat", 700) + text(3, "84108", 680) + text(0, "copy", 20))).unseen).toBe(
      true,
    ));
  test("no text at all", async () => expect(await pageOf(picture)).toEqual({ words: [], unseen: false }));
});

describe("what cannot be read is said, never thrown", () => {
  test("no PDF", async () => expect(await readText(Buffer.from("no paper"))).toHaveProperty("none"));
  test("content that is cut off", async () => {
    const read = await readText(onePage(stream("BT /F1 12 Tf (never ends", "")));
    expect("none" in read || read.pages.length === 1).toBe(true);
  });
  test("more words than are read of one file", async () =>
    expect(await readText(onePage(text(0, "one two three", 700)), undefined, 2)).toEqual({
      none: "the file holds more text than is read",
    }));
});
