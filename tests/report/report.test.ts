import { address } from "../support/address.ts";
import { Ajv } from "ajv";
import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/model/finding.ts";
import { byCodePoint } from "../../src/model/order.ts";
import { reportHtml } from "../../src/report/html.ts";
import { reportJson } from "../../src/report/json.ts";
import { excerpt, plain } from "../../src/report/plain.ts";
import { placeFindings, reportOf } from "../../src/report/report.ts";
import { reportSarif } from "../../src/report/sarif.ts";
import { fatalText, findingText, reportText } from "../../src/report/text.ts";
import { judgedSentence } from "../../src/report/words.ts";
import { finding, judgedBook, lapsed, locator } from "./judged.ts";
import { sarifShape } from "./sarif-shape.ts";

const tool = "databook 0.1.0";
const report = (...findings: readonly Finding[]) => reportOf(judgedBook({ findings }), tool);
const [placed] = placeFindings([lapsed], locator);

describe("text", () => {
  test("a finding prints as documented", () => {
    if (placed === undefined) throw new Error("nothing placed");
    expect(findingText(placed).split("\n").slice(0, 6)).toEqual([
      "weld-log/seams.json:41:7 nonconformity welder-qualified",
      "  welder W07 was not qualified on 2026-03-09",
      '  41 |   "weldedOn": "2026-03-09"',
      "  why    the last qualification for process 135 at 14 mm ended 2026-02-28",
      "  basis  EN ISO 9606-1:2017, period of validity (from memory)",
      "  hint   add the prolongation, or correct the welding date",
    ]);
    expect(findingText(placed).split("\n").slice(6)).toEqual([
      "  owner  shop",
      "  see    people/w07.json:1:1 ends here",
      "  waits  chain-complete|joint:L1",
      "  key    welder-qualified|joint:L1|W07, digest 0123456789abcdef",
    ]);
  });

  test("a finding on a record that came from a sheet names the sheet's row beside the place, in every form", () => {
    const imported = { file: "weld-log.xlsx", sha256: "0".repeat(64), sheet: "Shell", row: 14, map: "m", fields: "0" };
    const record = {
      kind: "weld-log",
      id: "WL1",
      file: "weld-log/seams.json",
      pointer: "/records/0",
      value: { imported },
      faulty: false,
    };
    const said = reportOf(judgedBook({ findings: [lapsed], records: [record] }), tool);
    expect(reportText(said)).toContain("\n  sheet  weld-log.xlsx, Shell, row 14\n");
    expect(JSON.parse(reportJson(said))).toMatchObject({
      findings: [{ sheet: "weld-log.xlsx, Shell, row 14" }],
    });
    expect(reportHtml(said)).toContain("<dt>sheet</dt><dd>weld-log.xlsx, Shell, row 14</dd>");
    const sarif = JSON.parse(reportSarif(said, [])) as { readonly runs: readonly { readonly results: unknown }[] };
    expect(sarif.runs[0]?.results).toMatchObject([
      {
        message: { text: expect.stringMatching(/\nsheet: weld-log\.xlsx, Shell, row 14$/) as unknown },
        properties: { sheet: "weld-log.xlsx, Shell, row 14" },
      },
    ]);
  });

  test("of many related places the first dozen is shown, and how many more there are", () => {
    const [one] = lapsed.related;
    const lines = (count: number) => {
      const related = Array.from({ length: count }, () => one).flatMap((each) => each ?? []);
      const [many] = placeFindings([finding({ related })], locator);
      if (many === undefined) throw new Error("nothing placed");
      return findingText(many)
        .split("\n")
        .filter((line) => line.startsWith("  see"));
    };
    expect(lines(12)).toHaveLength(12);
    expect(lines(15)).toHaveLength(13);
    expect(lines(15).at(-1)).toBe("  see    3 more places, in the report");
  });

  test("findings are grouped by severity, lifted ones last, and summed up", () => {
    const text = reportText(
      report(
        finding({ key: "n", rule: "n", severity: "note" }),
        finding({ key: "g", rule: "g", severity: "gap", due: "welding", owner: "purchasing" }),
        finding({ key: "l", rule: "l", exception: address("waiver:WV-01") }),
        lapsed,
      ),
    );
    expect(text.match(/^\S.*\(\d+\)$/gm)).toEqual([
      "nonconformities (1)",
      "gaps (1)",
      "notes (1)",
      "answered by an exception (1)",
    ]);
    expect(text).toContain("  owner  purchasing, due at welding\n");
    expect(text).toContain("  lifted answered by waiver:WV-01\n");
    expect(text).toContain("found: 1 nonconformity, 1 gap, no queries, 1 note, 1 answered by an exception\n");
    expect(text).toContain(
      "322 checks: 312 passed, 3 failed, 1 answered by an exception, 4 not judged, 2 not due; 5 more do not apply\n",
    );
    expect(text).toContain("to act: purchasing 1, shop 1\n");
    expect(text.endsWith("2 findings block release\n")).toBe(true);
  });

  test("that all checks passed is never all that is said of a book with findings", () => {
    const none = {
      ...{ nonconformity: 0, gap: 0, query: 0, note: 0, lifted: 0, notJudged: 0, notDue: 0, notApplicable: 0 },
      ...{ passed: 3, computed: 0, failed: 0, rejected: 0, answered: 0 },
    };
    expect(judgedSentence(none)).toBe("3 checks: all passed");
    expect(judgedSentence({ ...none, nonconformity: 1 })).toBe(
      "3 checks: all passed; what was found stands beside these checks",
    );
    expect(judgedSentence({ ...none, query: 1, notJudged: 1 })).toBe("4 checks: 3 passed, 1 not judged");
  });

  test("with nothing but notes, nothing blocks", () => {
    const text = reportText(report(finding({ severity: "note" })));
    expect(text.endsWith("nothing blocks this final issue\n")).toBe(true);
    expect(text).not.toContain("to act");
  });

  test("ink marks words and changes none", () => {
    const marked = reportText(report(lapsed), { bold: (text) => `[b]${text}[/b]`, dim: (text) => `[d]${text}[/d]` });
    expect(marked).toContain("[b]nonconformity[/b]");
    expect(marked.replaceAll(/\[\/?[bd]\]/g, "")).toBe(reportText(report(lapsed)));
  });

  test("control signs and turned writing in records cannot act on the terminal", () => {
    const hostile = finding({ message: "a\u001b[2Jb\u202ec\nd", why: "\u009b31m" });
    const text = reportText(report(hostile));
    expect(text).toContain("  a\\u001b[2Jb\\u202ec d\n");
    expect(text).toContain("  why    \\u009b31m\n");
    expect(plain("Ø 850 × 16 ≥ 12 µm — ok")).toBe("Ø 850 × 16 ≥ 12 µm — ok");
  });

  test("a long line is cut around its place, a tabbed one drawn in", () => {
    const line = `{${"x".repeat(500)}"weldedOn": 1${"y".repeat(500)}`;
    const cut = excerpt(line, 502);
    expect(cut).toHaveLength(102);
    expect(cut).toMatch(/^…x+"weldedOn": 1y+…$/);
    expect(excerpt(`\t\t\t\t"a": 1`, 5)).toBe(` "a": 1`);
    expect(excerpt(`    "a": 1  `, 5)).toBe(`  "a": 1`);
    expect(excerpt("", 1)).toBe("");
  });

  test("a book that cannot be judged says why", () => {
    expect(fatalText(placeFindings([finding({ rule: "book-present" })], locator))).toMatch(
      /^the book cannot be judged: 1 fault in what names it\n\nweld-log\/seams.json:41:7 nonconformity book-present\n/,
    );
  });
});

describe("order", () => {
  test("by file, line, rule and key, in code-point order", () => {
    const keys = report(
      finding({ key: "5", place: { file: "weld-log/seams.json", pointer: "/records/1/weldedOn" }, rule: "a" }),
      finding({ key: "4", rule: "b" }),
      finding({ key: "3", rule: "a" }),
      finding({ key: "2", rule: "a" }),
      finding({ key: "1", place: { file: "Z.json", pointer: "" } }),
    ).findings.map(({ finding: { key } }) => key);
    expect(keys).toEqual(["1", "2", "3", "4", "5"]);
  });

  test("signs beyond the basic plane follow all others", () => {
    expect(["\u{1F600}", "\uFFFD", "z", "Z", "a", ""].sort(byCodePoint)).toEqual([
      "",
      "Z",
      "a",
      "z",
      "\uFFFD",
      "\u{1F600}",
    ]);
    expect(byCodePoint("ab", "ab")).toBe(0);
  });
});

test("json: the contract, field by field", () => {
  const judged = judgedBook();
  expect(JSON.parse(reportJson(reportOf(judged, tool)))).toEqual({
    tool,
    format: 1,
    book: {
      id: "TQ423",
      number: "TQ423-01",
      title: "Air <receiver>",
      revision: "0",
      state: "final",
      issueDate: "2026-06-30",
      dataCutOff: "2026-06-18",
      profile: "cautious",
      demonstration: true,
      fingerprint: judged.fingerprint,
    },
    counts: {
      nonconformity: 1,
      gap: 0,
      query: 0,
      note: 0,
      lifted: 0,
      notJudged: 4,
      notDue: 2,
      notApplicable: 5,
      passed: 312,
      computed: 0,
      failed: 3,
      rejected: 0,
      answered: 1,
    },
    adopted: { calculations: 0, unsigned: 0 },
    findings: [
      {
        key: "welder-qualified|joint:L1|W07",
        rule: "welder-qualified",
        severity: "nonconformity",
        verdict: "failed",
        subject: { kind: "joint", id: "L1" },
        file: "weld-log/seams.json",
        line: 41,
        column: 7,
        message: "welder W07 was not qualified on 2026-03-09",
        why: "the last qualification for process 135 at 14 mm ended 2026-02-28",
        hint: "add the prolongation, or correct the welding date",
        basis: {
          class: "from memory",
          document: "EN ISO 9606-1",
          edition: "2017",
          topic: "period of validity",
          text: "EN ISO 9606-1:2017, period of validity (from memory)",
        },
        owner: "shop",
        due: null,
        blocks: ["chain-complete|joint:L1"],
        exception: null,
        digest: "0123456789abcdef",
        related: [
          {
            kind: "welder-qualification",
            id: "WQ-12",
            file: "people/w07.json",
            line: 1,
            column: 1,
            message: "ends here",
          },
        ],
      },
    ],
  });
});

test("json: a finding about no record says null, not nothing", () => {
  const [first] = (JSON.parse(reportJson(report(finding({ subject: null })))) as { findings: { subject: unknown }[] })
    .findings;
  expect(first?.subject).toBeNull();
});

describe("sarif", () => {
  interface Log {
    readonly runs: readonly {
      readonly tool: {
        readonly driver: {
          readonly name: string;
          readonly version: string;
          readonly rules: readonly { readonly id: string }[];
        };
      };
      readonly results: readonly {
        readonly ruleId: string;
        readonly ruleIndex: number;
        readonly level: string;
        readonly suppressions: readonly unknown[];
        readonly locations: readonly { readonly physicalLocation: unknown }[];
      }[];
    }[];
  }
  const findings = [
    lapsed,
    finding({
      key: "g",
      rule: "missing",
      severity: "gap",
      subject: null,
      place: { file: "weld log/ä.json", pointer: "" },
    }),
    finding({ key: "q", rule: "value-plausible", severity: "query", exception: address("answered-query:AQ-1") }),
    finding({ key: "n", rule: "record-used", severity: "note" }),
  ];
  const text = reportSarif(report(...findings), [{ id: lapsed.rule, title: "Qualified welders", basis: lapsed.basis }]);
  const log = JSON.parse(text) as Log;

  test("has the shape the standard's schema demands", () => {
    const validate = new Ajv({ strict: false, allErrors: true }).compile(sarifShape);
    validate(log);
    expect(validate.errors).toBeNull();
    const broken = JSON.parse(text.replaceAll('"level": "error"', '"level": "fatal"')) as Log;
    expect(validate(broken)).toBe(false);
  });

  test("names tool, rules, levels and places", () => {
    const run = log.runs[0];
    expect(run?.tool.driver).toMatchObject({ name: "databook", version: "0.1.0" });
    expect(run?.tool.driver.rules.map(({ id }) => id)).toEqual([
      "missing",
      "record-used",
      "value-plausible",
      "welder-qualified",
    ]);
    for (const result of run?.results ?? []) expect(run?.tool.driver.rules[result.ruleIndex]?.id).toBe(result.ruleId);
    expect(Object.fromEntries(run?.results.map(({ ruleId, level }) => [ruleId, level]) ?? [])).toEqual({
      "welder-qualified": "error",
      missing: "error",
      "value-plausible": "warning",
      "record-used": "note",
    });
    const at = (rule: string) => run?.results.find(({ ruleId }) => ruleId === rule)?.locations[0]?.physicalLocation;
    expect(at("missing")).toMatchObject({ artifactLocation: { uri: "weld%20log/%C3%A4.json", uriBaseId: "BOOK" } });
    expect(at("welder-qualified")).toEqual({
      artifactLocation: { uri: "weld-log/seams.json", uriBaseId: "BOOK" },
      region: { startLine: 41, startColumn: 7, endColumn: 17 },
    });
  });

  test("an answered finding is suppressed, an open one is not", () => {
    const suppressions = Object.fromEntries(
      log.runs[0]?.results.map((one) => [one.ruleId, one.suppressions.length]) ?? [],
    );
    expect(suppressions).toMatchObject({ "value-plausible": 1, "welder-qualified": 0 });
  });
});

describe("html", () => {
  test("escapes what records say and holds every finding with key and digest", () => {
    const page = reportHtml(
      report(lapsed, finding({ key: "x|<b>", message: `<img src=x onerror="alert(1)">`, severity: "gap" })),
    );
    expect(page).not.toContain("<img");
    expect(page).toContain("&lt;img src=x onerror=&quot;alert(1)&quot;&gt;");
    expect(page).toContain("Air &lt;receiver&gt;");
    expect(page).toContain("<code>welder-qualified|joint:L1|W07</code>, digest <code>0123456789abcdef</code>");
    expect(page).toContain("<h2>Nonconformities</h2>");
    expect(page).toContain("demonstration, invented data");
  });

  test("is valid HTML", async () => {
    const page = reportHtml(
      report(lapsed, finding({ key: "g", severity: "gap", exception: address("waiver:WV-01"), due: "welding" })),
    );
    const result = await new HtmlValidate({
      extends: ["html-validate:recommended", "html-validate:document"],
    }).validateString(page);
    expect(
      result.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, line, message }) => `${line} ${ruleId} ${message}`),
      ),
    ).toEqual([]);
  });

  test("allows no script, nothing from elsewhere, and exactly its own style", async () => {
    const page = reportHtml(report(lapsed));
    const { createHash } = await import("node:crypto");
    const style = /<style>([^]*)<\/style>/.exec(page)?.[1] ?? "";
    expect(page).toContain(
      `default-src 'none'; style-src 'sha256-${createHash("sha256").update(style).digest("base64")}'`,
    );
    expect(page).not.toMatch(/<script|https?:/);
  });
});
