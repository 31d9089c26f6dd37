import { describe, expect, test } from "vitest";
import { formula, symbolText } from "../../../src/publish/html/mathml.ts";
import { spoken } from "../../../src/publish/html/spoken.ts";
import { drawings } from "../../../src/publish/html/svg.ts";
import { parseFormula } from "../../../src/model/formula/parse.ts";
import { related, substitute, symbolDisplay, typeset } from "../../../src/model/formula/typeset.ts";
import { decimalsOf, paddingClass } from "../../../templates/blocks/decimals.ts";
import { table } from "../../../templates/blocks/table.ts";
import { pageContext } from "../../../src/publish/html/page-context.ts";
import { prose } from "../../../templates/blocks/prose.ts";
import { rangeMark } from "../../../templates/blocks/range.ts";
import { attribute, html, textOf as markupOf, trusted, type Html } from "../../../templates/html.ts";
import { unbroken } from "../../../templates/inline.ts";
import { printStyles } from "../../../templates/print-styles.ts";
import { samplePublication } from "../sample.ts";
import { tight } from "./tight.ts";

const textOf = (value: Html) => tight(markupOf(value));

describe("the tag for templates", () => {
  test("escapes every string, in content and in attributes", () => {
    expect(textOf(html`<p title="${`a"b'c`}">${"<b>&"}</p>`)).toBe('<p title="a&quot;b&#39;c">&lt;b&gt;&amp;</p>');
  });
  test("lets markup through only if it is declared", () => {
    expect(textOf(html`${trusted("<i>a</i>")}${html`<b>${1}</b>`}`)).toBe("<i>a</i><b>1</b>");
  });
  test("prints nothing for what is absent, and zero as zero", () => {
    expect(textOf(html`[${false}${null}${undefined}${""}${0}${[html`a`, "<", []]}]`)).toBe("[0a&lt;]");
  });
  test("shows signs that would turn or hide the text after them", () => {
    expect(textOf(html`${"PT\u202e10-\u0000\u2066x\ud800"}`)).toBe("PT\\u202e10-\\u0000\\u2066x\\ud800");
    expect(markupOf(html`${"α ≥ µ Ø 😀\n\t"}`)).toBe("α ≥ µ Ø 😀\n\t");
  });
  test("leaves out attributes without a value", () => {
    expect(textOf(html`<p ${attribute("id", undefined)}${attribute("class", 'x"')}></p>`)).toBe(
      '<p class="x&quot;"></p>',
    );
  });
});

describe("ids in text", () => {
  test.each([
    ["report NDT-RT-014, of 2026-06-02", 'report <span class="nb">NDT-RT-014</span>, of 2026-06-02'],
    ["WPQ-W15-02", '<span class="nb">WPQ-W15-02</span>'],
    ["non-alloy steel, EN 10216-2, A < B", "non-alloy steel, EN 10216-2, A &lt; B"],
    // Wider than a phone: it may break.
    ["ORG-CAL-HEATED-EQUIPMENT-CATEGORY", "ORG-CAL-HEATED-EQUIPMENT-CATEGORY"],
  ])("%s", (words, expected) => {
    expect(markupOf(html`${unbroken(words)}`)).toBe(expected);
  });
});

test("a table may have more cells than a call may have arguments", () => {
  const cell = { type: "number", text: "1" } as const;
  const row = { cells: [cell, cell, cell, { type: "number", text: "1.25" }] } as const;
  const columns = [1, 2, 3, 4].map((index) => ({ head: `${index}`, align: "number" }) as const);
  const groups = [Array.from({ length: 140_000 }, () => row)];
  const printed = markupOf(table(pageContext("index.html"), { type: "table", number: "", title: "", columns, groups }));
  expect(printed.match(/<tr/g)).toHaveLength(140_001);
  expect(printed).toContain('class="few short"');
});

describe("decimal alignment", () => {
  const cells = (...texts: readonly string[]) => texts.map((text) => ({ type: "number", text }) as const);
  test.each([
    { column: ["0.14", "0.0062", "<0.003"], text: "0.14", expected: "pad-2" },
    { column: ["0.14", "0.0062", "<0.003"], text: "<0.003", expected: "pad-1" },
    { column: ["0.14", "0.0062", "<0.003"], text: "0.0062", expected: "" },
    { column: ["1200", "8.0"], text: "1200", expected: "pad-point pad-1" },
    { column: ["1200", "12\u00a0566"], text: "1200", expected: "" },
    { column: ["168.666\u00a0667", "−1.5"], text: "−1.5", expected: "pad-5" },
    { column: ["1.25", "none"], text: "none", expected: "" },
    { column: ["0.123456789012", "3"], text: "3", expected: "pad-point pad-9" },
  ])("$text in $column", ({ column, text, expected }) => {
    expect(paddingClass(text, decimalsOf(cells(...column)))).toBe(expected);
  });
});

describe("range marks", () => {
  const pathOf = (range: Parameters<typeof rangeMark>[0]) => textOf(rangeMark(range));
  test("the upper limit stands at 114 whatever its size", () => {
    for (const high of [0.2, 35, 1000])
      expect(pathOf({ type: "range", high, value: high / 2, spoken: "" })).toContain('d="M0 9H114M114 3v12"');
  });
  test("a value over its limit stands beyond the tick", () => {
    expect(pathOf({ type: "range", high: 10, value: 11, spoken: "" })).toContain('d="M125.4 1v16"');
    expect(pathOf({ type: "range", high: 10, value: 900, spoken: "" })).toContain('d="M148 1v16"');
  });
  test("without an upper limit the rule ends in an arrow", () => {
    expect(pathOf({ type: "range", low: 0.02, value: 0.034, spoken: "" })).toContain(
      'd="M38 9H150M38 3v12M144 6l6 3l-6 3"',
    );
  });
  test("what is known only as less than is a rule from zero", () => {
    expect(pathOf({ type: "range", high: 0.03, value: 0.003, below: true, spoken: "" })).toContain('d="M0 9H11.4"');
  });
  test("limits below zero keep their order", () => {
    expect(pathOf({ type: "range", low: -20, high: 60, value: 20, spoken: "" })).toContain('d="M76 1v16"');
  });
  test("has its words", () => {
    expect(pathOf({ type: "range", high: 1, value: 1, spoken: 'a "b"' })).toContain('aria-label="a &quot;b&quot;"');
  });
});

describe("formulas", () => {
  const quotient = typeset(parseFormula("P*De/(2*f*z + P)"), new Map([["De", "De"]]));
  const whole = related(symbolDisplay("e"), "=", quotient);
  test("are read aloud with their brackets", () => {
    expect(spoken(whole)).toBe("e equals (P times D e) over (2 times f times z plus P)");
    expect(spoken(typeset(parseFormula("sqrt(A/2) - k^2")))).toBe("square root of A over 2 minus k to the power of 2");
    expect(spoken(typeset(parseFormula("max(a, b)*abs(c)")))).toBe("max of (a, b) times absolute value of c");
  });
  test("set symbols side by side and numbers with a sign", () => {
    const symbols = textOf(formula(whole));
    expect(symbols).toContain('<mi mathvariant="normal">P</mi><mspace width="0.1em"></mspace><msub>');
    const values = new Map([
      ["P", "1.1"],
      ["De", "1200"],
      ["f", "168.7"],
      ["z", "0.85"],
    ]);
    const numbers = textOf(formula(substitute(parseFormula("P*De/(2*f*z + P)"), values)));
    expect(numbers).toContain('<mn>1.1</mn><mo form="infix">×</mo><mn>1200</mn>');
  });
  test("break before signs of addition, and keep a minus there an operation", () => {
    const text = textOf(formula(related(symbolDisplay("e"), "=", typeset(parseFormula("a + b - c")))));
    expect(text.match(/<math /g)).toHaveLength(3);
    expect(text).toContain('<mrow><mo form="infix">−</mo><mi mathvariant="normal">c</mi>');
    expect(textOf(formula(typeset(parseFormula("-a + b"))))).toContain('<mo form="prefix">−</mo>');
  });
  test("names of several letters do not run together", () => {
    expect(textOf(formula(typeset(parseFormula("PS*V"))))).toContain('<mo form="infix">·</mo>');
  });
  test("only long ones scroll, and then can be focused", () => {
    expect(textOf(formula(whole))).not.toContain("tabindex");
    const long = textOf(formula(typeset(parseFormula("abcdefgh_ijklmnop*(abcdefgh_qrstuvw + abcdefgh_xyz)*z"))));
    expect(long).toContain('class="formula long"');
    expect(long).toContain('tabindex="0"');
  });
  test("escape what stands in them", () => {
    expect(textOf(symbolText({ type: "symbol", base: "<", sub: '"', sup: "&" }))).toBe(
      '<span class="sym">&lt;<sub>&quot;</sub><sup>&amp;</sup></span>',
    );
  });
});

describe("figures", () => {
  const context = { href: () => "../a.html", ownName: () => "own_1" };
  const drawn = (shape: Parameters<typeof drawings>[1]["wide"]["shapes"][number]) => {
    const drawing = { width: 100, height: 50, shapes: [shape] };
    return textOf(drawings(context, { title: "<t>", description: "d & e", wide: drawing, narrow: drawing }));
  };
  test("have title and description, both escaped", () => {
    const text = drawn({ type: "line", from: [0, 0], to: [10, 0.333333], weight: 0.6 });
    expect(text).toContain(
      'aria-labelledby="own_1t" aria-describedby="own_1d"><title id="own_1t">&lt;t&gt;</title><desc id="own_1d">d &amp; e</desc>',
    );
    expect(text).toContain('<path d="M0 0L10 0.33" stroke-width="0.6">');
    expect(text.match(/<svg /g)).toHaveLength(2);
  });
  test("are a group when one of their texts is a link", () => {
    const text = { type: "text", at: [1, 2], text: "C2", size: 14, anchor: "middle" } as const;
    expect(drawn(text)).toContain('role="img"');
    const linked = drawn({ ...text, to: { page: "a.html" } });
    expect(linked).toContain('role="group"');
    expect(linked).toContain('<a href="../a.html"><text x="1" y="2" font-size="14" text-anchor="middle">C2</text></a>');
  });
  test("arrows open away from the tip", () => {
    expect(drawn({ type: "line", from: [0, 0], to: [50, 0], weight: 0.6, arrows: "both" })).toContain(
      'd="M6 3L0 0L6 -3M44 -3L50 0L44 3"',
    );
    expect(drawn({ type: "line", from: [5, 5], to: [5, 5], weight: 0.6, arrows: "end" })).not.toContain("NaN");
  });
  test("hatching stays inside its region", () => {
    const text = drawn({ type: "hatch", x: 10, y: 20, width: 12, height: 7 });
    const points = [...(/path d="([^"]*)"/.exec(text)?.[1] ?? "").matchAll(/[ML]([\d.]+) ([\d.]+)/g)];
    expect(points.length).toBe(6);
    for (const [, x, y] of points) {
      expect(Number(x)).toBeGreaterThanOrEqual(10);
      expect(Number(x)).toBeLessThanOrEqual(22);
      expect(Number(y)).toBeGreaterThanOrEqual(20);
      expect(Number(y)).toBeLessThanOrEqual(27);
    }
  });
});

describe("free text of records", () => {
  test("keeps emphasis and lists", () => {
    expect(textOf(prose("**a** and *b*\n\n- c"))).toBe(
      '<div class="prose"><p><strong>a</strong>and<em>b</em></p><ul><li>c</li></ul></div>',
    );
  });
  test.each([
    "<script>alert(1)</script>",
    "[a](javascript:alert(1))",
    "[a](https://example.invalid)",
    "[a]: https://example.invalid\n\n[a]",
    "<https://example.invalid>",
    "![a](x.png)",
    "https://example.invalid",
    '<a href="x">a</a>',
  ])("makes neither markup nor links nor pictures of %s", (markdown) => {
    expect(textOf(prose(markdown))).not.toMatch(/<(?!\/?(?:p|div)\b)/);
  });
  test("has no headings of its own and no inline styles", () => {
    const text = textOf(prose("# a\n\nb\n===\n\n| c | d |\n|--:|:-:|\n| 1 | 2 |\n\n---"));
    expect(text).not.toMatch(/<h\d|style=|<hr/);
    expect(text).toContain('<p class="say">a</p>');
    expect(text).toContain('<th scope="col">c</th>');
  });
});

test("a title cannot leave its string in the style sheet for printing", () => {
  const sheet = printStyles({ ...samplePublication(false), title: 'a"; } body { display: none } </style>\\\n' });
  expect(sheet).toContain('content: "BH211-02  a\\22 ; } body { display: none } \\3c /style\\3e \\5c \\a "');
});
