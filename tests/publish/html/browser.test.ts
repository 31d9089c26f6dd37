import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { siteFiles } from "../../../src/publish/html/index.ts";
import { openBrowser, type OpenBrowser } from "../../support/browser.ts";
import type { Page } from "../../../src/publish/publication.ts";
import { samplePublication } from "../sample.ts";

const opened = await openBrowser();
const sample = samplePublication(true);
/** A table whose columns are squeezed between others, with ids as text, as links and within sentences. */
const idPage: Page = {
  url: "ids.html",
  title: "Ids in narrow columns",
  section: null,
  blocks: [
    {
      type: "table",
      number: "1",
      title: "Reports",
      columns: ["Report", "Of", "Signed by", "Says"].map((head) => ({ head, align: "left" as const })),
      groups: [
        Array.from({ length: 12 }, (_, index) => ({
          cells: [
            [`Report NDT-RT-0${index + 10} of the seams of the shell`],
            [
              {
                type: "link",
                to: { page: "index.html" },
                text: `Certificate WPQ-W${index + 10}-02 of a welder`,
              } as const,
            ],
            [`the inspector, after TQ423-04-DRG-0${index + 10} was approved`],
            [`${"Words that take up whatever room there is. ".repeat(index)}See LK-CAL-22${index + 10}.`],
          ].map((text) => ({ type: "text" as const, text })),
        })),
      ],
    },
  ],
};
const publication = { ...sample, pages: [...sample.pages, idPage] };
const urls = [...publication.pages.map(({ url }) => url), "find.html"];

/** Runs on a page: the ids in its tables, facts and paragraphs, each with the number of lines it stands on. */
const linesOfIds = `[...document.querySelectorAll("td, th, dd, p, li")].flatMap((holder) => {
  const walker = document.createTreeWalker(holder, NodeFilter.SHOW_TEXT);
  const found = [];
  while (walker.nextNode())
    for (const match of walker.currentNode.data.matchAll(/\\b[A-Z][A-Z0-9]*(?:-[A-Z0-9]+)+\\b/g)) {
      const range = document.createRange();
      range.setStart(walker.currentNode, match.index);
      range.setEnd(walker.currentNode, match.index + match[0].length);
      const boxes = [...range.getClientRects()].filter(({ width }) => width > 0.5);
      if (match[0].length <= 28) found.push([match[0], new Set(boxes.map(({ top }) => Math.round(top))).size]);
    }
  return found;
})`;

// Said aloud where no browser can be started.
if (typeof opened === "string") test.skip(`skipped: ${opened}`);
else describe("in a browser, from a folder", () => inBrowser(opened));

function inBrowser({ browser, close }: OpenBrowser): void {
  let folder = "";
  const address = (url: string) => pathToFileURL(join(folder, url)).href;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "databook-site-"));
    for await (const [path, content] of siteFiles(publication)) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), content);
    }
  });
  afterAll(async () => {
    await close();
    await rm(folder, { recursive: true, force: true });
  });

  test.each(["light", "dark"] as const)("no page has a fault of accessibility, %s", async (colorScheme) => {
    // The tester is a script, which the policy of the pages would keep out.
    const context = await browser.newContext({ colorScheme, bypassCSP: true });
    const page = await context.newPage();
    for (const url of urls) {
      await page.goto(address(url));
      await page.evaluate(axe.source);
      const found = await page.evaluate(
        "axe.run().then(({ violations }) => violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`))",
      );
      expect(found, url).toEqual([]);
    }
    await context.close();
  });

  test.each([320, 360, 768, 1280])(
    "no page scrolls sideways at %i px, and nothing is refused or missing",
    async (width) => {
      const context = await browser.newContext({ viewport: { width, height: 800 }, javaScriptEnabled: true });
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => complaints.push(message.text()));
      page.on("pageerror", (error) => complaints.push(error.message));
      page.on("requestfailed", (request) => complaints.push(request.url()));
      page.on("request", (request) => {
        if (!request.url().startsWith("file:")) complaints.push(request.url());
      });
      for (const url of urls) {
        await page.goto(address(url));
        expect(await page.evaluate("document.documentElement.scrollWidth - innerWidth"), url).toBeLessThanOrEqual(0);
        expect(
          await page.evaluate(
            "document.fonts.ready.then((fonts) => [...fonts].filter(({ status }) => status === 'error').length)",
          ),
        ).toBe(0);
      }
      expect(complaints).toEqual([]);
      await context.close();
    },
  );

  test.each([390, 1280])("no id is broken at its hyphens at %i px", async (width) => {
    const context = await browser.newContext({ viewport: { width, height: 800 } });
    const page = await context.newPage();
    let ids = 0;
    for (const url of urls) {
      await page.goto(address(url));
      const found = await page.evaluate<readonly (readonly [id: string, lines: number])[]>(linesOfIds);
      ids += found.length;
      expect(
        found.filter(([, lines]) => lines > 1),
        url,
      ).toEqual([]);
    }
    expect(ids).toBeGreaterThan(20);
    await context.close();
  });

  test("links lead from page to page and to the row meant", async () => {
    const page = await browser.newPage();
    await page.goto(address("index.html"));
    await page.click("text=C2, shell course 1 to shell course 2");
    await page.click("text=lines of C2");
    expect(page.url()).toBe(`${address("weld-log/g-C.html")}#C2`);
    expect(await page.locator("tr:target").count()).toBe(1);
    await page.click(".trail >> text=Front page");
    expect(page.url()).toBe(address("index.html"));
    await page.close();
  });

  test("the first stop of the keyboard leads to the text", async () => {
    const page = await browser.newPage();
    await page.goto(address("joint/r-C2.html"));
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.textContent")).toBe("To the text");
    await page.keyboard.press("Enter");
    // The browser goes there in its own time.
    await page.waitForURL(/#text$/);
    expect(page.url()).toMatch(/#text$/);
    await page.close();
  });

  test("finding reads its index on first use, and shows what it found as text", async () => {
    const page = await browser.newPage();
    await page.goto(address("find.html"));
    expect(await page.locator("script[src='find-index.js']").count()).toBe(0);
    await page.fill("#find-words", "c12 WPS");
    await page.waitForFunction("document.querySelectorAll('#find-results li').length === 1");
    expect(await page.textContent("#find-count")).toBe("One place.");
    await page.fill("#find-words", "angstrom");
    expect(await page.locator("#find-results li").count()).toBe(1);
    await page.fill("#find-words", "<script>");
    expect(await page.locator("#find-results script").count()).toBe(0);
    expect(await page.textContent("#find-results")).toContain("<script>alert");
    await page.fill("#find-words", "zzz");
    expect(await page.textContent("#find-count")).toBe("Nothing found.");
    await page.fill("#find-words", "tester vision");
    await page.click("#find-results a");
    expect(page.url()).toBe(`${address("findings.html")}#f-n2`);
    await page.close();
  });

  test("without scripts the find page lists every page", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(address("find.html"));
    expect(await page.isVisible("#find-words")).toBe(false);
    expect(await page.isVisible("noscript p")).toBe(true);
    expect(await page.locator(".pages a").count()).toBe(publication.pages.length);
    await context.close();
  });

  test("verdicts keep their marks when colours are forced", async () => {
    const context = await browser.newContext({ forcedColors: "active" });
    const page = await context.newPage();
    await page.goto(address("joint/r-C2.html"));
    const widths = await page.evaluate(
      "[...document.querySelectorAll('.chain .v')].map((mark) => ['Left', 'Top'].map((side) => parseFloat(getComputedStyle(mark, '::before')[`border${side}Width`])).reduce((a, b) => a + b))",
    );
    expect(widths).toHaveLength(6);
    for (const width of widths as readonly number[]) expect(width).toBeGreaterThan(0);
    await context.close();
  });

  test("a long table goes on over the printed pages with its head, and nothing of it is lost", async () => {
    const page = await browser.newPage();
    await page.goto(address("weld-log/g-C.html"));
    await page.emulateMedia({ media: "print" });
    expect(await page.isVisible(".trail")).toBe(false);
    expect(await page.evaluate("getComputedStyle(document.querySelector('thead')).display")).toBe("table-header-group");
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
    await page.close();
  });
}
