import { HtmlValidate } from "html-validate";
import { runInNewContext } from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import type { Block } from "../../../src/publish/blocks.ts";
import type { Page, Publication } from "../../../src/publish/publication.ts";
import { siteFiles } from "../../../src/publish/html/index.ts";
import { newLinkCheck, relativeLink, relativePath } from "../../../src/publish/html/links.ts";
import { renderSite } from "../../../src/publish/html/site.ts";
import { ProgramError } from "../../../src/model/program-error.ts";
import { allFiles } from "../../support/all-files.ts";
import { hostile } from "../sample-pages.ts";
import { samplePublication } from "../sample.ts";
import { tight } from "./tight.ts";

const bytesOf = (content: Uint8Array | string) => Buffer.from(content);

const beside = ["files/materials/crt-003.pdf"];

function onePage(blocks: readonly Block[], more: Partial<Page> = {}): Publication {
  const page: Page = { url: "index.html", title: "One page", section: null, blocks, ...more };
  return { ...samplePublication(false), sections: [], pages: [page] };
}

async function pageOf(blocks: readonly Block[], more: Partial<Page> = {}): Promise<string> {
  const files = await allFiles(siteFiles(onePage(blocks, more)));
  return tight(String(files.get(more.url ?? "index.html")));
}

describe("links", () => {
  test.each([
    ["index.html", { page: "joint/r-C2.html" }, "joint/r-C2.html"],
    ["joint/r-C2.html", { page: "index.html" }, "../index.html"],
    ["joint/r-C2.html", { page: "joint/r-C3.html", anchor: "a" }, "r-C3.html#a"],
    ["joint/r-C2.html", { page: "joint/r-C2.html", anchor: "welder" }, "#welder"],
    ["joint/r-C2.html", { page: "joint/r-C2.html" }, "r-C2.html"],
    ["a/b/c.html", { page: "a/d.html" }, "../d.html"],
    ["joint/r-C2.html", { page: "person/g-.html", anchor: "W 07#é" }, "../person/g-.html#W%2007%23%C3%A9"],
  ])("from %s to %o is %s", (from, to, expected) => {
    expect(relativeLink(from, to)).toBe(expected);
  });
  test("file names are encoded, a page of the file is kept", () => {
    expect(relativePath("joint/r-C2.html", "files/a b/c:d#page=3")).toBe("../files/a%20b/c%3Ad#page=3");
    expect(relativePath("index.html", "c:d.pdf")).toBe("c%3Ad.pdf");
  });
  test("each that does not land is found", () => {
    const pages = new Map([
      ["index.html", '<p id="a"><a href="b/c.html#d"></a><a href="#a"></a><a href="#b"></a><img src="x.png">'],
      [
        "b/c.html",
        '<p id="d&amp;e"><a href="../index.html"></a><a href="#d%26e"></a><a href="../../etc"></a><a href="http://x"></a>',
      ],
    ]);
    const links = newLinkCheck();
    for (const page of pages) links.add(...page);
    expect(links.dead(new Set(), true)).toEqual([
      "index.html links to b/c.html#d",
      "index.html links to #b",
      "index.html links to x.png",
      "b/c.html links to ../../etc",
      "b/c.html links to http://x",
    ]);
    expect(links.dead(new Set(["x.png"]), true)).not.toContain("index.html links to x.png");
    expect(links.dead(new Set(), false)).not.toContain("index.html links to x.png");
  });
  test("a book with a dead one is not published", async () => {
    const to = (page: string, anchor?: string): Block => ({
      type: "paragraph",
      text: [{ type: "link", to: anchor === undefined ? { page } : { page, anchor }, text: "a" }],
    });
    await expect(allFiles(siteFiles(onePage([to("joint/r-X.html")])))).rejects.toThrow(
      "1 links do not land:\n  index.html links to joint/r-X.html",
    );
    await expect(allFiles(siteFiles(onePage([to("index.html", "nowhere")])))).rejects.toThrow(
      "index.html links to #nowhere",
    );
    const file: Block = { type: "paragraph", text: [{ type: "file", path: "files/a.pdf", text: "a" }] };
    await expect(allFiles(siteFiles(onePage([file]), []))).rejects.toThrow("index.html links to files/a.pdf");
    await expect(allFiles(siteFiles(onePage([file]), ["files/a.pdf"]))).resolves.toBeDefined();
  });
});

describe("rendering", () => {
  test("gives each page exactly what it rendered", async () => {
    const texts = ["<p>{{ 7*7 }} {% raw %}</p>", "---\ntitle: x\n---\n", "", "\ufeff<p>\r\n"];
    const pages = texts.map((text, index) => ({ url: `a/${index}.html`, render: () => text }));
    const front = { url: "index.html", render: () => "front" };
    const inner = { url: "a/index.html", render: () => "inner" };
    const rendered = await allFiles(renderSite([front, inner, ...pages]));
    expect([...rendered]).toEqual([
      ["index.html", "front"],
      ["a/index.html", "inner"],
      ...texts.map((text, index) => [`a/${index}.html`, text]),
    ]);
  });
  test.each(["../a.html", "/a.html", "a/../b.html", "a//b.html", ".a.html", "a.htm", "a/", "a b.html"])(
    "refuses the path %s",
    async (url) => {
      await expect(allFiles(renderSite([{ url, render: () => "" }]))).rejects.toThrow(ProgramError);
    },
  );
  test("refuses two pages of one path", async () => {
    const page = { url: "a.html", render: () => "" };
    await expect(allFiles(renderSite([page, { ...page }]))).rejects.toThrow("two pages have the path a.html");
  });
  test("passes on what a template threw", async () => {
    const thrown = new RangeError("no such row");
    const render = () => {
      throw thrown;
    };
    await expect(allFiles(renderSite([{ url: "a.html", render }]))).rejects.toBe(thrown);
  });
});

describe.each([false, true])("the site of the sample, interim %s", (interim) => {
  const publication = samplePublication(interim);
  let files = new Map<string, Uint8Array | string>();
  let pages: [string, string][] = [];
  beforeAll(async () => {
    files = await allFiles(siteFiles(publication, beside));
    pages = [...files].flatMap(([path, text]) => (path.endsWith(".html") ? [[path, tight(String(text))]] : []));
  });

  test("holds every page, the find page, styles, scripts and seven fonts", () => {
    const paths = [...files.keys()];
    expect(paths).toEqual(expect.arrayContaining(publication.pages.map(({ url }) => url)));
    expect(paths).toEqual(expect.arrayContaining(["find.html", "find.js", "find-index.js", "styles.css", "print.css"]));
    const fonts = paths.filter((path) => path.endsWith(".ttf"));
    expect(fonts).toHaveLength(7);
    const styles = String(files.get("styles.css"));
    for (const font of fonts) expect(styles).toContain(`url("${font}")`);
  });
  test("is the same a second time", async () => {
    const again = await allFiles(siteFiles(samplePublication(interim), beside));
    expect([...again.keys()]).toEqual([...files.keys()]);
    for (const [path, content] of again)
      expect(Buffer.compare(bytesOf(content), bytesOf(files.get(path) ?? "")), path).toBe(0);
  });
  test("has scripts on the find page only, no inline styles, no handlers, nothing from elsewhere", () => {
    for (const [path, text] of pages) {
      expect(text.match(/<script/g) ?? [], path).toHaveLength(path === "find.html" ? 1 : 0);
      expect(text, path).not.toMatch(/<(?:style|iframe|object|embed|form|base)\b/);
      // Attributes only: what stands between tags is text.
      for (const [tag] of text.matchAll(/<[a-z][^>]*>/g)) {
        expect(tag, path).not.toMatch(/\s(?:style|on[a-z]+)=/);
        expect(tag, path).not.toMatch(/(?:href|src)="(?:[a-z]+:|\/)/);
      }
      expect(text, path).toContain(
        `content="default-src &#39;none&#39;; ${path === "find.html" ? "script-src &#39;self&#39;; " : ""}style-src`,
      );
    }
  });
  test("names files, never folders", () => {
    for (const [path, text] of pages)
      for (const [, address = ""] of text.matchAll(/href="([^"#]*)/g))
        if (address !== "") expect(address, path).toMatch(/\.[a-z]+$/);
  });
  test("prints hostile text as text", () => {
    const text = tight(String(files.get("person/r-W07.html")));
    const escaped = hostile
      .replaceAll("&", "&amp;")
      .replaceAll("<", "&lt;")
      .replaceAll(">", "&gt;")
      .replaceAll('"', "&quot;")
      .replaceAll("'", "&#39;");
    expect(text).toContain(`<p class="under">${escaped}</p>`);
    expect(text).toContain(`<dt>${escaped}</dt><dd>${escaped}</dd>`);
  });
  test("says its state on every page", () => {
    for (const [path, text] of pages) {
      expect(text.includes("not for acceptance"), path).toBe(interim);
      expect(text, path).toContain(`<body class="${interim ? "interim" : "final"}">`);
      expect(text, path).toContain("demonstration, invented data");
      expect(text, path).toContain("3c1d 90ae 77b2 5f04");
      expect(text.match(/<h1/g), path).toHaveLength(1);
    }
  });
  test("leads through the pages in their printed order", () => {
    const ways = /<ul class="ways">(.*?)<\/ul>/s;
    expect(ways.exec(tight(String(files.get("findings.html"))))?.[1]).toContain(
      'before:<a href="index.html" rel="prev">Front page</a></li><li>next:<a href="section/3.html" rel="next">',
    );
    expect(ways.exec(tight(String(files.get("records.html"))))?.[1]).not.toMatch(/before|next/);
  });
  test("has an index to search that holds every page and anchored row, and is only data", () => {
    const window: { findIndex?: { pages: [string, string][]; entries: [number, string, string][] } } = {};
    const source = String(files.get("find-index.js"));
    runInNewContext(source, { window });
    expect(source).not.toContain("<");
    expect(window.findIndex?.pages.map(([url]) => url)).toEqual(publication.pages.map(({ url }) => url));
    const log = publication.pages.findIndex(({ url }) => url === "weld-log/g-C.html");
    const rows = window.findIndex?.entries.filter(([page]) => page === log).map(([, anchor]) => anchor);
    expect(rows).toEqual(["", ...Array.from({ length: 20 }, (_, index) => `C${index + 1}`)]);
    expect(window.findIndex?.entries.some(([, , text]) => text.includes("<script>"))).toBe(true);
  });
  test("is valid HTML", async () => {
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended", "html-validate:document"],
      rules: {
        // Integrity hashes do not work on pages opened from a folder; hashes.sha256 covers every file.
        "require-sri": "off",
        "long-title": "off",
        "void-style": ["error", { style: "selfclosing" }],
        "no-trailing-whitespace": "off",
        // Lists may be named.
        "aria-label-misuse": ["error", { allowAnyNamable: true }],
      },
    });
    for (const [path] of pages) {
      const report = await validator.validateString(String(files.get(path)), path);
      const found = report.results.flatMap(({ messages }) =>
        messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
      );
      expect(found, path).toEqual([]);
    }
  });
});

describe("blocks", () => {
  test("a ditto is read out in full, the first cell of a row is its head", async () => {
    const columns = [
      { head: "Joint", align: "left" },
      { head: "Length", unit: "mm", align: "number" },
    ] as const;
    const groups = [
      [
        {
          cells: [
            { type: "ditto", full: "L1" },
            { type: "number", text: "12" },
          ],
        },
        { cells: [{ type: "empty" }, { type: "number", text: "1.5" }] },
      ],
    ] as const;
    const text = await pageOf([{ type: "table", number: "1", title: "T", columns, groups }]);
    expect(text).toContain(
      '<th scope="row"><span class="vh">L1</span><span class="ditto" aria-hidden="true">″</span></th>',
    );
    expect(text).toContain('<td class="n pad-point pad-1" data-head="Length">12</td>');
    expect(text).toContain('<tr><td></td><td class="n" data-head="Length">1.5</td></tr>');
    expect(text).toContain('<th scope="col" class="n">Length<span class="u">mm</span></th>');
  });
  test("every mark is a word", async () => {
    const marks = ["passed", "failed", "not judged", "not applicable", "not due"] as const;
    const text = await pageOf([{ type: "judged", items: marks.map((mark) => ({ text: ["a"], mark })) }]);
    expect([...text.matchAll(/<span class="v (\w+)">([^<]*)<\/span>/g)].map(([, kind, word]) => [kind, word])).toEqual([
      ["passed", "passed"],
      ["failed", "failed"],
      ["open", "not judged"],
      ["na", "not applicable"],
      ["due", "not due"],
    ]);
  });
  test("of two equal anchors the first is where links land", async () => {
    const text = await pageOf([
      { type: "anchor", anchor: "A" },
      { type: "heading", level: 2, text: "Second", anchor: "A" },
      { type: "anchor", anchor: "text" },
    ]);
    expect(text.match(/ id="A"/g)).toHaveLength(1);
    expect(text.match(/ id="text"/g)).toHaveLength(1);
    expect(text).toContain('<h2 class="level-2"><span class="t">Second');
  });
  test("an anchor that no address could name is refused", async () => {
    await expect(pageOf([{ type: "anchor", anchor: "a b" }])).rejects.toThrow('anchor on index.html is "a b"');
  });
  test("no level of headings is skipped", async () => {
    const item = { anchor: "f", severity: "gap", message: ["m"], rows: [], notes: [] } as const;
    const text = await pageOf([
      { type: "findings", findings: [item, { ...item, anchor: "g" }] },
      { type: "heading", level: 3, text: "first" },
      { type: "heading", level: 3, text: "under" },
      { type: "findings", findings: [{ ...item, anchor: "h" }] },
    ]);
    expect([...text.matchAll(/<h(\d)/g)].map(([, level]) => level)).toEqual(["1", "2", "2", "2", "3", "3"]);
  });
  test("a long whole text may break, a short one may not", async () => {
    const text = await pageOf([
      {
        type: "paragraph",
        text: [
          { type: "whole", text: "12.5 mm" },
          { type: "whole", text: "X".repeat(60) },
        ],
      },
    ]);
    expect(text).toContain(`<p><span class="nb">12.5 mm</span>${"X".repeat(60)}</p>`);
  });
  test("an original opens at its page, a picture is shown", async () => {
    const scan = { type: "scan", title: "A", sha256: "00", page: 2, pages: 3, compared: "Not compared." } as const;
    const text = await pageOf([
      { ...scan, path: "files/a.pdf" },
      { ...scan, path: "files/b.PNG", pages: 1 },
    ]);
    expect(text).toContain('<a href="files/a.pdf#page=2">A, page 2 of 3</a>');
    expect(text).toContain('<img src="files/b.PNG" alt="Scan of A" loading="lazy">');
    expect(text.match(/<img/g)).toHaveLength(1);
  });
  test("a margin may stand beside the blocks that follow it, up to the next margin or heading", async () => {
    const plain: Block = { type: "paragraph", text: ["a"] };
    const noted: Block = { type: "paragraph", text: ["b"], notes: [{ lead: "Basis", text: ["c"] }] };
    const text = await pageOf([noted, plain, plain, noted, { type: "heading", level: 2, text: "d" }]);
    expect([...text.matchAll(/<div class="(note[^"]*)"/g)].map(([, name]) => name)).toEqual(["note rows-3", "note"]);
  });
});
